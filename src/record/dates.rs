//! Dates with a time as probes and spreadsheets write them.

use jiff::civil::{Date, DateTime, Time};
use jiff::tz::TimeZone;

/// In which order day and month stand where both are figures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DateOrder {
    /// 9/5 is the ninth of May.
    DayFirst,
    /// 5/9 is the ninth of May.
    MonthFirst,
}

impl DateOrder {
    /// Both.
    pub const ALL: [Self; 2] = [Self::DayFirst, Self::MonthFirst];

    /// Returns the word on the command line.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::DayFirst => "day-first",
            Self::MonthFirst => "month-first",
        }
    }

    /// Returns it explained.
    #[must_use]
    pub const fn label(self) -> &'static str {
        match self {
            Self::DayFirst => "9/5 is 9 May",
            Self::MonthFirst => "5/9 is 9 May",
        }
    }
}

/// Why a text is no date with a time.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum DateError {
    /// No form that is known.
    #[error("“{text}” is no date with a time; known are 2031-05-09 18:30, 09.05.2031 18:30, 9/5/2031 6:30 pm, 9 May 2031 18:30")]
    NotUnderstood {
        /// What stands there.
        text: String,
    },
    /// No calendar or clock has it.
    #[error("there is no such day or time as “{text}”")]
    NoSuchTime {
        /// What stands there.
        text: String,
    },
    /// Day and month can be either way.
    #[error("“{text}” can be a day and a month in either order; say which: day first or month first")]
    TwoWays {
        /// What stands there.
        text: String,
    },
}

/// A date as it is written, before its order is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Written {
    /// Its order is plain.
    Known { year: i16, month: i8, day: i8 },
    /// Two figures that may be day and month or month and day.
    Either { first: i8, second: i8, year: i16 },
}

/// The first letters of the months.
const MONTHS: [&str; 12] = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

/// Returns the order in which some dates must be written, if one of them tells it.
pub(super) fn order_of<'a>(texts: impl Iterator<Item = &'a str>) -> Option<DateOrder> {
    texts.filter_map(|text| written(split(text)?.0)).find_map(|date| match date {
        Written::Either { first, .. } if first > 12 => Some(DateOrder::DayFirst),
        Written::Either { second, .. } if second > 12 => Some(DateOrder::MonthFirst),
        Written::Known { .. } | Written::Either { .. } => None,
    })
}

/// Returns whether a text is a date alone, without a time.
pub(super) fn is_date_alone(text: &str) -> bool {
    split(text).is_none() && written(text.trim()).is_some()
}

/// Reads a date with a time. One that says how far it is from UTC becomes the time on the wall of a zone.
pub(super) fn read(text: &str, order: Option<DateOrder>, zone: &TimeZone) -> Result<DateTime, DateError> {
    let given = || text.trim().to_owned();
    let unknown = || DateError::NotUnderstood { text: given() };
    let (date, time) = split(text).ok_or_else(unknown)?;
    let (year, month, day) = match (written(date).ok_or_else(unknown)?, order) {
        (Written::Known { year, month, day }, _) => (year, month, day),
        (Written::Either { first, second, year }, _) if first == second => (year, first, second),
        (Written::Either { first, second, year }, Some(DateOrder::DayFirst)) => (year, second, first),
        (Written::Either { first, second, year }, Some(DateOrder::MonthFirst)) => (year, first, second),
        (Written::Either { .. }, None) => return Err(DateError::TwoWays { text: given() }),
    };
    let none = || DateError::NoSuchTime { text: given() };
    let (clock, offset) = with_offset(time);
    let time = match read_time(clock) {
        Some(Read::Time(time)) => time,
        Some(Read::NoSuchTime) => return Err(none()),
        None => return Err(unknown()),
    };
    let at = Date::new(year, month, day).map_err(|_| none())?.to_datetime(time);
    match offset {
        None => Ok(at),
        Some(offset) => {
            let moment = format!("{at}{offset}").parse::<jiff::Timestamp>().map_err(|_| unknown())?;
            Ok(zone.to_datetime(moment))
        }
    }
}

