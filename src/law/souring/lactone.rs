//! Glucono-delta-lactone: stirred in sweet, it splits into gluconic acid within hours and sours milk evenly.

use crate::law::moist_air::{GAS_CONSTANT, kelvin};

crate::constants! {
    /// Molar mass of glucono-delta-lactone.
    LACTONE_MOLAR_MASS = { "Molar mass of glucono-delta-lactone", 0.178_14, "kg/mol", (0.1781, 0.1782), Textbook, "sum of atomic masses", FromMemory }
    /// How fast it splits.
    LACTONE_RATE = { "Rate at which glucono-delta-lactone splits at 30 °C", 0.80, "1/h", (0.4, 1.6), Textbook, "first order, in milk; half or twice as fast is our guess of its spread", FromMemory }
    /// How that goes with temperature.
    LACTONE_ENERGY = { "Activation energy of souring by glucono-delta-lactone", 71_000.0, "J/mol", (60_000.0, 82_000.0), Niki2000, "17 kcal/mol, for the gelling of milk", Secondhand }
}

/// The temperature at which [`LACTONE_RATE`] holds, °C.
const REFERENCE_C: f64 = 30.0;

/// Returns the rate at which the lactone splits, 1/h: k exp(−E/R (1/T − 1/T₀)).
///
/// # Example
/// ```
/// assert!((vatsketch::law::souring::lactone_rate_per_h(30.0) - 0.80).abs() < 1e-12);
/// ```
#[must_use]
pub fn lactone_rate_per_h(temperature_c: f64) -> f64 {
    let inverse = 1.0 / kelvin(temperature_c) - 1.0 / kelvin(REFERENCE_C);
    LACTONE_RATE.value * (-LACTONE_ENERGY.value / GAS_CONSTANT.value * inverse).exp()
}

/// Returns the share of the lactone that has split after some hours at one temperature, 0 to 1.
#[must_use]
pub fn lactone_split_share(temperature_c: f64, hours: f64) -> f64 {
    -(-lactone_rate_per_h(temperature_c) * hours.max(0.0)).exp_m1()
}

/// Returns the gluconic acid of so much lactone when all of it has split, mol/kg.
///
/// # Arguments
/// * `g_per_kg`: g of glucono-delta-lactone in each kg of milk
///
/// # Example
/// ```
/// use vatsketch::law::souring::{Acid, AcidAmounts, Sourable, gluconic_mol_kg, lactone_split_share};
/// let milk = Sourable::new(0.0325, 0.880, 6.65, 1.0);
/// let gluconic = gluconic_mol_kg(13.0) * lactone_split_share(30.0, 2.0);
/// assert!((milk.ph_of(&AcidAmounts::of(Acid::Gluconic, gluconic)) - 4.760).abs() < 1e-3);
/// ```
#[must_use]
pub fn gluconic_mol_kg(g_per_kg: f64) -> f64 {
    0.001 * g_per_kg / LACTONE_MOLAR_MASS.value
}
