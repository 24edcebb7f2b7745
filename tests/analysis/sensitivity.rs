//! What moves a figure.

use std::collections::BTreeSet;
use vatsketch::analysis::{Cause, Effect, FigureError, constants_of, link, sensitivity};
use vatsketch::batch::{Batch, batch, batch_given};
use vatsketch::design::{Design, Kind, Value};
use vatsketch::figure::{Reading, figures};
use vatsketch::process::{Given, Runs, UNCERTAIN_PARAMETERS, UncertainParameters};

fn key(effect: &Effect) -> &'static str {
    effect.cause.key()
}

#[test]
fn the_movers_of_a_figure_are_ranked_and_none_of_them_is_idle() {
    let batch = batch(&Design::default()).unwrap();
    for figure in ["drained_cheese_g", "drying_loss_percent", "clotting_min"] {
        let effects = sensitivity(&batch, figure).unwrap();
        assert!(!effects.is_empty() && effects.windows(2).all(|pair| pair[0].reach() >= pair[1].reach()), "{figure}");
        assert!(effects.iter().all(|effect| effect.reach() > 0.0));
    }
}

/// By the law the mass of rennet goes with the milk and the dose, and with nothing that comes later.
#[test]
fn only_what_stands_before_a_figure_moves_it() {
    let effects = sensitivity(&batch(&Design::default()).unwrap(), "rennet_ml").unwrap();
    let keys: Vec<&str> = effects.iter().map(key).collect();
    for wanted in ["milk_l", "rennet_dose_imcu_kg", "rennet_strength_imcu_ml"] {
        assert!(keys.contains(&wanted), "{keys:?}");
    }
    assert!(!keys.contains(&"drying_h") && !keys.contains(&"mould_count") && !keys.contains(&"rennet_ratio_parts"), "{keys:?}");
}

#[test]
fn a_mover_says_the_change_that_a_step_really_makes() {
    let now = batch(&Design::default()).unwrap();
    let number = |design: &Design| {
        let figure = figures(&batch(design).unwrap()).into_iter().find(|figure| figure.key == "dried_cheese_g").unwrap();
        let Reading::Number(number) = figure.reading else { panic!("a weight is a number") };
        number
    };
    for effect in sensitivity(&now, "dried_cheese_g").unwrap().iter().take(8) {
        let Cause::Choice(field) = effect.cause else { continue };
        let (Kind::Number { step, .. }, Value::Number(value)) = (field.kind, field.get(&now.design)) else {
            panic!("{}", field.key)
        };
        let mut up = now.design.clone();
        field.set(&mut up, Value::Number(value + step)).unwrap();
        assert_eq!(effect.up, Some(number(&up) - number(&now.design)), "{}", field.key);
    }
}

#[test]
fn at_the_end_of_a_range_only_one_step_is_told() {
    let mut design = Design::default();
    design.vat.pot_depth_percent = 100.0;
    let effects = sensitivity(&batch(&design).unwrap(), "to_rennet_min").unwrap();
    let depth = effects.iter().find(|effect| key(effect) == "pot_depth_percent").unwrap();
    assert!(depth.up.is_none() && depth.down.is_some());
}

#[test]
fn words_and_unknown_figures_are_refused() {
    let now = batch(&Design::default()).unwrap();
    assert!(matches!(sensitivity(&now, "firmness"), Err(FigureError::NotANumber { .. })));
    assert!(sensitivity(&now, "craem_g").unwrap_err().to_string().contains("cream_g"));
}

#[test]
fn an_uncertain_constant_is_ranked_by_what_its_whole_range_does() {
    let now = batch(&Design::default()).unwrap();
    let number = |batch: &Batch| {
        let figure = figures(batch).into_iter().find(|figure| figure.key == "dried_cheese_g").unwrap();
        let Reading::Number(number) = figure.reading else { panic!("a weight is a number") };
        number
    };
    let effects = sensitivity(&now, "dried_cheese_g").unwrap();
    for effect in &effects {
        let Cause::Constant(parameter) = effect.cause else { continue };
        let (least, most) = parameter.ends(&now.design);
        let with = |factor: f64| {
            let given = Given { parameters: parameter.set(UncertainParameters::default(), factor), ..Given::default() };
            Some(number(&batch_given(&now.design, &given).unwrap()) - number(&now))
        };
        assert_eq!((effect.down, effect.up), (with(least), with(most)), "{}", parameter.key);
    }
    let keys: Vec<&str> = effects.iter().map(key).collect();
    assert!(keys.contains(&"moisture_diffusivity") && !keys.contains(&"acid_obstruction"), "{keys:?}");
}

/// The records behind a figure: those of its own link and of all that it rests on.
fn records_behind(key: &str) -> BTreeSet<&'static str> {
    let (mut records, mut seen, mut open) = (BTreeSet::new(), BTreeSet::new(), vec![link(key).unwrap()]);
    while let Some(link) = open.pop() {
        records.extend(constants_of(link).map(|record| record.name));
        open.extend(link.rests_on.iter().filter(|figure| seen.insert(**figure)).filter_map(|figure| self::link(figure)));
    }
    records
}

/// What moves a figure by as much as shows stands among the constants that its explanation names: two ways of asking the same.
#[test]
fn constants_that_move_a_figure_are_among_those_behind_it() {
    let design = Design::default();
    let with = |parameters: UncertainParameters| {
        figures(&batch_given(&design, &Given { parameters, runs: Runs::MiddleOnly, ..Given::default() }).unwrap())
    };
    let usual = with(UncertainParameters::default());
    let mut missing = Vec::new();
    for parameter in UNCERTAIN_PARAMETERS {
        let (least, most) = parameter.ends(&design);
        let moved = [least, most].map(|factor| with(parameter.set(UncertainParameters::default(), factor)));
        for figure in usual.iter().filter(|figure| matches!(figure.reading, Reading::Number(_))) {
            let moves = moved.iter().flatten().any(|other| other.key == figure.key && other.text() != figure.text());
            if moves && !records_behind(figure.key).contains(parameter.record(&design).name) {
                missing.push(format!("{} moves {}", parameter.key, figure.key));
            }
        }
    }
    assert!(missing.is_empty(), "{missing:#?}");
}
