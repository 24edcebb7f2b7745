//! Cautions about drying.

use super::time::hours_in_zone;
use super::{Caution, Severity};
use crate::batch::Batch;
use crate::design::DryingPlace;
use crate::source::SourceId;

crate::constants! {
    /// Dry enough for the shelf.
    SHELF_STABLE = { "Water activity at or below which dried food is called shelf-stable", 0.85, "1", (0.85, 0.85), FoodCode, "hazard guide, chapter 14, and 21 CFR 114.3", Published }
    /// Centre much wetter than the mean.
    UNEVEN = { "Difference of moisture between centre and mean that shows", 8.0, "%", (5.0, 12.0), Ourselves, "by feel", Judged }
}

pub(super) fn cautions(batch: &Batch, all: &mut Vec<Caution>) {
    let Some(dried) = batch.drying.done() else { return };
    let design = &batch.design.drying;
    let end = &dried.end;
    if end.centre_water_activity > SHELF_STABLE.value {
        all.push(Caution::new(
            "not_kept_by_dryness",
            Severity::Stop,
            Some("drying_h"),
            SourceId::FoodCode,
            format!(
                "Dryness does not preserve this cheese: its water activity is estimated at {:.2} ({:.2} at the centre), and germs and toxins are held back only at {:.2} or less.",
                end.water_activity, end.centre_water_activity, SHELF_STABLE.value
            ),
            "Keep it at 4 °C or colder and eat it within days; an estimate is no measurement. Putting it under oil makes an airless food with little acid, in which botulism has occurred.",
        ));
    }
    let (warm, temperature_c) = match design.drying_place {
        DryingPlace::Cabinet => ("cabinet_temperature_c", design.cabinet_temperature_c),
        DryingPlace::OpenAir => ("day_temperature_c", design.day_temperature_c),
    };
    if design.drying_h > 4.0 && temperature_c > 21.0 && temperature_c < 60.0 {
        let zone_h = hours_in_zone(batch).unwrap_or(design.drying_h);
        all.push(Caution::new(
            "warm_drying",
            Severity::Stop,
            Some(warm),
            SourceId::FoodCode,
            format!("{:.0} h of drying at {temperature_c:.0} °C lie within 4 to 60 °C ({zone_h:.0} h over the whole batch); guidance for ready-to-eat food allows 2 to 4 h above 21 °C.", design.drying_h),
            "No calculation removes this: only clean pasteurised milk and hygiene, or another way of making, lessen it. Dry cool and for fewer hours.",
        ));
    }
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
