//! What lifts a warning, in words.

use super::caution::{caution_word, caution_words, counted};
use crate::analysis::{Change, Cost, Lift, Lifted, WhyNot};
use crate::caution::{Caution, Severity};
use crate::design::{Field, Unit, Value, lower_first};
use crate::units::Units;

/// Returns choices and what becomes of them, such as "Draining temperature: 16 °C → 20 °C; Packets used: 1".
#[must_use]
pub fn changes_words(changes: &[Change], units: Units) -> String {
    let all: Vec<String> = changes.iter().map(|change| change_words(change, units)).collect();
    all.join("; ")
}

fn change_words(Change { field, from, was_used, to }: &Change, units: Units) -> String {
    let text = |value: Value| units.choice_text(*field, value);
    // What comes into use only now has no value before that a maker knows of.
    let from = if *was_used { format!("{} → ", text(*from)) } else { String::new() };
    format!("{}: {from}{}", field.label, text(*to))
}

/// What comes before a warning that is lifted besides.
const ALSO_LIFTS: &str = "also lifts";

/// Changes of time that are told in parts of an hour.
const SHORT_H: f64 = 10.0;

/// Returns what a lift costs: hours, taste and body, money; nothing where it costs nothing of these.
///
/// # Arguments
/// * `price`: what it changes of the price, in words
#[must_use]
pub(super) fn cost_words(cost: &Cost, price: Option<&str>, units: Units) -> String {
    let hours = cost.hours.and_then(|hours| {
        let size = hours.abs();
        let decimals = usize::from(size < SHORT_H);
        let text = units.text(Unit::Hour, size, decimals).unwrap_or_else(|| format!("{size:.decimals$} {}", Unit::Hour.symbol()));
        let least = 0.5 * 10.0_f64.powi(-i32::from(size < SHORT_H));
        (size >= least).then(|| format!("{text} {}", if hours > 0.0 { "longer" } else { "shorter" }))
    });
    let taste = cost.taste.map(|(before, after)| format!("taste and body: {} → {}", before.words(), after.words()));
    let all: Vec<String> = [hours, taste, price.map(str::to_owned)].into_iter().flatten().collect();
    all.join("; ")
}

/// Returns what comes or goes with a lift and is more than a note, each with how grave it is; what is true of every cheese like this is none of it.
#[must_use]
pub(super) fn weighty(cautions: &[Caution], units: Units) -> Vec<String> {
    let weighty = cautions.iter().filter(|caution| caution.severity > Severity::Note && !caution.always);
    weighty.map(|caution| format!("{}: {}", caution_word(caution), caution_words(caution, units).short)).collect()
}

/// Returns what a lift costs, lifts besides, leaves and brings, a line each.
///
/// # Arguments
/// * `warning`: the one that it lifts
/// * `price`: what it changes of the price, in words
#[must_use]
pub fn lift_lines(lift: &Lift, warning: &Caution, price: Option<&str>, units: Units) -> Vec<String> {
    let costs = cost_words(&lift.cost, price, units);
    let others: Vec<Caution> = lift.cost.takes.iter().filter(|caution| *caution != warning).cloned().collect();
    let stays: Vec<Caution> = lift.stays.iter().cloned().collect();
    let named = [("new", &lift.cost.brings), ("remains, less serious", &stays), (ALSO_LIFTS, &others)];
    let weighed =
        named.into_iter().flat_map(|(what, all)| weighty(all, units).into_iter().map(move |words| format!("{what}: {words}")));
    let still_true = lift.cost.brings.iter().filter(|caution| caution.always && caution.severity == Severity::Stop);
    let still_true = still_true.map(|caution| format!("still true: {}", caution_words(caution, units).short));
    (!costs.is_empty()).then_some(costs).into_iter().chain(weighed).chain(still_true).collect()
}

/// Returns the same as [`lift_lines`] where there is little room: what it lifts besides is counted, not named.
#[must_use]
pub fn short_lift_lines(lift: &Lift, warning: &Caution, price: Option<&str>, units: Units) -> Vec<String> {
    let others = |severity: Severity| {
        let of = |caution: &&Caution| *caution != warning && caution.severity == severity && !caution.always;
        let count = lift.cost.takes.iter().filter(of).count();
        (count > 0).then(|| counted(severity, count))
    };
    let besides: Vec<String> = [Severity::Stop, Severity::Caution].into_iter().filter_map(others).collect();
    let besides = (!besides.is_empty()).then(|| format!("also lifts: {}", besides.join(", ")));
    let lines = lift_lines(lift, warning, price, units).into_iter().filter(|line| !line.starts_with(ALSO_LIFTS));
    lines.chain(besides).collect()
}

/// Returns why nothing lifts a warning, if nothing does.
#[must_use]
pub fn why_not_words(lifted: &Lifted) -> Option<String> {
    let labels = |fields: &[&'static Field]| {
        let labels: Vec<String> = fields.iter().map(|field| lower_first(field.label)).collect();
        labels.join(", ")
    };
    let pinned =
        if lifted.pinned.is_empty() { String::new() } else { format!(" Pinned and left alone: {}.", labels(&lifted.pinned)) };
    Some(match lifted.why_not? {
        WhyNot::AlwaysTrue => "It is true of every cheese like this: no choice lifts it.".to_owned(),
        WhyNot::StageFailed => "A stage cannot be calculated: put that right first.".to_owned(),
        WhyNot::NothingToMove => format!("None of the choices that may be moved lifts this.{pinned}"),
        WhyNot::OutOfReach => format!(
            "No single choice lifts this within its limits, nor do several together. Tried: {}.{pinned}",
            labels(&lifted.tried)
        ),
    })
}
