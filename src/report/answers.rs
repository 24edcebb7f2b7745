//! What a maker asks first of two designs: what to buy, what it costs, what comes of it, when, and how it is in the hand.

use super::compared_row::{ComparedRow, figure_row};
use super::facts::Facts;
use super::{ShoppingRow, shopping};
use crate::analysis::{Difference, compare};
use crate::batch::Batch;
use crate::units::Units;

/// The figures that answer a question, in their order.
const QUESTIONS: [(&str, &[&str]); 3] = [
    ("What you get", &["cheese_count", "drained_cheese_g", "dried_cheese_g", "dried_in_all_kg", "jars"]),
    ("When", &["to_rennet_min", "clean_break_min", "draining_h", "centre_to_4_2_h", "centre_to_4_2_if_slow_h", "finished_h"]),
    (
        "In the hand",
        &[
            "drained_moisture_percent",
            "dried_moisture_percent",
            "dried_fat_in_dry_matter_percent",
            "dried_salt_in_moisture_percent",
            "firmness",
            "soured_firmness",
            "centre_ph",
        ],
    ),
];

/// Returns the answers, a heading with its rows each.
pub(super) fn answers(a: &Batch, b: &Batch, units: Units) -> Vec<(&'static str, Vec<ComparedRow>)> {
    let figures = compare(a, b);
    let of = |keys: &[&str]| named(&figures, keys, units);
    let first = ("To buy", to_buy(a, b, units));
    std::iter::once(first)
        .chain(QUESTIONS.map(|(heading, keys)| (heading, of(keys))))
        .filter(|(_, rows)| !rows.is_empty())
        .collect()
}

/// Returns figures of two batches as rows, in the order of their keys.
pub(super) fn figures_named(a: &Batch, b: &Batch, keys: &[&str], units: Units) -> Vec<ComparedRow> {
    named(&compare(a, b), keys, units)
}

fn named(figures: &[Difference], keys: &[&str], units: Units) -> Vec<ComparedRow> {
    let found = keys.iter().filter_map(|key| figures.iter().find(|figure| figure.key == *key));
    found.map(|figure| figure_row(figure, units)).collect()
}

/// Returns what each of the two buys, in kitchen amounts.
fn to_buy(a: &Batch, b: &Batch, units: Units) -> Vec<ComparedRow> {
    let list = |batch: &Batch| -> Vec<ShoppingRow> {
        shopping::list(batch, &Facts::of(batch)).rows.into_iter().map(|row| row.shown_in(units)).collect()
    };
    let (of_a, of_b) = (list(a), list(b));
    let only_b = of_b.iter().filter(|row| of_a.iter().all(|known| known.what != row.what));
    let amount = |rows: &[ShoppingRow], what: &str| rows.iter().find(|row| row.what == what).map(|row| row.amount.to_string());
    let row = |what: &str| {
        let none = || "none".to_owned();
        let (a, b) = (amount(&of_a, what).unwrap_or_else(none), amount(&of_b, what).unwrap_or_else(none));
        let differs = a != b;
        ComparedRow {
            label: what.to_owned(),
            a,
            b,
            change: if differs { String::new() } else { "same".to_owned() },
            lead: true,
            differs,
        }
    };
    of_a.iter().chain(only_b).map(|bought| row(bought.what)).collect()
}
