//! The choice that meets a goal.

use crate::design::any::{any_design, value_at};
use proptest::prelude::*;
use vatsketch::analysis::{FigureError, Goal, SolveError, Solved, offered, offered_pairs, solve};
use vatsketch::batch::{Batch, batch};
use vatsketch::design::{CreamBy, Design, DryingPlace, Value, field};
use vatsketch::figure::{Figure, Reading, figures};
use vatsketch::units::Units;

fn default() -> Batch {
    batch(&Design::default()).unwrap()
}

fn goal(figure: &str, wanted: f64) -> Goal {
    Goal { figure: figure.to_owned(), wanted }
}

fn figure(batch: &Batch, key: &str) -> Option<Figure> {
    figures(batch).into_iter().find(|figure| figure.key == key)
}

fn number(figure: &Figure) -> Option<f64> {
    match figure.reading {
        Reading::Number(number) => Some(number),
        Reading::Words(_) | Reading::Switch(_) => None,
    }
}

/// Checks that an answer really gives what it says, calculated again without anything taken over.
fn really(design: &Design, solved: &Solved) -> f64 {
    let answer = solved.answer();
    let mut design = design.clone();
    design.set(answer.choice.key, Value::Number(answer.value)).unwrap();
    let anew = figure(&batch(&design).unwrap(), answer.figure.key).unwrap();
    assert_eq!(anew, answer.figure);
    number(&anew).unwrap()
}

#[test]
fn the_milk_for_twelve_cheeses_of_a_weight_is_found_and_is_a_number_for_a_jug() {
    let now = default();
    let solved = solve(&now, &goal("dried_cheese_g", 70.0), "milk_l").unwrap();
    assert!(matches!(solved, Solved::Reached(_)), "{solved:?}");
    assert!((really(&now.design, &solved) - 70.0).abs() <= 0.5);
    let value = solved.answer().value;
    assert!((value * 10.0 - (value * 10.0).round()).abs() < 1e-9, "{value} L");
    let said = solved.in_words(&goal("dried_cheese_g", 70.0), Units::METRIC);
    assert!(said.starts_with("Milk ") && said.contains("Weight of a dried cheese 70 g"), "{said}");
}

#[test]
fn a_loss_that_is_wanted_takes_so_many_hours_of_drying() {
    let now = default();
    let solved = solve(&now, &goal("drying_loss_percent", 30.0), "drying_h").unwrap();
    assert!(matches!(solved, Solved::Reached(_)), "{solved:?}");
    assert!((really(&now.design, &solved) - 30.0).abs() <= 0.05);
}

#[test]
fn a_count_is_answered_with_a_count() {
    let now = default();
    let solved = solve(&now, &goal("drained_cheese_g", 80.0), "mould_count").unwrap();
    assert_eq!(solved.answer().value.fract(), 0.0);
    // No count gives exactly that weight: it is not reachable, and neighbours are no nearer.
    let off = |count: f64| {
        let mut design = now.design.clone();
        design.set("mould_count", Value::Number(count)).unwrap();
        figure(&batch(&design).unwrap(), "drained_cheese_g")
            .and_then(|figure| number(&figure))
            .map_or(f64::INFINITY, |g| (g - 80.0).abs())
    };
    let best = solved.answer().value;
    assert!(off(best) <= off(best - 1.0) && off(best) <= off(best + 1.0), "{best}");
}

#[test]
fn what_is_out_of_reach_is_told_with_the_nearest() {
    let now = default();
    let wanted = goal("drying_loss_percent", 95.0);
    let solved = solve(&now, &wanted, "drying_h").unwrap();
    let Solved::NotReachable { nearest } = &solved else { panic!("{solved:?}") };
    assert_eq!(nearest.value, 720.0, "the longest drying");
    let said = solved.in_words(&wanted, Units::METRIC);
    assert!(said.contains("95.0 % is not reachable") && said.contains("with Drying time 720 h"), "{said}");
    // A choice that does not move the figure at all stays where it is.
    let still = solve(&now, &goal("cream_g", 500.0), "drying_h").unwrap();
    assert!(matches!(&still, Solved::NotReachable { nearest } if nearest.value == now.design.drying.drying_h), "{still:?}");
}

