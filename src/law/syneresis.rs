//! How whey leaves curd: first order in the whey that is still to come.

use super::moist_air::{GAS_CONSTANT, kelvin};

crate::constants! {
    /// Time constant in the moulds.
    MOULD_TIME = { "Time constant of the drip in the moulds", 3.0, "h", (1.5, 4.0), MarshallCastillo, "first order is published; the time constant in basket moulds at room temperature is ours", Judged }
    /// Temperature of that.
    MOULD_TEMPERATURE = { "Temperature of the time constant in the moulds", 21.0, "°C", (18.0, 24.0), Ourselves, "a room", Judged }
    /// Time constant in the vat.
    VAT_TIME = { "Time constant of the whey in the vat", 1.36, "h", (0.68, 2.83), MarshallCastillo, "first order is published; the time constant of curd lying still is ours", Judged }
    /// Temperature of that.
    VAT_TEMPERATURE = { "Temperature of the time constant in the vat", 35.0, "°C", (33.0, 37.0), Ourselves, "a warm vat", Judged }
    /// Most that leaves in the vat.
    VAT_SHARE = { "Share of all the whey that curd lying still gives up at most", 0.60, "1", (0.4, 0.67), DejmekWalstra, "a still gel loses up to two thirds of its volume; the share is ours", Judged }
    /// Size of the pieces of that.
    PIECE_SIZE = { "Size of the curd pieces of the time constant in the vat", 25.0, "mm", (20.0, 30.0), CommonPractice, "no source; columns as they are cut for small moulds", FromMemory }
    /// How the time constant grows with the size of the pieces.
    PIECE_POWER = { "Power of the size of the pieces with which the time constant in the vat grows", 1.0, "1", (0.5, 2.0), VanDijk1984, "whey flows through the gel by Darcy's law: 2 for pieces that lie free, whose way and whey both grow with their size; in a still vat they touch and join, so the power is ours, as their surface falls", Judged }
    /// Activation energy.
    SYNERESIS_ENERGY = { "Activation energy of the drip", 100_000.0, "J/mol", (80_000.0, 120_000.0), MarshallCastillo, "Huber 2001 as quoted, 20 to 50 °C; carried on below 20 °C, where it is weak", Secondhand }
    /// When the drip counts as stopped.
    DRIP_STOPPED = { "Share of the moulds' whey still to come when the drip has stopped", 0.02, "1", (0.01, 0.05), Ourselves, "a few drops an hour", Judged }
}

/// The drip of one curd. Its default is that of the records.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drip {
    /// Time constant in the moulds at [`MOULD_TEMPERATURE`], h.
    pub mould_time_h: f64,
    /// Time constant in the vat at [`VAT_TEMPERATURE`], h.
    pub vat_time_h: f64,
    /// Activation energy, J/mol.
    pub energy_j_mol: f64,
}

impl Default for Drip {
    fn default() -> Self {
        Self { mould_time_h: MOULD_TIME.value, vat_time_h: VAT_TIME.value, energy_j_mol: SYNERESIS_ENERGY.value }
    }
}

impl Drip {
    /// Returns the time constant in the moulds, h; see [`mould_time_h`].
    #[must_use]
    pub fn in_moulds_h(&self, temperature_c: f64) -> f64 {
        self.at_temperature_h(self.mould_time_h, MOULD_TEMPERATURE.value, temperature_c)
    }

    /// Returns the time constant in the vat, h; see [`vat_time_h`].
    #[must_use]
    pub fn in_vat_h(&self, temperature_c: f64, piece_mm: f64) -> f64 {
        let slower = (piece_mm / PIECE_SIZE.value).powf(PIECE_POWER.value);
        slower * self.at_temperature_h(self.vat_time_h, VAT_TEMPERATURE.value, temperature_c)
    }

    /// Returns a time constant at another temperature, h: τ exp(E/R (1/T − 1/T₀)).
    fn at_temperature_h(&self, time_h: f64, reference_c: f64, temperature_c: f64) -> f64 {
        let inverse = 1.0 / kelvin(temperature_c) - 1.0 / kelvin(reference_c);
        time_h * (self.energy_j_mol / GAS_CONSTANT.value * inverse).exp()
    }
}

/// Returns the time constant of the drip in the moulds, h.
///
/// # Arguments
/// * `temperature_c`: 20 to 50 °C; below 20 °C the same activation energy is carried on, which no source backs
///
/// # Example
/// ```
/// assert!((vatsketch::law::syneresis::mould_time_h(21.0) - 3.0).abs() < 1e-12);
/// ```
#[must_use]
pub fn mould_time_h(temperature_c: f64) -> f64 {
    Drip::default().in_moulds_h(temperature_c)
}

/// Returns the time constant of the whey in the vat, h: τ (d/d₀)ⁿ for pieces of another size than [`PIECE_SIZE`], with n from [`PIECE_POWER`].
///
/// # Arguments
/// * `temperature_c`: as for [`mould_time_h`]
/// * `piece_mm`: how far apart the curd was cut, 8 to 60 mm
///
/// # Example
/// ```
/// use vatsketch::law::syneresis::vat_time_h;
/// // Our own judgement: pieces half as large lose their whey twice as fast.
/// assert!((vat_time_h(35.0, 12.5) / vat_time_h(35.0, 25.0) - 0.5).abs() < 1e-12);
/// ```
#[must_use]
pub fn vat_time_h(temperature_c: f64, piece_mm: f64) -> f64 {
    Drip::default().in_vat_h(temperature_c, piece_mm)
}

/// Returns the share of the whey that has left by a time: 1 − e^(−t/τ).
///
/// # Example
/// ```
/// let share = vatsketch::law::syneresis::left_share(2.0, 3.0);
/// assert!((share - 0.49).abs() < 0.005);
/// ```
#[must_use]
pub fn left_share(at_h: f64, time_h: f64) -> f64 {
    -(-at_h / time_h).exp_m1()
}
