//! The hours in which the maker would rather not stand at the vat, and what a minute of them costs.

use super::WALL_DAY_MIN;
use super::gap::MOST_POINTS;

crate::constants! {
    /// A minute of sleep.
    SLEEP_POINTS = { "Points for a minute of work while asleep", 10.0, "1/min", (5.0, 20.0), Ourselves, "a wish, not a fact: next to the 2 points of a quarter of an hour's shift", Judged }
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
        Self { by, days, from_min, to_min, points: by.points() }
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
        })
    }
}

/// All taken hours from a Monday 00:00 to some minute after it.
#[derive(Clone, Debug, PartialEq)]
pub struct Hours {
    spans: Vec<Span>,
    /// Points of all minutes before the minute with this number.
    before: Vec<i64>,
}

impl Hours {
    /// Returns the hours; where spans overlap, the dearest counts.
    ///
    /// # Arguments
    /// * `spans`: in any order; what lies before minute 0 or after `until_min` is cut off
    /// * `until_min`: where they end, ≥ 0; a schedule says with [`super::horizon_min`] how far it looks
    ///
    /// # Example
    /// ```
    /// use vatsketch::plan::{Habit, Hours, Taken};
    /// let sleep = Habit::new(Taken::Sleep, Habit::EVERY_DAY, (23, 0), (7, 0));
    /// let hours = Hours::new(sleep.spans(2880).collect(), 2880);
    /// assert_eq!(hours.points(6 * 60 + 50, 20), 10 * Taken::Sleep.points());
    /// ```
    #[must_use]
    pub fn new(spans: Vec<Span>, until_min: i64) -> Self {
        let length = usize::try_from(until_min).unwrap_or(0);
        let mut each = vec![0_i64; length];
        for span in &spans {
            let at = |minute: i64| usize::try_from(minute).unwrap_or(0).min(length);
            let points = span.points.clamp(0, MOST_POINTS);
            for minute in each.get_mut(at(span.from_min)..at(span.to_min)).unwrap_or_default() {
                *minute = points.max(*minute);
            }
        }
        let mut before = Vec::with_capacity(length + 1);
        let mut sum = 0;
        before.push(sum);
        before.extend(each.into_iter().map(|points| {
            sum += points;
            sum
        }));
        Self { spans, before }
    }

    /// Returns the hours of habits alone, where every day has 24 hours.
    #[must_use]
    pub fn of_habits(habits: &[Habit], until_min: i64) -> Self {
        Self::new(habits.iter().flat_map(|habit| habit.spans(until_min)).collect(), until_min)
    }

    /// Returns the spans that are taken, in the order in which they were given.
    #[must_use]
    pub fn spans(&self) -> &[Span] {
        &self.spans
    }

    /// Returns where they end.
    #[must_use]
    pub fn until_min(&self) -> i64 {
        i64::try_from(self.before.len()).unwrap_or(i64::MAX) - 1
    }

    /// Returns what hands from a minute on cost: the points of the minutes that are taken.
    #[must_use]
    pub fn points(&self, from_min: i64, hands_min: i64) -> i64 {
        let before = |minute: i64| {
            let at = usize::try_from(minute).unwrap_or(0).min(self.before.len().saturating_sub(1));
            self.before.get(at).copied().unwrap_or(0)
        };
        before(from_min + hands_min) - before(from_min)
    }

    /// Returns by what these minutes are taken, each with its minutes and points, in order of time.
    #[must_use]
    pub fn taken(&self, from_min: i64, hands_min: i64) -> Vec<Lost> {
        let mut lost: Vec<Lost> = Vec::new();
        for minute in from_min.max(0)..(from_min + hands_min).min(self.until_min()) {
            let here = self.spans.iter().filter(|span| span.from_min <= minute && minute < span.to_min && span.points > 0);
            let Some(span) = here.reduce(|dearest, span| if span.points > dearest.points { span } else { dearest }) else {
                continue;
            };
            let points = span.points.min(MOST_POINTS);
            match lost.iter_mut().find(|lost| lost.by == span.by) {
                Some(lost) => {
                    lost.minutes += 1;
                    lost.points += points;
                }
                None => lost.push(Lost { by: span.by, minutes: 1, points }),
            }
        }
        lost
    }
}

/// Minutes of a handling that fall into taken hours.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Lost {
    /// What is disturbed.
    pub by: Taken,
    /// For how long.
    pub minutes: i64,
    /// What that costs.
    pub points: i64,
}
