//! When a step is done: minutes from the start of warming, and where there is a week the time on the wall clock.

use super::elapsed;
use crate::plan::{day_words, time_words};
use crate::units::Units;
use jiff::RoundMode;
use jiff::civil::{Date, DateTime, DateTimeRound};

/// One time at which a step is done; each has its own box to tick.
#[derive(Clone, Debug, PartialEq)]
pub struct StepTime {
    /// Key of the task of the week that it is.
    pub task: String,
    /// Its name in the log, such as `Turn 2`.
    pub name: String,
    /// Minutes from the start of warming, as they were calculated.
    pub at_min: f64,
    /// When that is by the clock on the wall, where there is a week.
    pub clock: Option<DateTime>,
    /// What the hour is called there, where the clock on the wall shows it twice.
    pub pass: Option<String>,
    /// Whether only its day counts, not its hour.
    pub whole_day: bool,
    /// The units that it is shown in.
    pub units: Units,
}

impl StepTime {
    /// Returns a time that only counts from the start of warming.
    pub(super) fn counted(task: impl Into<String>, name: impl Into<String>, at_min: f64) -> Self {
        Self { task: task.into(), name: name.into(), at_min, clock: None, pass: None, whole_day: false, units: Units::METRIC }
    }

    /// Returns it as it is shown next to a step, under its day: `14:30`, or `+2 h 5 min` without a week; nothing where only the day counts.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{report::StepTime, units::Units};
    /// let counted = StepTime { task: "turn_2".to_owned(), name: "Turn 2".to_owned(), at_min: 125.0, clock: None, pass: None, whole_day: false, units: Units::METRIC };
    /// assert_eq!(counted.words(), "+2\u{a0}h\u{a0}5\u{a0}min");
    /// let timed = StepTime { clock: Some(jiff::civil::date(2031, 5, 9).at(6, 5, 0, 0)), ..counted };
    /// assert_eq!((timed.words().as_str(), timed.words_with_day().as_str()), ("06:05", "Fri\u{a0}9\u{a0}May,\u{a0}06:05"));
    /// ```
    #[must_use]
    pub fn words(&self) -> String {
        match self.clock {
            None => elapsed(self.at_min, self.units),
            Some(_) if self.whole_day => String::new(),
            Some(clock) => self.in_its_pass(self.units.hour(to_five(clock).time()).replace(' ', "\u{a0}")),
        }
    }

    /// Returns the same with its day: `Fri 9 May, 14:30`.
    #[must_use]
    pub fn words_with_day(&self) -> String {
        match self.clock {
            None => elapsed(self.at_min, self.units),
            Some(clock) if self.whole_day => short_day(clock.date()),
            Some(clock) => self.in_its_pass(short_moment(to_five(clock), self.units)),
        }
    }

    fn in_its_pass(&self, time: String) -> String {
        match &self.pass {
            Some(name) => format!("{time}\u{a0}{name}"),
            None => time,
        }
    }

    /// Returns the day it falls on, where there is a week.
    #[must_use]
    pub fn day(&self) -> Option<Date> {
        self.clock.map(DateTime::date)
    }
}

/// Returns a time as a kitchen can keep it: five minutes are the least that is named, rounded down, so that no day is left.
#[must_use]
pub(super) fn to_five(clock: DateTime) -> DateTime {
    let round = DateTimeRound::new().smallest(jiff::Unit::Minute).increment(5).mode(RoundMode::Trunc);
    clock.round(round).unwrap_or(clock)
}

/// Returns a day as it is shown in a table: `Fri 9 May`, never parted at the end of a line.
#[must_use]
pub fn short_day(day: Date) -> String {
    day_words(day).replace(' ', "\u{a0}")
}

/// Returns a time with its day: `Fri 9 May, 14:30`, never parted at the end of a line.
#[must_use]
pub fn short_moment(at: DateTime, units: Units) -> String {
    units.told(&time_words(at)).replace(' ', "\u{a0}")
}
