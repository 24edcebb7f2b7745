//! The curd and its whey.

use super::VatError;
use crate::design::VatDesign;
use crate::law::Matter;
use crate::process::MilkOutcome;

/// What becomes of the milk.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Curd {
    /// The curd when the drip has stopped.
    pub(super) drained_curd: Matter,
    /// All the whey that will ever leave, in vat and moulds.
    pub(super) whey_in_all: Matter,
    /// Whey that leaves in the vat.
    pub(super) whey: Matter,
    /// Curd as it is ladled, with its whey still to come.
    pub(super) curd: Matter,
    /// Yield of drained, unsalted curd, kg per 100 kg of milk.
    pub(super) yield_percent: f64,
    /// Yield by Van Slyke and Price at the same moisture.
    pub(super) van_slyke_yield_percent: f64,
}

/// Returns the curd and its whey; `temperature_c` is that of the curd while it rests in its whey.
pub(super) fn curd(
    _design: &VatDesign,
    _drip_end_moisture_percent: f64,
    _milk: &MilkOutcome,
    _temperature_c: f64,
) -> Result<Curd, VatError> {
    Ok(Curd::default())
}
