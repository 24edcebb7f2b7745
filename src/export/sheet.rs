//! What the template is given: words, and curves made ready to draw.

use super::Paper;
use super::chart::Chart;
use crate::batch::{Caution, Severity};
use crate::report::{Plan, ShoppingRow, Step, Target, elapsed};
use serde::Serialize;

/// The whole plan in words.
#[derive(Debug, Serialize)]
pub(super) struct Sheet {
    paper: &'static str,
    title: String,
    subtitle: &'static str,
    note: String,
    figures: Vec<Aim>,
    shopping: Vec<Bought>,
    before_all: Vec<Warning>,
    steps: Vec<Row>,
    stopped: Vec<Halt>,
    charts: Vec<Chart>,
    sources: Vec<String>,
}

#[derive(Debug, Serialize)]
struct Aim {
    label: &'static str,
    amount: String,
    tolerance: Option<String>,
    kitchen: Option<String>,
    /// Temperatures and times are printed large.
    large: bool,
}

#[derive(Debug, Serialize)]
struct Bought {
    what: &'static str,
    amount: String,
    also: Option<String>,
    kitchen: Option<String>,
    look_for: String,
}

#[derive(Debug, Serialize)]
struct Warning {
    /// Said in words, because a grey print shows no colour.
    word: &'static str,
    grave: bool,
    note: bool,
    what: String,
    remedy: String,
}

#[derive(Debug, Serialize)]
struct Row {
    stage: &'static str,
    at: String,
    verb: &'static str,
    what: String,
    targets: Vec<Aim>,
    lasts: Option<Aim>,
    each: Vec<String>,
    if_off: String,
    write_down: &'static str,
    cautions: Vec<Warning>,
}

#[derive(Debug, Serialize)]
struct Halt {
    stage: &'static str,
    why: String,
}

impl Sheet {
    pub(super) fn of(plan: &Plan, paper: Paper) -> Self {
        Self {
            paper: match paper {
                Paper::A4 => "a4",
                Paper::Letter => "us-letter",
            },
            title: plan.title.clone(),
            subtitle: plan.subtitle,
            note: plan.note.clone(),
            figures: plan.figures.iter().map(Aim::of).collect(),
            shopping: plan.shopping.iter().map(Bought::of).collect(),
            before_all: plan.before_all.iter().map(Warning::of).collect(),
            steps: plan.steps.iter().map(Row::of).collect(),
            stopped: plan.stopped.iter().map(|halt| Halt { stage: halt.stage.title(), why: halt.why.clone() }).collect(),
            charts: plan.curves.iter().map(Chart::of).collect(),
            sources: plan.sources.iter().map(|source| format!("{} (seen: {})", source.title, source.seen)).collect(),
        }
    }
}

impl Aim {
    fn of(target: &Target) -> Self {
        use crate::design::Unit;
        Self {
            label: target.label,
            amount: target.amount.to_string(),
            tolerance: target.tolerance(),
            kitchen: target.kitchen.clone(),
            large: matches!(target.amount.unit, Unit::Celsius | Unit::Minute | Unit::Hour),
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
        }
    }
}

impl Warning {
    fn of(caution: &Caution) -> Self {
        Self {
            word: match caution.severity {
                Severity::Note => "Note",
                Severity::Caution => "Caution",
                Severity::Stop => "Stop",
            },
            grave: caution.severity == Severity::Stop,
            note: caution.severity == Severity::Note,
            what: caution.what.clone(),
            remedy: caution.remedy.clone(),
        }
    }
}

impl Row {
    fn of(step: &Step) -> Self {
        Self {
            stage: step.stage.title(),
            at: elapsed(step.at_min),
            verb: step.verb,
            what: step.what.clone(),
            targets: step.targets.iter().map(Aim::of).collect(),
            lasts: step.lasts.as_ref().map(Aim::of),
            each: step.each_min.iter().map(|at_min| elapsed(*at_min)).collect(),
            if_off: step.if_off.clone(),
            write_down: step.write_down,
            cautions: step.cautions.iter().map(Warning::of).collect(),
        }
    }
}
