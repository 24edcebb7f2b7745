//! The curd and its whey.

use super::VatError;
use crate::design::VatDesign;
use crate::law::Matter;
use crate::law::syneresis::share_left_in_vat;
use crate::law::yields::{CALCIUM_PHOSPHATE, Kept, SERUM_SOLIDS, SOLVENT_SHARE, soft_percent, van_slyke_price_percent};
use crate::process::MilkOutcome;

/// What becomes of the milk.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[allow(clippy::struct_field_names, reason = "named as in the outcome of the vat")]
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
///
/// All whey is of one composition, so the curd at any time is the drained curd and the whey still to come.
///
/// # Errors
/// [`VatError::CurdWantsMore`] if the drained curd would hold more of a component than the vat does.
pub(super) fn curd(
    design: &VatDesign,
    drip_end_moisture_percent: f64,
    milk: &MilkOutcome,
    temperature_c: f64,
) -> Result<Curd, VatError> {
    let vat = milk.vat_milk + milk.calcium + milk.rennet;
    let drained_curd = drained(milk, drip_end_moisture_percent);
    let whey_in_all = vat - drained_curd;
    let parts = Matter::COMPONENTS.iter().zip(drained_curd.parts_kg()).zip(whey_in_all.parts_kg());
    for ((component, wanted_kg), left_kg) in parts {
        let enough = left_kg >= 0.0;
        if !enough {
            return Err(VatError::CurdWantsMore {
                component,
                wanted_kg,
                present_kg: wanted_kg + left_kg,
                drip_end_moisture_percent,
            });
        }
    }
    let whey = whey_in_all * share_left_in_vat(temperature_c, design.whey_rest_min / 60.0);
    let (fat_percent, casein_percent) = (milk.vat_milk.fat_percent(), milk.vat_milk.percent(milk.vat_milk.casein_kg));
    Ok(Curd {
        drained_curd,
        whey_in_all,
        whey,
        curd: vat - whey,
        yield_percent: 100.0 * drained_curd.total_kg() / milk.vat_milk_kg,
        van_slyke_yield_percent: van_slyke_price_percent(fat_percent, casein_percent, drip_end_moisture_percent),
    })
}

/// Returns the drained curd by the soft form of the yield, component by component.
///
/// Fat and casein as kept; calcium phosphate, taken from the ash, with the casein; and in nine tenths of the moisture the serum's
/// solids, in which whey protein, carbohydrate and the ash that is not bound to casein stand to each other as in the milk.
fn drained(milk: &MilkOutcome, moisture_percent: f64) -> Matter {
    let from = milk.vat_milk;
    let kept = Kept { fat: milk.fat_kept_share, casein: milk.casein_kept_share };
    let yield_percent = soft_percent(from.fat_percent(), from.percent(from.casein_kg), kept, moisture_percent);
    let water_kg = from.total_kg() * yield_percent / 100.0 * moisture_percent / 100.0;
    let casein_kg = kept.casein * from.casein_kg;
    let serum_ash_kg = from.ash_kg - CALCIUM_PHOSPHATE.value * from.casein_kg;
    let serum_kg = from.whey_protein_kg + from.carbohydrate_kg + serum_ash_kg;
    let share = SOLVENT_SHARE.value * SERUM_SOLIDS.value * water_kg / serum_kg;
    Matter {
        water_kg,
        fat_kg: kept.fat * from.fat_kg,
        casein_kg,
        whey_protein_kg: share * from.whey_protein_kg,
        carbohydrate_kg: share * from.carbohydrate_kg,
        ash_kg: CALCIUM_PHOSPHATE.value * casein_kg + share * serum_ash_kg,
        salt_kg: 0.0,
    }
}
