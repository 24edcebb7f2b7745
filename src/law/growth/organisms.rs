//! The least temperature, pH and water activity at which germs that matter in cheese were seen to grow.

use crate::source::Correlation;

/// The order of the three minima in each record.
const FORM: &str = "least temperature °C, least pH, least water activity; each with all else as the germ likes it";

crate::correlations! {
    /// The spore former of canned food.
    BOTULINUM = { "Clostridium botulinum, proteolytic, grows from", FORM, [10.0, 4.7, 0.93], "°C, pH, 1", (0.0, 45.0), "°C", BadBugBook, "growth factors, types A and B", Published }
    /// The spore former that grows in the cold.
    COLD_BOTULINUM = { "Clostridium botulinum, non-proteolytic, grows from", FORM, [3.3, 5.0, 0.965], "°C, pH, 1", (0.0, 45.0), "°C", BadBugBook, "growth factors, type E; the table leaves its pH out, 5.0 is the hazard guide's, from memory", Secondhand }
    /// The toxin former of hands and udders.
    STAPHYLOCOCCUS = { "Staphylococcus aureus grows from", FORM, [7.0, 4.0, 0.83], "°C, pH, 1", (0.0, 45.0), "°C", BadBugBook, "growth factors with the pathogen modelling program; another edition has pH 4.2 and 0.86", Published }
    /// The germ that cold does not stop.
    LISTERIA = { "Listeria monocytogenes grows from", FORM, [-0.4, 4.39, 0.92], "°C, pH, 1", (0.0, 45.0), "°C", BadBugBook, "growth factors with the pathogen modelling program", Published }
    /// A germ of raw milk, eggs and spice.
    SALMONELLA = { "Salmonella grows from", FORM, [5.2, 3.8, 0.94], "°C, pH, 1", (0.0, 45.0), "°C", BadBugBook, "growth factors with the pathogen modelling program", Published }
    /// The kinds of it that make ill.
    COLI = { "Escherichia coli, pathogenic, grows from", FORM, [7.0, 4.4, 0.95], "°C, pH, 1", (0.0, 45.0), "°C", BadBugBook, "growth factors with the pathogen modelling program", Published }
    /// A spore former of spice and milk.
    CEREUS = { "Bacillus cereus grows from", FORM, [4.0, 4.9, 0.93], "°C, pH, 1", (0.0, 45.0), "°C", BadBugBook, "growth factors with the pathogen modelling program", Published }
    /// A spore former of meat and soil.
    PERFRINGENS = { "Clostridium perfringens grows from", FORM, [10.0, 5.5, 0.93], "°C, pH, 1", (0.0, 45.0), "°C", BadBugBook, "growth factors with the pathogen modelling program", Published }
}

/// A germ and what it needs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Organism {
    /// Its name.
    pub name: &'static str,
    /// The record of its minima.
    pub minima: Correlation<3>,
}

const ORGANISMS: [Organism; 8] = [
    Organism { name: "Clostridium botulinum, proteolytic", minima: BOTULINUM },
    Organism { name: "Clostridium botulinum, non-proteolytic", minima: COLD_BOTULINUM },
    Organism { name: "Staphylococcus aureus", minima: STAPHYLOCOCCUS },
    Organism { name: "Listeria monocytogenes", minima: LISTERIA },
    Organism { name: "Salmonella", minima: SALMONELLA },
    Organism { name: "Escherichia coli, pathogenic", minima: COLI },
    Organism { name: "Bacillus cereus", minima: CEREUS },
    Organism { name: "Clostridium perfringens", minima: PERFRINGENS },
];

impl Organism {
    /// Returns whether any of the three conditions is below its minimum; a figure that is no number holds nothing back.
    fn is_held_back(&self, temperature_c: f64, ph: f64, water_activity: f64) -> bool {
        let figures = [temperature_c, ph, water_activity];
        self.minima.coefficients.iter().zip(figures).any(|(least, figure)| figure < *least)
    }
}

/// Returns the germs that no published minimum holds back, in the order of the table.
///
/// A germ is held back if temperature, pH or water activity is below its minimum. The minima hold one at a time, with all else as
/// the germ likes it, so a germ that is named may grow slowly or not at all; one that is not named may still survive, and its toxin stays.
/// There are no upper limits here: it is for food that is kept, not cooked.
///
/// # Arguments
/// * `temperature_c`: of the food, °C
/// * `ph`: the highest in it
/// * `water_activity`: the highest in it, 0 to 1
///
/// # Source
/// [`crate::source::SourceId::BadBugBook`].
///
/// # Example
/// ```
/// use vatsketch::law::growth::growers;
/// let names: Vec<_> = growers(3.0, 6.4, 0.97).iter().map(|germ| germ.name).collect();
/// assert_eq!(names, ["Listeria monocytogenes"]);
/// ```
#[must_use]
pub fn growers(temperature_c: f64, ph: f64, water_activity: f64) -> Vec<Organism> {
    ORGANISMS.into_iter().filter(|germ| !germ.is_held_back(temperature_c, ph, water_activity)).collect()
}
