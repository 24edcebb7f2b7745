//! What the template is given: words, and curves prepared for drawing.

use super::Paper;
use super::aim::Aim;
use super::chart::Chart;
use super::kitchen::{DayRow, LogRow, Short, days, log};
use crate::analysis::ComparedCaution;
use crate::caution::{Caution, Severity};
use crate::figure::GermTable;
use crate::process::GermLine;
use crate::report::{LawRow, Plan, ShoppingRow, Timing, UsedSource, short_moment};
use crate::units::Units;
use crate::words::{CautionWords, GERMS_BY_STAGE, POTENTIAL_GROWTH, caution_word, caution_words, said_of_b};
use serde::Serialize;

/// The whole plan in words.
#[derive(Debug, Serialize)]
pub(super) struct Sheet {
    paper: &'static str,
    title: String,
    subtitle: &'static str,
    note: String,
    timing: Option<Hours>,
    no_week: Option<String>,
    /// For the kitchen: in few words.
    before_all: Vec<Short>,
    days: Vec<DayRow>,
    log: Vec<LogRow>,
    stopped: Vec<Halt>,
    /// For the desk.
    shopping: Vec<Bought>,
    cost: Option<String>,
    shopping_trouble: Option<String>,
    cautions: Vec<Warning>,
    figures: Vec<Aim>,
    charts: Vec<Chart>,
    germs: Option<Germs>,
    laws: Vec<String>,
    sources: Vec<String>,
}

#[derive(Debug, Serialize)]
struct Hours {
    ends: Option<String>,
    zone: String,
    remarks: Vec<String>,
}

#[derive(Debug, Serialize)]
struct Bought {
    what: &'static str,
    amount: String,
    also: Option<String>,
    kitchen: Option<String>,
    look_for: String,
    buy: Option<String>,
    rest: String,
}

/// A caution in full.
#[derive(Debug, Serialize)]
pub(super) struct Warning {
    /// Said in words, because a grey print shows no colour.
    word: &'static str,
    grave: bool,
    note: bool,
    what: String,
    remedy: String,
}

#[derive(Debug, Serialize)]
struct Halt {
    stage: &'static str,
    why: String,
}

impl Sheet {
    pub(super) fn of(plan: &Plan, paper: Paper) -> Self {
        Self {
            paper: paper.sheet(),
            title: plan.title.clone(),
            subtitle: plan.subtitle,
            note: plan.note.clone(),
            timing: plan.timing.as_ref().map(|timing| Hours::of(timing, plan.units)),
            no_week: plan.no_week.clone(),
            before_all: Short::all(&plan.before_all, plan.units),
            days: days(&plan.steps, plan.units),
            log: log(&plan.steps),
            stopped: plan.stopped.iter().map(|halt| Halt { stage: halt.stage.title(), why: halt.why.clone() }).collect(),
            shopping: plan.shopping.iter().map(Bought::of).collect(),
            cost: plan.cost.as_ref().map(crate::report::Cost::words),
            shopping_trouble: plan.shopping_trouble.clone(),
            cautions: plan.cautions.iter().map(|caution| Warning::of(caution, plan.units)).collect(),
            figures: plan.figures.iter().map(Aim::of).collect(),
            charts: plan.curves.iter().map(Chart::of).collect(),
            germs: plan.germs.as_ref().map(|table| Germs::of(table, plan.units)),
            laws: plan.laws.iter().map(|row| law(row, &plan.sources, plan.units)).collect(),
            sources: plan
                .sources
                .iter()
                .zip(1..)
                .map(|(source, number)| format!("[{number}] {} (seen: {})", source.title, source.seen))
                .collect(),
        }
    }
}

/// How far germs could grow in each stage.
#[derive(Debug, Serialize)]
struct Germs {
    title: &'static str,
    said: &'static str,
    headings: Vec<String>,
    rows: Vec<Vec<String>>,
    notes: Vec<String>,
}

impl Germs {
    fn of(table: &GermTable, units: Units) -> Self {
        let others = table.others.iter().map(|figure| format!("{}: {}.", figure.label_in(units), figure.text_in(units)));
        Self {
            title: GERMS_BY_STAGE,
            said: POTENTIAL_GROWTH,
            headings: table.headings(),
            rows: table.cells(GermLine::short_name),
            notes: others.chain(table.notes(GermLine::short_name)).collect(),
        }
    }
}

impl Hours {
    fn of(timing: &Timing, units: Units) -> Self {
        Self {
            ends: timing.finished.map(|at| format!("{}: {}", timing.ends, short_moment(at, units))),
            zone: timing.zone.clone(),
            remarks: timing.remarks.clone(),
        }
    }
}

impl Bought {
    fn of(row: &ShoppingRow) -> Self {
        Self {
            what: row.what,
            amount: row.amount.to_string(),
            also: row.also.map(|also| also.to_string()),
            kitchen: row.kitchen.clone(),
            look_for: row.look_for.clone(),
            buy: row.buy.as_ref().map(crate::report::Purchase::words),
            rest: row.buy.as_ref().map(crate::report::Purchase::rest).unwrap_or_default(),
        }
    }
}

/// Returns a law with the figures that it gives and the number of its source in the list below.
fn law(row: &LawRow, sources: &[UsedSource], units: Units) -> String {
    let numbered = sources.iter().zip(1..).find_map(|(source, number)| {
        let place = row.source.strip_prefix(source.title.as_str())?.trim_start_matches("; ");
        Some(if place.is_empty() { format!("[{number}]") } else { format!("{place} [{number}]") })
    });
    let said = units.told(&format!("{}: {}", row.figures.join(", "), row.law));
    format!("{said} ({})", numbered.unwrap_or_else(|| row.source.clone()))
}

impl Warning {
    /// Returns a caution that two designs have, with what B is told where its numbers differ.
    pub(super) fn of_both(compared: &ComparedCaution, units: Units) -> Self {
        let mut warning = Self::of(&compared.caution, units);
        if let Some(of_b) = said_of_b(compared, units) {
            warning.what = format!("A: {} B: {of_b}", warning.what);
        }
        warning
    }

    pub(super) fn of(caution: &Caution, units: Units) -> Self {
        let CautionWords { what, remedy, .. } = caution_words(caution, units);
        Self {
            word: caution_word(caution),
            grave: caution.severity == Severity::Stop,
            note: caution.severity == Severity::Note,
            what,
            remedy,
        }
    }
}
