//! Curd and whey: what the milk gives, component by component.

use super::error::VatError;
use crate::design::VatDesign;
use crate::law::Matter;
use crate::law::souring::colloidal_calcium_left;
use crate::law::syneresis::{VAT_SHARE, left_share};
use crate::law::yields::{PHOSPHATE_SHARE, serum_solids_per_water, sour_loss, soured_curd_percent, van_slyke_percent};
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
    /// Share of the calcium phosphate in the casein that souring has left there.
    pub phosphate_left: f64,
}

/// The milk when it is ladled.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct SetMilk {
    /// The milk with what sours it, without calcium and rennet.
    pub milk: Matter,
    /// pH when the rennet went in.
    pub rennet_ph: f64,
    /// pH when the whey leaves.
    pub whey_ph: f64,
    /// Its temperature.
    pub temperature_c: f64,
}

/// Returns curd and whey.
///
/// The curd keeps its share of fat and casein, calcium phosphate in proportion to the casein as far as souring has not dissolved it
/// ([`colloidal_calcium_left`]), water to the chosen moisture, and serum solids in proportion to that water, split as in the serum of the milk.
/// The whey is everything else; what of it leaves in the vat follows from the rest, its temperature and the size of the pieces. Soured milk loses more of its fat and casein ([`sour_loss`]).
///
/// # Arguments
/// * `drip_end_moisture_percent`: moisture of the curd when the drip has stopped
/// * `set`: the milk as it is when it is ladled
///
/// # Errors
/// [`VatError::TooMoist`] if the milk has not that much water or serum to give.
pub fn curd(
    design: &VatDesign,
    drip_end_moisture_percent: f64,
    milk: &MilkOutcome,
    set: &SetMilk,
    parameters: &UncertainParameters,
) -> Result<Curd, VatError> {
    let vat = milk.vat_milk;
    let all = set.milk + milk.calcium + milk.rennet;
    let (fat_percent, casein_percent) = (vat.fat_percent(), vat.percent(vat.casein_kg));
    let kept = 1.0 - sour_loss(set.rennet_ph);
    let (fat_kept, casein_kept) = (kept * milk.fat_kept_share, kept * milk.casein_kept_share);
    let phosphate_left = (colloidal_calcium_left(set.whey_ph) / colloidal_calcium_left(milk.milk_ph)).min(1.0);
    let yield_percent =
        soured_curd_percent(fat_percent, casein_percent, (fat_kept, casein_kept), drip_end_moisture_percent, phosphate_left);
    let curd_kg = 0.01 * yield_percent * vat.total_kg();
    let water_kg = 0.01 * drip_end_moisture_percent * curd_kg;
    let serum_kg = serum_solids_per_water() * water_kg;
    let phosphate_kg = phosphate_left * PHOSPHATE_SHARE.value * casein_kept * vat.casein_kg;
    let serum_ash_kg = vat.ash_kg - phosphate_kg;
    let share = serum_kg / (vat.whey_protein_kg + set.milk.carbohydrate_kg + set.milk.acids_kg() + serum_ash_kg);
    let drained_curd = Matter {
        water_kg,
        fat_kg: fat_kept * vat.fat_kg,
        casein_kg: casein_kept * vat.casein_kg,
        whey_protein_kg: share * vat.whey_protein_kg,
        carbohydrate_kg: share * set.milk.carbohydrate_kg,
        ash_kg: phosphate_kg + share * serum_ash_kg,
        acid_kg: share * set.milk.acid_kg,
        lactic_kg: share * set.milk.lactic_kg,
        other_acid_kg: share * set.milk.other_acid_kg,
        salt_kg: 0.0,
    };
    let whey_in_all = all - drained_curd;
    let possible = share >= 0.0 && whey_in_all.parts_kg().iter().all(|part| *part >= 0.0);
    if !possible {
        return Err(VatError::TooMoist { drip_end_moisture_percent, curd_kg, milk_kg: vat.total_kg() });
    }
    let time_h = parameters.drip().in_vat_h(set.temperature_c, design.curd_piece_mm);
    let vat_share = VAT_SHARE.value * left_share(design.whey_rest_min / 60.0, time_h);
    let whey = whey_in_all * vat_share;
    Ok(Curd {
        drained_curd,
        whey_in_all,
        whey,
        curd: all - whey,
        yield_percent,
        van_slyke_yield_percent: van_slyke_percent(fat_percent, casein_percent, drip_end_moisture_percent),
        phosphate_left,
    })
}
