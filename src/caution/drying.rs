//! Cautions about drying.

use super::caution::{Caution, Severity};
use super::time::hours_in_zone;
use crate::batch::Batch;
use crate::design::DryingPlace;
use crate::law::brine::{SALT_MOLAR_MASS, SALT_SATURATION};
use crate::law::growth::{SERVICE_HOURS, SERVICE_WARM, SHELF_STABLE};
use crate::process::{DryingOutcome, drying_hours};
use crate::source::SourceId;

crate::constants! {
    /// Centre much wetter than the mean.
    UNEVEN = { "Difference of moisture between centre and mean that shows", 8.0, "%", (5.0, 12.0), Ourselves, "by feel", Judged }
}

pub(super) fn cautions(batch: &Batch, all: &mut Vec<Caution>) {
    let Some(dried) = batch.drying.done() else { return };
    dryness(dried, all);
    warmth(batch, dried, all);
    air(batch, dried, all);
    trays(batch, dried, all);
    let salt_percent = dried.cheese.salt_in_moisture_percent();
    let dissolves_percent = 100.0 * SALT_SATURATION.value * SALT_MOLAR_MASS.value;
    if salt_percent > dissolves_percent {
        all.push(Caution::new(
            "salt_crystals",
            Severity::Note,
            Some("salt_percent"),
            SourceId::Textbook,
            format!(
                "Dried so far, the cheese has {salt_percent:.0} g of salt for 100 g of water, which dissolves only {dissolves_percent:.0} g: the rest is crystals."
            ),
            "Salt less or dry for fewer hours.",
        ));
    }
    let end = &dried.end;
    if end.centre_moisture_percent - end.moisture_percent > UNEVEN.value {
        all.push(Caution::new(
            "wet_centre",
            Severity::Note,
            Some("drying_h"),
            SourceId::Ourselves,
            format!(
                "The centre is at {:.0} % moisture where the mean is {:.0} %.",
                end.centre_moisture_percent, end.moisture_percent
            ),
            "Let the cheeses rest cold for a day so that the moisture evens out, or dry cooler and longer.",
        ));
    }
    all.push(Caution::new(
        "model_uncertainty",
        Severity::Note,
        None,
        SourceId::Ourselves,
        "Drying times come from one fitted diffusivity: half or twice the time is possible in your kitchen.",
        "Weigh a cheese every few hours; your own weights are worth more than the curve.",
    ));
}

/// Cautions about what dryness does and does not do.
fn dryness(dried: &DryingOutcome, all: &mut Vec<Caution>) {
    let end = &dried.end;
    // As the read-outs round, but a figure just above the limit is not shown as the limit.
    let shown = |activity: f64| {
        let rounded = (100.0 * activity).round() / 100.0;
        if activity > SHELF_STABLE.value && rounded <= SHELF_STABLE.value { rounded + 0.01 } else { rounded }
    };
    if end.centre_water_activity > SHELF_STABLE.value {
        all.push(Caution::new(
            "not_kept_by_dryness",
            Severity::Stop,
            Some("drying_h"),
            SourceId::FoodCode,
            format!(
                "Dryness does not preserve this cheese: its water activity is estimated at {:.2} ({:.2} at the centre), and germs and toxins are held back only at {:.2} or less.",
                shown(end.water_activity), shown(end.centre_water_activity), SHELF_STABLE.value
            ),
            "Keep it at 4 °C or colder and eat it within days; an estimate is no measurement. Putting it under oil makes an airless food with little acid, in which botulism has occurred.",
        ));
    } else {
        all.push(Caution::new(
            "dryness_is_estimated",
            Severity::Stop,
            Some("drying_h"),
            SourceId::Cfr21,
            format!(
                "The water activity is estimated at {:.2} ({:.2} at the centre), at or below the {:.2} of dried food; an estimate from a model is no proof of that.",
                shown(end.water_activity), shown(end.centre_water_activity), SHELF_STABLE.value
            ),
            "Germs had the hours before it was dry, and toxin stays. Have the water activity measured, keep the cheese cold, and follow local food rules.",
        ));
    }
}

