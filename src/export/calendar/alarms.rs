//! When a calendar calls, by what a task needs.

use super::super::ExportError;
use super::lines::Lines;
use super::moments::beyond;
use crate::plan::{Now, WeekTask};
use crate::report::Step;
use jiff::civil::DateTime;
use jiff::tz::TimeZone;

/// Before hands are needed: time to wash and to go there. Our own choice.
const HANDS: &str = "-PT5M";
/// Before something must be at hand: time to buy it, or to calibrate a meter. Our own choice.
const AT_HAND: &str = "-P1D";
/// The same on the wall clock, days.
const AT_HAND_DAYS: i64 = 1;
/// Hour of the evening before the vat begins. Our own choice.
const EVENING_H: i8 = 19;

/// One call.
pub(super) struct Alarm {
    /// How long before the start of its event, as RFC 5545, 3.3.6 writes a length of time.
    trigger: String,
    /// What it says.
    words: String,
}

impl Alarm {
    pub(super) fn write(&self, lines: &mut Lines) {
        lines.component("VALARM", |lines| {
            lines.value("ACTION", "DISPLAY");
            lines.value("TRIGGER", &self.trigger);
            lines.text("DESCRIPTION", &self.words);
        });
    }
}

/// Returns the calls of a task: five minutes before hands are needed; a day before for vinegar and for each reading of a pH; and for the first
/// task the evening before. What would call before the plan was made is left out, but for the hands.
///
/// # Arguments
/// * `summary`: what the event is called
/// * `first`: whether the vat begins with it
/// * `steps`: of the plan that are done in it
///
/// # Errors
/// [`ExportError::Calendar`] beyond the years that can be reckoned.
pub(super) fn alarms(
    task: &WeekTask,
    (summary, title): (&str, &str),
    first: bool,
    steps: &[&Step],
    now: &Now,
) -> Result<Vec<Alarm>, ExportError> {
    let mut all = Vec::new();
    if task.hands_min > 0 {
        all.push(Alarm { trigger: HANDS.to_owned(), words: summary.to_owned() });
    }
    if task.begun || task.is_last_day() {
        return Ok(all);
    }
    if at_hand_from(task.start)? >= now.at {
        let wanted = at_hand(task, steps).into_iter();
        all.extend(wanted.map(|what| Alarm { trigger: AT_HAND.to_owned(), words: format!("Wanted tomorrow: {what}. {summary}") }));
    }
    if first {
        let evening = evening_before(task.start)?;
        if evening >= now.at {
            let of = if title.is_empty() { String::new() } else { format!(" – {title}") };
            let trigger = before(minutes(task, evening, &now.zone)?);
            all.push(Alarm { trigger, words: format!("The vat begins tomorrow{of}") });
        }
    }
    Ok(all)
}

/// Returns what must be at hand for a task.
fn at_hand(task: &WeekTask, steps: &[&Step]) -> Vec<&'static str> {
    // A reading is what is written down.
    let reads_ph = steps.iter().any(|step| step.write_down.starts_with("pH"));
    let wanted = [(task.key == "vinegar", "the vinegar"), (reads_ph, "the pH meter, calibrated")];
    wanted.into_iter().filter_map(|(wanted, what)| wanted.then_some(what)).collect()
}

fn at_hand_from(start: DateTime) -> Result<DateTime, ExportError> {
    start.checked_sub(jiff::Span::new().days(AT_HAND_DAYS)).map_err(|_| beyond(start))
}

fn evening_before(start: DateTime) -> Result<DateTime, ExportError> {
    let day = start.date().yesterday().map_err(|_| beyond(start))?;
    Ok(day.at(EVENING_H, 0, 0, 0))
}

/// Returns the minutes that really pass from a time of the wall clock to the start of a task: a night may be an hour shorter or longer.
fn minutes(task: &WeekTask, from: DateTime, zone: &TimeZone) -> Result<i64, ExportError> {
    let begins = task.start_pass.offset.to_timestamp(task.start).map_err(|_| beyond(task.start))?;
    let from = zone.to_timestamp(from).map_err(|_| beyond(from))?;
    Ok((begins.as_second() - from.as_second()).div_euclid(60))
}

/// Returns so many minutes before, as RFC 5545, 3.3.6 writes it.
fn before(minutes: i64) -> String {
    match (minutes / 60, minutes % 60) {
        (0, rest) => format!("-PT{rest}M"),
        (hours, 0) => format!("-PT{hours}H"),
        (hours, rest) => format!("-PT{hours}H{rest}M"),
    }
}
