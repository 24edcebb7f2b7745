//! The week as a picture, as data: one row a day with what is taken and what is done, and long waits in one row; no widget.

use super::{KitchenWeek, Taken, WALL_DAY_MIN, WeekTask};
use crate::design::Stage;
use jiff::ToSpan;
use jiff::civil::{Date, DateTime};

/// The picture.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Timeline {
    /// Days and waits, in order of time.
    pub rows: Vec<TimelineRow>,
}

/// One row.
#[derive(Clone, Debug, PartialEq)]
pub enum TimelineRow {
    /// A day on which something is done.
    Day(TimelineDay),
    /// Days on which nothing is done.
    Wait(TimelineWait),
}

/// A day.
#[derive(Clone, Debug, PartialEq)]
pub struct TimelineDay {
    /// Which.
    pub date: Date,
    /// What is taken; they may overlap.
    pub bands: Vec<TimelineBand>,
    /// What is done.
    pub blocks: Vec<TimelineBlock>,
}

/// Taken hours of a day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TimelineBand {
    /// By what.
    pub by: Taken,
    /// Minutes from midnight on the wall.
    pub from_min: i64,
    /// Until.
    pub to_min: i64,
    /// Whether nobody can be there at all.
    pub impossible: bool,
}

/// A task, or what of it falls on a day.
#[derive(Clone, Debug, PartialEq)]
pub struct TimelineBlock {
    /// Its place among the tasks of the week.
    pub task: usize,
    /// What it is called where there is little room, verb first.
    pub short: String,
    /// Minutes from midnight on the wall.
    pub from_min: i64,
    /// Until; as `from_min` where no hands are needed.
    pub to_min: i64,
    /// Whether it goes on from the day before.
    pub goes_on: bool,
    /// What it disturbs, each once.
    pub disturbs: Vec<Taken>,
}

/// Days on which nothing is done, or only jars are rolled.
#[derive(Clone, Debug, PartialEq)]
pub struct TimelineWait {
    /// The first of them.
    pub from: Date,
    /// The last of them.
    pub to: Date,
    /// How many.
    pub days: i64,
    /// What the cheeses do meanwhile: "18 days in the vinegar".
    pub words: String,
    /// The tasks that fall into them all the same.
    pub tasks: Vec<usize>,
}

/// Returns the picture of a week.
///
/// # Arguments
/// * `from`: a day to begin the picture with, if it lies before the first task
///
/// # Example
/// ```
/// use jiff::{civil::date, tz::TimeZone};
/// use vatsketch::plan::{Now, TimelineRow, kitchen_week, timeline};
/// use vatsketch::{batch::batch, design::{Design, Wish}};
/// let mut design = Design::default();
/// design.week.wish = Wish::StartAt(date(2031, 5, 9).at(14, 30, 0, 0));
/// let now = Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC };
/// let week = kitchen_week(&batch(&design)?, &now)?.ok_or("no wish")?;
/// let picture = timeline(&week, None);
/// assert!(matches!(&picture.rows[0], TimelineRow::Day(day) if day.date == date(2031, 5, 9)));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn timeline(week: &KitchenWeek, from: Option<Date>) -> Timeline {
    let Some((first, last)) = week.tasks.first().zip(week.tasks.last()) else { return Timeline::default() };
    let first = first.start.date();
    let first = from.map_or(first, |from| from.min(first));
    let end = last.end.date().max(last.start.date());
    let blocks: Vec<(Date, TimelineBlock)> = (0..).zip(&week.tasks).flat_map(|(place, task)| pieces(place, task)).collect();
    let mut picture = Timeline::default();
    for date in days(first, end) {
        let own: Vec<TimelineBlock> = blocks.iter().filter(|(day, _)| *day == date).map(|(_, block)| block.clone()).collect();
        if date > first && own.iter().all(|block| is_quiet(week.tasks.get(block.task))) {
            picture.wait(week, date, &own);
        } else {
            picture.rows.push(TimelineRow::Day(TimelineDay { date, bands: bands(week, date), blocks: own }));
        }
    }
    picture.say();
    picture
}

/// Returns every day from one to another.
fn days(first: Date, end: Date) -> impl Iterator<Item = Date> {
    first.series(1.day()).take_while(move |date| *date <= end)
}