/// The caution about hours in warm air.
fn warmth(batch: &Batch, dried: &DryingOutcome, all: &mut Vec<Caution>) {
    let design = &batch.design.drying;
    let (warm, temperature_c) = match design.drying_place {
        DryingPlace::Cabinet => ("cabinet_temperature_c", design.cabinet_temperature_c),
        DryingPlace::OpenAir if design.night_temperature_c > design.day_temperature_c => {
            ("night_temperature_c", design.night_temperature_c)
        }
        DryingPlace::OpenAir => ("day_temperature_c", design.day_temperature_c),
    };
    let drying_h = drying_hours(dried).zone_h;
    if drying_h > SERVICE_HOURS.value && temperature_c > SERVICE_WARM.value {
        let zone_h = hours_in_zone(batch).unwrap_or(drying_h);
        all.push(Caution::new(
            "warm_drying",
            Severity::Stop,
            Some(warm),
            SourceId::FoodCode,
            format!("{drying_h:.0} h of drying in air of {temperature_c:.0} °C keep the cheese within 4 to 60 °C ({zone_h:.0} h over the whole batch); guidance for ready-to-eat food allows 2 to 4 h above 21 °C."),
            "No calculation removes this: only clean pasteurised milk and hygiene, or another way of making, lessen it. Dry cool and for fewer hours.",
        ));
    }
}

/// The caution about trays that are too few or too small.
fn trays(batch: &Batch, dried: &DryingOutcome, all: &mut Vec<Caution>) {
    let design = &batch.design.drying;
    if !dried.trays_fit {
        let (what, cause) = if dried.tray_holds == 0 {
            ("A tray is smaller than one cheese.".to_owned(), "tray_width_mm")
        } else if dried.trays_wanted > design.tray_count {
            (
                format!(
                    "{} cheeses need {} trays of this size, and there are {}.",
                    dried.cheese_count, dried.trays_wanted, design.tray_count
                ),
                "tray_count",
            )
        } else {
            (
                format!("The cheeses are too thick for {:.0} mm between trays with 15 mm of air above.", design.tray_clearance_mm),
                "tray_clearance_mm",
            )
        };
        all.push(Caution::new(
            "trays_do_not_fit",
            Severity::Caution,
            Some(cause),
            SourceId::Ourselves,
            what,
            "Use more or larger trays, or dry in two rounds.",
        ));
    }
}

/// Gain of weight that is more than the rounding of the arithmetic.
const LEAST_GAIN_PERCENT: f64 = 0.01;

/// Cautions about air that cannot dry.
fn air(batch: &Batch, dried: &DryingOutcome, all: &mut Vec<Caution>) {
    let design = &batch.design.drying;
    let cabinet = design.drying_place == DryingPlace::Cabinet;
    if dried.end.loss_percent < -LEAST_GAIN_PERCENT {
        all.push(Caution::new(
            "damp_air",
            Severity::Caution,
            Some(if cabinet { "room_humidity_percent" } else { "day_humidity_percent" }),
            SourceId::Ourselves,
            "The air is too damp to dry: the cheeses take water from it and end heavier than they began.",
            "Use drier or warmer air, or wait for it.",
        ));
    }
    if cabinet && design.cabinet_temperature_c < design.room_air_temperature_c {
        all.push(Caution::new(
            "cabinet_below_room",
            Severity::Caution,
            Some("cabinet_temperature_c"),
            SourceId::Ourselves,
            format!(
                "The cabinet is set to {:.0} °C and draws in air of {:.0} °C; a cabinet that only warms cannot cool it.",
                design.cabinet_temperature_c, design.room_air_temperature_c
            ),
            "Set the cabinet warmer than the room, or choose the room's own temperature.",
        ));
    }
}
