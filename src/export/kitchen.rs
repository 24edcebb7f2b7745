//! The steps by days and the log, as the template is given them.

use super::aim::Aim;
use crate::caution::{Caution, Severity};
use crate::plan::whole_day_words;
use crate::report::{Line, Step, agenda, short_day};
use crate::words::{caution_words, severity_word};
use serde::Serialize;

/// One day.
#[derive(Debug, Serialize)]
pub(super) struct DayRow {
    /// None where times only count from the start of warming.
    title: Option<String>,
    lines: Vec<Row>,
}

/// One line of a day.
#[derive(Debug, Serialize)]
struct Row {
    times: Vec<String>,
    by_date: bool,
    again: bool,
    at_once: bool,
    verb: &'static str,
    what: String,
    targets: Vec<Aim>,
    lasts: Option<Aim>,
    if_off: String,
    cautions: Vec<Short>,
}

/// A caution in few words.
#[derive(Debug, Serialize)]
pub(super) struct Short {
    word: &'static str,
    grave: bool,
    note: bool,
    what: String,
}

/// One row of the log.
#[derive(Debug, Serialize)]
pub(super) struct LogRow {
    name: String,
    day: Option<String>,
    at: String,
    write_down: &'static str,
}

/// Returns the steps by days.
pub(super) fn days(steps: &[Step]) -> Vec<DayRow> {
    let days = agenda(steps);
    days.iter().map(|day| DayRow { title: day.date.map(whole_day_words), lines: day.lines.iter().map(Row::of).collect() }).collect()
}

/// Returns a row of the log for every time of every step, in order.
pub(super) fn log(steps: &[Step]) -> Vec<LogRow> {
    let rows = steps.iter().flat_map(|step| step.times.iter().map(move |time| (step, time)));
    rows.map(|(step, time)| LogRow {
        name: time.name.clone(),
        day: time.day().map(short_day),
        at: time.words(),
        write_down: step.write_down,
    })
    .collect()
}

impl Row {
    fn of(line: &Line<'_>) -> Self {
        let step = line.step;
        Self {
            times: line.times.iter().map(|time| if line.by_date { time.words_with_day() } else { time.words() }).collect(),
            by_date: line.by_date,
            again: line.again,
            at_once: line.at_once,
            verb: step.verb,
            what: step.what.clone(),
            targets: step.targets.iter().map(Aim::of).collect(),
            lasts: step.lasts.as_ref().map(Aim::of),
            if_off: step.if_off.clone(),
            // What was said under the day before is not said again.
            cautions: if line.again { Vec::new() } else { step.cautions.iter().map(Short::of).collect() },
        }
    }
}

impl Short {
    pub(super) fn of(caution: &Caution) -> Self {
        Self {
            word: severity_word(caution.severity),
            grave: caution.severity == Severity::Stop,
            note: caution.severity == Severity::Note,
            what: caution_words(caution).short,
        }
    }
}