/// Parts a text into its date and its time; none where there is no time.
fn split(text: &str) -> Option<(&str, &str)> {
    let text = text.trim();
    let colon = text.find(':')?;
    let head = text.get(..colon)?;
    let hour = head.trim_end_matches(|letter: char| letter.is_ascii_digit()).len();
    let (date, time) = text.split_at_checked(hour)?;
    let date = date.trim_end().trim_end_matches(['T', 't', ',']).trim_end();
    (!date.is_empty()).then_some((date, time))
}

/// Parts a time from its distance from UTC, if it says one.
fn with_offset(time: &str) -> (&str, Option<&str>) {
    let at = time.find(['Z', 'z', '+', '-']).unwrap_or(time.len());
    let (clock, offset) = time.split_at_checked(at).unwrap_or((time, ""));
    (clock.trim(), (!offset.is_empty()).then_some(offset))
}

/// A time of the day as it is written.
enum Read {
    Time(Time),
    /// No clock has it.
    NoSuchTime,
}

/// Reads hours, minutes and seconds; none if it is no time at all. Parts of a second are cut off.
fn read_time(text: &str) -> Option<Read> {
    let lower = text.to_lowercase().replace('.', "");
    let bare = if lower.ends_with('m') { lower.as_str() } else { text };
    let half = ["am", "pm"].into_iter().find_map(|half| Some((bare.strip_suffix(half)?.trim_end(), half)));
    let clock = half.map_or(bare, |(clock, _)| clock);
    let clock = clock.split_once('.').map_or(clock, |(whole, _)| whole);
    let parts: Vec<i8> = clock.split(':').map(|part| part.trim().parse().ok()).collect::<Option<_>>()?;
    let (hour, minute, second) = match parts[..] {
        [hour, minute] => (hour, minute, 0),
        [hour, minute, second] => (hour, minute, second),
        _ => return None,
    };
    let hour = match half {
        None => hour,
        Some((_, half)) if (1..=12).contains(&hour) => hour % 12 + if half == "pm" { 12 } else { 0 },
        Some(_) => return Some(Read::NoSuchTime),
    };
    Some(Time::new(hour, minute, second, 0).map_or(Read::NoSuchTime, Read::Time))
}

/// Reads a date without its time.
fn written(text: &str) -> Option<Written> {
    let parts: Vec<&str> = text.split(['-', '/', '.', ' ', ',']).filter(|part| !part.is_empty()).collect();
    let [one, two, three] = parts[..] else { return None };
    let year = |text: &str| match (text.len(), text.parse::<i16>()) {
        (4, Ok(year)) => Some(year),
        (2, Ok(year)) => Some(2000 + year),
        _ => None,
    };
    let small = |text: &str| text.parse::<i8>().ok().filter(|number| (1..=31).contains(number));
    let named = |text: &str| {
        let short: String = text.to_lowercase().chars().take(3).collect();
        let letters = text.chars().all(char::is_alphabetic);
        MONTHS.iter().position(|month| letters && *month == short).and_then(|at| i8::try_from(at + 1).ok())
    };
    if let Some(month) = named(two) {
        return Some(Written::Known { year: year(three)?, month, day: small(one)? });
    }
    if let Some(month) = named(one) {
        return Some(Written::Known { year: year(three)?, month, day: small(two)? });
    }
    if one.len() == 4 {
        return Some(Written::Known { year: year(one)?, month: small(two)?, day: small(three)? });
    }
    let (first, second, year) = (small(one)?, small(two)?, year(three)?);
    // With points between them the day comes first wherever it is written so (common practice, no source).
    let dotted = text.contains('.');
    Some(if dotted { Written::Known { year, month: second, day: first } } else { Written::Either { first, second, year } })
}
