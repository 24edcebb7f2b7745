//! One task, and how long it may wait.

use crate::design::Stage;
use crate::plan::hands::SHIFT_POINTS;
use crate::plan::{Gap, Handling, length};

/// One task.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Task {
    /// A stable key: the same task of the same vat has it again after every change.
    pub key: String,
    /// The stage it belongs to.
    pub stage: Stage,
    /// What is done, how long hands are needed, and how long it is until the next task.
    pub handling: Handling,
    /// More about it, where that helps.
    pub what: String,
    /// What does not fit, if its hands take longer than the calculation leaves until the next task.
    pub note: Option<String>,
}

impl Task {
    /// Returns a task; where its hands take longer than the gap, the gap grows and a note says so.
    pub(super) fn new(key: impl Into<String>, stage: Stage, name: impl Into<String>, hands_min: i64, then: Gap) -> Self {
        let name = name.into();
        let note = (hands_min > then.most_min).then(|| {
            let (hands, gap) = (length(hands_min), length(then.most_min));
            format!("“{name}” takes {hands} of work, more than the {gap} until the next step, which follows when you are free.")
        });
        let handling = Handling::new(name, hands_min, then.not_before(hands_min));
        Self { key: key.into(), stage, handling, what: String::new(), note }
    }

    /// Returns the task with more about it.
    pub(super) fn saying(self, what: impl Into<String>) -> Self {
        Self { what: what.into(), ..self }
    }
}

/// What a quarter of an hour outside the usual gap costs.
pub(super) const fn shift_points() -> i64 {
    SHIFT_POINTS.value as i64
}

/// Returns a gap that is never shorter than usual, free up to so much later, and possible at a price for as long again.
pub(super) const fn may_wait(usual_min: i64, waits_min: i64) -> Gap {
    Gap {
        least_min: usual_min,
        usual_from_min: usual_min,
        usual_to_min: usual_min + waits_min,
        most_min: usual_min + 2 * waits_min,
        shift_points: shift_points(),
    }
}
