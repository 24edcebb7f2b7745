//! From the rennet to the end of the rest: setting, testing, cutting.

use super::{Facts, Step, measured};
use crate::design::{Design, Stage, Unit};
use crate::law::kitchen::{COLUMNS_FROM, CUT_SPREAD, HEALING};
use crate::process::{MilkOutcome, VatOutcome};
use crate::record::EntryKind;
use crate::report::hold::blanks_for;
use crate::report::{Amount, Hold, StepTime, Target};

/// The steps from the rennet to the end of the rest.
pub(super) fn from_rennet(design: &Design, milk: &MilkOutcome, vat: &VatOutcome, facts: &Facts) -> Vec<Step> {
    let mut steps = vec![rennet(design, milk, vat, facts), test(design, vat, facts), cut(design, vat)];
    if design.vat.whey_rest_min > 0.0 {
        let at_min = vat.to_rennet_min + vat.cut_min;
        let what = rest_words(design.vat.whey_rest_min);
        let mut rest = Step::once(("cut", "Rest"), Stage::Vat, at_min, "Rest", what);
        rest.lasts = Some(Facts::plain("for", design.vat.whey_rest_min, Unit::Minute, 0));
        rest.only_waits = true;
        rest.targets.push(Facts::plain("whey in the vat", vat.whey.total_kg(), Unit::Kilogram, 1));
        "Milky whey: it was cut too soft; ladle gently.".clone_into(&mut rest.if_off);
        rest.write_down(EntryKind::VatWhey);
        rest.governed_by = &["whey_rest_min", "curd_piece_mm"];
        steps.push(rest);
    }
    steps
}

/// Returns what is done while the cut curd rests: first nothing, so that the cut faces close and hold the fat back.
fn rest_words(rest_min: f64) -> String {
    let begins = "the cut curd in its whey, covered:";
    if rest_min <= HEALING.value {
        return format!("{begins} unmoved, for the cut faces to close (common practice, no source).");
    }
    let healing_min = HEALING.value;
    format!(
        "{begins} {healing_min:.0}\u{a0}min unmoved, for the cut faces to close, then moved gently now and then (common practice, no source)."
    )
}

/// Less water than this is none that could be measured.
const LEAST_WATER_ML: f64 = 0.5;

fn rennet(design: &Design, milk: &MilkOutcome, vat: &VatOutcome, facts: &Facts) -> Step {
    let mut step = Step::once(
        ("rennet", "Rennet"),
        Stage::Vat,
        vat.to_rennet_min,
        "Stir",
        "in the rennet, freshly diluted in cool water, for half a minute; then stop the milk moving, cover it and leave it alone.",
    );
    let rennet = facts.target("rennet_ml", "rennet", Amount::new(milk.rennet_ml, Unit::Millilitre, 2));
    // The strength of a powder is that of a gram, so that its grams are the millilitres of a liquid.
    let powder = format!("If yours is a powder of that strength in each gram, weigh {:.2}\u{a0}g instead.", milk.rennet_ml);
    let drops = milk.rennet_drops.map(|drops| (drops, design.milk.rennet_drops_in_ml));
    let liquid = measured::liquid("the rennet", &rennet, drops);
    step.how = if liquid.is_empty() { powder } else { format!("{liquid} {powder}") };
    step.targets.push(rennet);
    if milk.rennet_water_ml >= LEAST_WATER_ML {
        step.targets.push(facts.target("rennet_water_ml", "water", Amount::new(milk.rennet_water_ml, Unit::Millilitre, 0)));
    }
    step.lasts = Some(Facts::plain("first test after", design.vat.first_test_min, Unit::Minute, 0));
    "Diluted rennet has stood: mix a new one.".clone_into(&mut step.if_off);
    step.write_down(EntryKind::RennetAdded);
    step.governed_by = &[
        "rennet_label",
        "rennet_strength_imcu_ml",
        "rennet_ratio_parts",
        "rennet_dose_imcu_kg",
        "rennet_dilution_times",
        "rennet_drops_counted",
        "rennet_drops_in_ml",
    ];
    step
}

fn test(design: &Design, vat: &VatOutcome, facts: &Facts) -> Step {
    let first_min = vat.to_rennet_min + design.vat.first_test_min;
    let mut step = Step::once(("cut", "Test"), Stage::Vat, first_min, "Test", "for a clean break with a clean knife.");
    step.targets.push(facts.target("clean_break_min", "after the rennet", Amount::new(vat.clean_break_min, Unit::Minute, 0)));
    step.targets.push(Facts::plain("temperature", vat.setting_temperature_c, Unit::Celsius, 1));
    if vat.tests > 1 {
        let gap_min = (vat.cut_min - design.vat.first_test_min) / f64::from(vat.tests - 1);
        let at_min = |test: u32| first_min + f64::from(test - 1) * gap_min;
        let tests = (1..vat.tests).map(|test| StepTime::counted(format!("test_{test}"), format!("Test {test}"), at_min(test)));
        step.times = tests.chain([StepTime::counted("cut", format!("Test {}", vat.tests), at_min(vat.tests))]).collect();
    }
    step.hold = Some(Hold {
        ask: "Does the cut open clean, with clear whey in it",
        aim: None,
        then: "Cut only then.".to_owned(),
        if_not: "ragged or milky, wait and test again (common practice, no source).".to_owned(),
        blanks: blanks_for(&[EntryKind::CleanBreak]),
        records: vec![EntryKind::CleanBreak],
    });
    step.write_down(EntryKind::CleanBreak);
    step.governed_by = &["heat_while_setting", "firmness_multiple", "first_test_min"];
    step
}

/// Small moulds are filled from columns; smaller pieces lose their whey sooner, and are cut in their depth as well.
fn cut(design: &Design, vat: &VatOutcome) -> Step {
    let at_min = vat.to_rennet_min + vat.cut_min;
    let piece_mm = design.vat.curd_piece_mm;
    let (what, label) = if piece_mm < COLUMNS_FROM.value {
        let what = "the curd slowly, straight down to the bottom and both ways, into columns; then at a slant from each side, until the pieces are about as deep as they are wide (common practice, no source).";
        (what, "pieces across")
    } else {
        ("the curd slowly, straight down to the bottom and both ways, into columns (common practice, no source).", "columns across")
    };
    let mut step = Step::once(("cut", "Cut"), Stage::Vat, at_min, "Cut", what);
    let across = Amount::new(piece_mm, Unit::Millimetre, 0);
    step.targets.push(Target::near(label, across, CUT_SPREAD.value * piece_mm));
    "Tears: let it stand ten minutes more.".clone_into(&mut step.if_off);
    step.write_down(EntryKind::CurdCut);
    step.governed_by = &["curd_piece_mm"];
    step
}
