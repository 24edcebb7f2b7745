//! Days and times in words.

use crate::design::hour;
use jiff::civil::{Date, DateTime, Weekday};

pub(super) const WEEKDAYS: [(Weekday, &str); 7] = [
    (Weekday::Monday, "Monday"),
    (Weekday::Tuesday, "Tuesday"),
    (Weekday::Wednesday, "Wednesday"),
    (Weekday::Thursday, "Thursday"),
    (Weekday::Friday, "Friday"),
    (Weekday::Saturday, "Saturday"),
    (Weekday::Sunday, "Sunday"),
];

pub(super) const MONTHS: [&str; 12] =
    ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

/// Minutes of a day on the wall.
pub const WALL_DAY_MIN: i64 = 24 * 60;

/// Letters of a day or a month that are enough.
pub(super) const LETTERS_ENOUGH: usize = 3;

/// Returns the day of the week in full.
#[must_use]
pub fn weekday_name(day: Weekday) -> &'static str {
    WEEKDAYS.iter().find(|(known, _)| *known == day).map_or("", |(_, name)| name)
}

/// Returns a day as it is said: "Fri 9 May".
///
/// # Example
/// ```
/// assert_eq!(vatsketch::plan::day_words(jiff::civil::date(2031, 5, 9)), "Fri 9 May");
/// ```
#[must_use]
pub fn day_words(day: Date) -> String {
    let short = |name: &'static str| name.get(..LETTERS_ENOUGH).unwrap_or(name);
    format!("{} {} {}", short(weekday_name(day.weekday())), day.day(), short(month_name(day)))
}

/// Returns a day in full, as it is shown over what is done on it: "Friday 9 May 2031".
///
/// # Example
/// ```
/// assert_eq!(vatsketch::plan::whole_day_words(jiff::civil::date(2031, 5, 9)), "Friday 9 May 2031");
/// ```
#[must_use]
pub fn whole_day_words(day: Date) -> String {
    format!("{} {} {} {}", weekday_name(day.weekday()), day.day(), month_name(day), day.year())
}

/// Returns a time with its day in short: "Fri 9 May, 18:30"; [`super::spoken_time`] reads it again.
#[must_use]
pub fn time_words(at: DateTime) -> String {
    format!("{}, {}", day_words(at.date()), hour(at.time()))
}

/// Returns a time with its day in full; [`super::spoken_time`] reads it again.
///
/// # Example
/// ```
/// use vatsketch::plan::{Lean, spoken_time, whole_time_words};
/// let at = jiff::civil::date(2031, 5, 9).at(18, 30, 0, 0);
/// assert_eq!(whole_time_words(at), "Friday 9 May 2031, 18:30");
/// assert_eq!(spoken_time(&whole_time_words(at), at, Lean::Ahead)?, at);
/// # Ok::<(), vatsketch::plan::SpokenError>(())
/// ```
#[must_use]
pub fn whole_time_words(at: DateTime) -> String {
    format!("{}, {}", whole_day_words(at.date()), hour(at.time()))
}

fn month_name(day: Date) -> &'static str {
    usize::try_from(day.month() - 1).ok().and_then(|month| MONTHS.get(month)).copied().unwrap_or_default()
}
