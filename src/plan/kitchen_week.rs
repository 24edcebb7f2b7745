//! The week as the maker reads it: every task with its time on the wall clock, what the hours cost, and what they do to the cheese.

use super::asked::Asked;
use super::impossible::{Impossible, Touched, impossible};
use super::kept::kept_plan;
use super::{
    ClockError, Habit, Handling, Here, Hours, KitchenWeekError, Lost, Now, Pass, Reason, Schedule, Start, Stretch, Taken, Tasks,
    on_from_here, stretches, tasks, week,
};
use crate::batch::Batch;
use crate::design::{Habitual, Stage, TakenHours, WeekDesign, Wish};
use jiff::civil::DateTime;
use jiff::tz::Offset;

/// A task with its time.
#[derive(Clone, Debug, PartialEq)]
pub struct WeekTask {
    /// Its stable key; the same task of the same vat has it again after every change.
    pub key: String,
    /// The stage it belongs to.
    pub stage: Stage,
    /// What is done, verb first.
    pub name: String,
    /// More about it; may be empty.
    pub what: String,
    /// What does not fit, if anything.
    pub note: Option<String>,
    /// When it begins.
    pub start: DateTime,
    /// When the hands are off.
    pub end: DateTime,
    /// Which pass of the clock it begins in.
    pub start_pass: Pass,
    /// Which pass of the clock it ends in.
    pub end_pass: Pass,
    /// Minutes that really pass from the first task to this one.
    pub after_min: i64,
    /// How long hands are needed; 0 where something only begins or ends.
    pub hands_min: i64,
    /// What of that falls into taken hours.
    pub lost: Vec<Lost>,
    /// Whether it takes an alarm in the hours of sleep: the maker is not still up from the task before.
    pub wakes: bool,
    /// How much later than usual it comes after the one before; negative if earlier.
    pub shift_min: i64,
    /// Whether it was already begun when the plan was made.
    pub begun: bool,
}

/// Key of the last day of the planned keeping, which is no task of the hands.
const LAST_DAY: &str = "last_day";

impl WeekTask {
    /// Returns whether this is the last day of the planned keeping: a day, not an hour.
    #[must_use]
    pub fn is_last_day(&self) -> bool {
        self.key == LAST_DAY
    }
}

/// Hours that are taken, on the wall clock.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TakenSpan {
    /// By what.
    pub by: Taken,
    /// From.
    pub from: DateTime,
    /// Until.
    pub to: DateTime,
    /// Whether nobody can be there at all.
    pub impossible: bool,
    /// Distance from UTC at its beginning.
    pub from_offset: Offset,
    /// Distance from UTC at its end.
    pub to_offset: Offset,
}

/// The week as the maker reads it.
#[derive(Clone, Debug, PartialEq)]
pub struct KitchenWeek {
    /// The name of the time zone.
    pub zone: String,
    /// Every task that is still to come, the one begun last before them.
    pub tasks: Vec<WeekTask>,
    /// When the cheeses are finished: the hands are off the last task before the keeping.
    pub finished: Option<DateTime>,
    /// Which pass of the clock that is.
    pub finished_pass: Option<Pass>,
    /// What the plan costs, in points.
    pub points: i64,
    /// What it pays for, the dearest first.
    pub reasons: Vec<Reason>,
    /// What could not be kept out of hours in which nobody can be there, if anything.
    pub impossible: Option<Impossible>,
    /// What the week makes longer or shorter than it was calculated.
    pub stretches: Vec<Stretch>,
    /// Hours that are taken from the first day to the last, in order.
    pub taken: Vec<TakenSpan>,
    /// The first stage that could not be calculated; its tasks and all later ones are missing.
    pub ends_before: Option<Stage>,
}

impl KitchenWeek {
    /// Returns whether any task takes an alarm in the hours of sleep.
    #[must_use]
    pub fn wakes(&self) -> bool {
        self.tasks.iter().any(|task| task.wakes)
    }
}

