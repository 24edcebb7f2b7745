//! Between what the figures likely lie.

use vatsketch::analysis::{DrawnFigures, LikelyFigure, drawn_batch, draws, likely_figures};
use vatsketch::batch::{Batch, batch};
use vatsketch::design::{Design, Heating};
use vatsketch::figure::{Reading, figures};
use vatsketch::process::{UNCERTAIN_PARAMETERS, UncertainParameters};
use vatsketch::units::Units;

fn drawn(design: &Design, count: usize) -> Vec<Batch> {
    draws(design, count).iter().map(|parameters| drawn_batch(design, parameters).unwrap()).collect()
}

fn likely(design: &Design, drawn: &[Batch]) -> Vec<LikelyFigure> {
    let kept: Vec<DrawnFigures> = drawn.iter().map(DrawnFigures::of).collect();
    likely_figures(&batch(design).unwrap(), &kept)
}

fn find<'a>(figures: &'a [LikelyFigure], key: &str) -> &'a LikelyFigure {
    figures.iter().find(|likely| likely.figure.key == key).unwrap_or_else(|| panic!("{key}"))
}

/// A vat whose vinegar may or may not be enough.
fn hardly_sour() -> Design {
    let mut design = Design::default();
    design.pickling.acid_g_per_100ml = 4.0;
    design.pickling.vinegar_ml_per_g = 2.0;
    design
}

#[test]
fn the_same_design_has_the_same_draws_and_another_number_of_them_others() {
    let design = Design::default();
    assert_eq!(draws(&design, 30), draws(&design, 30));
    assert_ne!(draws(&design, 30)[..10], draws(&design, 10)[..]);
    for parameter in UNCERTAIN_PARAMETERS {
        let (least, most) = parameter.ends(&design);
        let factors: Vec<f64> = draws(&design, 50).iter().map(|parameters| parameter.of(parameters)).collect();
        assert!(factors.iter().all(|factor| least <= *factor && *factor <= most), "{}", parameter.key);
        assert_eq!(factors.iter().filter(|factor| **factor < 1.0).count(), 25, "{}: half of the draws lie below", parameter.key);
    }
}

#[test]
fn likely_ranges_lie_within_the_draws_and_in_their_order() {
    let design = Design::default();
    let batches = drawn(&design, 40);
    let all = likely(&design, &batches);
    assert!(all.len() > 100);
    for likely in &all {
        let numbers: Vec<f64> = batches
            .iter()
            .filter_map(|batch| figures(batch).into_iter().find(|figure| figure.key == likely.figure.key))
            .filter_map(|figure| if let Reading::Number(number) = figure.reading { Some(number) } else { None })
            .collect();
        let (lowest, highest) = numbers.iter().fold((f64::MAX, f64::MIN), |(low, high), x| (low.min(*x), high.max(*x)));
        let ordered: Vec<f64> = [likely.least, likely.middle, likely.most].into_iter().flatten().collect();
        assert!(ordered.iter().all(|value| (lowest..=highest).contains(value)), "{}", likely.figure.key);
        assert!(ordered.windows(2).all(|pair| pair[0] <= pair[1]), "{}", likely.figure.key);
    }
}

/// On a hob that keeps the milk where it is, the clotting time is 2.5 min and a part that is proportional to one constant (chapter 1: t = a + k/E),
/// which nothing else moves: a tenth of the draws must lie below the tenth of the distribution that is drawn from, calculated apart: by the
/// triangle, 1 − (1 − 0.7)(1 − √0.2) of the middle below, for the range is 0.7 to 1.3 times the value. One draw in 200 to either side is the most
/// that a Latin hypercube can be off.
#[test]
fn a_figure_that_one_constant_moves_has_the_tenths_of_that_constant() {
    let mut design = Design::default();
    design.vat.heating = Heating::Hob;
    design.pickling.pickled = false;
    let figures = likely(&design, &drawn(&design, 200));
    let likely = find(&figures, "clotting_min");
    let usual = batch(&design).unwrap().vat.done().unwrap().clotting_min;
    let minutes = |times: f64| 2.5 + (usual - 2.5) * times;
    let low = minutes(0.7 + 0.3 * 0.2_f64.sqrt());
    let high = minutes(1.3 - 0.3 * 0.2_f64.sqrt());
    let (least, most) = (likely.least.unwrap(), likely.most.unwrap());
    assert!((least / low - 1.0).abs() < 0.01 && (most / high - 1.0).abs() < 0.01, "{least} for {low}, {most} for {high}");
    assert!((likely.middle.unwrap() / usual - 1.0).abs() < 0.01);
}

