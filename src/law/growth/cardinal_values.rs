//! Where each germ begins, does best and ends, in temperature, pH and water activity.

const TEMPERATURE: &str = "least, best and greatest temperature";
const PH: &str = "least, best and greatest pH";
const WATER: &str = "least, best and greatest water activity; pure water itself counts as 0.9999";
const WATER_LINE: &str = "least water activity of a straight line to pure water";

crate::correlations! {
    /// Temperatures of Listeria.
    LISTERIA_TEMPERATURE = { "Listeria monocytogenes: temperatures of growth", TEMPERATURE, [-1.72, 37.0, 45.5], "°C", (0.0, 45.0), "°C", DynamicListeria, "its table of cardinal values", Secondhand }
    /// Acidity of Listeria.
    LISTERIA_PH = { "Listeria monocytogenes: pH of growth", PH, [4.26, 7.1, 9.61], "pH", (4.3, 7.1), "pH", DynamicListeria, "its table of cardinal values", Secondhand }
    /// Water activity of Listeria.
    LISTERIA_WATER = { "Listeria monocytogenes: water activity of growth", WATER, [0.913, 0.997, 1.0], "1", (0.913, 1.0), "1", DynamicListeria, "its table of cardinal values; power 1", Secondhand }
    /// Temperatures of S. aureus.
    STAPHYLOCOCCUS_TEMPERATURE = { "Staphylococcus aureus: temperatures of growth", TEMPERATURE, [7.7, 40.6, 46.7], "°C", (7.7, 45.0), "°C", Medvedova2019, "abstract, from 247 rates", Secondhand }
    /// Acidity of S. aureus.
    STAPHYLOCOCCUS_PH = { "Staphylococcus aureus: pH of growth", PH, [4.0, 7.0, 9.8], "pH", (4.2, 7.0), "pH", AdamsMoss, "table 7.8: 4.0 to 9.8, best 6 to 7", Published }
    /// Water activity of S. aureus.
    STAPHYLOCOCCUS_WATER = { "Staphylococcus aureus: water activity of growth", WATER, [0.808, 0.994, 1.0], "1", (0.83, 1.0), "1", Medvedova2019, "abstract, from 247 rates; power 2", Secondhand }
    /// Temperatures of Salmonella.
    SALMONELLA_TEMPERATURE = { "Salmonella: temperatures of growth", TEMPERATURE, [6.24, 38.37, 47.97], "°C", (6.24, 45.0), "°C", GroPin, "model 1165, Fang et al. 2015", Secondhand }
    /// Acidity of Salmonella.
    SALMONELLA_PH = { "Salmonella: pH of growth", PH, [3.84, 6.47, 14.1], "pH", (4.2, 6.6), "pH", GroPin, "model 1332, Lianou and Koutsoumanis 2011; the greatest is a fitted number and never used", Secondhand }
    /// Water activity of Salmonella.
    SALMONELLA_WATER = { "Salmonella: water activity of growth", WATER, [0.939, 0.992, 1.0], "1", (0.939, 1.0), "1", GroPin, "model 1332, Lianou and Koutsoumanis 2011; squared", Secondhand }
    /// Temperatures of E. coli.
    COLI_TEMPERATURE = { "Escherichia coli, pathogenic: temperatures of growth", TEMPERATURE, [6.81, 40.97, 45.16], "°C", (6.81, 45.0), "°C", GroPin, "model 323, Pinon et al. 2004", Secondhand }
    /// Acidity of E. coli.
    COLI_PH = { "Escherichia coli, pathogenic: pH of growth", PH, [4.0, 6.49, 8.98], "pH", (4.2, 6.6), "pH", GroPin, "model 323, Pinon et al. 2004", Secondhand }
    /// Water activity of E. coli.
    COLI_WATER = { "Escherichia coli, pathogenic: water activity of growth", WATER, [0.941, 0.998, 1.0], "1", (0.941, 1.0), "1", GroPin, "model 323, Pinon et al. 2004; power 2", Secondhand }
    /// Temperatures of B. cereus.
    CEREUS_TEMPERATURE = { "Bacillus cereus, cold-loving: temperatures of growth", TEMPERATURE, [0.0, 37.0, 46.8], "°C", (0.0, 45.0), "°C", GroPin, "model 1385, Zwietering et al. 1996, pasteurised milk, squared; greatest from model 1172; level above the best by our judgement", Secondhand }
    /// Acidity of B. cereus.
    CEREUS_PH = { "Bacillus cereus, cold-loving: pH of growth", PH, [4.9, 6.5, 8.1], "pH", (4.9, 6.7), "pH", GroPin, "model 1385, Zwietering et al. 1996", Secondhand }
    /// Water activity of B. cereus.
    CEREUS_WATER = { "Bacillus cereus, cold-loving: water activity of growth", WATER_LINE, [0.95], "1", (0.95, 1.0), "1", GroPin, "model 1385, Zwietering et al. 1996", Secondhand }
    /// Temperatures of the cold type of C. botulinum.
    BOTULINUM_TEMPERATURE = { "Clostridium botulinum, cold type: temperatures of growth", TEMPERATURE, [-2.9, 25.4, 29.0], "°C", (3.0, 29.0), "°C", GroPin, "model 384, Rosso et al. 1993", Secondhand }
    /// Acidity of the cold type of C. botulinum.
    BOTULINUM_PH = { "Clostridium botulinum, cold type: pH of growth", PH, [5.0, 7.0, 9.0], "pH", (5.0, 7.0), "pH", Graham1997, "no growth below 5.0; the shape is our judgement", Judged }
    /// Water activity of the cold type of C. botulinum.
    BOTULINUM_WATER = { "Clostridium botulinum, cold type: water activity of growth", WATER_LINE, [0.965], "1", (0.965, 1.0), "1", Graham1997, "5 % salt in the water; the shape is our judgement", Judged }
}
