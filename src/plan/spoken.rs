//! Times as a maker would write them: `tomorrow 9:00`, `Fri 18:30`, `9 May 18:30`, `2031-05-09 18:30`. The clock is passed in.

use super::day::{LETTERS_ENOUGH, MONTHS, WEEKDAYS, weekday_name};
use crate::design::read_moment;
use jiff::ToSpan;
use jiff::civil::{Date, DateTime, Time, Weekday};

/// On which side of now a time lies that names no year, or no day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lean {
    /// The next such time: a plan.
    Ahead,
    /// The last such time: something that was done.
    Back,
}

/// Why a text is no time.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum SpokenError {
    /// Nothing that is known.
    #[error("“{text}” is no day with a time; write it as in tomorrow 9:00, Fri 18:30, 9 May 18:30 or 2031-05-09 18:30")]
    NotUnderstood {
        /// What was written.
        text: String,
    },
    /// A day alone.
    #[error("“{text}” names no hour; add one, as in {text} 18:30")]
    NoHour {
        /// What was written.
        text: String,
    },
    /// Figures that can be read in two orders.
    #[error("“{text}” can be a day and a month in either order; write the month as a word, as in 9 May")]
    TwoWays {
        /// What was written.
        text: String,
    },
    /// A day that no calendar has.
    #[error("there is no such day as “{text}”; count the days of the month again")]
    NoSuchDay {
        /// What was written.
        text: String,
    },
    /// A day of the week that the date does not fall on.
    #[error("{date} is a {falls_on}, not a {given}; leave the day of the week out, or write another date")]
    OtherWeekday {
        /// The date.
        date: Date,
        /// The day it falls on.
        falls_on: &'static str,
        /// The day that was written.
        given: &'static str,
    },
}

/// Years that are searched for a date without a year: 29 February may be eight years away.
const YEARS_SEARCHED: i16 = 8;

/// Returns the time that a text means.
///
/// It reads a date with a time as files have it, and in any order an hour (`18:30`, `9`, `6 pm`) and a day: `today`, `tomorrow`, `yesterday`, a
/// day of the week, `9 May`, `May 9th`, `9.5.`, each with or without a year; no day means the nearest such hour.
///
/// # Arguments
/// * `now`: what the clock says
/// * `lean`: where it may lie if the text does not say
///
/// # Errors
/// [`SpokenError`], with what may be written.
///
/// # Example
/// ```
/// use jiff::civil::date;
/// use vatsketch::plan::{Lean, spoken_time};
/// let now = date(2031, 5, 5).at(8, 0, 0, 0);
/// assert_eq!(spoken_time("tomorrow 9", now, Lean::Ahead)?, date(2031, 5, 6).at(9, 0, 0, 0));
/// assert_eq!(spoken_time("9 May 6:30 pm", now, Lean::Ahead)?, date(2031, 5, 9).at(18, 30, 0, 0));
/// assert_eq!(spoken_time("7:15", now, Lean::Back)?, date(2031, 5, 5).at(7, 15, 0, 0));
/// assert!(spoken_time("soon", now, Lean::Ahead).is_err());
/// # Ok::<(), vatsketch::plan::SpokenError>(())
/// ```
pub fn spoken_time(text: &str, now: DateTime, lean: Lean) -> Result<DateTime, SpokenError> {
    if let Ok(at) = read_moment(text) {
        return Ok(at);
    }
    let given = text.trim();
    let lower = given.to_lowercase().replace(',', " ");
    let mut words: Vec<&str> = lower.split_whitespace().filter(|word| !["at", "on", "by"].contains(word)).collect();
    if words.iter().any(|word| word.contains('/')) {
        return Err(SpokenError::TwoWays { text: given.to_owned() });
    }
    let hour = take_hour(&mut words);
    let day = Day::of(&words).filter(|_| !given.is_empty()).ok_or_else(|| SpokenError::NotUnderstood { text: given.to_owned() })?;
    let hour = hour.ok_or_else(|| SpokenError::NoHour { text: given.to_owned() })?;
    day.at(hour, now, lean, given)
}

/// Takes the hour out of the words: one with a colon, one with am or pm, or a bare number at the end of others.
fn take_hour(words: &mut Vec<&str>) -> Option<Time> {
    let half = |word: &str| word == "am" || word == "pm";
    let marked = words.iter().position(|word| word.contains(':') || half(word) || (half_of(word).is_some() && !half(word)));
    if let Some(at) = marked {
        let own = *words.get(at)?;
        // "6 pm" is two words, "6:30 pm" as well.
        let (number, mark, from) = if half(own) {
            (*words.get(at.checked_sub(1)?)?, Some(own), at - 1)
        } else {
            let next = words.get(at + 1).copied().filter(|word| half(word));
            let (number, mark) = half_of(own).map_or((own, next), |(number, mark)| (number, Some(mark)));
            (number, mark, at)
        };
        let until = at + 1 + usize::from(!half(own) && mark.is_some() && half_of(own).is_none());
        let time = time_of(number, mark)?;
        words.drain(from..until);
        return Some(time);
    }
    let bare = words.last().copied().filter(|word| words.len() > 1 && word.len() <= 2)?;
    let time = time_of(bare, None)?;
    // "May 9" is a day, and "9" its number, unless a number stands before the month already.
    let of_month = words.len() == 2 && words.first().is_some_and(|word| month(word).is_some());
    if of_month {
        return None;
    }
    words.pop();
    Some(time)
}

