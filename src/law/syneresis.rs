//! Whey that leaves the curd, in the vat and in the moulds.

use super::moist_air::{GAS_CONSTANT, kelvin};

crate::constants! {
    /// Time constant of the drip in the moulds.
    MOULD_TIME = { "Time constant of the drip in the moulds", 3.0, "h", (1.5, 4.0), Ourselves, "small moulds in a kitchen", Judged }
    /// Temperature at which that time constant holds.
    MOULD_TEMPERATURE = { "Temperature of the drip's time constant", 21.0, "°C", (18.0, 24.0), Ourselves, "an ordinary kitchen", Judged }
    /// Time constant of whey leaving cut curd in the vat.
    VAT_TIME = { "Time constant of the whey in the vat", 1.2, "h", (0.5, 2.0), Ourselves, "cut curd lying still in its whey", Judged }
    /// Temperature at which that time constant holds.
    VAT_TEMPERATURE = { "Temperature of the vat's time constant", 36.0, "°C", (34.0, 38.0), Ourselves, "warm curd", Judged }
    /// Most of the whey that can leave in the vat.
    VAT_SHARE = { "Most of all the whey that can leave in the vat", 0.60, "1", (0.4, 0.7), DejmekWalstra, "a still gel loses up to two thirds of its volume; the share is judged", Judged }
    /// Activation energy of syneresis.
    ACTIVATION = { "Activation energy of syneresis", 100.0e3, "J/mol", (80.0e3, 120.0e3), Huber2001, "abstract, between 20 and 50 °C", Secondhand }
    /// Share of the moulds' whey at which the drip counts as stopped.
    STILL_TO_COME = { "Share of the whey still to come when the drip counts as stopped", 0.02, "1", (0.01, 0.05), Ourselves, "less than anyone sees drip", Judged }
}

/// A first-order drip: what is left of the whey after a time t is e^(−t/τ).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drip {
    /// The time constant τ, h.
    pub time_h: f64,
}

impl Drip {
    /// Returns the drip from curd in its moulds.
    ///
    /// τ = τ₀ exp(E/R (1/T − 1/T₀)). The activation energy was measured between 20 and 50 °C; outside, the same law is continued:
    /// nobody has measured it, but colder curd certainly drips more slowly.
    ///
    /// # Arguments
    /// * `temperature_c`: of the curd, 0 to 50 °C
    ///
    /// # Source
    /// [`MOULD_TIME`], [`MOULD_TEMPERATURE`] and [`ACTIVATION`].
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::syneresis::Drip;
    /// let room = Drip::in_moulds(21.0);
    /// assert!((room.share_after(2.0) - 0.49).abs() < 0.005);
    /// assert!(Drip::in_moulds(10.0).share_after(2.0) < 0.15);
    /// ```
    #[must_use]
    pub fn in_moulds(temperature_c: f64) -> Self {
        Self { time_h: slowed(MOULD_TIME.value, MOULD_TEMPERATURE.value, temperature_c) }
    }

    /// Returns how whey leaves cut curd that lies still in the vat, with the temperature as in [`Drip::in_moulds`].
    ///
    /// # Source
    /// [`VAT_TIME`], [`VAT_TEMPERATURE`] and [`ACTIVATION`].
    #[must_use]
    pub fn in_vat(temperature_c: f64) -> Self {
        Self { time_h: slowed(VAT_TIME.value, VAT_TEMPERATURE.value, temperature_c) }
    }

    /// Returns the share of the whey that has left after some hours: 1 − e^(−t/τ).
    #[must_use]
    pub fn share_after(&self, hours: f64) -> f64 {
        -(-hours / self.time_h).exp_m1()
    }

    /// Returns the share of the whey that leaves in an hour, at this moment: e^(−t/τ)/τ.
    #[must_use]
    pub fn share_an_hour(&self, hours: f64) -> f64 {
        (-hours / self.time_h).exp() / self.time_h
    }

    /// Returns the hours until the drip counts as stopped, with [`STILL_TO_COME`] of it left.
    #[must_use]
    pub fn stops_h(&self) -> f64 {
        -self.time_h * STILL_TO_COME.value.ln()
    }
}

/// Returns the share of all the whey that leaves in the vat while the cut curd rests there.
///
/// # Arguments
/// * `temperature_c`: of the curd, 20 to 50 °C
/// * `hours`: of rest, ≥ 0
///
/// # Source
/// [`VAT_SHARE`] and [`Drip::in_vat`].
#[must_use]
pub fn share_left_in_vat(temperature_c: f64, hours: f64) -> f64 {
    VAT_SHARE.value * Drip::in_vat(temperature_c).share_after(hours)
}

fn slowed(time_h: f64, at_c: f64, temperature_c: f64) -> f64 {
    let (cold, warm) = (1.0 / kelvin(temperature_c), 1.0 / kelvin(at_c));
    time_h * (ACTIVATION.value / GAS_CONSTANT.value * (cold - warm)).exp()
}
