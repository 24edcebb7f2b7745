//! Food without acid, and the hours it spends warm.

use super::caution::{Caution, Severity};
use crate::batch::Batch;
use crate::law::growth::{COLD_DRAINING, SERVICE_HOURS, SERVICE_WARM};
use crate::process::{draining_hours, drying_hours, vat_hours};
use crate::source::SourceId;

crate::constants! {
    /// Thin cheeses.
    THIN = { "Thickness below which a cheese hardly bears turning", 8.0, "mm", (5.0, 12.0), Ourselves, "by feel", Judged }
}

/// Returns the hours that the whole batch spends between cold and hot keeping, if it was worked out so far.
///
/// The keeping counts them; where it was not reached, the stages that were are counted as if nothing had soured the cheese.
#[must_use]
pub fn hours_in_zone(batch: &Batch) -> Option<f64> {
    if let Some(kept) = batch.keeping.done() {
        return Some(kept.zone_h);
    }
    let vat_h = vat_hours(batch.vat.done()?).zone_h;
    let draining_h = draining_hours(batch.design.draining.draining_temperature_c, batch.draining.done()?).zone_h;
    // Cheeses that could not be dried are taken as there all the time.
    let drying_h = batch.drying.done().map_or(batch.design.drying.drying_h, |dried| drying_hours(dried).zone_h);
    Some(vat_h + draining_h + drying_h)
}

pub(super) fn cautions(batch: &Batch, all: &mut Vec<Caution>) {
    let hours =
        hours_in_zone(batch).map_or_else(String::new, |hours| format!(" This plan keeps it {hours:.0} h between 4 and 60 °C."));
    all.push(Caution::new(
        "no_acid",
        Severity::Stop,
        None,
        SourceId::FoodCode,
        format!("Fresh cheese made without acid stays near pH 6.5, where dangerous germs grow; neither salt nor cold stops Listeria in it.{hours}"),
        "Your local food rules and licensed practice come first. Clean pasteurised milk and strict hygiene lessen the risk and do not remove it; keep it from pregnant, old, very young or ill people.",
    ));
    let draining = &batch.design.draining;
    let Some(drained) = batch.draining.done() else { return };
    if draining.draining_temperature_c > COLD_DRAINING.value && drained.draining_h > SERVICE_HOURS.value {
        let (temperature_c, hours) = (draining.draining_temperature_c, drained.draining_h);
        let severity = if temperature_c > SERVICE_WARM.value { Severity::Stop } else { Severity::Caution };
        all.push(Caution::new(
            "warm_draining",
            severity,
            Some("draining_temperature_c"),
            SourceId::FoodCode,
            format!("The cheeses drain for {hours:.0} h at {temperature_c:.0} °C; food-service rules allow food without acid 2 to 4 h above 21 °C, and Staphylococcus grows from 7 °C and makes its toxin above about 10 °C."),
            "Drain at 10 °C or colder, which takes longer, and for as few hours as the drip needs.",
        ));
    }
    if !drained.drip_has_stopped {
        all.push(Caution::new(
            "drip_goes_on",
            Severity::Caution,
            Some("turn_gap_h"),
            SourceId::MarshallCastillo,
            format!(
                "Whey still drips at unmoulding: the drip stops after about {:.0} h, the cheeses leave the moulds after {:.0} h.",
                drained.drip_stops_h, drained.draining_h
            ),
            "Turn more often or later, or drain a little warmer; a wet cheese dries longer and deforms.",
        ));
    }
    if !drained.fits {
        all.push(Caution::new(
            "top_up_moulds",
            Severity::Note,
            Some("mould_count"),
            SourceId::Ourselves,
            format!(
                "The ladled curd does not go into the moulds at once ({:.0} mL for each mould of {:.0} mL).",
                drained.ladled_ml, drained.mould_ml
            ),
            format!("Top the moulds up as the curd sinks, or use {} moulds of this size.", drained.moulds_wanted),
        ));
    }
    if drained.thickness_mm < THIN.value {
        all.push(Caution::new(
            "thin_cheese",
            Severity::Note,
            Some("mould_count"),
            SourceId::Ourselves,
            format!("The drained cheeses are only {:.1} mm thick and break when they are turned.", drained.thickness_mm),
            "Use fewer or narrower moulds, or more milk.",
        ));
    }
}
