//! The jar after the soak.

use super::{Facts, Step};
use crate::design::{Design, KeptIn, Stage, Unit};
use crate::law::growth::TABLE_B_PH;
use crate::plan::KeptPlan;
use crate::process::KeepingOutcome;
use crate::record::EntryKind;
use crate::report::{Amount, Target};

pub(super) fn keep(whole: &Design, kept: &KeptPlan, keeping: &KeepingOutcome, at_min: f64, facts: &Facts) -> Step {
    let design = &kept.keeping;
    let task = match (whole.pickling.pickled, design.kept_in) {
        (true, _) => "sour",
        (false, KeptIn::Oil) => "oil",
        (false, KeptIn::Vinegar | KeptIn::Bare) if whole.drying.drying_h > 0.0 => "weigh",
        (false, KeptIn::Vinegar | KeptIn::Bare) => "unmould",
    };
    let name = if design.kept_in == KeptIn::Oil { "Oil" } else { "Keep" };
    let (verb, what) = match design.kept_in {
        KeptIn::Vinegar => ("Keep", "the jars cold, every cheese under the vinegar.".to_owned()),
        KeptIn::Oil => (
            "Pour",
            format!(
                "off the vinegar and cover with oil, only if the meter showed less than pH {} at the centre and in a blended sample.",
                TABLE_B_PH.value
            ),
        ),
        KeptIn::Bare => ("Keep", "the cheeses cold and covered.".to_owned()),
    };
    let mut step = Step::once((task, name), Stage::Keeping, at_min, verb, what);
    if design.kept_in == KeptIn::Oil {
        let left = Amount::new(keeping.vinegar_left_ml, Unit::Millilitre, 0);
        step.targets.push(facts.target("vinegar_left_ml", "vinegar left in the jars", left));
        step.targets.push(facts.target("oil_ml", "oil for all jars", Amount::new(keeping.oil_ml, Unit::Millilitre, 0)));
    }
    let cold = Amount::new(design.keeping_temperature_c, Unit::Celsius, 1);
    step.targets.push(Target::exact(super::pickling::cold_label(design.keeping_temperature_c), cold));
    // No day is left to keep them where a plan ends with the meter.
    step.lasts = (design.keeping_days > 0.0).then(|| Facts::plain("for", design.keeping_days, Unit::Day, 0));
    "Swollen, gassy or smelly: discard untasted. Toxin may not show.".clone_into(&mut step.if_off);
    step.write_down(EntryKind::FridgeTemperature);
    step.what.push_str(&ends_here(kept));
    step.governed_by = &["kept_in", "poured_off_percent", "keeping_temperature_c", "keeping_days"];
    step
}

/// Returns why the plan ends here and what would let it go on, as sentences with a space before them; nothing where it goes as it was chosen.
fn ends_here(kept: &KeptPlan) -> String {
    let oil = format!(
        " The plan ends here: add no oil. Go on only if a pH meter shows less than pH {} at the centre of a cheese and in a blended sample.",
        TABLE_B_PH.value
    );
    let days = match (kept.fewer_days, kept.keeping.keeping_days > 0.0) {
        (false, _) => "",
        (true, true) => " You chose more days than rules allow a cheese like this, so the plan has fewer: the warnings say why.",
        (true, false) if kept.without_oil => {
            " Without that reading the plan gives no days of keeping: the warnings say why, and what you can change."
        }
        (true, false) => {
            " The plan ends here: not sour, they have been in the cold for as long as food-service rules allow. Go on only where a pH meter shows that the centre is sour too: the warnings say how, and what you can change."
        }
    };
    format!("{}{days}", if kept.without_oil { oil.as_str() } else { "" })
}