/// Jars are rolled every few days for weeks; that alone makes no row.
fn is_quiet(task: Option<&WeekTask>) -> bool {
    task.is_some_and(|task| task.key.starts_with("roll_") && task.lost.is_empty() && !task.begun)
}

/// Returns the minute of the day on the wall.
fn wall_min(at: DateTime) -> i64 {
    60 * i64::from(at.hour()) + i64::from(at.minute())
}

/// Returns what of a task falls on which day.
fn pieces(place: usize, task: &WeekTask) -> Vec<(Date, TimelineBlock)> {
    let (first, end) = (task.start.date(), task.end.date().max(task.start.date()));
    let mut disturbs: Vec<Taken> = Vec::new();
    for lost in &task.lost {
        if !disturbs.contains(&lost.by) {
            disturbs.push(lost.by);
        }
    }
    days(first, end)
        .map(|date| {
            let from_min = if date == first { wall_min(task.start) } else { 0 };
            // An hour that the clock repeats would end before it began.
            let to_min = if date == end { wall_min(task.end).max(from_min) } else { WALL_DAY_MIN };
            let (short, goes_on) = (short_name(&task.name), date > first);
            (date, TimelineBlock { task: place, short, from_min, to_min, goes_on, disturbs: disturbs.clone() })
        })
        .filter(|(_, block)| block.to_min > block.from_min || !block.goes_on)
        .collect()
}

/// Returns what is taken of a day.
fn bands(week: &KitchenWeek, date: Date) -> Vec<TimelineBand> {
    let on = |at: DateTime| match at.date() {
        day if day < date => 0,
        day if day > date => WALL_DAY_MIN,
        _ => wall_min(at),
    };
    let bands = week.taken.iter().map(|span| TimelineBand {
        by: span.by,
        from_min: on(span.from),
        to_min: on(span.to),
        impossible: span.impossible,
    });
    bands.filter(|band| band.to_min > band.from_min).collect()
}

/// Longest name that is shown whole.
const SHORT_ENOUGH: usize = 13;

/// Returns a task's name where there is little room: its verb and what it is done to.
fn short_name(name: &str) -> String {
    if name.chars().count() <= SHORT_ENOUGH {
        return name.to_owned();
    }
    let ends = [",", " and ", " into ", " for ", " in the cold"].iter().filter_map(|stop| name.find(stop));
    let kept = ends.min().and_then(|end| name.get(..end)).unwrap_or(name);
    kept.replace(" the ", " ")
}

impl Timeline {
    /// Adds a quiet day to the wait that goes on, or begins one.
    fn wait(&mut self, week: &KitchenWeek, date: Date, blocks: &[TimelineBlock]) {
        let tasks = blocks.iter().filter(|block| !block.goes_on).map(|block| block.task);
        if let Some(TimelineRow::Wait(wait)) = self.rows.last_mut() {
            (wait.to, wait.days) = (date, wait.days + 1);
            wait.tasks.extend(tasks);
            return;
        }
        let before = week.tasks.iter().rfind(|task| task.start.date() < date && !is_quiet(Some(task)));
        let words = before.map_or_else(String::new, |task| meanwhile(task).to_owned());
        self.rows.push(TimelineRow::Wait(TimelineWait { from: date, to: date, days: 1, words, tasks: tasks.collect() }));
    }

    /// Puts the number of days before what the cheeses do meanwhile.
    fn say(&mut self) {
        for row in &mut self.rows {
            if let TimelineRow::Wait(wait) = row {
                let days = if wait.days == 1 { "1 day".to_owned() } else { format!("{} days", wait.days) };
                let rolled = match wait.tasks.len() {
                    0 => String::new(),
                    1 => "; roll the jars once".to_owned(),
                    times => format!("; roll the jars {times} times"),
                };
                wait.words = format!("{days} {}{rolled}", wait.words);
            }
        }
    }
}

/// Returns what the cheeses do after a task.
fn meanwhile(task: &WeekTask) -> &'static str {
    match (task.key.as_str(), task.stage) {
        ("unmould" | "swap", _) => "in the drying air",
        ("sour" | "oil" | "rest", _) => "in the jar",
        (_, Stage::Milk | Stage::Vat) => "in the vat",
        (_, Stage::Draining | Stage::Salting) => "in the moulds",
        (_, Stage::Drying) => "dried, in the cold",
        (_, Stage::Pickling) => "in the vinegar",
        (_, Stage::Keeping) => "kept",
    }
}
