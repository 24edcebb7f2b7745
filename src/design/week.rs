//! The maker's week: when to begin or to be finished, and the hours that are taken. Plain data, by the clock on the wall.

use super::{DesignError, Habitual, lower_first};
use jiff::civil::{DateTime, Time};

/// When a vat is to begin, or by when it is to be finished.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Wish {
    /// Not fixed yet: times count from the start of warming.
    #[default]
    Open,
    /// Begin at this time.
    StartAt(DateTime),
    /// Begin as soon after this time as the maker's hours allow.
    SoonAfter(DateTime),
    /// The cheeses are finished by this time.
    FinishedBy(DateTime),
}

/// Hours that are taken on the same days of every week.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TakenHours {
    /// By what.
    pub by: Habitual,
    /// On which days they begin, Monday first.
    pub days: [bool; 7],
    /// When they begin.
    pub from: Time,
    /// When they end; not after the beginning: on the next day.
    pub to: Time,
    /// Whether nobody can be there at all; otherwise they are only disliked.
    pub impossible: bool,
}

/// Hours that are taken once.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BusyOnce {
    /// From.
    pub from: DateTime,
    /// Until.
    pub to: DateTime,
    /// Whether nobody can be there at all; otherwise they are only disliked.
    pub impossible: bool,
}

impl BusyOnce {
    /// Returns the same length from another time on.
    #[must_use]
    pub fn moved_to(self, from: DateTime) -> Self {
        let to = from.checked_add(self.from.until(self.to).unwrap_or_default()).unwrap_or(self.to);
        Self { from, to, ..self }
    }
}

/// Where the maker really is in the plan: the task that was begun last, and when.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Reached {
    /// Key of the task.
    pub task: String,
    /// When it really began.
    pub began: DateTime,
}

/// The maker's week.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WeekDesign {
    /// When to begin, or by when to be finished.
    pub wish: Wish,
    /// Name of the time zone in the IANA list, such as `Etc/UTC`; empty: that of the computer.
    pub zone: String,
    /// Hours of sleep and work.
    pub taken: Vec<TakenHours>,
    /// Hours that are taken once.
    pub busy: Vec<BusyOnce>,
    /// Where the maker is in the plan, if the vat was begun.
    pub reached: Option<Reached>,
}

impl Default for WeekDesign {
    /// Returns a week with eight hours of sleep every night and no wish yet.
    fn default() -> Self {
        let night = TakenHours {
            by: Habitual::Sleep,
            days: [true; 7],
            from: Time::constant(22, 45, 0, 0),
            to: Time::constant(6, 45, 0, 0),
            impossible: false,
        };
        Self { wish: Wish::Open, zone: String::new(), taken: vec![night], busy: Vec::new(), reached: None }
    }
}

/// The most rows of taken hours, and of busy times.
const MOST_ROWS: usize = 50;
/// Longest name of a zone or of a task, letters.
const MOST_NAME: usize = 60;

impl WeekDesign {
    /// Checks what can be checked without a clock and without the list of zones.
    ///
    /// # Errors
    /// [`DesignError::Week`], with what, why and what to do.
    ///
    /// # Example
    /// ```
    /// use jiff::civil::date;
    /// use vatsketch::design::{BusyOnce, WeekDesign};
    /// let noon = date(2031, 5, 9).at(12, 0, 0, 0);
    /// let busy = |hours: i64| BusyOnce { from: noon, to: noon + jiff::SignedDuration::from_hours(hours), impossible: true };
    /// assert!(WeekDesign { busy: vec![busy(2)], ..WeekDesign::default() }.check().is_ok());
    /// assert!(WeekDesign { busy: vec![busy(0)], ..WeekDesign::default() }.check().is_err());
    /// ```
    pub fn check(&self) -> Result<(), DesignError> {
        for (what, rows) in [("hours of sleep and work", self.taken.len()), ("busy times", self.busy.len())] {
            if rows > MOST_ROWS {
                return refused(what, format!("{rows} rows are given, at most {MOST_ROWS} can be; join some"));
            }
        }
        if let Some(taken) = self.taken.iter().find(|taken| taken.from == taken.to) {
            let what = format!("hours of {} from {}", lower_first(taken.by.label()), hour(taken.from));
            return refused(&what, "they end when they begin; give another end, or remove the row".to_owned());
        }
        if let Some(busy) = self.busy.iter().find(|busy| busy.to <= busy.from) {
            let what = format!("busy from {} to {}", moment(busy.from), moment(busy.to));
            return refused(&what, "it must end after it begins".to_owned());
        }
        for (what, text) in
            [("the time zone", self.zone.as_str()), ("the task reached", self.reached.as_ref().map_or("", |reached| &reached.task))]
        {
            if text.chars().count() > MOST_NAME {
                return refused(what, format!("its name has more than {MOST_NAME} letters; choose one of the list"));
            }
        }
        Ok(())
    }
}

