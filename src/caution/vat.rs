//! Cautions about warming and setting.

use super::caution::{Caution, Severity};
use crate::batch::Batch;
use crate::design::Heating;
use crate::law::bath::{STEAM_TEMPERATURE, Scorching, scorching};
use crate::process::{VatOutcome, WarmingEvent};
use crate::source::SourceId;

crate::constants! {
    /// Setting that takes too long.
    LONG_SETTING = { "Longest setting that is still usual", 120.0, "min", (90.0, 180.0), Ourselves, "curd is usually cut within an hour or two of the rennet", Judged }
    /// A first test that comes too late.
    LATE_TEST = { "Minutes after a clean break from which the curd is over-firm", 30.0, "min", (15.0, 60.0), Ourselves, "twice the usual quarter of an hour", Judged }
    /// A clot that comes too fast.
    FAST_CLOT = { "Shortest clotting time that leaves time to stir", 6.0, "min", (4.0, 8.0), Ourselves, "stirring in takes a minute or two, and the milk must come to rest", Judged }
    /// Milk that does not stay where the rennet went in.
    DRIFT = { "Change of temperature from rennet to cut that is worth a word", 4.0, "K", (2.0, 6.0), Ourselves, "by then the clotting time has changed by a tenth", Judged }
}

pub(super) fn cautions(batch: &Batch, all: &mut Vec<Caution>) {
    let Some(vat) = batch.vat.done() else { return };
    let design = &batch.design.vat;
    let wall = match scorching(vat.wall_most_c) {
        Scorching::Fine => None,
        Scorching::Deposits => Some((Severity::Note, "leaves a thin deposit")),
        Scorching::Heavy => Some((Severity::Caution, "leaves a thick deposit and a cooked taste")),
        Scorching::BurnsOn => Some((Severity::Caution, "burns milk on")),
    };
    if let Some((severity, does)) = wall {
        let cause = match design.heating {
            Heating::Bath if design.bath_start_temperature_c > design.bath_set_temperature_c => "bath_start_temperature_c",
            Heating::Bath => "bath_set_temperature_c",
            Heating::DoubleBoiler | Heating::Hob => "heater_power_w",
        };
        let what = if vat.wall_most_c < STEAM_TEMPERATURE.value {
            format!("The wall of the pot reaches about {:.0} °C, which {does}.", vat.wall_most_c)
        } else {
            format!("The base of the pot gets hotter than {:.0} °C: milk boils on it and burns on.", STEAM_TEMPERATURE.value)
        };
        all.push(Caution::new(
            "hot_wall",
            severity,
            Some(cause),
            SourceId::JDairySci1968,
            what,
            "Warm with less power or a cooler bath, and stir without pause.",
        ));
    }
    if batch.design.vat.calcium_temperature_c > batch.design.vat.rennet_temperature_c {
        all.push(Caution::new(
            "calcium_after_rennet",
            Severity::Caution,
            Some("calcium_temperature_c"),
            SourceId::GuelphNotes,
            format!(
                "The calcium is to go in at {:.1} °C, which is warmer than the rennet's {:.1} °C.",
                design.calcium_temperature_c, design.rennet_temperature_c
            ),
            "Stir the calcium in first, while the milk warms.",
        ));
    }
    setting(vat, all);
    if vat.clotting_min < FAST_CLOT.value {
        all.push(Caution::new(
            "fast_clot",
            Severity::Note,
            Some("rennet_dose_imcu_kg"),
            SourceId::GuelphNotes,
            format!("The milk clots after about {:.0} min, hardly time to stir the rennet in.", vat.clotting_min),
            "Use less rennet or a lower temperature.",
        ));
    }
}

/// Cautions about when the break is clean, and how warm the milk is until then.
fn setting(vat: &VatOutcome, all: &mut Vec<Caution>) {
    let long = vat.clean_break_min > LONG_SETTING.value;
    if long || vat.tests > 3 {
        all.push(Caution::new(
            "late_break",
            if long { Severity::Caution } else { Severity::Note },
            Some(if long { "rennet_dose_imcu_kg" } else { "first_test_min" }),
            SourceId::CommonPractice,
            format!(
                "The break is expected to be clean only after {:.0} min, at the test number {}.",
                vat.clean_break_min, vat.tests
            ),
            if long {
                "Use more rennet, more calcium or a warmer set, or measure the pH: milk that stands warm for hours grows germs and may never set."
            } else {
                "Begin to test later, use more rennet, or set a little warmer; chlorinated water and old rennet also make it late."
            },
        ));
    }
    if vat.cut_min - vat.clean_break_min > LATE_TEST.value {
        all.push(Caution::new(
            "late_test",
            Severity::Note,
            Some("first_test_min"),
            SourceId::Ourselves,
            format!(
                "The break is expected to be clean after {:.0} min, and the first test comes only after {:.0} min.",
                vat.clean_break_min, vat.cut_min
            ),
            "Test earlier: over-firm curd is hard to cut and holds its whey.",
        ));
    }
    let rennet_c = vat.events.iter().find(|mark| mark.event == WarmingEvent::Rennet).map(|mark| mark.milk_c);
    let setting = vat.to_rennet_min..=vat.to_rennet_min + vat.cut_min;
    let setting = vat.curve.iter().filter(|point| setting.contains(&point.at_min)).map(|point| point.milk_c);
    // The end is not enough: a small pot may warm on in its bath and cool again.
    let Some((rennet_c, farthest_c)) = rennet_c.and_then(|rennet_c| {
        let off = |milk_c: f64| (milk_c - rennet_c).abs();
        setting.max_by(|one, other| off(*one).total_cmp(&off(*other))).map(|farthest_c| (rennet_c, farthest_c))
    }) else {
        return;
    };
    if (farthest_c - rennet_c).abs() > DRIFT.value {
        let warms = farthest_c > rennet_c;
        all.push(Caution::new(
            "drifts_while_setting",
            Severity::Caution,
            Some("heat_while_setting"),
            SourceId::Ourselves,
            format!(
                "Between rennet and cut the milk {} from {rennet_c:.1} to {farthest_c:.1} °C.",
                if warms { "warms" } else { "cools" }
            ),
            if warms {
                "Take the pot out of the bath when the rennet is in, or set the bath close to the rennet's temperature."
            } else {
                "Keep the heat on, cover the pot, or leave it in its warm bath while it sets."
            },
        ));
    }
}
