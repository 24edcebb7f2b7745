//! The two pages that hang in the kitchen, as the template is given them.

use super::aim::Aim;
use crate::caution::{Caution, Severity};
use crate::plan::whole_day_words;
use crate::report::{Day, Hold, Line, Plan, Step, StepTime, Turns, Weighing, short_day, two_pages};
use crate::units::Units;
use crate::words::{caution_words, severity_word};
use serde::Serialize;

/// The two pages.
#[derive(Debug, Serialize)]
pub(super) struct Kitchen {
    make_day: Vec<DayRow>,
    turns: Vec<TurnRow>,
    after: Vec<DayRow>,
    weighings: Vec<WeighingRow>,
}

/// One day.
#[derive(Debug, Serialize)]
struct DayRow {
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
    /// The number that decides.
    main: Option<Aim>,
    /// The others.
    targets: Vec<Aim>,
    how: String,
    if_off: String,
    write_down: String,
    cautions: Vec<Short>,
    hold: Option<HoldRow>,
    /// Whether the weighings stand behind it.
    dries: bool,
}

/// A point at which the cook stops and checks.
#[derive(Debug, Serialize)]
struct HoldRow {
    ask: &'static str,
    decides: Option<String>,
    then: String,
    if_not: String,
    blanks: Vec<&'static str>,
}

/// Turns that are done alike.
#[derive(Debug, Serialize)]
struct TurnRow {
    verb: &'static str,
    what: String,
    targets: Vec<Aim>,
    if_off: String,
    cautions: Vec<Short>,
    cells: Vec<Cell>,
}

/// One turn: a box to tick.
#[derive(Debug, Serialize)]
struct Cell {
    day: Option<String>,
    at: String,
    salt: Option<String>,
}

/// One time at which the marked cheese is weighed.
#[derive(Debug, Serialize)]
struct WeighingRow {
    day: Option<String>,
    at: String,
    after: String,
    weight: String,
    within: Option<String>,
}

/// A caution in few words.
#[derive(Debug, Serialize)]
pub(super) struct Short {
    word: &'static str,
    grave: bool,
    note: bool,
    what: String,
}

impl Kitchen {
    pub(super) fn of(plan: &Plan) -> Self {
        let pages = two_pages(plan);
        let days = |days: &[Day<'_>]| days.iter().map(|day| DayRow::of(day, plan.units)).collect();
        Self {
            make_day: days(&pages.make_day),
            turns: pages.turns.iter().map(|turns| TurnRow::of(turns, plan.units)).collect(),
            after: days(&pages.after),
            weighings: plan.weighings.iter().map(|weighing| WeighingRow::of(weighing, plan.units)).collect(),
        }
    }
}

impl DayRow {
    fn of(day: &Day<'_>, units: Units) -> Self {
        Self { title: day.date.map(whole_day_words), lines: day.lines.iter().map(|line| Row::of(line, units)).collect() }
    }
}

impl Row {
    fn of(line: &Line<'_>, units: Units) -> Self {
        let step = line.step;
        let (main, rest) = step.decisive();
        Self {
            times: line.times.iter().map(|time| if line.by_date { time.words_with_day() } else { time.words() }).collect(),
            by_date: line.by_date,
            again: line.again,
            at_once: line.at_once,
            verb: step.verb,
            what: step.what.clone(),
            main: main.map(Aim::of),
            targets: rest.into_iter().map(Aim::of).collect(),
            how: step.how.clone(),
            if_off: step.if_off.clone(),
            write_down: step.write_down.clone(),
            // What was said under the day before is not said again.
            cautions: if line.again { Vec::new() } else { Short::all(&step.cautions, units) },
            hold: line.hold().map(|hold| HoldRow::of(hold, step)),
            dries: step.begins_drying(),
        }
    }
}

impl HoldRow {
    fn of(hold: &Hold, step: &Step) -> Self {
        Self {
            ask: hold.ask,
            decides: hold.decides(),
            then: hold.then.clone(),
            if_not: hold.if_not(&step.if_off).to_owned(),
            blanks: hold.blanks.clone(),
        }
    }
}

impl TurnRow {
    fn of(turns: &Turns<'_>, units: Units) -> Self {
        let step = turns.step;
        // What goes on each face is what a hand measures at the mould.
        let salt = step.targets.get(1).filter(|_| step.write_down.starts_with("salt")).map(|salt| salt.amount.to_string());
        let cell = |time: &StepTime| Cell { day: time.day().map(short_day), at: time.words(), salt: salt.clone() };
        Self {
            verb: step.verb,
            what: step.what.clone(),
            targets: step.targets.iter().map(Aim::of).collect(),
            if_off: step.if_off.clone(),
            cautions: Short::all(&step.cautions, units),
            cells: turns.times.iter().map(cell).collect(),
        }
    }
}

impl WeighingRow {
    fn of(weighing: &Weighing, units: Units) -> Self {
        Self {
            day: weighing.time.day().map(short_day),
            at: weighing.time.words(),
            after: weighing.after(units),
            weight: weighing.weight.amount.to_string(),
            within: weighing.weight.tolerance(),
        }
    }
}

/// What germs could do in each stage; the pages that hang in the kitchen say that germs grow and what to do against it, and leave the rest to the
/// page on which all cautions are in full.
const LEFT_TO_READ: [&str; 3] = ["germs_could_grow", "toxin_could_form", "toxin_if_lactic_fails"];

impl Short {
    /// Returns the cautions of the kitchen in few words.
    pub(super) fn all(cautions: &[Caution], units: Units) -> Vec<Self> {
        let said = |caution: &&Caution| !LEFT_TO_READ.contains(&caution.key);
        cautions.iter().filter(said).map(|caution| Self::of(caution, units)).collect()
    }

    pub(super) fn of(caution: &Caution, units: Units) -> Self {
        Self {
            // Short, as all on these pages; the page of all cautions says what is always true.
            word: severity_word(caution.severity),
            grave: caution.severity == Severity::Stop,
            note: caution.severity == Severity::Note,
            what: caution_words(caution, units).short,
        }
    }
}
