//! Calcium chloride: its forms, its solution, and how much of it.

use super::Matter;
use crate::numeric::monotone;

crate::correlations! {
    /// Density of calcium chloride solution.
    SOLUTION_DENSITY = { "Density of calcium chloride solution at 20 °C", "at 1, 5, 10, 20, 30 and 40 % of anhydrous salt", [1.0065, 1.0401, 1.0835, 1.1775, 1.2816, 1.3957], "kg/L", (1.0, 40.0), "%", CrcHandbook, "concentrative properties of aqueous solutions", Published }
}

crate::constants! {
    /// Mass of the dihydrate to that of its anhydrous salt.
    DIHYDRATE_RATIO = { "Calcium chloride dihydrate to anhydrous salt, by mass", 1.3247, "1", (1.3246, 1.3248), Textbook, "molar masses", Fitted }
    /// Most calcium chloride that some food laws allow.
    LEGAL_LIMIT = { "Most anhydrous calcium chloride in cheese milk", 0.02, "%", (0.02, 0.02), Cfr21, "133.113 and its sisters; Codex had 200 mg/kg", Published }
    /// Usual dose.
    USUAL_DOSE = { "Usual dose of anhydrous calcium chloride", 0.015, "%", (0.01, 0.02), CommonPractice, "common practice, no source", Judged }
}

/// The strengths of [`SOLUTION_DENSITY`], % of anhydrous salt by mass.
const STRENGTHS_PERCENT: [f64; 6] = [1.0, 5.0, 10.0, 20.0, 30.0, 40.0];

/// Which calcium chloride.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Form {
    /// Without water of crystallisation.
    Anhydrous,
    /// With two waters of crystallisation.
    Dihydrate,
    /// Dissolved.
    Solution {
        /// Anhydrous salt, % by mass.
        strength_percent: f64,
    },
}

/// An amount of calcium chloride in one of its forms.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Portion {
    /// What to weigh, g.
    pub weigh_g: f64,
    /// What to measure of a solution, mL at 20 °C; 0 for the solid forms.
    pub measure_ml: f64,
    /// Salt as ash, and the water that comes with it.
    pub matter: Matter,
}

/// Returns what to weigh or to measure of a form, for an amount of anhydrous calcium chloride.
///
/// # Arguments
/// * `anhydrous_g`: ≥ 0
/// * `form`: which calcium chloride; a solution of 1 to 40 %
///
/// # Source
/// [`DIHYDRATE_RATIO`] and [`SOLUTION_DENSITY`].
///
/// # Example
/// ```
/// use vatsketch::law::calcium::{portion, Form};
/// assert!((portion(2.0, Form::Dihydrate).weigh_g - 2.649).abs() < 0.0005);
/// assert!((portion(2.0, Form::Solution { strength_percent: 30.0 }).measure_ml - 5.202).abs() < 0.0005);
/// ```
#[must_use]
pub fn portion(anhydrous_g: f64, form: Form) -> Portion {
    let (weigh_g, density_kg_l) = match form {
        Form::Anhydrous => (anhydrous_g, None),
        Form::Dihydrate => (anhydrous_g * DIHYDRATE_RATIO.value, None),
        Form::Solution { strength_percent } => (100.0 * anhydrous_g / strength_percent, Some(solution_kg_l(strength_percent))),
    };
    Portion {
        weigh_g,
        measure_ml: density_kg_l.map_or(0.0, |density| weigh_g / density),
        matter: Matter { ash_kg: anhydrous_g / 1000.0, water_kg: (weigh_g - anhydrous_g) / 1000.0, ..Matter::default() },
    }
}

/// Returns the density of calcium chloride solution at 20 °C, kg/L, on a monotone curve through the table.
///
/// # Arguments
/// * `strength_percent`: anhydrous salt, 1 to 40 % by mass
///
/// # Source
/// [`SOLUTION_DENSITY`].
#[must_use]
pub fn solution_kg_l(strength_percent: f64) -> f64 {
    monotone(&STRENGTHS_PERCENT, SOLUTION_DENSITY.coefficients, strength_percent)
}
