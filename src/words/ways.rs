//! A way to a target in words.

use super::lift::{cost_words, weighty};
use crate::analysis::Way;
use crate::design::Value;
use crate::units::Units;

/// Returns what is moved, such as "Milk: 6 L → 5.2 L".
#[must_use]
pub fn way_words(way: &Way, units: Units) -> String {
    let choice = way.answer.choice;
    let text = |value: f64| units.choice_text(choice, Value::Number(value));
    format!("{}: {} → {}", choice.label, text(way.from), text(way.answer.value))
}

/// Returns how near it comes if it does not reach the target, what it costs, and the warnings that come with it, a line each.
///
/// # Arguments
/// * `price`: what it changes of the price, in words
#[must_use]
pub fn way_lines(way: &Way, price: Option<&str>, units: Units) -> Vec<String> {
    let figure = &way.answer.figure;
    let nearest = (!way.reached).then(|| format!("gets only as far as {}", figure.text_in(units)));
    let costs = cost_words(&way.cost, price, units);
    let brings = weighty(&way.cost.brings, units).into_iter().map(|words| format!("new: {words}"));
    let takes = weighty(&way.cost.takes, units).into_iter().map(|words| format!("lifts: {words}"));
    nearest.into_iter().chain((!costs.is_empty()).then_some(costs)).chain(brings).chain(takes).collect()
}
