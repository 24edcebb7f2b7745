//! Setting: clotting, and the test that finds a clean break.

use super::error::VatError;
use crate::design::VatDesign;
use crate::law::rennet::{CLOTTING_COLDEST, CLOTTING_HOTTEST, TEST_AGAIN, clotting_min};
use crate::law::souring::CLOTTING_PH_LEAST;
use crate::process::{MilkOutcome, UncertainParameters};

/// When the milk clots and when it is cut, in minutes from the rennet.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Setting {
    /// The first clotting.
    pub clotting_min: f64,
    /// A clean break.
    pub clean_break_min: f64,
    /// The test that finds it.
    pub cut_min: f64,
    /// How many tests that takes.
    pub tests: u32,
}

/// Returns when milk at this temperature sets, and when the tests find it.
///
/// Soured milk clots sooner, down to pH 6.0 ([`CLOTTING_PH_LEAST`]). The break is clean after a multiple of the clotting time; tests begin at the chosen minute and are repeated every quarter of an hour.
///
/// # Arguments
/// * `(temperature_c, ph)`: of the milk while it sets
///
/// # Errors
/// [`VatError::DoesNotSet`] below 18 °C and above 55 °C.
pub fn setting(
    design: &VatDesign,
    milk: &MilkOutcome,
    (temperature_c, ph): (f64, f64),
    parameters: &UncertainParameters,
) -> Result<Setting, VatError> {
    let (coldest_c, hottest_c) = (CLOTTING_COLDEST.value, CLOTTING_HOTTEST.value);
    let sets = coldest_c <= temperature_c && temperature_c <= hottest_c;
    if !sets {
        return Err(VatError::DoesNotSet { temperature_c, coldest_c, hottest_c });
    }
    // Time times dose is constant: milk that clots slower is as milk with less rennet.
    let dose_imcu_kg = milk.rennet_imcu_kg / parameters.clotting;
    let clotting_min = clotting_min(dose_imcu_kg, temperature_c, ph.max(CLOTTING_PH_LEAST.value), milk.calcium_percent);
    let clean_break_min = clotting_min * design.firmness_multiple;
    let late_min = (clean_break_min - design.first_test_min).max(0.0);
    let repeats = (late_min / TEST_AGAIN.value).ceil();
    Ok(Setting {
        clotting_min,
        clean_break_min,
        cut_min: design.first_test_min + repeats * TEST_AGAIN.value,
        tests: 1 + repeats as u32,
    })
}