#[test]
fn what_rests_on_no_uncertain_constant_does_not_move() {
    let design = Design::default();
    let figures = likely(&design, &drawn(&design, 20));
    for key in ["rennet_imcu_kg", "draining_h", "cheese_count", "soak_h"] {
        let likely = find(&figures, key);
        assert!(!likely.moves() && likely.least == likely.most, "{key}");
        assert!(!likely.in_words(Units::METRIC).contains('–'), "{}", likely.in_words(Units::METRIC));
    }
    assert!(find(&figures, "dried_cheese_g").moves());
}

/// The range that is said beside a figure comes from its runs at the ends of one constant; the tenths of the draws lie inside.
#[test]
fn the_draws_do_not_contradict_the_ranges_beside_the_figures() {
    for design in [Design::default(), hardly_sour()] {
        for likely in likely(&design, &drawn(&design, 60)) {
            if let (Some((low, high)), Some(least), Some(most)) = (likely.figure.likely, likely.least, likely.most) {
                assert!(low <= least && most <= high, "{}: {least} to {most} is not in {low} to {high}", likely.figure.key);
            }
        }
    }
}

#[test]
fn draws_that_never_come_there_are_counted_and_said() {
    let design = hardly_sour();
    let batches = drawn(&design, 40);
    let figures = likely(&design, &batches);
    let sour = find(&figures, "centre_to_4_2_h");
    let never = batches.iter().filter(|batch| batch.pickling.done().unwrap().targets[1].centre_h.is_none()).count();
    assert!(0 < never && never < 40, "{never} of 40 would say little");
    assert!((sour.never - never as f64 / 40.0).abs() < 1e-12);
    assert_eq!(sour.most.is_none(), sour.never > 0.1);
    let words = sour.in_words(Units::METRIC);
    assert!(words.contains("never") && words.contains("of 100 trial runs"), "{words}");
}

#[test]
fn draws_whose_stage_fails_are_counted_apart() {
    let mut design = Design::default();
    // Moulds that just hold the curd: a little more of it does not go in.
    let drained = batch(&design).unwrap().draining.done().cloned().unwrap();
    design.draining.mould_height_mm = (drained.thickness_mm * 0.99).round();
    let batches = drawn(&design, 40);
    let failed = batches.iter().filter(|batch| batch.draining.failed().is_some()).count();
    assert!(0 < failed && failed < 40, "{failed} of 40 would say little");
    let kept: Vec<DrawnFigures> = batches.iter().map(DrawnFigures::of).collect();
    let shown = batches.iter().find(|batch| batch.draining.done().is_some()).unwrap();
    let figures = likely_figures(shown, &kept);
    let cheese = find(&figures, "drained_cheese_g");
    assert!((cheese.failed - failed as f64 / 40.0).abs() < 1e-12 && cheese.never == 0.0);
    assert!(cheese.in_words(Units::METRIC).contains("it cannot be calculated"), "{}", cheese.in_words(Units::METRIC));
}

#[test]
fn a_draw_of_the_usual_beliefs_is_the_batch_that_is_shown() {
    let design = Design::default();
    let usual = drawn_batch(&design, &UncertainParameters::default()).unwrap();
    for likely in likely(&design, &[usual]) {
        let Reading::Number(number) = likely.figure.reading else { continue };
        assert_eq!((likely.least, likely.most), (Some(number), Some(number)), "{}", likely.figure.key);
    }
}
