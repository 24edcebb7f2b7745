//! What takes hands.

use super::{Gap, ScheduleError};

/// Something that takes hands, and how long it is until the next one.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Handling {
    /// What is done.
    pub name: String,
    /// How long hands are needed, from its start.
    pub hands_min: i64,
    /// From its start to the start of the next; of the last one it means nothing.
    pub then: Gap,
}

impl Handling {
    /// Returns a handling.
    #[must_use]
    pub fn new(name: impl Into<String>, hands_min: i64, then: Gap) -> Self {
        Self { name: name.into(), hands_min, then }
    }

    /// Checks hands and limits.
    pub(super) fn check(&self) -> Result<(), ScheduleError> {
        let gap = self.then;
        if !gap.in_order() {
            return Err(ScheduleError::InvertedLimits { name: self.name.clone(), gap });
        }
        if self.hands_min < 0 {
            return Err(ScheduleError::NegativeHands { name: self.name.clone(), hands_min: self.hands_min });
        }
        Ok(())
    }
}
