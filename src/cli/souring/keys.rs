//! What `vatsketch stage souring` can be told: a row for each number, and the names of what is chosen.

use crate::design::{DesignError, did_you_mean, nearest};
use crate::law::souring::{Acid, Culture};

/// One number that may be set.
#[derive(Clone, Copy)]
pub(in crate::cli) struct NumberKey {
    /// The name before the `=`.
    pub key: &'static str,
    /// What it is, in words.
    pub label: &'static str,
    /// The unit.
    pub unit: &'static str,
    /// Least allowed.
    pub least: f64,
    /// Greatest allowed.
    pub most: f64,
    /// The value where nothing is said; none where it is that of the matter, or nothing.
    pub default: Option<f64>,
}

const fn number(
    key: &'static str,
    label: &'static str,
    unit: &'static str,
    (least, most): (f64, f64),
    default: Option<f64>,
) -> NumberKey {
    NumberKey { key, label, unit, least, most, default }
}

/// Most grams of an acid in each kg.
const MOST_G: (f64, f64) = (0.0, 100.0);
/// Most mol of an acid in each kg.
const MOST_MOL: (f64, f64) = (0.0, 1.0);

/// Every number that may be set.
pub(in crate::cli) const NUMBERS: [NumberKey; 19] = [
    number("cells_per_g", "Cells of the culture in each g", "1/g", (0.0, 1e10), Some(1e7)),
    number("temperature_c", "Temperature", "°C", (0.0, 60.0), Some(21.0)),
    number("hours", "Hours of souring", "h", (0.0, 500.0), Some(24.0)),
    number("protein_percent", "Protein, by mass", "%", (0.0, 40.0), None),
    number("water_percent", "Water, by mass", "%", (10.0, 100.0), None),
    number("start_ph", "pH before any acid", "", (4.5, 7.5), None),
    number("lactose_percent", "Lactose, by mass", "%", (0.0, 10.0), None),
    number("buffer_scale", "Buffer, likely 0.65 to 1.2", "times", (0.0, 3.0), Some(1.0)),
    number("lactic_g_per_kg", "Lactic acid at the start", "g/kg", MOST_G, None),
    number("lactic_mol_per_kg", "Lactic acid at the start", "mol/kg", MOST_MOL, None),
    number("acetic_g_per_kg", "Acetic acid at the start", "g/kg", MOST_G, None),
    number("acetic_mol_per_kg", "Acetic acid at the start", "mol/kg", MOST_MOL, None),
    number("citric_g_per_kg", "Citric acid at the start, anhydrous", "g/kg", MOST_G, None),
    number("citric_mol_per_kg", "Citric acid at the start", "mol/kg", MOST_MOL, None),
    number("gluconic_mol_per_kg", "Gluconic acid at the start", "mol/kg", MOST_MOL, None),
    number("gdl_g_per_kg", "Glucono-delta-lactone at the start, not yet split", "g/kg", MOST_G, None),
    number("gdl_mol_per_kg", "Glucono-delta-lactone at the start, not yet split", "mol/kg", MOST_MOL, None),
    number("wanted_ph", "pH that an acid is to bring it to", "", (3.0, 7.0), None),
    number("lactic_per_lactose", "Lactic acid from one lactose; 2 where the galactose is left", "", (2.0, 4.0), Some(4.0)),
];

/// What may be soured.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) enum Matter {
    #[default]
    Milk,
    Curd,
}

/// Protein, water, pH and lactose of a matter, in the units of their keys.
pub(super) const fn usual(matter: Matter) -> [f64; 4] {
    match matter {
        Matter::Milk => [3.25, 88.0, 6.65, 4.6],
        Matter::Curd => [16.0, 60.0, 6.5, 3.0],
    }
}

/// The names of what is chosen.
pub(super) const MATTERS: [(&str, Matter); 2] = [("milk", Matter::Milk), ("curd", Matter::Curd)];
/// The names of the cultures; none is no culture.
pub(super) const CULTURES: [(&str, Option<Culture>); 4] = [
    ("none", None),
    ("mesophilic", Some(Culture::Mesophilic)),
    ("mixed", Some(Culture::Mixed)),
    ("thermophilic", Some(Culture::Thermophilic)),
];
/// The names of the acids that a pH may be wanted of.
pub(super) const ACIDS: [(&str, Acid); 3] = [("lactic", Acid::Lactic), ("acetic", Acid::Acetic), ("citric", Acid::Citric)];

/// Everything that is chosen by name: key, what it is, the names and the one where nothing is said.
pub(in crate::cli) fn choices() -> [(&'static str, &'static str, Vec<&'static str>, &'static str); 3] {
    [
        ("matter", "What is soured", MATTERS.map(|(name, _)| name).to_vec(), "milk"),
        ("culture", "Culture", CULTURES.map(|(name, _)| name).to_vec(), "none"),
        ("acid", "Acid for the wanted pH", ACIDS.map(|(name, _)| name).to_vec(), "lactic"),
    ]
}

/// Reads a number by its row.
pub(super) fn read_number(row: &NumberKey, text: &str) -> Result<f64, DesignError> {
    let NumberKey { key, label, unit, least, most, .. } = *row;
    let given: Option<f64> = text.trim().replace(',', ".").parse().ok().filter(|number: &f64| number.is_finite());
    match given {
        None => Err(DesignError::NotANumber { label, key, given: text.to_owned(), least, most, unit }),
        Some(given) if given < least || given > most => Err(DesignError::OutOfRange { label, key, given, least, most, unit }),
        Some(given) => Ok(given),
    }
}

/// Reads a name of a list.
pub(super) fn read_choice<T: Copy>(
    key: &'static str,
    label: &'static str,
    known: &[(&'static str, T)],
    text: &str,
) -> Result<T, DesignError> {
    let text = text.trim();
    let names = || known.iter().map(|(name, _)| *name);
    known.iter().find(|(name, _)| *name == text).map(|(_, of)| *of).ok_or_else(|| DesignError::NotAChoice {
        label,
        key,
        given: text.to_owned(),
        options: names().collect::<Vec<_>>().join(", "),
        nearest: nearest(text, names()),
    })
}

/// Says that no key of souring has this name, which have, and which was perhaps meant.
pub(super) fn unknown(key: &str) -> String {
    let of_choices = choices().map(|(key, ..)| key);
    let all: Vec<&str> = of_choices.into_iter().chain(NUMBERS.iter().map(|row| row.key)).chain(["report_h"]).collect();
    let meant = did_you_mean(nearest(key, all.iter().copied()));
    format!("`vatsketch stage souring` does not read `{key}`; it reads {}{meant}", all.join(", "))
}