impl WeekDesign {
    /// Returns the week with one more row of taken hours: a night, or a working day from Monday to Friday.
    #[must_use]
    pub fn with_taken(&self, by: Habitual) -> Self {
        let (days, from, to) = match by {
            Habitual::Sleep => ([true; 7], 23, 7),
            Habitual::Work => ([true, true, true, true, true, false, false], 9, 17),
        };
        let row = TakenHours { by, days, from: Time::constant(from, 0, 0, 0), to: Time::constant(to, 0, 0, 0), impossible: false };
        let mut week = self.clone();
        week.taken.push(row);
        week
    }

    /// Returns the week without a row of taken hours.
    #[must_use]
    pub fn without_taken(&self, row: usize) -> Self {
        let mut week = self.clone();
        week.taken = self.taken.iter().enumerate().filter(|(place, _)| *place != row).map(|(_, taken)| *taken).collect();
        week
    }

    /// Returns the week with one more busy time: two hours in the afternoon after a day.
    #[must_use]
    pub fn with_busy(&self, now: DateTime) -> Self {
        let day = now.date().tomorrow().unwrap_or(now.date());
        let mut week = self.clone();
        week.busy.push(BusyOnce { from: day.at(14, 0, 0, 0), to: day.at(16, 0, 0, 0), impossible: false });
        week
    }

    /// Returns the week without a busy time.
    #[must_use]
    pub fn without_busy(&self, row: usize) -> Self {
        let mut week = self.clone();
        week.busy = self.busy.iter().enumerate().filter(|(place, _)| *place != row).map(|(_, busy)| *busy).collect();
        week
    }
}

fn refused(what: &str, why: String) -> Result<(), DesignError> {
    Err(DesignError::Week { what: what.to_owned(), why })
}

/// Returns a time of the day as it is written everywhere: `06:45`.
#[must_use]
pub fn hour(time: Time) -> String {
    format!("{:02}:{:02}", time.hour(), time.minute())
}

/// Returns a time of the wall clock as it is typed and kept: `2031-05-09 18:30`.
///
/// # Example
/// ```
/// let moment = jiff::civil::date(2031, 5, 9).at(18, 30, 0, 0);
/// assert_eq!(vatsketch::design::moment(moment), "2031-05-09 18:30");
/// ```
#[must_use]
pub fn moment(at: DateTime) -> String {
    format!("{} {}", at.date(), hour(at.time()))
}

/// Returns a time of the wall clock from text such as `2031-05-09 18:30`.
///
/// # Errors
/// [`DesignError::Week`]. A date alone is refused: it would be midnight, which nobody means.
///
/// # Example
/// ```
/// use vatsketch::design::{moment, read_moment};
/// assert_eq!(moment(read_moment("2031-05-09 18:30")?), "2031-05-09 18:30");
/// assert!(read_moment("next Friday").is_err());
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
pub fn read_moment(text: &str) -> Result<DateTime, DesignError> {
    let given = text.trim();
    // Plans know whole minutes of the wall clock: seconds are cut off, and an offset, which would be passed over, is refused.
    let (_, time) = given.split_once(['T', 't', ' ']).unwrap_or_default();
    let plain = time.contains(':') && !time.contains(['+', '-', 'Z', 'z', '[']);
    let parsed = plain.then(|| given.parse().ok()).flatten();
    let parsed = parsed.map(|at: DateTime| at.date().at(at.hour(), at.minute(), 0, 0));
    parsed.ok_or_else(|| DesignError::Week {
        what: format!("`{given}`"),
        why: "no date with a time; write it as year-month-day hour:minute, such as 2031-05-09 18:30".to_owned(),
    })
}

/// Returns a time of the day from text such as `6:45`, `18` or `6:45 pm`.
///
/// # Errors
/// [`DesignError::Week`].
///
/// # Example
/// ```
/// use vatsketch::design::{hour, read_hour};
/// assert_eq!(hour(read_hour("6:45 pm")?), "18:45");
/// assert_eq!(hour(read_hour("12 am")?), "00:00");
/// assert!(read_hour("13 pm").is_err());
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
pub fn read_hour(text: &str) -> Result<Time, DesignError> {
    let given = text.trim();
    let lower = given.to_lowercase();
    let half = ["am", "pm"].into_iter().find_map(|half| Some((lower.strip_suffix(half)?.trim_end(), half)));
    let clock = half.map_or(lower.as_str(), |(clock, _)| clock);
    let (hour, minute) = clock.split_once(':').unwrap_or((clock, "0"));
    let parsed = hour.parse().ok().zip(minute.parse().ok()).and_then(|(hour, minute): (i8, i8)| {
        let hour = match half {
            None => hour,
            Some((_, half)) if (1..=12).contains(&hour) => hour % 12 + if half == "pm" { 12 } else { 0 },
            Some(_) => return None,
        };
        Time::new(hour, minute, 0, 0).ok()
    });
    parsed.ok_or_else(|| DesignError::Week {
        what: format!("`{given}`"),
        why: "no time of the day; write hour and minute, such as 6:45 or 22:00".to_owned(),
    })
}
