//! Why there is no week, in times of the wall clock.

use super::{ClockError, ScheduleError, Tasks, length, time_words};
use crate::design::{did_you_mean, nearest};
use jiff::civil::DateTime;

/// Why there is no week, and what would make one.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum KitchenWeekError {
    /// No zone of that name.
    #[error(
        "there is no time zone `{zone}`; write its name in the IANA list, such as Etc/UTC, or leave it empty for the computer’s"
    )]
    NoSuchZone {
        /// What was given.
        zone: String,
    },
    /// No list of time zones on this computer.
    #[error(
        "this computer has no list of time zones, so `{zone}` cannot be looked up; install the system’s package for it (tzdata), or leave the zone empty for the computer’s"
    )]
    NoZones {
        /// What was given.
        zone: String,
    },
    /// Finished before now.
    #[error("the finish time {} is in the past: it is {} now; choose a later time", time_words(*by), time_words(*now))]
    FinishedInThePast {
        /// The wish.
        by: DateTime,
        /// What the clock says.
        now: DateTime,
    },
    /// No start leaves enough time.
    #[error(
        "the plan cannot end by {}: even if you begin at the next quarter of an hour after {}, it ends on {} at the earliest; choose that time or a later one (the longest wait, at least {}, follows “{longest}”; do not shorten a soak to save time)",
        time_words(*by), time_words(*now), time_words(*soonest), length(*longest_min)
    )]
    TooSoon {
        /// The wish.
        by: DateTime,
        /// What the clock says.
        now: DateTime,
        /// When it can be finished at the earliest.
        soonest: DateTime,
        /// The task with the longest wait after it.
        longest: String,
        /// That wait.
        longest_min: i64,
    },
    /// What is left cannot be done in time.
    #[error(
        "from here the plan cannot end by {}; it can end on {} at the earliest, so choose that time or a later one",
        time_words(*by), time_words(*soonest)
    )]
    TooLateNow {
        /// The wish.
        by: DateTime,
        /// When it can be finished at the earliest.
        soonest: DateTime,
    },
    /// The task that the maker is at does not exist.
    #[error("this vat has no task `{task}`, only {tasks}{}", did_you_mean(nearest.as_deref()))]
    NoSuchTask {
        /// What was given.
        task: String,
        /// The key that was perhaps meant.
        nearest: Option<String>,
        /// Keys of all tasks.
        tasks: String,
    },
    /// Anything else about the handlings.
    #[error(transparent)]
    Schedule(#[from] ScheduleError),
    /// Anything else about the clock.
    #[error(transparent)]
    Clock(#[from] ClockError),
}

impl KitchenWeekError {
    pub(super) fn no_such_task(task: &str, tasks: &Tasks) -> Self {
        let keys: Vec<&str> = tasks.all.iter().map(|task| task.key.as_str()).collect();
        let nearest = nearest(task, keys.iter().copied()).map(str::to_owned);
        Self::NoSuchTask { task: task.to_owned(), nearest, tasks: keys.join(", ") }
    }
}
