//! Into the vinegar, and the test of the acid.

use super::{Facts, Step, measured::CALIBRATE};
use crate::design::{JarLay, PicklingDesign, Stage, Unit};
use crate::law::growth::COLD_ENOUGH;
use crate::law::kitchen::{BOILED_JARS, JUG_SPREAD};
use crate::process::{PH_TARGETS, PicklingOutcome};
use crate::record::EntryKind;
use crate::report::hold::blanks_for;
use crate::report::{Amount, Hold, Target};

/// Returns what a temperature of the cold is called: a choice that is warmer than rules allow is no limit to keep to.
pub(super) fn cold_label(temperature_c: f64) -> &'static str {
    if temperature_c > COLD_ENOUGH.value { "kept at" } else { "no warmer than" }
}

/// The steps of the vinegar; none where the cheeses do not go into it.
pub(super) fn pickling(design: &PicklingDesign, pickling: &PicklingOutcome, dried_min: f64, facts: &Facts) -> Vec<Step> {
    if !pickling.pickled {
        return Vec::new();
    }
    vec![cover(design, pickling, dried_min, facts), test(design, pickling, dried_min, facts)]
}

fn cover(design: &PicklingDesign, pickling: &PicklingOutcome, at_min: f64, facts: &Facts) -> Step {
    let what = match design.jar_lay {
        JarLay::Flat => {
            "the cheeses with the vinegar: flat in their jars, with a thin mesh between them that the vinegar runs through."
        }
        JarLay::FlatTouching => "the cheeses with the vinegar: flat in their jars, stacked with nothing between.",
        JarLay::OnEdge => "the cheeses with the vinegar: on edge in their jars, with gaps between them.",
    };
    let mut step = Step::once(("vinegar", "Vinegar"), Stage::Pickling, at_min, "Cover", what);
    let jar_ml = pickling.vinegar_each_ml * f64::from(pickling.cheeses_per_jar);
    let in_a_jar = Amount::new(jar_ml, Unit::Millilitre, 0);
    step.targets.push(Target::near("vinegar in a full jar", in_a_jar, JUG_SPREAD.value * jar_ml));
    step.targets.push(Facts::plain("cheeses in it", f64::from(pickling.cheeses_per_jar), Unit::One, 0));
    step.targets.push(facts.target("jars", "jars", Amount::new(f64::from(pickling.jars), Unit::One, 0)));
    step.targets.push(Facts::plain("vinegar for each cheese", pickling.vinegar_each_ml, Unit::Millilitre, 0));
    if pickling.vinegar_salt_g > 0.0 {
        step.targets.push(facts.target(
            "vinegar_salt_g",
            "salt, dissolved in it first",
            Amount::new(pickling.vinegar_salt_g, Unit::Gram, 0),
        ));
    }
    if pickling.pile > 1 {
        step.targets.push(Facts::plain("stacked in the tallest pile", f64::from(pickling.pile), Unit::One, 0));
    }
    let cold = Amount::new(design.pickling_temperature_c, Unit::Celsius, 1);
    step.targets.push(Target::exact(cold_label(design.pickling_temperature_c), cold));
    step.how = format!(
        "Boil the jars for {:.0}\u{a0}min first, longer high above the sea, and let them cool. Close them, write their labels, and put them into the fridge.",
        BOILED_JARS.value
    );
    "A cheese is not covered: weigh it down, or add vinegar of the same strength.".clone_into(&mut step.if_off);
    step.write_down(EntryKind::VinegarPoured);
    step.governed_by = &[
        "pickled",
        "cheese_ph_from",
        "cheese_ph",
        "acid_g_per_100ml",
        "vinegar_by",
        "vinegar_ml_per_g",
        "pickling_temperature_c",
        "jar_width_mm",
        "jar_height_mm",
        "jar_lay",
        "vinegar_salt_g_per_100ml",
    ];
    step
}

fn test(design: &PicklingDesign, pickling: &PicklingOutcome, dried_min: f64, facts: &Facts) -> Step {
    let at_min = dried_min + 60.0 * design.pickling_h;
    let [_, wanted] = PH_TARGETS;
    let mut step = Step::once(
        ("sour", "pH"),
        Stage::Pickling,
        at_min,
        "Measure",
        if pickling.pile > 1 {
            "the pH with a meter: at the centre of a cheese from the middle of a pile, and in a blended sample of it."
        } else {
            "the pH with a meter: at the centre of one cheese and in a blended sample."
        },
    );
    let ph = |value: f64| Amount::new(value, Unit::One, 1);
    step.targets.push(Facts::plain("both below pH", wanted, Unit::One, 1));
    step.targets.push(facts.target("centre_ph", "model at the centre", ph(pickling.end.centre_ph)));
    step.targets.push(facts.target("slurry_ph", "model, blended", ph(pickling.end.slurry_ph)));
    step.if_off = format!(
        "{wanted} or above: leave them in the cold vinegar and measure again in a week. Still so then: discard them. A modelled pH is no proof."
    );
    step.how = format!(
        "{CALIBRATE} Cut one cheese and push the probe into its middle; mash a second one whole for the blended sample. Discard both."
    );
    step.hold = Some(Hold {
        ask: "Do both read less than pH",
        aim: Some(Facts::plain("pH", wanted, Unit::One, 1)),
        then: "Pour nothing off before.".to_owned(),
        if_not: String::new(),
        blanks: blanks_for(&[EntryKind::CentrePh, EntryKind::BlendedPh, EntryKind::Initials]),
        records: vec![EntryKind::CentrePh, EntryKind::BlendedPh, EntryKind::Initials],
    });
    step.write_down(EntryKind::CentrePh);
    step.governed_by = &["pickling_h"];
    step
}
