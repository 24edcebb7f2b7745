//! A design that is scaled, in words: what the step is called, what was rounded, what stays.

use super::caution::counted_words;
use crate::analysis::{POT_FILLED, ScaleGoal, ScaleTo, Scaled};
use crate::batch::Batch;
use crate::caution::cautions;
use crate::design::{Unit, Value, lower_first};
use crate::units::Units;

/// What more milk needs.
const SLOWER: &str = "A larger vat warms and cools more slowly with the same heating power: allow more time.";

/// What stays when a design is scaled.
pub const KEPT_IN_SCALING: &str = "Sizes, strengths, doses for each litre or gram, temperatures and times stay as they are, and so do your kitchen, your week and your supplies.";

/// Returns what scaling to a goal is called: "Scale to 8 L of milk".
///
/// # Example
/// ```
/// use vatsketch::{analysis::{ScaleGoal, ScaleTo}, units::Units, words::scale_name};
/// assert_eq!(scale_name(ScaleGoal { to: ScaleTo::Pot, amount: 12.0 }, Units::METRIC), "Scale to a pot of 12 L");
/// ```
#[must_use]
pub fn scale_name(goal: ScaleGoal, units: Units) -> String {
    format!("Scale to {}", goal.in_words(units))
}

/// Least change of what a mould gets that is worth saying, %.
const LEAST_PERCENT: f64 = 0.5;

/// Returns what is to be known of a scaled design, a sentence each: how full the pot is, how many cheeses the jars take, what was rounded up, that more milk warms more slowly, and how many warnings there are.
///
/// # Arguments
/// * `before`, `after`: the batches of the design and of the scaled one
#[must_use]
pub fn scale_remarks(scaled: &Scaled, (before, after): (&Batch, &Batch), units: Units) -> Vec<String> {
    let counted = |batch: &Batch| lower_first(&counted_words(&cautions(batch)));
    let warned = format!("Warnings now: {}; after scaling: {}.", counted(before), counted(after));
    let litres = |batch: &Batch| batch.milk.done().map_or(0.0, |milk| milk.vat_milk_l);
    let slower = (litres(after) > litres(before)).then(|| SLOWER.to_owned());
    let filled = pot_words(scaled.goal, after, units).or_else(|| jar_words(scaled.goal, after));
    let rounded = scaled.choices.iter().filter(|choice| choice.is_rounded_up()).map(|choice| {
        let words = |number: f64| choice.field.words(Value::Number(number));
        let less = 100.0 * (1.0 - choice.exact / choice.to);
        // Of the counts, the moulds alone share the milk out.
        let shared = choice.field.key == "mould_count" && less >= LEAST_PERCENT;
        let each = if shared { format!(", so each gets {less:.0} % less curd") } else { String::new() };
        let exact = (10.0 * choice.exact).round() / 10.0;
        format!(
            "{}: {} would be {}, rounded up to {}{each}.",
            choice.field.label,
            words(choice.from),
            words(exact),
            words(choice.to)
        )
    });
    filled.into_iter().chain(rounded).chain(slower).chain([warned]).collect()
}

/// Returns how full the pot is.
fn pot_words(goal: ScaleGoal, after: &Batch, units: Units) -> Option<String> {
    let milk = after.milk.done().filter(|_| goal.to == ScaleTo::Pot)?;
    let litres = |value: f64| units.text(Unit::Litre, value, 1).unwrap_or_else(|| format!("{value:.1} {}", Unit::Litre.symbol()));
    let share = 100.0 * POT_FILLED.value;
    Some(format!(
        "The pot takes {} of milk with its cream: {share:.0} % of it, so that you can stir and carry it (our own judgement).",
        litres(milk.vat_milk_l)
    ))
}

/// Returns how many cheeses the jars take.
fn jar_words(goal: ScaleGoal, after: &Batch) -> Option<String> {
    let jars = after.pickling.done().filter(|_| goal.to == ScaleTo::Jars)?;
    let (count, each, there) = (jars.cheese_count, jars.cheeses_per_jar, jars.jars);
    let apart = (f64::from(there) - goal.amount).abs() > LEAST_PERCENT;
    Some(if apart {
        format!(
            "The scaled cheeses come out a little different in size: {count} of them take {there} jars, {each} in each at most."
        )
    } else {
        format!("A full jar takes {each} of these cheeses.")
    })
}
