//! What the maker's week asks of the clock, and the answer in its times.

use super::now::zone_named;
use super::taken::WAIT_POINTS;
use super::{Clock, ClockError, KitchenWeekError, Now, ScheduleError, Start, WeekError};
use crate::design::{WeekDesign, Wish};
use jiff::civil::DateTime;

/// What is asked of the clock.
pub(super) struct Asked {
    pub(super) clock: Clock,
    pub(super) now: DateTime,
    pub(super) wish: Wish,
    pub(super) zone: String,
}

/// A start may be put off so far for better hours.
pub(super) const SOON_WITHIN_MIN: i64 = 7 * 24 * 60;

impl Asked {
    /// Returns what a week asks.
    pub(super) fn of(design: &WeekDesign, now: &Now) -> Result<Self, KitchenWeekError> {
        let (zone, name, at) = if design.zone.is_empty() {
            (now.zone.clone(), now.zone.iana_name().unwrap_or("the computer’s").to_owned(), now.at)
        } else {
            let zone = zone_named(&design.zone)?;
            let at = now.in_zone(&zone)?;
            (zone, design.zone.clone(), at)
        };
        let first = match (&design.reached, design.wish) {
            (Some(reached), _) => reached.began,
            (None, Wish::StartAt(at) | Wish::SoonAfter(at)) => at,
            (None, Wish::FinishedBy(by)) => at.min(by),
            (None, Wish::Open) => at,
        };
        Ok(Self { clock: Clock::of_week(first.date(), zone)?, now: at, wish: design.wish, zone: name })
    }

    /// Returns when the first task may begin; none where nothing is wished.
    pub(super) fn start(&self, wish: Wish) -> Result<Option<Start>, ClockError> {
        let wait_points = WAIT_POINTS.value as i64;
        Ok(Some(match wish {
            Wish::StartAt(at) => Start::Here { at_min: self.clock.minute(at)?, by_min: None },
            Wish::SoonAfter(at) => Start::Earliest { from_min: self.clock.minute(at)?, within_min: SOON_WITHIN_MIN, wait_points },
            Wish::FinishedBy(by) => Start::FinishedBy {
                by_min: self.clock.minute(by)?,
                from_min: self.clock.minute(self.now)?,
                spare_points: wait_points,
            },
            Wish::Open => return Ok(None),
        }))
    }

    /// Returns why there is no week, in times of the wall clock where that says more.
    pub(super) fn told(&self, why: WeekError) -> KitchenWeekError {
        let Wish::FinishedBy(by) = self.wish else { return plain(why) };
        let later = |later_min: i64| self.clock.minute(by).and_then(|by_min| self.clock.local(by_min + later_min)).ok();
        match why {
            WeekError::Schedule(ScheduleError::FinishedInThePast { .. }) => {
                KitchenWeekError::FinishedInThePast { by, now: self.now }
            }
            WeekError::Schedule(ScheduleError::NoFeasibleStart { later_min, ref longest, longest_min, .. }) => {
                match later(later_min) {
                    Some(soonest) => {
                        KitchenWeekError::TooSoon { by, now: self.now, soonest, longest: longest.clone(), longest_min }
                    }
                    None => plain(why),
                }
            }
            WeekError::Schedule(ScheduleError::TooLateNow { later_min, .. }) => match later(later_min) {
                Some(soonest) => KitchenWeekError::TooLateNow { by, soonest },
                None => plain(why),
            },
            other => plain(other),
        }
    }
}

fn plain(why: WeekError) -> KitchenWeekError {
    match why {
        WeekError::Schedule(error) => error.into(),
        WeekError::Clock(error) => error.into(),
    }
}
