//! Cautions about warming and setting.

use super::{Caution, Severity};
use crate::batch::Batch;
use crate::design::Heating;
use crate::law::bath::{Scorching, scorching};
use crate::source::SourceId;

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
        let cause = if design.heating == Heating::Bath { "bath_set_temperature_c" } else { "heater_power_w" };
        all.push(Caution::new(
            "hot_wall",
            severity,
            Some(cause),
            SourceId::JDairySci1968,
            format!("The wall of the pot reaches about {:.0} °C, which {does}.", vat.wall_most_c),
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
    if vat.tests > 3 {
        all.push(Caution::new(
            "late_break",
            Severity::Note,
            Some("first_test_min"),
            SourceId::CommonPractice,
            format!(
                "The break is expected to be clean only after {:.0} min, at the test number {}.",
                vat.clean_break_min, vat.tests
            ),
            "Begin to test later, use more rennet, or set a little warmer; chlorinated water and old rennet also make it late.",
        ));
    }
    if vat.clotting_min < 6.0 {
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
