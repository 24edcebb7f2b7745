//! Between the plan's minutes and the clock on the wall, over changes of the clock.
//!
//! A plan counts minutes that really pass, from a Monday 00:00. On a Sunday in spring the wall clock skips an hour and in autumn it repeats one;
//! sleep and work keep to the wall clock, the cheese keeps to the minutes. Nothing here asks what time it is.

use super::{Habit, Hours, Pass, Span, Taken, WALL_DAY_MIN};
use crate::design::BusyOnce;
use jiff::civil::{Date, DateTime, Weekday};
use jiff::tz::{AmbiguousOffset, TimeZone};
use jiff::{Timestamp, ToSpan};

/// The wall clock of a place, and the Monday from which a plan counts.
#[derive(Clone, Debug)]
pub struct Clock {
    zone: TimeZone,
    monday: Date,
    midnight: Timestamp,
}

/// Why a time cannot be used.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum ClockError {
    /// Skipped by the clock.
    #[error("the clock on the wall goes forward over {at}: there is no such time on that day; choose an hour later")]
    Skipped {
        /// The time.
        at: DateTime,
    },
    /// Beyond all calendars.
    #[error("{at} lies beyond what a calendar can hold; choose a year between 1 and 9998")]
    Beyond {
        /// What was given.
        at: String,
    },
    /// Ends before it begins.
    #[error("busy from {from} to {to}: it must end after it begins")]
    Backwards {
        /// Its beginning.
        from: DateTime,
        /// Its end.
        to: DateTime,
    },
}

impl Clock {
    /// Returns the clock of the week that holds a day, from its Monday 00:00 on.
    ///
    /// # Errors
    /// [`ClockError::Beyond`].
    ///
    /// # Example
    /// ```
    /// use jiff::{civil::date, tz::TimeZone};
    /// use vatsketch::plan::Clock;
    /// // One hour ahead of UTC, two in summer; the clock goes forward on the last Sunday of March at 02:00.
    /// let zone = TimeZone::posix("CET-1CEST,M3.5.0,M10.5.0/3").unwrap();
    /// let clock = Clock::of_week(date(2031, 3, 28), zone)?;
    /// let (before, after) = (date(2031, 3, 30).at(1, 30, 0, 0), date(2031, 3, 30).at(3, 30, 0, 0));
    /// assert_eq!(clock.minute(after)? - clock.minute(before)?, 60);
    /// assert!(clock.minute(date(2031, 3, 30).at(2, 30, 0, 0)).is_err());
    /// # Ok::<(), vatsketch::plan::ClockError>(())
    /// ```
    pub fn of_week(day: Date, zone: TimeZone) -> Result<Self, ClockError> {
        let beyond = || ClockError::Beyond { at: day.to_string() };
        let back = i64::from(day.weekday().since(Weekday::Monday));
        let monday = day.checked_sub(back.days()).map_err(|_| beyond())?;
        let midnight = zone.to_timestamp(monday.at(0, 0, 0, 0)).map_err(|_| beyond())?;
        Ok(Self { zone, monday, midnight })
    }

    /// Returns how many minutes have passed since the Monday 00:00 at a time of the wall clock; of a repeated time the first.
    ///
    /// # Errors
    /// [`ClockError::Skipped`] if the clock goes forward over it.
    pub fn minute(&self, at: DateTime) -> Result<i64, ClockError> {
        let beyond = || ClockError::Beyond { at: at.to_string() };
        let found = self.zone.to_ambiguous_timestamp(at);
        if matches!(found.offset(), AmbiguousOffset::Gap { .. }) {
            return Err(ClockError::Skipped { at });
        }
        Ok(self.passed_min(found.earlier().map_err(|_| beyond())?))
    }

    /// Returns what the wall clock says so many minutes after the Monday 00:00.
    ///
    /// # Errors
    /// [`ClockError::Beyond`].
    pub fn local(&self, minute: i64) -> Result<DateTime, ClockError> {
        Ok(self.zone.to_datetime(self.moment(minute)?))
    }

    /// Returns how far the wall clock is from UTC so many minutes after the Monday 00:00, with its name where the hour comes twice.
    ///
    /// # Errors
    /// [`ClockError::Beyond`].
    pub fn pass(&self, minute: i64) -> Result<Pass, ClockError> {
        Ok(pass_at(&self.zone, self.moment(minute)?))
    }

    fn moment(&self, minute: i64) -> Result<Timestamp, ClockError> {
        let beyond = || ClockError::Beyond { at: format!("minute {minute}") };
        let second =
            minute.checked_mul(60).and_then(|seconds| self.midnight.as_second().checked_add(seconds)).ok_or_else(beyond)?;
        Timestamp::from_second(second).map_err(|_| beyond())
    }

    /// Returns the hours that habits and busy times take, by the wall clock.
    ///
    /// # Arguments
    /// * `busy`: what is taken once
    /// * `until_min`: how far they are asked for, see [`super::horizon_min`]
    ///
    /// # Errors
    /// [`ClockError`].
    pub fn hours(&self, habits: &[Habit], busy: &[BusyOnce], until_min: i64) -> Result<Hours, ClockError> {
        let mut spans = Vec::new();
        // A day more, because days of 25 hours leave the last one short.
        for day in -1..=until_min / WALL_DAY_MIN + 1 {
            for habit in habits.iter().filter(|habit| habit.begins_on(day)) {
                let (from_min, to_min) = (self.wall_minute(day, habit.from_min)?, self.wall_minute(day, habit.to_min)?);
                let Habit { by, points, alarm_points, impossible, .. } = *habit;
                spans.push(Span { by, from_min, to_min, points, alarm_points, impossible });
            }
        }
        for &BusyOnce { from, to, impossible } in busy {
            if to <= from {
                return Err(ClockError::Backwards { from, to });
            }
            let (from_min, to_min) = (self.minute(from)?, self.minute(to)?);
            let (points, alarm_points) = (Taken::Busy.points(), Taken::Busy.alarm_points());
            spans.push(Span { by: Taken::Busy, from_min, to_min, points, alarm_points, impossible });
        }
        Ok(Hours::new(spans, until_min))
    }

    /// Returns the minute at which a day's wall clock has come so far; a skipped time is the moment of the change, moved on by what was skipped.
    fn wall_minute(&self, day: i64, wall_min: i64) -> Result<i64, ClockError> {
        let beyond = || ClockError::Beyond { at: format!("day {day} of the plan") };
        let date = self.monday.checked_add((day + wall_min.div_euclid(WALL_DAY_MIN)).days()).map_err(|_| beyond())?;
        let left = wall_min.rem_euclid(WALL_DAY_MIN);
        let (hour, minute) = (i8::try_from(left / 60).unwrap_or(0), i8::try_from(left % 60).unwrap_or(0));
        Ok(self.passed_min(self.zone.to_timestamp(date.at(hour, minute, 0, 0)).map_err(|_| beyond())?))
    }

    fn passed_min(&self, timestamp: Timestamp) -> i64 {
        (timestamp.as_second() - self.midnight.as_second()).div_euclid(60)
    }
}

/// Returns the pass of the wall clock of a zone that a moment lies in.
pub(super) fn pass_at(zone: &TimeZone, moment: Timestamp) -> Pass {
    let info = zone.to_offset_info(moment);
    let twice = matches!(zone.to_ambiguous_timestamp(zone.to_datetime(moment)).offset(), AmbiguousOffset::Fold { .. });
    Pass { offset: info.offset(), name: twice.then(|| info.abbreviation().to_owned()) }
}
