//! Curd and whey: what the milk gives, component by component.

use super::error::VatError;
use crate::design::VatDesign;
use crate::law::Matter;
use crate::law::syneresis::{VAT_SHARE, left_share};
use crate::law::yields::{PHOSPHATE_SHARE, serum_solids_per_water, soft_curd_percent, van_slyke_percent};
use crate::process::{MilkOutcome, UncertainParameters};

/// Curd and whey of one vat.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Curd {
    /// The curd when the drip has stopped.
    pub drained_curd: Matter,
    /// All the whey that will ever leave.
    pub whey_in_all: Matter,
    /// Whey that left in the vat.
    pub whey: Matter,
    /// The curd as it is ladled: drained curd and the whey still to come.
    pub curd: Matter,
    /// Drained curd, kg per 100 kg of milk.
    pub yield_percent: f64,
    /// The same by Van Slyke and Price, for comparison.
    pub van_slyke_yield_percent: f64,
}

/// Returns curd and whey.
///
/// The curd keeps its share of fat and casein, calcium phosphate in proportion to the casein, water to the chosen moisture, and serum solids
/// in proportion to that water, split as in the serum of the milk. The whey is everything else.
///
/// # Arguments
/// * `drip_end_moisture_percent`: moisture of the curd when the drip has stopped
/// * `temperature_c`: of the cut curd in its whey
///
/// # Errors
/// [`VatError::TooMoist`] if the milk has not that much water or serum to give.
pub fn curd(
    design: &VatDesign,
    drip_end_moisture_percent: f64,
    milk: &MilkOutcome,
    temperature_c: f64,
    parameters: &UncertainParameters,
) -> Result<Curd, VatError> {
    let vat = milk.vat_milk;
    let all = vat + milk.calcium + milk.rennet;
    let (fat_percent, casein_percent) = (vat.fat_percent(), vat.percent(vat.casein_kg));
    let yield_percent =
        soft_curd_percent(fat_percent, casein_percent, milk.fat_kept_share, milk.casein_kept_share, drip_end_moisture_percent);
    let curd_kg = 0.01 * yield_percent * vat.total_kg();
    let water_kg = 0.01 * drip_end_moisture_percent * curd_kg;
    let serum_kg = serum_solids_per_water() * water_kg;
    let phosphate_kg = PHOSPHATE_SHARE.value * milk.casein_kept_share * vat.casein_kg;
    let serum_ash_kg = vat.ash_kg - phosphate_kg;
    let share = serum_kg / (vat.whey_protein_kg + vat.carbohydrate_kg + serum_ash_kg);
    let drained_curd = Matter {
        water_kg,
        fat_kg: milk.fat_kept_share * vat.fat_kg,
        casein_kg: milk.casein_kept_share * vat.casein_kg,
        whey_protein_kg: share * vat.whey_protein_kg,
        carbohydrate_kg: share * vat.carbohydrate_kg,
        ash_kg: phosphate_kg + share * serum_ash_kg,
        ..Matter::default()
    };
    let whey_in_all = all - drained_curd;
    let possible = share >= 0.0 && whey_in_all.parts_kg().iter().all(|part| *part >= 0.0);
    if !possible {
        return Err(VatError::TooMoist { drip_end_moisture_percent, curd_kg, milk_kg: vat.total_kg() });
    }
    let vat_share = VAT_SHARE.value * left_share(design.whey_rest_min / 60.0, parameters.drip().in_vat_h(temperature_c));
    let whey = whey_in_all * vat_share;
    Ok(Curd {
        drained_curd,
        whey_in_all,
        whey,
        curd: all - whey,
        yield_percent,
        van_slyke_yield_percent: van_slyke_percent(fat_percent, casein_percent, drip_end_moisture_percent),
    })
}
