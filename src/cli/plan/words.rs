//! The week as lines of text, a heading for each day.

use crate::batch::Batch;
use crate::caution::plan_end;
use crate::cli::text::write_head;
use crate::design::{lower_first, upper_first};
use crate::plan::{
    Counted, KitchenWeek, Taken, TurnsOffer, WeekTask, ends_before_words, length, whole_day_words, whole_time_words,
};
use crate::report::elapsed;
use crate::units::{Clock, Units};
use crate::words::{FROM_A_MODEL, alarm_words, end_words};
use std::io::{Result, Write};

/// Width of the times before a task, and of those with am or pm.
const TIMES: (usize, usize) = (13, 19);

/// Returns the width of the times before a task.
fn width(units: Units) -> usize {
    if units.clock == Clock::Hours12 { TIMES.1 } else { TIMES.0 }
}

pub(super) fn write_week(
    batch: &Batch,
    week: &KitchenWeek,
    turns: Option<&TurnsOffer>,
    units: Units,
    data: &mut dyn Write,
) -> Result<()> {
    write_head(batch, units, data)?;
    writeln!(data, "\nLocal times, time zone {}.", week.zone)?;
    if let Some(first) = week.tasks.first() {
        let word = if first.begun { "From here on" } else { "Begin" };
        writeln!(data, "{word}: {}", first.start_pass.said(units.told(&whole_time_words(first.start))))?;
    }
    if let Some((finished, pass)) = week.finished.zip(week.finished_pass.as_ref()) {
        let end = plan_end(batch).map(|end| end_words(&end, units));
        let label = end.as_ref().map_or("ends", |end| end.by_clock);
        writeln!(data, "{}: {}", upper_first(label), pass.said(units.told(&whole_time_words(finished))))?;
        if let Some(sour) = end.and_then(|end| end.sour) {
            writeln!(data, "{sour}")?;
        }
    }
    if let Some(impossible) = &week.impossible {
        writeln!(data, "{} {}", units.told(&impossible.words), units.told(&impossible.help))?;
    }
    if let Some(last) = week.tasks.iter().find(|task| task.is_last_day()) {
        writeln!(data, "Keep no longer than, unless a warning above sets an earlier day: {}", whole_day_words(last.start.date()))?;
    }
    if let Some(stage) = week.ends_before {
        writeln!(data, "The plan ends before “{}”, which could not be calculated.", stage.title())?;
    }
    let mut today = None;
    for task in &week.tasks {
        if today.replace(task.start.date()) != Some(task.start.date()) {
            writeln!(data, "\n{}", whole_day_words(task.start.date()))?;
        }
        write_task(task, units, data)?;
    }
    write_costs(week, units, data)?;
    if let Some(offer) = turns {
        let (count, gap_h) = (offer.turn_count, offer.turn_gap_h);
        writeln!(data, "\n{}\n  --set turn_count={count} --set turn_gap_h={gap_h}", units.told(&offer.words))?;
    }
    if !week.stretches.is_empty() {
        writeln!(data, "\nWhat the week makes longer or shorter")?;
        week.stretches.iter().try_for_each(|stretch| writeln!(data, "  {}", units.told(&stretch.words)))?;
    }
    write_foot(data)
}

/// Writes what every output says of itself.
fn write_foot(data: &mut dyn Write) -> Result<()> {
    writeln!(data, "\n{FROM_A_MODEL}")
}

fn write_task(task: &WeekTask, units: Units, data: &mut dyn Write) -> Result<()> {
    let (from, to) = (task.start_pass.said(units.hour(task.start.time())), task.end_pass.said(units.hour(task.end.time())));
    let width = width(units);
    let times = match (task.hands_min, task.is_last_day()) {
        (_, true) => String::new(),
        (0, false) => from,
        _ => format!("{from}–{to}"),
    };
    let mut more = vec![lower_first(task.stage.short_title())];
    if task.hands_min > 0 {
        more.push(format!("{} of work", length(task.hands_min)));
    }
    if task.begun {
        more.push("already begun".to_owned());
    }
    // A repeated hour is longer by the name of its pass.
    let gap = if times.chars().count() < width { "" } else { " " };
    writeln!(data, "  {times:<width$}{gap}{} ({})", task.name, more.join(", "))?;
    write_more(&task.what, task.note.as_deref(), units, data)?;
    let mut costs: Vec<String> = task.wakes.then(|| "an alarm wakes you".to_owned()).into_iter().collect();
    costs.extend(task.lost.iter().map(|lost| format!("takes {}", lost.words())));
    if task.shift_min != 0 {
        let way = if task.shift_min > 0 { "later" } else { "earlier" };
        costs.push(format!("{} {way} than usual", length(task.shift_min)));
    }
    if !costs.is_empty() {
        writeln!(data, "  {:width$}{}", "", units.told(&costs.join("; ")))?;
    }
    Ok(())
}

fn write_more(what: &str, note: Option<&str>, units: Units, data: &mut dyn Write) -> Result<()> {
    for line in [Some(what), note].into_iter().flatten().filter(|line| !line.is_empty()) {
        writeln!(data, "  {:width$}{}", "", units.told(line), width = width(units))?;
    }
    Ok(())
}

fn write_costs(week: &KitchenWeek, units: Units, data: &mut dyn Write) -> Result<()> {
    if week.reasons.is_empty() {
        return writeln!(data, "\nDisruption: none; no sleep, work or busy time is touched, and nothing is moved.");
    }
    let told = alarm_words(week, units).unwrap_or_else(|| "no alarm at night".to_owned());
    writeln!(data, "\nDisruption: {told}")?;
    writeln!(
        data,
        "{} points, the least possible ({} for an alarm at night, {} for a minute of going to bed later, {} for one of work: our weighting)",
        week.points,
        Taken::Sleep.alarm_points(),
        Taken::Sleep.points(),
        Taken::Work.points()
    )?;
    for reason in &week.reasons {
        writeln!(data, "  {:>5}  {}", reason.points, units.told(&reason.words))?;
    }
    Ok(())
}

pub(super) fn write_open(batch: &Batch, counted: &Counted, units: Units, data: &mut dyn Write) -> Result<()> {
    write_head(batch, units, data)?;
    writeln!(data, "\nNo date yet: times count from the first task. For clock times give --start, --soon or --finished-by, as in")?;
    writeln!(data, "  vatsketch plan FILE --start \"tomorrow 9:00\"\n")?;
    for task in &counted.tasks {
        let at = elapsed(task.after_min as f64, units).replace('\u{a0}', " ");
        let hands = if task.hands_min > 0 { format!(", {} of work", length(task.hands_min)) } else { String::new() };
        let width = width(units);
        writeln!(data, "  {at:<width$}{} ({}{hands})", task.name, lower_first(task.stage.short_title()))?;
        write_more(&task.what, task.note.as_deref(), units, data)?;
    }
    if let Some(stage) = counted.ends_before {
        writeln!(
            data,
            "
{}",
            ends_before_words(stage)
        )?;
    }
    write_foot(data)
}
