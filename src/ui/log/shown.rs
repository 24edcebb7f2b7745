//! What is shown of a batch, calculated again only after an entry.

use crate::batch::batch;
use crate::curve::{MeasuredLine, Spread, measured};
use crate::plan::Now;
use crate::record::BatchRecord;
use crate::report::{AgainstPlan, LogForm, against_plan, log_form, plan_at};
use crate::units::Units;
use std::sync::Arc;

/// How a batch is looked at.
#[derive(Clone, Copy)]
pub(in crate::ui) struct Look<'a> {
    /// What time it is.
    pub(in crate::ui) now: &'a Now,
    /// The units that are shown.
    pub(in crate::ui) units: Units,
    /// How far the plan of the open design may be wrong, once that is known.
    pub(in crate::ui) spread: Option<&'a Arc<Spread>>,
}

/// What can be written down of a batch, in the order of its plan, and what was measured beside it.
#[derive(Clone, Debug)]
pub(in crate::ui) struct LogShown {
    /// What it was calculated from.
    of: (BatchRecord, Units, Option<Arc<Spread>>),
    /// What can be written down.
    pub(in crate::ui) form: LogForm,
    /// What was measured, as it lies on the curves.
    pub(in crate::ui) lines: Vec<MeasuredLine>,
    /// What was measured beside the plan; none where the design of the day cannot be calculated any more.
    pub(in crate::ui) against: Option<AgainstPlan>,
}

impl LogShown {
    /// Returns what is shown of a batch.
    ///
    /// * `kept`: what was shown last
    pub(in crate::ui) fn of(record: &BatchRecord, look: Look<'_>, kept: Option<Self>) -> Self {
        // The spread is that of the open design; of another one nothing is known.
        let spread = look.spread.filter(|spread| spread.design.same_cheese(&record.design));
        let is_it = |kept: &Self| {
            let (of, units, known) = &kept.of;
            let same_spread = match (known, spread) {
                (Some(known), Some(spread)) => Arc::ptr_eq(known, spread),
                (known, spread) => known.is_none() && spread.is_none(),
            };
            *units == look.units && same_spread && of == record
        };
        kept.filter(is_it).unwrap_or_else(|| Self::calculated(record, look, spread))
    }

    fn calculated(record: &BatchRecord, look: Look<'_>, spread: Option<&Arc<Spread>>) -> Self {
        let of = (record.clone(), look.units, spread.cloned());
        let Ok(made) = batch(&record.design) else { return Self { of, form: log_form(None), lines: Vec::new(), against: None } };
        let spread = spread.map(AsRef::as_ref);
        Self {
            of,
            form: log_form(Some(&plan_at(&made, look.now).shown_in(look.units))),
            lines: measured(&made, record, spread),
            against: Some(against_plan(&made, record, spread, look.units)),
        }
    }
}