/// The figure is not there now, because the fat target wants cream: it comes with another target.
#[test]
fn a_figure_that_is_not_there_yet_can_be_aimed_at() {
    let solved = solve(&default(), &goal("skim_l", 1.0), "fat_target_percent").unwrap();
    assert!(matches!(solved, Solved::Reached(_)), "{solved:?}");
    let mut stopped = Design::default();
    stopped.draining.mould_count = 1;
    let corrected = solve(&batch(&stopped).unwrap(), &goal("cheese_count", 14.0), "mould_count").unwrap();
    assert_eq!(corrected.answer().value, 14.0);
}

#[test]
fn what_cannot_be_looked_for_is_refused_with_the_reason() {
    let now = default();
    let refused = |figure: &str, wanted: f64, choice: &str| solve(&now, &goal(figure, wanted), choice).unwrap_err();
    assert!(matches!(refused("cream_g", f64::NAN, "milk_l"), SolveError::WantedNotANumber { .. }));
    assert!(refused("craem_g", 1.0, "milk_l").to_string().contains("did you mean `cream_g`"));
    assert!(matches!(refused("firmness", 1.0, "milk_l"), SolveError::Figure(FigureError::NotANumber { .. })));
    assert!(matches!(refused("cream_g", 1.0, "mlik_l"), SolveError::Choice(_)));
    assert!(matches!(refused("cream_g", 1.0, "milk_kind"), SolveError::ChoiceNotANumber { .. }));
    assert!(matches!(refused("cream_g", 1.0, "cream_on_hand_ml"), SolveError::NotInUse { .. }));
}

/// Designs which between them have every figure and every choice that is offered.
fn designs() -> Vec<Batch> {
    let (mut lean, mut amount, mut open) = (Design::default(), Design::default(), Design::default());
    lean.milk.fat_target_percent = 2.0;
    amount.milk.cream_by = CreamBy::CreamAmount;
    open.drying.drying_place = DryingPlace::OpenAir;
    [Design::default(), lean, amount, open].iter().map(|design| batch(design).unwrap()).collect()
}

#[test]
fn every_offered_pair_is_a_choice_and_a_number_of_some_design() {
    let batches = designs();
    let had: Vec<(&str, &str)> = batches.iter().flat_map(offered).map(|(choice, figure)| (choice.key, figure.key)).collect();
    let missing: Vec<_> = offered_pairs().filter(|pair| !had.contains(pair)).collect();
    assert!(missing.is_empty(), "{missing:?}");
}

/// Works a figure out at one value of the choice, and looks for a value that gives it from another design; what is found must give it too.
fn inverts(start: &Batch, choice: &str, key: &str, share: f64) -> Result<(), TestCaseError> {
    let choice = field(choice).unwrap();
    let mut there = start.design.clone();
    choice.set(&mut there, value_at(choice, share)).unwrap();
    // A choice that leaves no batch there leaves nothing to look for.
    let Some(wanted) = figure(&batch(&there).unwrap(), key).and_then(|figure| number(&figure)) else { return Ok(()) };
    let solved = solve(start, &goal(key, wanted), choice.key).unwrap();
    let at = choice.get(&there);
    prop_assert!(matches!(solved, Solved::Reached(_)), "{} {at} gives {key} {wanted}, but {solved:?}", choice.key);
    let reached = really(&start.design, &solved);
    prop_assert!((reached - wanted).abs() <= solved.answer().figure.rounding(), "{} → {key}: {reached} for {wanted}", choice.key);
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1))]

    /// Every pair, each from its own place in the range and in the first design that has it.
    #[test]
    fn solving_inverts_the_calculation_for_every_offered_pair(shares in prop::collection::vec(0.0..=1.0_f64, 80..81)) {
        let mut shares = shares.into_iter();
        let mut done = std::collections::HashSet::new();
        for start in designs() {
            for (choice, figure) in offered(&start).into_iter().filter(|(choice, figure)| done.insert((choice.key, figure.key))) {
                inverts(&start, choice.key, figure.key, shares.next().unwrap())?;
            }
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(12))]

    #[test]
    fn solving_inverts_the_calculation_of_any_design(design in any_design(0.12), pair in any::<prop::sample::Index>(), share in 0.0..=1.0_f64) {
        let start = batch(&design).unwrap();
        let offered = offered(&start);
        prop_assume!(!offered.is_empty());
        let (choice, figure) = pair.get(&offered);
        inverts(&start, choice.key, figure.key, share)?;
    }
}
