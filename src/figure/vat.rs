//! The figures of the vat.

use super::figure::Figure;
use crate::design::{Design, Heating, Stage, Unit};
use crate::law::bath::WARMING_SPREAD;
use crate::law::density::WHEY_DENSITY;
use crate::law::pasteurising::in_seconds;
use crate::law::rennet::CLOTTING_SPREAD;
use crate::law::yields::YIELD_SPREAD;
use crate::process::VatOutcome;

const BATH: &str = "two-node bath, solved exactly in each mode of the heater; ±25 % until your own log calibrates it";
const BOILER: &str = "C dT/dt = min(P, U A (T_s − T)) − G (T − T_room), solved exactly; ±25 % until your own log calibrates it";
const HOB: &str = "C dT/dt = P − G (T − T_room), solved exactly; ±25 % until your own log calibrates it";
const HOLD: &str = "the published times of 63 and 72 °C, 3 °C more for rich milk; between them a straight line in the logarithm, which is our own; and what you hold it longer";
const COOL: &str = "the same two nodes in a bath of cold water; ±25 % until your own log calibrates it";
const WALL: &str = "T_m + U (T_b − T_m)/h";
const WALL_HOB: &str = "T_m + 2 P/(A h) at the hot spot; no more than 110 °C, where milk boils on the wall; likely from the least flux of a hot spot, under stirred milk, to the greatest";
const CLOT: &str = "t = 2.5 + 600/(E f_T f_pH f_Ca), set on published notes; ±30 % between milks";
const BREAK: &str = "clotting time × firmness multiple (practice of makers, from memory)";
const YIELD: &str = "(R_F F + 1.04 R_C C)/(1 − M (1 + 0.9·0.066)); ±8 % between kitchens";
/// What was measured of sheep's milk is said beside what is calculated: the two differ, and why.
const YIELD_OF_100: &str = "(R_F F + 1.04 R_C C)/(1 − M (1 + 0.9·0.066)); ±8 % between kitchens. Measured from sheep's milk: 20.6 kg, of which 10.1 kg solids (C. Cipolat-Gotet 2016, an abstract, the milk of 169 sheep in model vats). The same solids as wet as soft curd here would weigh about 26 kg; richer milk that loses less to its whey gives more";
const WHEY: &str = "milk less curd, component by component";

pub(super) fn figures(vat: &VatOutcome, design: &Design) -> Vec<Figure> {
    let mut all = heat_step(vat, design.vat.heating);
    all.extend(heat(vat, design.vat.heating));
    all.extend(curd(vat));
    all
}

/// Returns the figures of the heat step of raw milk; none where it is not pasteurised in the vat.
fn heat_step(vat: &VatOutcome, heating: Heating) -> Vec<Figure> {
    let Some(step) = &vat.heat_step else { return Vec::new() };
    let number = |key, label, value, unit, decimals, law| Figure::number(Stage::Vat, key, label, value, unit, decimals, law);
    let hold_min = step.hold_ends_min - step.to_hold_min;
    let decimals = if in_seconds(60.0 * hold_min) { 2 } else { 0 };
    vec![
        number("to_pasteurising_min", "Time until the raw milk is hot enough", step.to_hold_min, Unit::Minute, 0, law_of(heating))
            .within(WARMING_SPREAD.value),
        number("pasteurising_min", "Time held hot to pasteurise", hold_min, Unit::Minute, decimals, HOLD).lead(),
        number("pasteurising_coldest_c", "Coldest milk while held hot", step.hold_coldest_c, Unit::Celsius, 1, law_of(heating)),
        number("cooling_min", "Time to cool the pasteurised milk", step.cooling_min(), Unit::Minute, 0, COOL)
            .within(WARMING_SPREAD.value),
    ]
}

/// Returns how warming by a way of heating is calculated.
const fn law_of(heating: Heating) -> &'static str {
    match heating {
        Heating::Bath => BATH,
        Heating::DoubleBoiler => BOILER,
        Heating::Hob => HOB,
    }
}

