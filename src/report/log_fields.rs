//! What the log asks for, in the order of the two pages that hang in the kitchen.

use super::{Day, Plan, StepTime, two_pages};
use crate::record::EntryKind;

/// One thing to write down.
#[derive(Clone, Debug, PartialEq)]
pub struct LogField {
    /// What it is.
    pub kind: EntryKind,
    /// The step of the plan: its first word.
    pub step: &'static str,
    /// When it is done by the plan; several times where one blank serves them all.
    pub times: Vec<StepTime>,
}

/// Returns what the log asks for in a plan: first each blank of the two pages, in their order, then what paper has no room for.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, record::EntryKind, report::{log_fields, plan}};
/// let fields = log_fields(&plan(&batch(&Design::default())?));
/// assert!(matches!(fields[0].kind, EntryKind::MilkPoured | EntryKind::CreamPoured));
/// assert_eq!(fields.last().unwrap().kind, EntryKind::Photo);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn log_fields(plan: &Plan) -> Vec<LogField> {
    let pages = two_pages(plan);
    let mut fields = of_days(&pages.make_day, plan);
    for turns in &pages.turns {
        // Each turn pours whey off, and the strip of turns has a box for it.
        let kinds = turns.step.record.into_iter().filter(|kind| *kind != EntryKind::TurnWhey).chain([EntryKind::TurnWhey]);
        fields.extend(kinds.map(|kind| LogField { kind, step: turns.step.verb, times: turns.times.to_vec() }));
    }
    fields.extend(of_days(&pages.after, plan));
    let off_paper = EntryKind::ALL.iter().copied().filter(|kind| kind.is_off_paper());
    fields.extend(off_paper.map(|kind| LogField { kind, step: "", times: Vec::new() }));
    fields
}

/// What can be written down of a batch, each kind once.
#[derive(Clone, Debug, PartialEq)]
pub struct LogForm {
    /// What the plan asks for, where it does so first, with all its times.
    pub asked: Vec<LogField>,
    /// Everything else, in the order of the trade.
    pub besides: Vec<LogField>,
}

/// Returns what can be written down of a batch, each kind once; without a plan nothing is asked for.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, record::EntryKind, report::{log_form, plan}};
/// let form = log_form(Some(&plan(&batch(&Design::default())?)));
/// assert_eq!(form.asked.len() + form.besides.len(), EntryKind::ALL.len());
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn log_form(plan: Option<&Plan>) -> LogForm {
    let mut asked: Vec<LogField> = Vec::new();
    // What no step asks for has no place in the plan.
    for field in plan.map(log_fields).unwrap_or_default().into_iter().filter(|field| !field.step.is_empty()) {
        match asked.iter_mut().find(|known| known.kind == field.kind) {
            Some(known) => known.times.extend(field.times),
            None => asked.push(field),
        }
    }
    let others = EntryKind::ALL.iter().filter(|kind| asked.iter().all(|field| field.kind != **kind));
    let besides = others.map(|kind| LogField { kind: *kind, step: "", times: Vec::new() }).collect();
    LogForm { asked, besides }
}

fn of_days(days: &[Day<'_>], plan: &Plan) -> Vec<LogField> {
    let mut fields = Vec::new();
    for line in days.iter().flat_map(|day| &day.lines) {
        let step = line.step;
        fields.extend(line.records().into_iter().map(|kind| LogField { kind, step: step.verb, times: line.times.to_vec() }));
        if step.begins_drying() {
            let times: Vec<StepTime> = plan.weighings.iter().map(|weighing| weighing.time.clone()).collect();
            fields.push(LogField { kind: EntryKind::CheeseWeight, step: "Weigh", times });
        }
    }
    fields
}