/// Returns the week of a batch as its design wishes it; nothing while the wish is [`Wish::Open`] and no task was begun.
///
/// # Arguments
/// * `now`: for a finish time the start is not before it; its zone counts where the design names none
///
/// # Errors
/// [`KitchenWeekError`], with times of the wall clock and what would make it feasible.
///
/// # Example
/// ```
/// use jiff::{civil::date, tz::TimeZone};
/// use vatsketch::{batch::batch, design::{Design, Wish}, plan::{Now, kitchen_week}};
/// let now = Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC };
/// let mut design = Design::default();
/// design.week.wish = Wish::StartAt(date(2031, 5, 9).at(14, 30, 0, 0));
/// let week = kitchen_week(&batch(&design)?, &now)?.ok_or("no wish")?;
/// assert_eq!(week.tasks[0].start, date(2031, 5, 9).at(14, 30, 0, 0));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn kitchen_week(batch: &Batch, now: &Now) -> Result<Option<KitchenWeek>, KitchenWeekError> {
    let design = &batch.design.week;
    let all = tasks(batch);
    let asked = Asked::of(design, now)?;
    let hours = |until_min: i64| asked.clock.hours(&habits(design), &design.busy, until_min);
    let (plan, first) = match (&design.reached, design.wish) {
        (Some(reached), wish) => {
            let done = all.position(&reached.task).ok_or_else(|| KitchenWeekError::no_such_task(&reached.task, &all))?;
            let by_min = if let Wish::FinishedBy(by) = wish { Some(asked.clock.minute(by)?) } else { None };
            let began_min = asked.clock.minute(reached.began)?;
            let here = Here { done, began_min, now_min: asked.clock.minute(asked.now)? };
            (on_from_here(&all, &here, by_min, hours), done)
        }
        (None, wish) => match asked.start(wish)? {
            Some(start) => (week(&all, &start, hours), 0),
            None => return Ok(None),
        },
    };
    let plan = plan.map_err(|why| asked.told(why))?;
    let mut planned = written(batch, &all, &plan, first, &asked)?;
    let begun = design.reached.is_some();
    let again = |start: &Start| week(&all, start, hours).ok();
    planned.impossible = impossible(&touched(&planned.tasks), &asked, (begun, all.until_finished), again);
    Ok(Some(planned))
}

/// Returns the tasks that fall into impossible hours.
fn touched(tasks: &[WeekTask]) -> Vec<Touched> {
    let minutes = |task: &WeekTask| task.lost.iter().filter(|lost| lost.impossible).map(|lost| lost.minutes).sum();
    let all = tasks.iter().map(|task| Touched {
        key: task.key.clone(),
        name: task.name.clone(),
        start: task.start,
        minutes: minutes(task),
    });
    all.filter(|task| task.minutes > 0).collect()
}

fn habits(design: &WeekDesign) -> Vec<Habit> {
    let pair = |time: jiff::civil::Time| (u8::try_from(time.hour()).unwrap_or(0), u8::try_from(time.minute()).unwrap_or(0));
    let habit = |row: &TakenHours| {
        let by = match row.by {
            Habitual::Sleep => Taken::Sleep,
            Habitual::Work => Taken::Work,
        };
        Habit::new(by, row.days, pair(row.from), pair(row.to)).as_impossible(row.impossible)
    };
    design.taken.iter().map(habit).collect()
}

/// Returns the schedule with its words and its times on the wall clock.
fn written(batch: &Batch, all: &Tasks, plan: &Schedule, first: usize, asked: &Asked) -> Result<KitchenWeek, KitchenWeekError> {
    let begun = batch.design.week.reached.is_some();
    let left = all.all.get(first..).unwrap_or_default();
    let from_min = plan.placed.first().map_or(0, |placed| placed.start_min);
    let mut tasks = Vec::with_capacity(left.len() + 1);
    for (number, (task, placed)) in left.iter().zip(&plan.placed).enumerate() {
        // The schedule counts no hands of what was begun; they are on all the same.
        let begun = begun && number == 0;
        let hands_min = if begun { task.handling.hands_min } else { placed.hands_min };
        tasks.push(WeekTask {
            key: task.key.clone(),
            stage: task.stage,
            name: task.handling.name.clone(),
            what: task.what.clone(),
            note: task.note.clone(),
            start: asked.clock.local(placed.start_min)?,
            end: asked.clock.local(placed.start_min + hands_min)?,
            start_pass: asked.clock.pass(placed.start_min)?,
            end_pass: asked.clock.pass(placed.start_min + hands_min)?,
            after_min: placed.start_min - from_min,
            hands_min,
            lost: placed.lost.clone(),
            wakes: placed.alarm_points > 0,
            shift_min: placed.shift_min,
            begun,
        });
    }
    let finished_at = all.until_finished.checked_sub(first + 1).and_then(|place| tasks.get(place));
    let finished = finished_at.filter(|_| all.ends_before.is_none()).map(|task| (task.end, task.end_pass.clone()));
    let (finished, finished_pass) = finished.unzip();
    let ends_min = keeping_ends_min(batch, all, plan, first);
    if let Some(ends_min) = ends_min {
        keep_until(&mut tasks, ends_min, from_min, asked)?;
    }
    let handlings: Vec<Handling> = left.iter().map(|task| task.handling.clone()).collect();
    let whole = first == 0;
    Ok(KitchenWeek {
        zone: asked.zone.clone(),
        finished,
        finished_pass,
        points: plan.points,
        reasons: plan.reasons(&handlings),
        impossible: None,
        stretches: if whole { stretches(batch, all, plan) } else { Vec::new() },
        taken: taken(batch, (from_min, plan.end_min().max(ends_min.unwrap_or(0))), asked)?,
        ends_before: all.ends_before,
        tasks,
    })
}

