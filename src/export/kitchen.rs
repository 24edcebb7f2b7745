//! The steps by days and the log, as the template is given them.

use super::aim::Aim;
use crate::caution::{Caution, Severity};
use crate::plan::whole_day_words;
use crate::report::{Line, Step, agenda, short_day};
use crate::units::Units;
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
    how: String,
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
    write_down: String,
}

/// Returns the steps by days.
pub(super) fn days(steps: &[Step], units: Units) -> Vec<DayRow> {
    let days = agenda(steps);
    let lines = |lines: &[Line<'_>]| lines.iter().map(|line| Row::of(line, units)).collect();
    days.iter().map(|day| DayRow { title: day.date.map(whole_day_words), lines: lines(&day.lines) }).collect()
}

/// Returns a row of the log for every time of every step, in order.
pub(super) fn log(steps: &[Step]) -> Vec<LogRow> {
    let rows = steps.iter().flat_map(|step| step.times.iter().map(move |time| (step, time)));
    rows.map(|(step, time)| LogRow {
        name: time.name.clone(),
        day: time.day().map(short_day),
        at: time.words(),
        write_down: step.write_down.clone(),
    })
    .collect()
}

impl Row {
    fn of(line: &Line<'_>, units: Units) -> Self {
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
            how: step.how.clone(),
            if_off: step.if_off.clone(),
            // What was said under the day before is not said again.
            cautions: if line.again { Vec::new() } else { Short::all(&step.cautions, units) },
        }
    }
}

/// What germs could do in each stage; the page that hangs in the kitchen says that germs grow and what to do against it, and leaves the rest to the
/// page on which all cautions are in full.
const LEFT_TO_READ: [&str; 3] = ["germs_could_grow", "toxin_could_form", "toxin_if_lactic_fails"];

impl Short {
    /// Returns the cautions of the kitchen in few words.
    pub(super) fn all(cautions: &[Caution], units: Units) -> Vec<Self> {
        let said = |caution: &&Caution| !LEFT_TO_READ.contains(&caution.key);
        cautions.iter().filter(said).map(|caution| Self::of(caution, units)).collect()
    }

    fn of(caution: &Caution, units: Units) -> Self {
        Self {
            // Short, as all on this page; the page of all cautions says what is always true.
            word: severity_word(caution.severity),
            grave: caution.severity == Severity::Stop,
            note: caution.severity == Severity::Note,
            what: caution_words(caution, units).short,
        }
    }
}
