//! The clock on the wall, read once for each plan: the only place that asks what time it is.

use crate::plan::Now;
use jiff::{ToSpan, ZonedDateTime};

/// Where the time comes from.
#[derive(Clone, Debug)]
pub enum WallClock {
    /// From the computer.
    Computer,
    /// It stands still, as in tests and pictures.
    Stopped(Now),
}

impl WallClock {
    /// Returns what the clock says.
    #[must_use]
    pub fn now(&self) -> Now {
        match self {
            Self::Computer => now(),
            Self::Stopped(now) => now.clone(),
        }
    }
}

/// Returns what the computer's clock says, to the minute, and its time zone.
#[must_use]
pub fn now() -> Now {
    let zoned = ZonedDateTime::now();
    let at = zoned.datetime();
    // Plans know whole minutes.
    let over = i64::from(at.second()).seconds().nanoseconds(i64::from(at.subsec_nanosecond()));
    Now { at: at.checked_sub(over).unwrap_or(at), zone: zoned.time_zone().clone() }
}