/// Returns the figures of warming and setting.
fn heat(vat: &VatOutcome, heating: Heating) -> Vec<Figure> {
    let number = |key, label, value, unit, decimals, law| Figure::number(Stage::Vat, key, label, value, unit, decimals, law);
    let warming = law_of(heating);
    let (wall, outside) = match heating {
        Heating::Bath => (WALL, Some("Hottest bath")),
        Heating::DoubleBoiler => (WALL, Some("Hottest on the steam side")),
        // Over a hob the hot spot of the base is the wall itself.
        Heating::Hob => (WALL_HOB, None),
    };
    let mut all = vec![
        number("to_rennet_min", "Time to rennet temperature", vat.to_rennet_min, Unit::Minute, 0, warming)
            .within(WARMING_SPREAD.value)
            .lead(),
        number("to_calcium_min", "Time to calcium temperature", vat.to_calcium_min, Unit::Minute, 0, warming)
            .within(WARMING_SPREAD.value),
        number("clotting_min", "Clotting time after the rennet", vat.clotting_min, Unit::Minute, 0, CLOT)
            .within(CLOTTING_SPREAD.value),
        number("clean_break_min", "Clean break after the rennet", vat.clean_break_min, Unit::Minute, 0, BREAK)
            .within(CLOTTING_SPREAD.value)
            .lead(),
        number(
            "cut_min",
            "Cutting after the rennet",
            vat.cut_min,
            Unit::Minute,
            0,
            "the first test that finds a clean break; tests are repeated (common practice, no source)",
        ),
        number(
            "tests",
            "Tests for a clean break",
            f64::from(vat.tests),
            Unit::One,
            0,
            "the first test, then again until the break is clean",
        ),
        number("to_ladle_min", "Ladling after the start", vat.to_ladle_min, Unit::Minute, 0, warming),
        number("setting_temperature_c", "Milk temperature while it sets", vat.setting_temperature_c, Unit::Celsius, 1, warming),
        number("ladled_curd_c", "Temperature of the curd at ladling", vat.ladle_temperature_c, Unit::Celsius, 1, warming),
        number("wall_most_c", "Hottest pot wall", vat.wall_most_c, Unit::Celsius, 0, wall).between(vat.likely_wall_most_c),
    ];
    all.extend(outside.map(|label| number("bath_most_c", label, vat.bath_most_c, Unit::Celsius, 1, warming)));
    all.push(number("energy_kwh", "Energy to rennet temperature", vat.energy_kwh, Unit::KilowattHour, 2, warming));
    all
}

/// Returns the figures of curd and whey.
fn curd(vat: &VatOutcome) -> Vec<Figure> {
    let number = |key, label, value, unit, decimals, law| Figure::number(Stage::Vat, key, label, value, unit, decimals, law);
    vec![
        number(
            "curd_kg",
            "Curd as ladled",
            vat.curd.total_kg(),
            Unit::Kilogram,
            2,
            "first order towards at most 60 % of the whey; our own judgement",
        ),
        number("whey_l", "Whey left in the vat", vat.whey.total_kg() / WHEY_DENSITY.value, Unit::Litre, 2, WHEY).lead(),
        number("whey_in_all_l", "Whey from vat and moulds", vat.whey_in_all.total_kg() / WHEY_DENSITY.value, Unit::Litre, 2, WHEY),
        number("whey_fat_percent", "Fat in the whey", vat.whey_in_all.fat_percent(), Unit::Percent, 2, WHEY),
        number("drained_curd_kg", "Drained curd", vat.drained_curd.total_kg(), Unit::Kilogram, 2, YIELD)
            .within(YIELD_SPREAD.value)
            .lead(),
        number("yield_percent", "Curd from 100 kg of milk", vat.yield_percent, Unit::Kilogram, 1, YIELD_OF_100)
            .within(YIELD_SPREAD.value),
        number(
            "van_slyke_yield_percent",
            "Curd from 100 kg of milk by a yield formula",
            vat.van_slyke_yield_percent,
            Unit::Kilogram,
            1,
            "(0.93 F + C − 0.1)·1.09/(1 − M); meant for 37 % moisture, low for moist cheese",
        ),
        number("curd_fat_percent", "Fat in the drained curd", vat.drained_curd.fat_percent(), Unit::Percent, 1, YIELD),
        number(
            "curd_protein_percent",
            "Protein in the drained curd",
            vat.drained_curd.percent(vat.drained_curd.protein_kg()),
            Unit::Percent,
            1,
            YIELD,
        ),
    ]
}
