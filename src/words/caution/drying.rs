//! Cautions about drying, in words.

use crate::caution::DryingCaution;
use crate::law::growth::{COLD_ENOUGH, HOT_ENOUGH, SERVICE_HOURS, SERVICE_WARM, SHELF_STABLE};
use crate::process::TRAY_AIR;
use crate::words::number::{quantity, range_words, value};
use crate::words::said::{CautionWords, cold, discard, said};

/// What helps with trays.
const TRAYS: (&str, &str) =
    ("Use more trays, larger trays or more height between them.", "The cheeses do not fit on the trays: use more or larger trays.");

pub(super) fn words(caution: &DryingCaution) -> CautionWords {
    let trays = |what: String| said(what, TRAYS.0, TRAYS.1);
    match caution {
        DryingCaution::NotKeptByDryness { water_activity, centre_water_activity, .. } => {
            not_kept(*water_activity, *centre_water_activity)
        }
        DryingCaution::DrynessIsEstimated { water_activity, centre_water_activity } => {
            estimated(*water_activity, *centre_water_activity)
        }
        DryingCaution::WarmDrying { hours, temperature_c, zone_h, .. } => warm(*hours, *temperature_c, *zone_h),
        DryingCaution::DampAir { .. } => said(
            "The air is too damp to dry: the cheeses take water from it and end heavier than they began.",
            "Use drier or warmer air, or wait for it.",
            "The air is too damp to dry the cheeses.",
        ),
        DryingCaution::CabinetBelowRoom { cabinet_c, room_c } => said(
            format!(
                "The cabinet is set to {cabinet_c:.0} °C and draws in air of {room_c:.0} °C. A cabinet that only warms cannot cool it."
            ),
            "Set the cabinet warmer than the room, or to the temperature of the room.",
            "The cabinet cannot be cooler than the room.",
        ),
        DryingCaution::TrayTooSmall => trays("A tray is smaller than one cheese.".to_owned()),
        DryingCaution::TooFewTrays { cheeses, needed, there } => {
            trays(format!("{cheeses} cheeses need {needed} trays of this size, and there are {there}."))
        }
        DryingCaution::TraysTooClose { clearance_mm } => trays(format!(
            "The cheeses are too thick for {clearance_mm:.0} mm between trays, of which {} are air above the cheeses.",
            quantity(&TRAY_AIR)
        )),
        DryingCaution::SaltCrystals { salt_percent, dissolves_percent } => said(
            format!(
                "Dried this far, the cheese has {salt_percent:.0} g of salt for 100 g of water, which dissolves only {dissolves_percent:.0} g: the rest is crystals."
            ),
            "Use less salt, or dry for fewer hours.",
            "Salt comes out as crystals.",
        ),
        DryingCaution::WetCentre { centre_percent, mean_percent } => said(
            format!("The centre has {centre_percent:.0} % moisture, the whole cheese {mean_percent:.0} %."),
            "Rest the cheeses in the fridge for a day, so that the moisture evens out.",
            "Wet centre: rest it cold.",
        ),
        DryingCaution::ModelUncertainty => said(
            "The drying times come from one fitted number: in your kitchen drying may take half or twice as long.",
            "Weigh a cheese every few hours, and go by your own weights, not by the curve.",
            "Drying hours are rough: weigh often.",
        ),
    }
}

/// Returns a water activity as the figures round it, but one just above the limit is not shown as the limit.
fn shown(water_activity: f64) -> f64 {
    let rounded = (100.0 * water_activity).round() / 100.0;
    if water_activity > SHELF_STABLE.value && rounded <= SHELF_STABLE.value { rounded + 0.01 } else { rounded }
}

fn not_kept(water_activity: f64, centre_water_activity: f64) -> CautionWords {
    said(
        format!(
            "Dryness does not preserve this cheese. Its water activity is estimated at {:.2} ({:.2} at the centre); germs and toxins are held back only at {} or less.",
            shown(water_activity),
            shown(centre_water_activity),
            value(&SHELF_STABLE)
        ),
        format!(
            "Keep it at {}. {} Under oil it is a food without air and with little acid, in which botulism has occurred.",
            cold(),
            discard()
        ),
        format!("Dryness does not preserve it: keep it at {}.", cold()),
    )
}

fn estimated(water_activity: f64, centre_water_activity: f64) -> CautionWords {
    said(
        format!(
            "The water activity is estimated at {:.2} ({:.2} at the centre). At {} or less food is counted as dried, but an estimate is no measurement.",
            shown(water_activity),
            shown(centre_water_activity),
            value(&SHELF_STABLE)
        ),
        "Germs had hours to grow before it was dry, and their toxins stay. Have the water activity measured, keep the cheese cold, and follow local food rules.",
        "Its dryness is only estimated: keep it cold.",
    )
}

fn warm(hours: f64, temperature_c: f64, zone_h: f64) -> CautionWords {
    said(
        format!(
            "For {hours:.0} h the cheese dries in air of {temperature_c:.0} °C and is between {} and {}, where germs grow ({zone_h:.0} h over the whole batch). Food-service rules allow food without acid no more than {} h above {}.",
            value(&COLD_ENOUGH),
            quantity(&HOT_ENOUGH),
            range_words(&SERVICE_HOURS),
            quantity(&SERVICE_WARM)
        ),
        "Dry cooler and for fewer hours, and use only clean pasteurised milk. That lowers the risk and does not remove it.",
        "Warm for hours: germs can grow. Dry cooler and for fewer hours.",
    )
}
