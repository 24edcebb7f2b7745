//! Tests of `src/analysis/ways.rs`.

use vatsketch::analysis::{Goal, SolveError, Solved, cost, solve, ways};
use vatsketch::batch::batch;
use vatsketch::design::{Field, Value, field};

fn goal(figure: &str, wanted: f64) -> Goal {
    Goal { figure: figure.to_owned(), wanted }
}

fn choices(keys: &[&str]) -> Vec<&'static Field> {
    keys.iter().map(|key| field(key).unwrap()).collect()
}

#[test]
fn each_way_is_what_its_choice_alone_would_do() {
    let batch = batch(&crate::example("warm-cabinet")).unwrap();
    let goal = goal("dried_cheese_g", 65.0);
    let keys = ["milk_l", "mould_count", "drying_h"];
    let found = ways(&batch, &goal, &choices(&keys), &|| true).unwrap().unwrap();
    assert_eq!(found.len(), keys.len());
    for way in &found {
        let key = way.answer.choice.key;
        let alone = solve(&batch, &goal, key).unwrap();
        assert_eq!((alone.answer().value, matches!(alone, Solved::Reached(_))), (way.answer.value, way.reached), "{key}");
        let mut design = batch.design.clone();
        design.set(key, Value::Number(way.answer.value)).unwrap();
        assert_eq!(way.batch.design, design, "{key}");
        assert_eq!(cost(&batch, &vatsketch::batch::batch(&design).unwrap()), way.cost, "{key}");
    }
}

#[test]
fn what_reaches_the_target_comes_first_and_then_what_brings_the_fewest_serious_warnings() {
    for (name, figure, wanted, keys) in [
        ("warm-cabinet", "dried_cheese_g", 65.0, ["mould_count", "drying_h"]),
        ("open-air", "drying_loss_percent", 35.0, ["fat_target_percent", "drying_h"]),
    ] {
        let batch = batch(&crate::example(name)).unwrap();
        let found = ways(&batch, &goal(figure, wanted), &choices(&keys), &|| true).unwrap().unwrap();
        let order: Vec<(bool, usize)> = found.iter().map(|way| (!way.reached, way.cost.serious_brought())).collect();
        assert!(order.is_sorted() && !order.is_empty(), "{name}: {order:?}");
    }
}

#[test]
fn what_says_nothing_of_the_target_is_left_out_and_a_figure_that_is_not_there_is_refused() {
    let batch = batch(&crate::example("warm-cabinet")).unwrap();
    let words = ways(&batch, &goal("dried_cheese_g", 65.0), &choices(&["milk_kind", "drying_h"]), &|| true).unwrap().unwrap();
    assert_eq!(words.len(), 1);
    assert!(matches!(ways(&batch, &goal("no_such_figure", 1.0), &choices(&["drying_h"]), &|| true), Err(SolveError::Figure(_))));
    assert!(ways(&batch, &goal("dried_cheese_g", 65.0), &choices(&["drying_h"]), &|| false).unwrap().is_none());
}
