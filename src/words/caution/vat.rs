//! Cautions about warming and setting, in words.

use crate::caution::{VatCaution, sets_long};
use crate::law::bath::{STEAM_TEMPERATURE, Scorching};
use crate::words::number::quantity;
use crate::words::said::{CautionWords, said};

pub(super) fn words(caution: &VatCaution) -> CautionWords {
    match caution {
        VatCaution::HotWall { wall_c, likely_c, does, caused_by: "pasteurising_bath_temperature_c" } => said(
            hot_wall(*wall_c, *likely_c, *does),
            "Stir without a pause. A bath set nearer to the temperature of pasteurising is gentler but slower; it must stay hotter than that.",
            "The wall of the pot gets very hot: stir without a pause.",
        ),
        VatCaution::HotWall { wall_c, likely_c, does, .. } => said(
            hot_wall(*wall_c, *likely_c, *does),
            "Warm with less power or a cooler bath, and stir without a pause.",
            "The base gets very hot: less power, stir without a pause.",
        ),
        VatCaution::CalciumAfterRennet { calcium_c, rennet_c } => said(
            format!("The calcium goes in at {calcium_c:.1} °C, but the rennet already at {rennet_c:.1} °C."),
            "Stir the calcium in first, while the milk warms.",
            "Calcium goes in before the rennet.",
        ),
        VatCaution::FastClot { clotting_min } => said(
            format!("The milk clots after about {clotting_min:.0} min. That hardly leaves time to stir the rennet in."),
            "Use less rennet or a lower temperature.",
            "The milk clots quickly: stir the rennet in immediately.",
        ),
        VatCaution::LateBreak { clean_break_min, tests } => said(
            format!("The break is expected to be clean only after {clean_break_min:.0} min, at test number {tests}."),
            if sets_long(*clean_break_min) {
                "Use more rennet, more calcium or a warmer set, and measure the pH. Milk that stands warm for hours grows germs and may never set."
            } else {
                "Test later for the first time, use more rennet, or set a little warmer. Chlorinated water and old rennet also make it late."
            },
            "The milk may take long to set.",
        ),
        VatCaution::LateTest { clean_break_min, cut_min } => said(
            format!(
                "The break is expected to be clean after {clean_break_min:.0} min, but the first test is only after {cut_min:.0} min."
            ),
            "Test earlier: curd that is too firm is hard to cut and keeps its whey.",
            "The first test comes late: test earlier.",
        ),
        VatCaution::DriftsWhileSetting { rennet_c, farthest_c } => {
            let warms = farthest_c > rennet_c;
            let moves = if warms { "warms" } else { "cools" };
            said(
                format!("Between rennet and cut the milk {moves} from {rennet_c:.1} to {farthest_c:.1} °C."),
                if warms {
                    "Take the pot out of the bath when the rennet is in, or set the bath close to the temperature of the rennet."
                } else {
                    "Keep the heat on, cover the pot, or leave it in its warm bath while it sets."
                },
                format!("The milk {moves} while it sets."),
            )
        }
    }
}

/// Returns what a hot wall does to the milk.
fn hot_wall(wall_c: f64, likely_c: Option<(f64, f64)>, does: Scorching) -> String {
    let steam = STEAM_TEMPERATURE.value;
    let roughly = likely_c.map(|(least, most)| {
        format!(" How hot a hob makes it is known only roughly: from {least:.0} °C while you stir to {most:.0} °C where the milk stands still.")
    });
    let roughly = roughly.unwrap_or_default();
    if wall_c >= steam && likely_c.is_some_and(|(least, _)| least < steam) {
        return format!(
            "The base of the pot may get hotter than {}: milk then boils on it and burns on.{roughly}",
            quantity(&STEAM_TEMPERATURE)
        );
    }
    if wall_c >= steam {
        return format!(
            "The base of the pot gets hotter than {}: milk boils on it and burns on.{roughly}",
            quantity(&STEAM_TEMPERATURE)
        );
    }
    let does = match does {
        Scorching::Fine => "leaves no deposit",
        Scorching::Deposits => "leaves a thin deposit",
        Scorching::Heavy => "leaves a thick deposit and a cooked taste",
        Scorching::BurnsOn => "burns milk on",
    };
    format!("The wall of the pot reaches about {wall_c:.0} °C, which {does}.{roughly}")
}