/// Returns the minute at which the planned keeping ends; none where the vat does not come so far.
///
/// It counts from when the jars are closed, or else from when the cheeses are finished. Where that lies behind the maker and its hour is not
/// known, it is taken to be as long ago as the tasks since then allow, so that the last day comes too soon rather than too late.
fn keeping_ends_min(batch: &Batch, all: &Tasks, plan: &Schedule, first: usize) -> Option<i64> {
    let keeping = batch.keeping.done().map(|_| kept_plan(batch).keeping)?;
    let closed = ["sour", "oil"].into_iter().find_map(|key| all.position(key)).or_else(|| all.until_finished.checked_sub(1))?;
    let closed_min = if let Some(place) = closed.checked_sub(first) {
        plan.placed.get(place)?.start_min + all.all.get(closed)?.handling.hands_min
    } else {
        let since_min: i64 = all.all.get(closed..first)?.iter().map(|task| task.handling.then.most_min).sum();
        plan.placed.first()?.start_min - since_min
    };
    Some(closed_min + (24.0 * 60.0 * keeping.keeping_days).round() as i64)
}

/// Adds the last day of keeping, and leaves out what would come after it.
fn keep_until(tasks: &mut Vec<WeekTask>, ends_min: i64, from_min: i64, asked: &Asked) -> Result<(), KitchenWeekError> {
    let last = asked.clock.local(ends_min)?;
    tasks.retain(|task| task.begun || task.start < last);
    tasks.push(WeekTask {
        key: LAST_DAY.to_owned(),
        stage: Stage::Keeping,
        name: "Last day of the planned keeping".to_owned(),
        what: "Discard what is left, whatever it looks and smells like. Local rules may set an earlier day.".to_owned(),
        note: None,
        start: last,
        end: last,
        start_pass: asked.clock.pass(ends_min)?,
        end_pass: asked.clock.pass(ends_min)?,
        after_min: ends_min - from_min,
        hands_min: 0,
        lost: Vec::new(),
        wakes: false,
        shift_min: 0,
        begun: false,
    });
    Ok(())
}

/// Returns the hours that are taken, from the first day of the plan to its last.
fn taken(batch: &Batch, (from_min, until_min): (i64, i64), asked: &Asked) -> Result<Vec<TakenSpan>, KitchenWeekError> {
    let design = &batch.design.week;
    let hours: Hours = asked.clock.hours(&habits(design), &design.busy, until_min)?;
    let mut spans = Vec::new();
    for span in hours.spans() {
        let local = |minute: i64| Ok::<_, ClockError>((asked.clock.local(minute)?, asked.clock.pass(minute)?.offset));
        let ((from, from_offset), (to, to_offset)) = (local(span.from_min)?, local(span.to_min)?);
        spans.push(TakenSpan { by: span.by, from, to, impossible: span.impossible, from_offset, to_offset });
    }
    let first = asked.clock.local(from_min)?.date();
    spans.retain(|span| span.to.date() >= first);
    spans.sort_by_key(|span| (span.from, span.to));
    Ok(spans)
}
