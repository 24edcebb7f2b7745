//! Acetic acid: how strong a vinegar is, how far its acid splits, how fast it moves.

use super::moist_air::kelvin;
use crate::numeric::{monotone, quick_exp};
use std::f64::consts::LN_10;

crate::constants! {
    /// Molar mass of acetic acid.
    ACETIC_MOLAR_MASS = { "Molar mass of acetic acid", 0.060_052, "kg/mol", (0.0600, 0.0601), Textbook, "sum of atomic masses", FromMemory }
    /// pK of acetic acid in brined cheese.
    CONDITIONAL_PK = { "pK of acetic acid among the salts of a cheese", 4.65, "1", (4.56, 4.76), HarnedEhlers1933, "4.756 lowered by the activity of ions at 0.1 to 0.5 mol/L (Davies' equation)", Fitted }
    /// Diffusivity of acetic acid in water.
    ACETIC_DIFFUSIVITY = { "Diffusivity of acetic acid in water at 25 °C", 1.21e-9, "m²/s", (1.1e-9, 1.3e-9), CrcHandbook, "diffusion in dilute aqueous solution", FromMemory }
    /// Diffusivity of acetate over that of the acid.
    ACETATE_MOBILITY = { "Diffusivity of acetate over that of acetic acid", 0.9, "1", (0.1, 1.0), CrcHandbook, "1.089e-9 over 1.21e-9 m²/s in water; in a cheese other ions may hold it back", FromMemory }
    /// Least strength of what is sold as vinegar.
    LEAST_VINEGAR = { "Least acetic acid of what is sold as vinegar", 4.0, "g/100 mL", (4.0, 4.0), VinegarGuide, "each definition of a vinegar; at 20 °C", Published }
    /// The vinegar that recipes speak of.
    USUAL_VINEGAR = { "Acetic acid of usual vinegar", 5.0, "g/100 mL", (4.0, 6.0), CommonPractice, "the label of most table vinegar", FromMemory }
    /// Least vinegar for a cheese.
    LEAST_ML_PER_G = { "Vinegar of 5 g/100 mL for each gram of dried cheese below which it may never sour", 2.0, "mL/g", (1.5, 3.0), Ourselves, "equilibrium of acid and buffers: pH 4.17, or 4.33 and 4.46 if the cheese holds 1.4 and 1.8 times as much; 1 mL/g leaves 4.5 to 4.8", Fitted }
    /// How much slower acid moves in the water of a cheese.
    ACID_OBSTRUCTION = { "Diffusivity in cheese over (share of water by volume × diffusivity in water)", 0.33, "1", (0.165, 0.66), Floury2010, "no value for acetic acid in cheese was found; salt in 17 cheeses of table II has 0.40, and this is to the cautious side", Judged }
    /// Transfer through the still film at the cheese.
    FILM_TRANSFER = { "Transfer of acid through the film at the cheese", 2.0e-6, "m/s", (2.0e-7, 1.0e-5), Ourselves, "a jar moved now and then; a still one has about a tenth, which delays the centre by a twentieth", Judged }
}

crate::correlations! {
    /// Viscosity of water.
    WATER_VISCOSITY = { "Viscosity of water", "a · 10^(b/(T − c)), T in kelvin", [2.414e-5, 247.8, 140.0], "Pa·s", (0.0, 100.0), "°C", Textbook, "Vogel's form", FromMemory }
    /// Density of acetic acid in water.
    VINEGAR_DENSITY = { "Density of acetic acid in water at 20 °C", "pairs of % by mass and g/mL", [0.0, 0.9982, 1.0, 0.9996, 5.0, 1.0052, 10.0, 1.0121], "g/mL", (0.0, 10.0), "% by mass", CrcHandbook, "concentrative properties of aqueous solutions; the row at zero is water", Published }
}

/// Returns the share of the acid that is split: a = 1/(1 + 10^(pK − pH)).
#[must_use]
pub fn split_share(ph: f64, pk: f64) -> f64 {
    1.0 / (1.0 + quick_exp(LN_10 * (pk - ph)))
}

/// Returns the strength of a vinegar in mol/m³ from g of acetic acid in 100 mL.
///
/// # Example
/// ```
/// assert!((vatsketch::law::acidity::acid_mol_m3(5.0) - 832.6).abs() < 0.1);
/// ```
#[must_use]
pub fn acid_mol_m3(g_per_100ml: f64) -> f64 {
    10.0 * g_per_100ml / ACETIC_MOLAR_MASS.value
}

/// Returns the strength in g of acetic acid in 100 mL from mol/m³.
#[must_use]
pub fn acid_g_per_100ml(mol_m3: f64) -> f64 {
    0.1 * mol_m3 * ACETIC_MOLAR_MASS.value
}

/// Returns the density of a vinegar, g/mL, from its strength in % by mass; beyond the table its end.
#[must_use]
pub fn vinegar_density_g_ml(mass_percent: f64) -> f64 {
    let pairs: Vec<(f64, f64)> = VINEGAR_DENSITY
        .coefficients
        .chunks_exact(2)
        .filter_map(|pair| if let [percent, density] = pair { Some((*percent, *density)) } else { None })
        .collect();
    monotone(&pairs, mass_percent)
}

/// Returns the strength of a vinegar in % by mass from g in 100 mL: p ρ(p) = g.
///
/// # Arguments
/// * `g_per_100ml`: 0 to 10
///
/// # Example
/// ```
/// assert!((vatsketch::law::acidity::vinegar_mass_percent(5.0) - 4.974).abs() < 0.001);
/// ```
#[must_use]
pub fn vinegar_mass_percent(g_per_100ml: f64) -> f64 {
    // The density changes by a thousandth for each per cent, so each round gains three digits.
    (0..8).fold(g_per_100ml, |percent, _| g_per_100ml / vinegar_density_g_ml(percent))
}

/// Returns the diffusivity of acetic acid in water, m²/s: that at 25 °C times T/μ over the same at 25 °C (Stokes and Einstein).
///
/// # Arguments
/// * `temperature_c`: 0 to 100 °C
///
/// # Source
/// [`ACETIC_DIFFUSIVITY`], [`WATER_VISCOSITY`].
///
/// # Example
/// ```
/// assert!((vatsketch::law::acidity::acid_diffusivity_m2_s(21.0) / 1.087e-9 - 1.0).abs() < 0.001);
/// ```
#[must_use]
pub fn acid_diffusivity_m2_s(temperature_c: f64) -> f64 {
    let (at, reference) = (kelvin(temperature_c), kelvin(25.0));
    ACETIC_DIFFUSIVITY.value * at / reference * water_viscosity_pa_s(25.0) / water_viscosity_pa_s(temperature_c)
}

/// Returns the viscosity of water, Pa·s.
///
/// # Source
/// [`WATER_VISCOSITY`].
#[must_use]
pub fn water_viscosity_pa_s(temperature_c: f64) -> f64 {
    let [a, b, c] = WATER_VISCOSITY.coefficients;
    a * 10.0_f64.powf(b / (kelvin(temperature_c) - c))
}
