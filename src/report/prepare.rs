//! What is prepared before the first step.

use super::{Amount, Step};
use crate::design::{Heating, Unit, VatDesign};
use crate::law::kitchen::STEAM;
use crate::units::Units;

/// Returns what is prepared before the milk goes into the pot; each is common practice without a source unless its record says more.
pub(super) fn prepare(design: &VatDesign, steps: &[Step]) -> Vec<String> {
    let mut all = vec!["hands washed, sleeves up".to_owned()];
    // In a week cleaning is a step of its own.
    if !steps.iter().any(|step| step.times.iter().any(|time| time.task == "sanitise")) {
        all.push(format!("pot, ladle and knife steamed for {:.0}\u{a0}min, and cool again", STEAM.value));
        let dries = steps.iter().any(Step::begins_drying);
        let what = if dries { "moulds, rack and trays" } else { "moulds and rack" };
        all.push(format!("{what}: a sanitiser, as its label says"));
    }
    all.push("lid, cloth, clock and thermometer at hand".to_owned());
    all.push("scale, jug, spoons and a small syringe".to_owned());
    if design.heating == Heating::Bath {
        let amount = |value, unit, decimals| Amount::new(value, unit, decimals).to_string().replace('\u{a0}', " ");
        all.push(format!(
            "bath: {} of water at {}, set to {}",
            amount(design.bath_l, Unit::Litre, 1),
            amount(design.bath_start_temperature_c, Unit::Celsius, 0),
            amount(design.bath_set_temperature_c, Unit::Celsius, 1)
        ));
    }
    if steps.iter().any(|step| step.write_down.starts_with("pH")) {
        all.push("pH meter charged; buffers of pH\u{a0}4 and pH\u{a0}7 in date".to_owned());
    }
    all
}

/// Returns the same, shown in other units.
pub(super) fn shown_in(all: Vec<String>, units: Units) -> Vec<String> {
    all.into_iter().map(|words| units.told(&words)).collect()
}
