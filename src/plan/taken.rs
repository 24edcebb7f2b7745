//! What takes the hours in which the maker would rather not stand at the vat, and what they cost.

use super::WALL_DAY_MIN;

crate::constants! {
    /// An alarm at night.
    ALARM_POINTS = { "Points for an alarm in the hours of sleep, however long the work takes", 200.0, "1", (100.0, 600.0), Ourselves, "a wish, not a fact: as bad as going to bed twenty minutes late", Judged }
    /// Still up.
    STILL_UP = { "Longest time between two tasks at night that nobody sleeps in", 30.0, "min", (15.0, 60.0), Ourselves, "estimate: the second task rings no alarm of its own", Judged }
    /// A minute of sleep.
    SLEEP_POINTS = { "Points for a minute of evening work that goes on into the hours of sleep", 10.0, "1/min", (5.0, 20.0), Ourselves, "a wish, not a fact: next to the 2 points of a quarter of an hour's shift", Judged }
    /// A minute of work.
    WORK_POINTS = { "Points for a minute of cheese work while at work", 4.0, "1/min", (2.0, 10.0), Ourselves, "a wish, not a fact: less than sleep", Judged }
    /// A minute of an appointment.
    BUSY_POINTS = { "Points for a minute of work while busy elsewhere", 10.0, "1/min", (4.0, 20.0), Ourselves, "a wish, not a fact: an appointment is missed like sleep", Judged }
    /// Waiting.
    WAIT_POINTS = { "Points for a quarter of an hour of waiting to begin, or of being finished too soon", 1.0, "1", (0.0, 4.0), Ourselves, "a wish, not a fact: a day's wait is worth ten minutes of sleep", Judged }
}

const WEEK_DAYS: i64 = 7;

/// Why hands are not free.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Taken {
    /// Asleep.
    Sleep,
    /// At work.
    Work,
    /// Busy for once.
    Busy,
}

impl Taken {
    /// Returns what a minute costs unless the maker says otherwise.
    #[must_use]
    pub const fn points(self) -> i64 {
        match self {
            Self::Sleep => SLEEP_POINTS.value as i64,
            Self::Work => WORK_POINTS.value as i64,
            Self::Busy => BUSY_POINTS.value as i64,
        }
    }

    /// Returns what an alarm in it costs: nothing where nobody sleeps.
    #[must_use]
    pub const fn alarm_points(self) -> i64 {
        match self {
            Self::Sleep => ALARM_POINTS.value as i64,
            Self::Work | Self::Busy => 0,
        }
    }

    /// Returns it in words, for "10 min of …".
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Sleep => "sleep",
            Self::Work => "your working hours",
            Self::Busy => "busy time",
        }
    }
}

/// A span of time that is taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Span {
    /// By what.
    pub by: Taken,
    /// From this minute on.
    pub from_min: i64,
    /// Until before this one.
    pub to_min: i64,
    /// What a minute of it costs.
    pub points: i64,
    /// What an alarm in it costs, whatever is done then; 0 if minutes are all that counts.
    pub alarm_points: i64,
    /// Whether nobody can be there at all: it is taken only where no plan avoids it.
    pub impossible: bool,
}

/// Hours that are taken on the same days of every week.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Habit {
    /// By what.
    pub by: Taken,
    /// On which days it begins, Monday first.
    pub days: [bool; 7],
    /// Minute of the day at which it begins.
    pub from_min: i64,
    /// Minute of that day at which it ends; more than 1440 if it ends on the next.
    pub to_min: i64,
    /// What a minute of it costs.
    pub points: i64,
    /// What an alarm in it costs, whatever is done then; 0 if minutes are all that counts.
    pub alarm_points: i64,
    /// Whether nobody can be there at all: it is taken only where no plan avoids it.
    pub impossible: bool,
}

impl Habit {
    /// Every day of the week.
    pub const EVERY_DAY: [bool; 7] = [true; 7];

    /// Returns a habit at its usual price; an end that is not after the beginning is on the next day.
    ///
    /// # Arguments
    /// * `from`, `to`: hour and minute of the day
    ///
    /// # Example
    /// ```
    /// use vatsketch::plan::{Habit, Taken};
    /// let sleep = Habit::new(Taken::Sleep, Habit::EVERY_DAY, (22, 30), (6, 15));
    /// assert_eq!(sleep.to_min - sleep.from_min, 7 * 60 + 45);
    /// ```
    #[must_use]
    pub fn new(by: Taken, days: [bool; 7], from: (u8, u8), to: (u8, u8)) -> Self {
        let minute = |(hour, minute): (u8, u8)| (60 * i64::from(hour) + i64::from(minute)).min(WALL_DAY_MIN);
        let (from_min, to_min) = (minute(from), minute(to));
        let to_min = if to_min > from_min { to_min } else { to_min + WALL_DAY_MIN };
        Self { by, days, from_min, to_min, points: by.points(), alarm_points: by.alarm_points(), impossible: false }
    }

    /// Returns the same hours as impossible, or as only disliked.
    #[must_use]
    pub const fn as_impossible(self, impossible: bool) -> Self {
        Self { impossible, ..self }
    }

    /// Returns whether it begins on a day counted from a Monday; days before that Monday count backwards.
    #[must_use]
    pub fn begins_on(&self, day: i64) -> bool {
        usize::try_from(day.rem_euclid(WEEK_DAYS)).ok().and_then(|day| self.days.get(day)).copied().unwrap_or(false)
    }

    /// Returns its spans until a minute, where every day has 24 hours; it may have begun on the Sunday before.
    pub fn spans(&self, until_min: i64) -> impl Iterator<Item = Span> + '_ {
        (-1..=until_min / WALL_DAY_MIN).filter(|day| self.begins_on(*day)).map(|day| Span {
            by: self.by,
            from_min: day * WALL_DAY_MIN + self.from_min,
            to_min: day * WALL_DAY_MIN + self.to_min,
            points: self.points,
            alarm_points: self.alarm_points,
            impossible: self.impossible,
        })
    }
}
