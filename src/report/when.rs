//! When a step is done: minutes from the start of warming, and where there is a week the time on the wall clock.

use super::elapsed;
use crate::design::hour;
use jiff::civil::{Date, DateTime, Weekday};

/// One time at which a step is done; each has its own box to tick.
#[derive(Clone, Debug, PartialEq)]
pub struct StepTime {
    /// Key of the task of the week that it is.
    pub task: String,
    /// Its name in the log, such as `Turn 2`.
    pub name: String,
    /// Minutes from the start of warming, as they were worked out.
    pub at_min: f64,
    /// When that is by the clock on the wall, where there is a week.
    pub clock: Option<DateTime>,
}

impl StepTime {
    /// Returns a time that only counts from the start of warming.
    pub(super) fn counted(task: impl Into<String>, name: impl Into<String>, at_min: f64) -> Self {
        Self { task: task.into(), name: name.into(), at_min, clock: None }
    }

    /// Returns it as it stands beside a step: `14:30`, or `+2 h 30` without a week.
    ///
    /// # Example
    /// ```
    /// use vatsketch::report::StepTime;
    /// let counted = StepTime { task: "turn_2".to_owned(), name: "Turn 2".to_owned(), at_min: 150.0, clock: None };
    /// assert_eq!(counted.words(), "+2\u{a0}h\u{a0}30");
    /// let timed = StepTime { clock: Some(jiff::civil::date(2031, 5, 9).at(6, 5, 0, 0)), ..counted };
    /// assert_eq!((timed.words().as_str(), timed.words_with_day().as_str()), ("06:05", "Fri\u{a0}9\u{a0}May\u{a0}06:05"));
    /// ```
    #[must_use]
    pub fn words(&self) -> String {
        self.clock.map_or_else(|| elapsed(self.at_min), |clock| hour(clock.time()))
    }

    /// Returns the same with its day: `Fri 9 May 14:30`.
    #[must_use]
    pub fn words_with_day(&self) -> String {
        self.clock.map_or_else(|| elapsed(self.at_min), short_moment)
    }

    /// Returns the day it falls on, where there is a week.
    #[must_use]
    pub fn day(&self) -> Option<Date> {
        self.clock.map(DateTime::date)
    }
}

/// Returns a day as it stands over its steps: `Friday 9 May 2031`.
///
/// # Example
/// ```
/// let day = jiff::civil::date(2031, 5, 9);
/// assert_eq!(vatsketch::report::day_words(day), "Friday 9 May 2031");
/// ```
#[must_use]
pub fn day_words(day: Date) -> String {
    format!("{} {} {} {}", weekday(day), day.day(), month(day), day.year())
}

/// Returns a day as it stands in a table: `Fri 9 May`.
#[must_use]
pub fn short_day(day: Date) -> String {
    let three = |word: &'static str| word.get(..3).unwrap_or(word);
    format!("{}\u{a0}{}\u{a0}{}", three(weekday(day)), day.day(), three(month(day)))
}

/// Returns a time with its day: `Fri 9 May 14:30`.
#[must_use]
pub fn short_moment(at: DateTime) -> String {
    format!("{}\u{a0}{}", short_day(at.date()), hour(at.time()))
}

fn weekday(day: Date) -> &'static str {
    match day.weekday() {
        Weekday::Monday => "Monday",
        Weekday::Tuesday => "Tuesday",
        Weekday::Wednesday => "Wednesday",
        Weekday::Thursday => "Thursday",
        Weekday::Friday => "Friday",
        Weekday::Saturday => "Saturday",
        Weekday::Sunday => "Sunday",
    }
}

fn month(day: Date) -> &'static str {
    const MONTHS: [&str; 12] =
        ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];
    let place = usize::from(day.month().unsigned_abs()).saturating_sub(1);
    MONTHS.get(place).copied().unwrap_or_default()
}
