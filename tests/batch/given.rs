//! A batch under other parameters.

use crate::design::any::any_design;
use proptest::prelude::*;
use vatsketch::batch::{Batch, batch, batch_after, batch_given};
use vatsketch::design::{Design, Heating, MilkKind, SouredBy};
use vatsketch::figure::{Figure, Reading, figures, rests_on_runs_beside};
use vatsketch::process::{Given, Runs, UNCERTAIN_PARAMETERS, UncertainParameters};
use vatsketch::session::EXAMPLES;

/// The default, the examples, one design for each way to warm, and one that a culture sours.
fn designs() -> Vec<Design> {
    let mut all = vec![Design::default()];
    all.extend(EXAMPLES.iter().map(|example| example.design().unwrap()));
    for heating in [Heating::Hob, Heating::DoubleBoiler] {
        let mut design = Design::default();
        design.vat.heating = heating;
        all.push(design);
    }
    all.push(cultured());
    // Cold and short, so that no germ comes to its greatest density before the vinegar, which is not so cold.
    let mut cold = Design::default();
    cold.draining.draining_temperature_c = 4.0;
    (cold.drying.cabinet_temperature_c, cold.drying.drying_h) = (22.0, 8.0);
    cold.pickling.pickling_temperature_c = 8.0;
    all.push(cold);
    all
}

fn cultured() -> Design {
    let mut design = Design::default();
    design.milk.soured_by = SouredBy::Culture;
    design
}

fn under(design: &Design, parameters: &UncertainParameters, runs: Runs) -> Batch {
    batch_given(design, &Given { parameters: *parameters, runs, ..Given::default() }).unwrap()
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
        let whole = figures(&batch(&design).unwrap());
        let middle = figures(&under(&design, &UncertainParameters::default(), Runs::MiddleOnly));
        // A few figures are themselves those of a run beside the one that is shown.
        let shown: Vec<&Figure> = whole.iter().filter(|figure| !rests_on_runs_beside(figure.key)).collect();
        assert_eq!(shown.len(), middle.len());
        for (one, other) in shown.into_iter().zip(&middle) {
            assert_eq!((one.key, &one.reading), (other.key, &other.reading), "{}", design.title);
        }
    }
}

#[test]
fn stages_that_do_not_look_at_a_belief_are_taken_over_and_no_others() {
    for design in [Design::default(), cultured()] {
        let usual = batch(&design).unwrap();
        for parameter in UNCERTAIN_PARAMETERS {
            let other = under(&design, &parameter.set(UncertainParameters::default(), parameter.ends(&design).1), Runs::WithLikely);
            let (back, anew) = batch_after(&design, Some(&other)).unwrap();
            assert!(back == usual, "{}", parameter.key);
            let first = parameter.stages.iter().min().unwrap();
            assert!(anew.iter().all(|stage| stage >= first), "{}: {anew:?}", parameter.key);
        }
    }
}

#[test]
fn every_belief_moves_a_figure_by_as_much_as_shows() {
    let designs = designs();
    for parameter in UNCERTAIN_PARAMETERS {
        let moves = designs.iter().any(|design| {
            let (least, most) = parameter.ends(design);
            let [low, high] = [least, most]
                .map(|factor| figures(&under(design, &parameter.set(UncertainParameters::default(), factor), Runs::MiddleOnly)));
            low.iter().any(|one| {
                high.iter()
                    .any(|other| one.key == other.key && matches!(one.reading, Reading::Number(_)) && one.text() != other.text())
            })
        });
        assert!(moves, "{} moves nothing", parameter.key);
    }
}

/// What a carton says of its protein is said, not believed.
#[test]
fn the_protein_of_a_labelled_milk_stays_as_printed() {
    let mut design = Design::default();
    design.milk.milk_kind = MilkKind::Label;
    let rich = UncertainParameters { milk_protein: 1.08, ..UncertainParameters::default() };
    assert_eq!(
        under(&design, &rich, Runs::MiddleOnly).milk,
        under(&design, &UncertainParameters::default(), Runs::MiddleOnly).milk
    );
    design.milk.milk_kind = MilkKind::Cow;
    let milk = |parameters: &UncertainParameters| under(&design, parameters, Runs::MiddleOnly).milk.done().unwrap().bought;
    let (usual, rich) = (milk(&UncertainParameters::default()), milk(&rich));
    assert!((rich.protein_kg() / usual.protein_kg() - 1.08).abs() < 0.002, "the volume is the same, the density a little more");
    assert!((rich.percent(rich.fat_kg) - usual.percent(usual.fat_kg)).abs() < 1e-12);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// Whatever is believed, no matter is lost and every figure is a number.
    #[test]
    fn any_design_under_any_beliefs_keeps_its_matter(
        design in any_design(0.3), shares in prop::collection::vec(0.0..=1.0_f64, UNCERTAIN_PARAMETERS.len()),
    ) {
        let parameters = UNCERTAIN_PARAMETERS.iter().zip(shares).fold(UncertainParameters::default(), |parameters, (parameter, share)| {
            parameter.set(parameters, parameter.at_share(&design, share))
        });
        let batch = under(&design, &parameters, Runs::MiddleOnly);
        prop_assert!(batch.balance.greatest_relative_residual() < 1e-9);
        for figure in figures(&batch) {
            if let Reading::Number(number) = figure.reading {
                prop_assert!(number.is_finite(), "{} is {number}", figure.key);
            }
        }
    }
}
