//! What is shown of a batch, calculated again only after an entry.

use crate::batch::batch;
use crate::curve::{MeasuredLine, measured};
use crate::plan::Now;
use crate::record::{BatchRecord, EntryKind};
use crate::report::{AgainstPlan, LogField, against_plan, log_fields, plan_at};
use crate::units::Units;

/// What can be written down of a batch, in the order of its plan, and what was measured beside it.
#[derive(Clone, Debug)]
pub(in crate::ui) struct LogShown {
    /// What it was calculated from.
    of: (BatchRecord, Units),
    /// Each kind that the plan asks for once, where it does so first.
    pub(in crate::ui) fields: Vec<LogField>,
    /// What the plan does not ask for, in the order of the trade.
    pub(in crate::ui) besides: Vec<LogField>,
    /// What was measured, as it lies on the curves.
    pub(in crate::ui) lines: Vec<MeasuredLine>,
    /// What was measured beside the plan; none where the design of the day cannot be calculated any more.
    pub(in crate::ui) against: Option<AgainstPlan>,
}

impl LogShown {
    /// Returns what is shown of a batch.
    ///
    /// * `kept`: what was shown last
    pub(in crate::ui) fn of(record: &BatchRecord, now: &Now, units: Units, kept: Option<Self>) -> Self {
        match kept {
            Some(kept) if kept.of.1 == units && kept.of.0 == *record => kept,
            _ => Self::calculated(record, now, units),
        }
    }

    fn calculated(record: &BatchRecord, now: &Now, units: Units) -> Self {
        let of = (record.clone(), units);
        let Ok(made) = batch(&record.design) else {
            return Self { of, fields: Vec::new(), besides: besides(&[]), lines: Vec::new(), against: None };
        };
        let mut fields: Vec<LogField> = Vec::new();
        for field in log_fields(&plan_at(&made, now).shown_in(units)) {
            match fields.iter_mut().find(|known| known.kind == field.kind) {
                Some(known) => known.times.extend(field.times),
                None => fields.push(field),
            }
        }
        // What no step asks for has no place in the plan.
        fields.retain(|field| !field.step.is_empty());
        let lines = measured(&made, record, None);
        Self { of, besides: besides(&fields), fields, lines, against: Some(against_plan(&made, record, None, units)) }
    }
}

/// Returns every kind that is not among those that a plan asks for.
fn besides(planned: &[LogField]) -> Vec<LogField> {
    let others = EntryKind::ALL.iter().filter(|kind| planned.iter().all(|field| field.kind != **kind));
    others.map(|kind| LogField { kind: *kind, step: "", times: Vec::new() }).collect()
}
