//! How fast each germ grows where everything suits it, and how cold the cold spore former still grows.

crate::constants! {
    /// Rate of Listeria at its best.
    LISTERIA_RATE = { "Listeria monocytogenes: rate where it grows best", 0.742, "1/h", (0.41, 1.3), GroPin, "model 311, dairy, after Augustin 2005 and Mejlholm 2010; range from tests in fresh cheese, our calculation", Secondhand }
    /// Rate of S. aureus at its best.
    STAPHYLOCOCCUS_RATE = { "Staphylococcus aureus: rate where it grows best", 1.97, "1/h", (1.2, 3.0), Medvedova2019, "abstract, from 247 rates", Secondhand }
    /// Rate of Salmonella at its best.
    SALMONELLA_RATE = { "Salmonella: rate where it grows best", 1.195, "1/h", (0.7, 2.14), GroPin, "model 1165, Fang et al. 2015; 2.14 in broth", Secondhand }
    /// Rate of E. coli at its best.
    COLI_RATE = { "Escherichia coli, pathogenic: rate where it grows best", 2.3, "1/h", (1.4, 4.3), GroPin, "model 389, Rosso et al. 1993; the 4.25 of model 323 looks too high", Secondhand }
    /// Rate of B. cereus at its best.
    CEREUS_RATE = { "Bacillus cereus, cold-loving: rate where it grows best", 2.0, "1/h", (0.5, 5.6), GroPin, "model 1385, Zwietering et al. 1996, pasteurised milk", Secondhand }
    /// Rate of the cold type of C. botulinum at its best.
    BOTULINUM_RATE = { "Clostridium botulinum, cold type: rate where it grows best", 0.3, "1/h", (0.1, 0.9), GroPin, "model 384, Rosso et al. 1993", Secondhand }
    /// Where the cold type of C. botulinum stops, whatever the curve says.
    BOTULINUM_COLDEST = { "Clostridium botulinum, cold type: no growth below", 3.0, "°C", (3.0, 3.3), Graham1997, "abstract: growth and toxin at 3 °C in five weeks", Secondhand }
}
