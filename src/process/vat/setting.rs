//! The setting: from rennet to the test that finds a clean break.

use super::VatError;
use crate::design::VatDesign;
use crate::process::MilkOutcome;

/// How long the milk takes to set.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Setting {
    /// Minutes from rennet to the first clotting.
    pub(super) clotting_min: f64,
    /// Minutes from rennet to a clean break.
    pub(super) clean_break_min: f64,
    /// Minutes from rennet to the test that finds it.
    pub(super) cut_min: f64,
    /// How many tests that takes.
    pub(super) tests: u32,
}

/// Returns how long the milk takes to set at a steady temperature.
pub(super) fn setting(_design: &VatDesign, _milk: &MilkOutcome, _setting_temperature_c: f64) -> Result<Setting, VatError> {
    Ok(Setting::default())
}