/// Parts `6pm` into its number and its half of the day.
fn half_of(word: &str) -> Option<(&str, &str)> {
    let at = word.len().checked_sub(2)?;
    let (number, mark) = (word.get(..at)?, word.get(at..)?);
    let digits = number.chars().all(|letter| letter.is_ascii_digit() || letter == ':');
    (digits && !number.is_empty() && (mark == "am" || mark == "pm")).then_some((number, mark))
}

fn time_of(number: &str, mark: Option<&str>) -> Option<Time> {
    let (hour, minute) = number.split_once(':').unwrap_or((number, "0"));
    let (hour, minute): (i8, i8) = (hour.parse().ok()?, minute.parse().ok()?);
    let hour = match mark {
        None => hour,
        Some(mark) if (1..=12).contains(&hour) => hour % 12 + if mark == "pm" { 12 } else { 0 },
        Some(_) => return None,
    };
    Time::new(hour, minute, 0, 0).ok()
}

/// A day as it was written.
enum Day {
    /// None: the nearest such hour.
    Any,
    /// So many days from today.
    From(i64),
    /// A day of the week.
    Of(Weekday),
    /// A date, perhaps without its year, perhaps with its day of the week.
    Date { day: i8, month: i8, year: Option<i16>, falls_on: Option<Weekday> },
}

impl Day {
    fn of(words: &[&str]) -> Option<Self> {
        match words {
            [] => Some(Self::Any),
            ["today"] => Some(Self::From(0)),
            ["tomorrow"] => Some(Self::From(1)),
            ["yesterday"] => Some(Self::From(-1)),
            [one] if weekday(one).is_some() => weekday(one).map(Self::Of),
            [first, rest @ ..] if weekday(first).is_some() => match Self::of(rest)? {
                Self::Date { day, month, year, .. } => Some(Self::Date { day, month, year, falls_on: weekday(first) }),
                _ => None,
            },
            [one] => in_figures(one),
            [one, other] => dated(one, other, None),
            [one, other, year] => dated(one, other, Some(whole_year(year)?)),
            _ => None,
        }
    }

    /// Returns the day at an hour.
    fn at(&self, hour: Time, now: DateTime, lean: Lean, text: &str) -> Result<DateTime, SpokenError> {
        let no_such_day = || SpokenError::NoSuchDay { text: text.to_owned() };
        let today = now.date();
        let on = |day: Date| day.to_datetime(hour);
        let moved = |days: i64| today.checked_add(days.days()).map(on).map_err(|_| no_such_day());
        let fits = |at: DateTime| match lean {
            Lean::Ahead => at >= now,
            Lean::Back => at <= now,
        };
        // From now on, one day further each time, in the direction in which it leans.
        let step = if lean == Lean::Ahead { 1 } else { -1 };
        match *self {
            Self::From(days) => moved(days),
            Self::Any => moved(0).and_then(|at| if fits(at) { Ok(at) } else { moved(step) }),
            Self::Of(wanted) => {
                let days = (0..=7).map(|day| step * day).map(moved);
                days.flatten().find(|at| at.weekday() == wanted && fits(*at)).ok_or_else(no_such_day)
            }
            Self::Date { day, month, year, falls_on } => {
                let in_year = |year: i16| Date::new(year, month, day).ok().map(on);
                let at = match year {
                    Some(year) => in_year(year),
                    None => {
                        (0..=YEARS_SEARCHED).filter_map(|years| in_year(today.year() + step as i16 * years)).find(|at| fits(*at))
                    }
                };
                let at = at.ok_or_else(no_such_day)?;
                match falls_on {
                    Some(given) if given != at.weekday() => Err(SpokenError::OtherWeekday {
                        date: at.date(),
                        falls_on: weekday_name(at.weekday()),
                        given: weekday_name(given),
                    }),
                    _ => Ok(at),
                }
            }
        }
    }
}

fn weekday(word: &str) -> Option<Weekday> {
    WEEKDAYS.iter().find(|(_, name)| begins(name, word)).map(|(day, _)| *day)
}

fn month(word: &str) -> Option<i8> {
    (1..).zip(MONTHS).find(|(_, name)| begins(name, word)).map(|(number, _)| number)
}

/// Returns whether a word is a name, or its first letters.
fn begins(name: &str, word: &str) -> bool {
    let word = word.trim_end_matches('.');
    word.len() >= LETTERS_ENOUGH && name.to_lowercase().starts_with(word)
}

fn dated(one: &str, other: &str, year: Option<i16>) -> Option<Day> {
    let (day, month) = match (month(one), month(other)) {
        (None, Some(month)) => (one, month),
        (Some(month), None) => (other, month),
        _ => return None,
    };
    let day = ["st", "nd", "rd", "th", "."].iter().find_map(|ending| day.strip_suffix(ending)).unwrap_or(day);
    Some(Day::Date { day: day.parse().ok()?, month, year, falls_on: None })
}

/// Reads `2031-05-09`, `9.5.` and `9.5.2031`.
fn in_figures(word: &str) -> Option<Day> {
    if let Ok(date) = word.parse::<Date>() {
        return Some(Day::Date { day: date.day(), month: date.month(), year: Some(date.year()), falls_on: None });
    }
    let mut parts = word.split('.');
    let (day, month) = (parts.next()?.parse().ok()?, parts.next()?.parse().ok()?);
    let year = match parts.next() {
        None | Some("") => None,
        Some(year) => Some(whole_year(year)?),
    };
    parts.next().is_none().then_some(Day::Date { day, month, year, falls_on: None })
}

fn whole_year(word: &str) -> Option<i16> {
    word.parse().ok().filter(|year| (1000..=9998).contains(year))
}
