//! The setting: from rennet to the test that finds a clean break.

use super::VatError;
use crate::design::VatDesign;
use crate::law::rennet::{Clotting, clotting_min};
use crate::process::MilkOutcome;

/// Minutes between two tests for a clean break; common practice, no source.
const TEST_GAP_MIN: f64 = 15.0;

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
///
/// # Errors
/// [`VatError::NoClot`] below 18 °C, above 55 °C, and without rennet.
pub(super) fn setting(design: &VatDesign, milk: &MilkOutcome, setting_temperature_c: f64) -> Result<Setting, VatError> {
    let clotting_min = clotting_min(Clotting {
        dose_imcu_kg: milk.rennet_imcu_kg,
        temperature_c: setting_temperature_c,
        ph: milk.milk_ph,
        calcium_percent: milk.calcium_percent,
    })?;
    let clean_break_min = clotting_min * design.firmness_multiple;
    let further_tests = ((clean_break_min - design.first_test_min) / TEST_GAP_MIN).ceil().max(0.0);
    Ok(Setting {
        clotting_min,
        clean_break_min,
        cut_min: design.first_test_min + TEST_GAP_MIN * further_tests,
        tests: 1 + further_tests as u32,
    })
}
