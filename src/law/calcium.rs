//! Calcium chloride: its forms, its solutions, its legal limit.

use crate::numeric::monotone;

crate::constants! {
    /// Dihydrate over anhydrous.
    DIHYDRATE_RATIO = { "Calcium chloride dihydrate over anhydrous, by mass", 1.3247, "1", (1.3245, 1.3249), Textbook, "147.01 over 110.98 g/mol", FromMemory }
    /// How much flakes weigh.
    FLAKES_BULK = { "Loose calcium chloride flakes in a spoon", 0.85, "g/mL", (0.7, 1.0), Textbook, "loose flakes; weigh them where you can", FromMemory }
    /// The limit of several food laws.
    LEGAL_LIMIT = { "Calcium chloride allowed in cheese milk, anhydrous", 0.02, "%", (0.02, 0.02), Cfr21, "133.113 and sister sections; older Codex standards 200 mg/kg", Published }
}

crate::correlations! {
    /// Density of its solutions.
    SOLUTION_DENSITY = { "Density of calcium chloride solution at 20 °C", "kg/L at 0, 1, 5, 10, 20, 30 and 40 % by mass", [0.9982, 1.0065, 1.0401, 1.0835, 1.1775, 1.2816, 1.3957], "kg/L", (0.0, 40.0), "% by mass", CrcHandbook, "concentrative properties", Published }
}

/// Strengths of [`SOLUTION_DENSITY`], % by mass.
const STRENGTHS: [f64; 7] = [0.0, 1.0, 5.0, 10.0, 20.0, 30.0, 40.0];

/// Returns the density of a calcium chloride solution at 20 °C, kg/L.
///
/// # Arguments
/// * `percent`: anhydrous calcium chloride by mass, 0 to 40
///
/// # Source
/// [`SOLUTION_DENSITY`].
///
/// # Example
/// ```
/// assert!((vatsketch::law::calcium::solution_kg_l(30.0) - 1.2816).abs() < 1e-9);
/// ```
#[must_use]
pub fn solution_kg_l(percent: f64) -> f64 {
    let points: Vec<(f64, f64)> = STRENGTHS.into_iter().zip(SOLUTION_DENSITY.coefficients.iter().copied()).collect();
    monotone(&points, percent)
}

/// Returns the anhydrous calcium chloride for a dose, g.
///
/// # Arguments
/// * `milk_kg`: ≥ 0
/// * `dose_percent`: anhydrous, by mass of the milk
#[must_use]
pub fn anhydrous_g(milk_kg: f64, dose_percent: f64) -> f64 {
    10.0 * milk_kg * dose_percent
}

/// Returns the volume of solution that holds so much anhydrous calcium chloride, mL.
///
/// # Arguments
/// * `anhydrous_g`: ≥ 0
/// * `percent`: strength by mass, > 0 to 40
///
/// # Example
/// ```
/// assert!((vatsketch::law::calcium::solution_ml(2.0, 30.0) - 5.202).abs() < 0.001);
/// ```
#[must_use]
pub fn solution_ml(anhydrous_g: f64, percent: f64) -> f64 {
    anhydrous_g / (0.01 * percent) / solution_kg_l(percent)
}
