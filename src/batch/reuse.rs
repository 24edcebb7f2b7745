//! What need not be calculated again, because nothing that it rests on has changed.

use super::{Batch, Progress};
use crate::design::Stage;
use crate::process::{Given, StageError};

/// The batch before, and the stages that it could not serve.
pub(super) struct Reuse<'a> {
    before: Option<&'a Batch>,
    given: &'a Given,
    /// The last stage that is asked for.
    last: Stage,
    /// The stages that were calculated again, in order.
    pub(super) anew: Vec<Stage>,
}

impl<'a> Reuse<'a> {
    /// Returns a reuse of this batch, or of none, under these parameters, for the stages as far as the last one that is asked for.
    pub(super) const fn of(before: Option<&'a Batch>, given: &'a Given, last: Stage) -> Self {
        Self { before, given, last, anew: Vec::new() }
    }

    /// Returns the first stage.
    ///
    /// # Arguments
    /// * `same`: how the stage came out before, if everything that it rests on is as it was; parameters are looked at here
    pub(super) fn first<T: Clone + 'a, E: Into<StageError>>(
        &mut self,
        stage: Stage,
        same: impl Fn(&'a Batch) -> Option<&'a Progress<T>>,
        work: impl FnOnce() -> Result<T, E>,
    ) -> Progress<T> {
        if stage > self.last {
            return Progress::NotReached { waits_for: self.last };
        }
        let before = self.before.filter(|before| before.given.same_for(stage, self.given));
        if let Some(served) = before.and_then(same) {
            return served.clone();
        }
        self.anew.push(stage);
        ended(work())
    }

    /// Returns a stage that rests on the one before it, which is named for the case that it failed.
    pub(super) fn stage<T: Clone + 'a, U, E: Into<StageError>>(
        &mut self,
        stage: Stage,
        (earlier, came): (Stage, &Progress<U>),
        same: impl Fn(&'a Batch) -> Option<&'a Progress<T>>,
        work: impl FnOnce(&U) -> Result<T, E>,
    ) -> Progress<T> {
        match came {
            Progress::Done(outcome) => self.first(stage, same, || work(outcome)),
            Progress::Failed(_) => Progress::NotReached { waits_for: earlier },
            Progress::NotReached { waits_for } => Progress::NotReached { waits_for: *waits_for },
        }
    }
}

fn ended<T, E: Into<StageError>>(result: Result<T, E>) -> Progress<T> {
    match result {
        Ok(outcome) => Progress::Done(outcome),
        Err(error) => Progress::Failed(error.into()),
    }
}
