//! The hours in which the maker would rather not stand at the vat, or cannot, minute by minute, and what hands and alarms cost in them.

use super::gap::MOST_POINTS;
use super::{Habit, Span, Taken, length};

/// What one minute costs that is taken.
#[derive(Clone, Copy, Default)]
struct Minute {
    points: i64,
    alarm_points: i64,
    impossible: bool,
}

/// All taken hours from a Monday 00:00 to some minute after it.
#[derive(Clone, Debug, PartialEq)]
pub struct Hours {
    spans: Vec<Span>,
    /// Points of all minutes before the minute with this number.
    before: Vec<i64>,
    /// The same without the minutes in which an alarm counts, for hands that began with one.
    before_woken: Vec<i64>,
    /// Minutes before the minute with this number in which nobody can be there.
    before_impossible: Vec<i64>,
    /// What an alarm in each minute costs.
    alarms: Vec<i64>,
}

impl Hours {
    /// Returns the hours; where spans overlap, an impossible one counts, and then the dearest.
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
    /// // Twenty minutes from 22:50: ten of them are taken from the night.
    /// assert_eq!(hours.points(22 * 60 + 50, 20), 10 * Taken::Sleep.points());
    /// // From 06:50 it is the alarm that costs, once.
    /// assert_eq!((hours.points(6 * 60 + 50, 20), hours.alarm_points(6 * 60 + 50)), (0, Taken::Sleep.alarm_points()));
    /// ```
    #[must_use]
    pub fn new(spans: Vec<Span>, until_min: i64) -> Self {
        let length = usize::try_from(until_min).unwrap_or(0);
        let mut each = vec![Minute::default(); length];
        for span in &spans {
            let at = |minute: i64| usize::try_from(minute).unwrap_or(0).min(length);
            let points = |points: i64| points.clamp(0, MOST_POINTS);
            let (impossible, alarm_points) = (span.impossible, points(span.alarm_points));
            let own = Minute { points: points(span.points), alarm_points, impossible };
            for minute in each.get_mut(at(span.from_min)..at(span.to_min)).unwrap_or_default() {
                if (own.impossible, own.points) > (minute.impossible, minute.points) {
                    *minute = own;
                }
            }
        }
        let woken = |minute: &Minute| if minute.alarm_points > 0 { 0 } else { minute.points };
        Self {
            spans,
            before: sums(each.iter().map(|minute| minute.points)),
            before_woken: sums(each.iter().map(woken)),
            before_impossible: sums(each.iter().map(|minute| i64::from(minute.impossible))),
            alarms: each.iter().map(|minute| minute.alarm_points).collect(),
        }
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
        i64::try_from(self.alarms.len()).unwrap_or(i64::MAX)
    }

    /// Returns what an alarm at a minute costs; nothing where nobody is woken.
    #[must_use]
    pub fn alarm_points(&self, minute: i64) -> i64 {
        usize::try_from(minute).ok().and_then(|at| self.alarms.get(at)).copied().unwrap_or(0)
    }

    /// Returns what hands from a minute on cost: the points of the minutes that are taken. Of hands that begin where an alarm counts, the minutes
    /// there cost nothing more.
    #[must_use]
    pub fn points(&self, from_min: i64, hands_min: i64) -> i64 {
        between(if self.alarm_points(from_min) > 0 { &self.before_woken } else { &self.before }, from_min, hands_min)
    }

    /// Returns in how many of these minutes nobody can be there.
    ///
    /// # Example
    /// ```
    /// use vatsketch::plan::{Habit, Hours, Taken};
    /// let shift = Habit::new(Taken::Work, Habit::EVERY_DAY, (9, 0), (17, 0)).as_impossible(true);
    /// let hours = Hours::of_habits(&[shift], 2880);
    /// assert_eq!(hours.impossible_min(8 * 60 + 50, 30), 20);
    /// ```
    #[must_use]
    pub fn impossible_min(&self, from_min: i64, hands_min: i64) -> i64 {
        between(&self.before_impossible, from_min, hands_min)
    }

    /// Returns by what these minutes are taken, each with its minutes and points, in order of time.
    #[must_use]
    pub fn taken(&self, from_min: i64, hands_min: i64) -> Vec<Lost> {
        let woken = self.alarm_points(from_min) > 0;
        let mut lost: Vec<Lost> = Vec::new();
        for minute in from_min.max(0)..(from_min + hands_min).min(self.until_min()) {
            let here = self
                .spans
                .iter()
                .filter(|span| span.from_min <= minute && minute < span.to_min)
                .filter(|span| span.points > 0 || span.impossible);
            let weight = |span: &Span| (span.impossible, span.points);
            let Some(span) = here.reduce(|first, span| if weight(span) > weight(first) { span } else { first }) else {
                continue;
            };
            let points = if woken && span.alarm_points > 0 { 0 } else { span.points.min(MOST_POINTS) };
            match lost.iter_mut().find(|lost| (lost.by, lost.impossible) == (span.by, span.impossible)) {
                Some(lost) => {
                    lost.minutes += 1;
                    lost.points += points;
                }
                None => lost.push(Lost { by: span.by, minutes: 1, points, impossible: span.impossible }),
            }
        }
        lost
    }
}

/// Returns the sum over some minutes, from the sums before each.
fn between(sums: &[i64], from_min: i64, hands_min: i64) -> i64 {
    let before = |minute: i64| {
        let at = usize::try_from(minute).unwrap_or(0).min(sums.len().saturating_sub(1));
        sums.get(at).copied().unwrap_or(0)
    };
    before(from_min + hands_min) - before(from_min)
}

/// Returns the sum of all before each, and of all.
fn sums(each: impl Iterator<Item = i64>) -> Vec<i64> {
    let first = std::iter::once(0);
    first
        .chain(each.scan(0, |sum, points| {
            *sum += points;
            Some(*sum)
        }))
        .collect()
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
    /// Whether nobody can be there then.
    pub impossible: bool,
}

impl Lost {
    /// Returns it in words: "10 min of sleep", and that nobody can be there if so.
    #[must_use]
    pub fn words(&self) -> String {
        let marked = if self.impossible { ", when nobody can be there" } else { "" };
        format!("{} of {}{marked}", length(self.minutes), self.by.words())
    }
}
