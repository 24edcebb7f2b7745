//! Scaling the open design, tried before it is done: nothing is changed by a trial.

use super::Command;
use crate::analysis::{ScaleError, ScaleGoal, Scaled, scale};
use crate::batch::{Batch, batch_after};
use crate::report::{ScalePreview, scale_preview};
use crate::units::Units;

/// A scaled design that was tried.
#[derive(Clone, Debug)]
pub struct ScaleTrial {
    /// The choices that follow.
    pub scaled: Scaled,
    /// The batch of the scaled design.
    pub after: Batch,
    /// What it does, as it is shown.
    pub preview: ScalePreview,
}

impl ScaleTrial {
    /// Returns what scaling a batch would do.
    ///
    /// # Arguments
    /// * `units`: that it is shown in
    ///
    /// # Errors
    /// [`ScaleError`], as for [`scale()`].
    ///
    /// # Example
    /// ```
    /// use vatsketch::analysis::{ScaleGoal, ScaleTo};
    /// use vatsketch::{batch::batch, design::Design, session::ScaleTrial, units::Units};
    /// let trial = ScaleTrial::of(&batch(&Design::default())?, ScaleGoal { to: ScaleTo::Moulds, amount: 4.0 }, Units::METRIC)?;
    /// assert_eq!(trial.after.draining.done().map(|drained| drained.cheese_count), Some(4));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    pub fn of(before: &Batch, goal: ScaleGoal, units: Units) -> Result<Self, ScaleError> {
        let scaled = scale(before, goal)?;
        let (after, _) = batch_after(&scaled.design, Some(before))?;
        let preview = scale_preview(before, &after, &scaled, units);
        Ok(Self { scaled, after, preview })
    }

    /// Returns the command that does it, as one step to undo.
    #[must_use]
    pub fn command(&self) -> Command {
        Command::scaling(&self.scaled)
    }
}
