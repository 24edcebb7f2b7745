//! A batch under other beliefs.

use crate::design::any::any_design;
use proptest::prelude::*;
use vatsketch::batch::{Batch, Reading, Readout, batch, batch_after, batch_given, readouts};
use vatsketch::design::{Design, Heating, MilkKind};
use vatsketch::process::{BELIEFS, Beliefs, Given, Runs};
use vatsketch::session::EXAMPLES;

/// The default, the examples, and one design for each way to warm.
fn designs() -> Vec<Design> {
    let mut all = vec![Design::default()];
    all.extend(EXAMPLES.iter().map(|example| example.design().unwrap()));
    for heating in [Heating::Hob, Heating::DoubleBoiler] {
        let mut design = Design::default();
        design.vat.heating = heating;
        all.push(design);
    }
    all
}

fn believing(design: &Design, beliefs: Beliefs, runs: Runs) -> Batch {
    batch_given(design, &Given { beliefs, runs }).unwrap()
}

/// Bit for bit: outcomes are compared by their numbers, and none of them is one that is unlike itself.
#[test]
fn usual_beliefs_change_nothing() {
    for design in designs() {
        assert!(batch_given(&design, &Given::default()).unwrap() == batch(&design).unwrap(), "{}", design.title);
    }
}

#[test]
fn the_middle_runs_alone_show_the_same_numbers() {
    for design in designs() {
        let whole = readouts(&batch(&design).unwrap());
        let middle = readouts(&believing(&design, Beliefs::default(), Runs::MiddleOnly));
        // This one figure is itself that of a run beside the one that is shown.
        let shown: Vec<&Readout> = whole.iter().filter(|figure| figure.key != "centre_to_4_2_if_slow_h").collect();
        assert_eq!(shown.len(), middle.len());
        for (one, other) in shown.into_iter().zip(&middle) {
            assert_eq!((one.key, &one.reading), (other.key, &other.reading), "{}", design.title);
        }
    }
}

#[test]
fn stages_that_do_not_look_at_a_belief_are_taken_over_and_no_others() {
    let design = Design::default();
    let usual = batch(&design).unwrap();
    for belief in BELIEFS {
        let other = believing(&design, belief.set(Beliefs::default(), belief.ends(&design).1), Runs::WithLikely);
        let (back, anew) = batch_after(&design, Some(&other)).unwrap();
        assert!(back == usual, "{}", belief.key);
        let first = belief.stages.iter().min().unwrap();
        assert!(anew.iter().all(|stage| stage >= first), "{}: {anew:?}", belief.key);
    }
}

#[test]
fn every_belief_moves_a_figure_by_as_much_as_shows() {
    let designs = designs();
    for belief in BELIEFS {
        let moves = designs.iter().any(|design| {
            let (least, most) = belief.ends(design);
            let [low, high] =
                [least, most].map(|factor| readouts(&believing(design, belief.set(Beliefs::default(), factor), Runs::MiddleOnly)));
            low.iter().any(|one| {
                high.iter()
                    .any(|other| one.key == other.key && matches!(one.reading, Reading::Number(_)) && one.text() != other.text())
            })
        });
        assert!(moves, "{} moves nothing", belief.key);
    }
}

/// What a carton says of its protein is said, not believed.
#[test]
fn the_protein_of_a_labelled_milk_stays_as_printed() {
    let mut design = Design::default();
    design.milk.milk_kind = MilkKind::Label;
    let rich = Beliefs { milk_protein: 1.08, ..Beliefs::default() };
    assert_eq!(believing(&design, rich, Runs::MiddleOnly).milk, believing(&design, Beliefs::default(), Runs::MiddleOnly).milk);
    design.milk.milk_kind = MilkKind::Cow;
    let milk = |beliefs: Beliefs| believing(&design, beliefs, Runs::MiddleOnly).milk.done().unwrap().bought;
    let (usual, rich) = (milk(Beliefs::default()), milk(rich));
    assert!((rich.protein_kg() / usual.protein_kg() - 1.08).abs() < 0.002, "the volume is the same, the density a little more");
    assert!((rich.percent(rich.fat_kg) - usual.percent(usual.fat_kg)).abs() < 1e-12);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// Whatever is believed, no matter is lost and every figure is a number.
    #[test]
    fn any_design_under_any_beliefs_keeps_its_matter(
        design in any_design(0.3), shares in prop::collection::vec(0.0..=1.0_f64, BELIEFS.len()),
    ) {
        let beliefs = BELIEFS.iter().zip(shares).fold(Beliefs::default(), |beliefs, (belief, share)| {
            belief.set(beliefs, belief.at_share(&design, share))
        });
        let batch = believing(&design, beliefs, Runs::MiddleOnly);
        prop_assert!(batch.balance.greatest_relative_residual() < 1e-9);
        for figure in readouts(&batch) {
            if let Reading::Number(number) = figure.reading {
                prop_assert!(number.is_finite(), "{} is {number}", figure.key);
            }
        }
    }
}
