//! When a plan may begin, or by when it must be done.

use super::ScheduleError;
use super::gap::{GRID_MIN, MOST_POINTS};

/// When a plan may begin, or by when it must be done; minutes from a Monday 00:00.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Start {
    /// As early as it costs least.
    Earliest {
        /// Not before.
        from_min: i64,
        /// The start lies within so many minutes after that.
        within_min: i64,
        /// What each whole quarter of an hour of waiting costs; 0: waiting is free, and the earliest of the cheapest starts is taken.
        wait_points: i64,
    },
    /// Done by a minute.
    FinishedBy {
        /// The last hands are off by then.
        by_min: i64,
        /// The start is not before.
        from_min: i64,
        /// What each whole quarter of an hour that it is finished too soon costs; 0: none, and the latest of the cheapest starts is taken.
        spare_points: i64,
    },
    /// The first handling begins at this very minute; how a plan goes on from where the maker is in the plan.
    Here {
        /// When it began.
        at_min: i64,
        /// The last hands are to be off by then, if there is such a wish.
        by_min: Option<i64>,
    },
}

impl Start {
    pub(super) const fn earliest_min(&self) -> i64 {
        match *self {
            Self::Earliest { from_min, .. } | Self::FinishedBy { from_min, .. } => from_min,
            Self::Here { at_min, .. } => at_min,
        }
    }

    pub(super) const fn by_min(&self) -> Option<i64> {
        match *self {
            Self::Earliest { .. } => None,
            Self::FinishedBy { by_min, .. } => Some(by_min),
            Self::Here { by_min, .. } => by_min,
        }
    }

    /// Returns the same with another finish time, and what each quarter of an hour that it is too soon costs; nothing without a finish time.
    pub(super) fn finished_sooner(&self, sooner_min: i64) -> Option<(Self, i64)> {
        match *self {
            Self::Earliest { .. } => None,
            Self::FinishedBy { by_min, from_min, spare_points } => {
                Some((Self::FinishedBy { by_min: by_min - sooner_min, from_min, spare_points }, spare_points))
            }
            Self::Here { at_min, by_min } => Some((Self::Here { at_min, by_min: Some(by_min? - sooner_min) }, 0)),
        }
    }

    pub(super) const fn within_min(&self) -> i64 {
        match *self {
            Self::Earliest { within_min, .. } => within_min,
            Self::FinishedBy { by_min, from_min, .. } => by_min - from_min,
            Self::Here { .. } => 0,
        }
    }

    /// Returns how many minutes after the grid the first handling begins.
    pub(super) const fn odd_min(&self) -> i64 {
        match *self {
            Self::Here { at_min, .. } => at_min.rem_euclid(GRID_MIN),
            Self::Earliest { .. } | Self::FinishedBy { .. } => 0,
        }
    }

    /// Returns the first and the last place on the grid where the first handling may begin.
    pub(super) const fn places(&self) -> (i64, i64) {
        match *self {
            Self::Earliest { from_min, within_min, .. } => (up(from_min), (from_min + within_min).div_euclid(GRID_MIN)),
            Self::FinishedBy { by_min, from_min, .. } => {
                let from = up(from_min);
                // Where not even one quarter of an hour is left, the blocks say by how much it is too late.
                let by = by_min.div_euclid(GRID_MIN);
                (from, if by < from { from } else { by })
            }
            Self::Here { at_min, .. } => (at_min.div_euclid(GRID_MIN), at_min.div_euclid(GRID_MIN)),
        }
    }

    /// Returns what it costs to begin at a minute; the last hands are off at another.
    pub(super) const fn points(&self, start_min: i64, end_min: i64) -> i64 {
        match *self {
            Self::Earliest { from_min, wait_points, .. } => wait_points * ((start_min - from_min) / GRID_MIN),
            Self::FinishedBy { by_min, spare_points, .. } => spare_points * ((by_min - end_min) / GRID_MIN),
            Self::Here { .. } => 0,
        }
    }

    pub(super) fn check(&self) -> Result<(), ScheduleError> {
        let (from_min, wish_points) = match *self {
            Self::Earliest { from_min, wait_points, .. } => (from_min, wait_points),
            Self::FinishedBy { from_min, spare_points, .. } => (from_min, spare_points),
            Self::Here { at_min, .. } => (at_min, 0),
        };
        if from_min < 0 {
            return Err(ScheduleError::BeforeMonday { before_min: -from_min });
        }
        if !(0..=MOST_POINTS).contains(&wish_points) {
            return Err(ScheduleError::WrongPoints { points: wish_points, most: MOST_POINTS });
        }
        match self.by_min() {
            Some(by_min) if by_min < from_min => Err(ScheduleError::FinishedInThePast { past_min: from_min - by_min }),
            Some(_) | None => Ok(()),
        }
    }
}

const fn up(minute: i64) -> i64 {
    -(-minute).div_euclid(GRID_MIN)
}
