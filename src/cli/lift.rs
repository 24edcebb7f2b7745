//! `vatsketch lift`: what would lift each warning, and what that costs.

use super::ending::{CliError, Ending};
use super::open;
use super::options::{DesignOptions, FormOptions};
use super::text::{with_notice, write_failures, write_json, write_notice};
use crate::analysis::{Change, Lift, Lifted, lift_in_turn, lifts};
use crate::batch::{Batch, batch};
use crate::caution::{Caution, Severity, cautions};
use crate::design::{Value, field};
use crate::export::printable;
use crate::plan::price_change;
use crate::report::price_change_words;
use crate::units::Units;
use crate::words::{caution_word, caution_words, changes_words, lift_lines, why_not_words};
use serde_json::{Value as Json, json};
use std::collections::BTreeSet;
use std::io::Write;

/// What is asked for.
pub(super) struct Wanted<'a> {
    /// The choices that are left alone.
    pub(super) pins: &'a [String],
    /// To lift one serious warning after another, so many at most.
    pub(super) in_turn: Option<usize>,
}

pub(super) fn run(
    options: &DesignOptions,
    wanted: &Wanted,
    form: &FormOptions,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let pins = wanted.pins.iter().map(|key| Ok(field(key)?.key)).collect::<Result<BTreeSet<_>, CliError>>()?;
    let batch = batch(&open::design(options)?)?;
    let units = form.shown.units;
    let ending = write_failures(&batch, "", units, words)?;
    if let Some(most) = wanted.in_turn {
        in_turn(&batch, &pins, most, form, data)?;
        return Ok(ending);
    }
    let own = cautions(&batch).into_iter().filter(|caution| caution.severity > Severity::Note && !caution.always);
    let all: Vec<Lifted> = own.map(|warning| lifts(&batch, &pins, &warning)).collect();
    if form.json {
        let warnings: Vec<Json> = all.iter().map(|lifted| lifted_json(&batch, lifted)).collect();
        write_json(with_notice(json!({ "warnings": warnings }), &batch), data)?;
    } else {
        all.iter().try_for_each(|lifted| write_lifted(&batch, lifted, units, data))?;
        if all.is_empty() {
            writeln!(data, "This design has no serious warning and no caution that its choices can change.")?;
        }
        write_notice(&batch, units, data)?;
    }
    Ok(ending)
}

/// Writes the way on which one serious warning after another is lifted; what is warned of at the end is the last design.
fn in_turn(
    batch: &Batch,
    pins: &BTreeSet<&'static str>,
    most: usize,
    form: &FormOptions,
    data: &mut dyn Write,
) -> Result<(), CliError> {
    let way = lift_in_turn(batch, pins, most);
    let last = way.last().unwrap_or(batch);
    let before = std::iter::once(batch).chain(way.presses.iter().map(|(_, lift)| &lift.batch));
    let presses = || before.clone().zip(&way.presses);
    if form.json {
        let lifted: Vec<Json> = presses()
            .map(|(before, (warning, lift))| json!({ "warning": caution_json(warning), "lift": lift_json(before, lift) }))
            .collect();
        let left: Vec<Json> = way.left.iter().map(|lifted| lifted_json(last, lifted)).collect();
        return write_json(with_notice(json!({ "lifted": lifted, "left": left }), last), data);
    }
    let units = form.shown.units;
    for (before, (warning, lift)) in presses() {
        write_warning(warning, units, data)?;
        write_lift(before, warning, lift, units, data)?;
    }
    let left = if way.left.is_empty() {
        "The choices can lift no other serious warning. What is said below stays true.\n"
    } else {
        "Left after that\n"
    };
    writeln!(data, "{left}")?;
    way.left.iter().try_for_each(|lifted| write_lifted(last, lifted, units, data))?;
    write_notice(last, units, data)?;
    Ok(())
}

fn write_warning(warning: &Caution, units: Units, data: &mut dyn Write) -> std::io::Result<()> {
    writeln!(data, "{}: {}", caution_word(warning), caution_words(warning, units).short)
}

fn write_lifted(batch: &Batch, lifted: &Lifted, units: Units, data: &mut dyn Write) -> std::io::Result<()> {
    write_warning(&lifted.warning, units, data)?;
    lifted.lifts.iter().try_for_each(|lift| write_lift(batch, &lifted.warning, lift, units, data))?;
    why_not_words(lifted).map_or(Ok(()), |why| writeln!(data, "  {why}\n"))
}

fn write_lift(before: &Batch, warning: &Caution, lift: &Lift, units: Units, data: &mut dyn Write) -> std::io::Result<()> {
    writeln!(data, "  Lifted by: {}", changes_words(&lift.changes, units))?;
    let price = price_change(before, &lift.batch)
        .map(|change| price_change_words(&change, &printable(&before.design.supplies.currency)).replace('\u{a0}', " "));
    let lines = lift_lines(lift, warning, price.as_deref(), units);
    lines.iter().try_for_each(|line| writeln!(data, "    {line}"))?;
    writeln!(data)
}

fn lifted_json(batch: &Batch, lifted: &Lifted) -> Json {
    let keys = |fields: &[&'static crate::design::Field]| fields.iter().map(|field| field.key).collect::<Vec<_>>();
    json!({
        "warning": caution_json(&lifted.warning),
        "lifts": lifted.lifts.iter().map(|lift| lift_json(batch, lift)).collect::<Vec<_>>(),
        "why_not": why_not_words(lifted), "tried": keys(&lifted.tried), "pinned": keys(&lifted.pinned),
    })
}

fn lift_json(before: &Batch, lift: &Lift) -> Json {
    let cost = &lift.cost;
    let price = price_change(before, &lift.batch);
    let not_counted = price.as_ref().map_or(&[][..], |change| &change.not_counted);
    json!({
        "choices": lift.changes.iter().map(change_json).collect::<Vec<_>>(), "moved": lift.moved,
        "costs": {
            "hours": cost.hours, "money": price.as_ref().filter(|change| change.shows()).map(|change| change.more),
            "currency": before.design.supplies.currency, "without_price": not_counted.iter().map(|good| good.key()).collect::<Vec<_>>(),
            "taste": cost.taste.map(|(before, after)| json!({ "from": before.words(), "to": after.words() })),
        },
        "brings": cost.brings.iter().map(caution_json).collect::<Vec<_>>(),
        "lifts": cost.takes.iter().map(caution_json).collect::<Vec<_>>(),
        "stays": lift.stays.as_ref().map(caution_json), "serious_left": lift.serious_left,
    })
}

fn change_json(change: &Change) -> Json {
    let value = |value: Value| match value {
        Value::Number(number) => json!(number),
        Value::Choice(key) => json!(key),
        Value::Switch(on) => json!(on),
    };
    let Change { field, from, was_used, to } = change;
    json!({
        "key": field.key, "label": field.label, "unit": field.unit.symbol(), "from": value(*from), "to": value(*to), "was_used": was_used,
    })
}

fn caution_json(caution: &Caution) -> Json {
    let short = caution_words(caution, Units::METRIC).short;
    json!({ "key": caution.key, "severity": caution.severity.key(), "always": caution.always, "caused_by": caution.caused_by, "short": short })
}
