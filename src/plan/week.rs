//! The tasks of a vat in the maker's week, and what the week does to the times that were calculated.

use super::gap::GRID_MIN;
use super::{
    ClockError, Handling, Here, Hours, Placed, Schedule, ScheduleError, Start, Tasks, horizon_min, length, rest, schedule,
};
use crate::batch::Batch;
use crate::design::Stage;
use crate::process::DryingPoint;

/// Why there is no week.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum WeekError {
    /// The handlings do not fit.
    #[error(transparent)]
    Schedule(#[from] ScheduleError),
    /// The hours cannot be laid on the calendar.
    #[error(transparent)]
    Clock(#[from] ClockError),
}

/// Returns the tasks with their times, out of impossible hours as far as any plan is. Finished means that the cheeses are finished: a finish time leaves the rolling of the jars out.
///
/// # Arguments
/// * `hours`: gives the maker's hours up to a minute, such as [`super::Clock::hours`]
///
/// # Errors
/// [`WeekError`], with what would make it feasible.
///
/// # Example
/// ```
/// use vatsketch::plan::{Habit, Hours, Start, Taken, tasks, week};
/// use vatsketch::{batch::batch, design::Design};
/// let tasks = tasks(&batch(&Design::default()).unwrap());
/// let sleep = Habit::new(Taken::Sleep, Habit::EVERY_DAY, (23, 0), (7, 0));
/// let start = Start::Earliest { from_min: 0, within_min: 7 * 1440, wait_points: 0 };
/// let plan = week(&tasks, &start, |until_min| Ok(Hours::of_habits(&[sleep], until_min)))?;
/// assert!(plan.placed.iter().all(|placed| placed.lost.is_empty()), "nobody has to get up");
/// # Ok::<(), vatsketch::plan::WeekError>(())
/// ```
pub fn week(tasks: &Tasks, start: &Start, hours: impl Fn(i64) -> Result<Hours, ClockError>) -> Result<Schedule, WeekError> {
    let all = tasks.handlings();
    let (until_finished, after) = all.split_at(tasks.until_finished.min(all.len()));
    in_two(until_finished, after, start, hours)
}

/// Returns the tasks from the one last begun on, when it began at another time than planned.
///
/// # Arguments
/// * `here`: the task last begun, when it began, and what time it is
/// * `by_min`: when the cheeses are still to be finished, if they are
/// * `hours`: as for [`week`]
///
/// # Errors
/// [`WeekError`].
pub fn on_from_here(
    tasks: &Tasks,
    here: &Here,
    by_min: Option<i64>,
    hours: impl Fn(i64) -> Result<Hours, ClockError>,
) -> Result<Schedule, WeekError> {
    let all = tasks.handlings();
    let (until_finished, after) = all.split_at(tasks.until_finished.min(all.len()));
    if here.done < until_finished.len() {
        let left = rest(until_finished, here, by_min)?;
        return in_two(&left.handlings, after, &left.start, hours);
    }
    let left = rest(&all, here, None)?;
    in_two(&left.handlings, &[], &left.start, hours)
}

/// Schedules what finishes the cheeses, and after that what looks after the jars. Where the jars then need somebody when nobody can be there, all is
/// planned as one; a finish time is that of the cheeses, so there they are finished sooner where that spares the jars.
fn in_two(
    until_finished: &[Handling],
    after: &[Handling],
    start: &Start,
    hours: impl Fn(i64) -> Result<Hours, ClockError>,
) -> Result<Schedule, WeekError> {
    let plan = one_after_other(until_finished, after, start, &hours)?;
    let missed = |placed: &Placed| placed.lost.iter().any(|lost| lost.impossible);
    let other = if plan.impossible_min() == 0 || after.is_empty() {
        None
    } else if let Some(whole) = as_one(until_finished, after, start, &hours)? {
        Some(whole)
    } else if plan.placed.iter().skip(until_finished.len()).any(missed) {
        finished_sooner(until_finished, after, start, &hours)
    } else {
        None
    };
    Ok(other.filter(|other| other.impossible_min() < plan.impossible_min()).unwrap_or(plan))
}

/// Schedules all of it as one; nothing where the cheeses would not be finished by a time that is wished, or where that time decides the start.
fn as_one(
    until_finished: &[Handling],
    after: &[Handling],
    start: &Start,
    hours: impl Fn(i64) -> Result<Hours, ClockError>,
) -> Result<Option<Schedule>, WeekError> {
    let free = match *start {
        Start::FinishedBy { .. } => return Ok(None),
        Start::Earliest { .. } => *start,
        Start::Here { at_min, .. } => Start::Here { at_min, by_min: None },
    };
    let all: Vec<Handling> = until_finished.iter().chain(after).cloned().collect();
    let whole = schedule(&all, &hours(horizon_min(&all, &free)?)?, &free)?;
    let last = until_finished.len().checked_sub(1).and_then(|last| whole.placed.get(last));
    let is_late = last.zip(start.by_min()).is_some_and(|(last, by_min)| last.start_min + last.hands_min > by_min);
    Ok((!is_late).then_some(whole))
}

/// How much sooner the cheeses are finished at each try, and how often that is tried: a day in all.
const SOONER_MIN: (i64, i64) = (120, 12);

/// Schedules the same with the cheeses finished sooner than is wished, so that the jars need nobody when nobody can be there, as far as that
/// helps; nothing where there is no finish time.
fn finished_sooner(
    until_finished: &[Handling],
    after: &[Handling],
    start: &Start,
    hours: impl Fn(i64) -> Result<Hours, ClockError>,
) -> Option<Schedule> {
    let (step_min, tries) = SOONER_MIN;
    let sooner = |by_step: i64| {
        let sooner_min = by_step * step_min;
        let (start, spare_points) = start.finished_sooner(sooner_min)?;
        let mut plan = one_after_other(until_finished, after, &start, &hours).ok()?;
        // It is finished so much too soon by the wish.
        let spare = spare_points * (sooner_min / GRID_MIN);
        plan.points += spare;
        plan.wait_points += spare;
        Some(plan)
    };
    (1..=tries).filter_map(sooner).min_by_key(|plan| (plan.impossible_min(), plan.points))
}

/// Schedules what finishes the cheeses, and what looks after the jars from when that is done.
fn one_after_other(
    until_finished: &[Handling],
    after: &[Handling],
    start: &Start,
    hours: impl Fn(i64) -> Result<Hours, ClockError>,
) -> Result<Schedule, WeekError> {
    let mut plan = schedule(until_finished, &hours(horizon_min(until_finished, start)?)?, start)?;
    let Some((last, placed)) = until_finished.last().zip(plan.placed.last()).filter(|_| !after.is_empty()) else { return Ok(plan) };
    // Its hands are paid for; only its time counts.
    let last = Handling { hands_min: 0, ..last.clone() };
    let later: Vec<Handling> = std::iter::once(last).chain(after.iter().cloned()).collect();
    let start = Start::Here { at_min: placed.start_min, by_min: None };
    let more = schedule(&later, &hours(horizon_min(&later, &start)?)?, &start)?;
    plan.points += more.points;
    plan.placed.extend(more.placed.into_iter().skip(1));
    Ok(plan)
}

/// A time that the week makes longer or shorter than it was calculated.
#[derive(Clone, Debug, PartialEq)]
pub struct Stretch {
    /// Of which stage.
    pub stage: Stage,
    /// As calculated.
    pub reckoned_min: i64,
    /// As planned.
    pub planned_min: i64,
    /// Loss in drying as planned, off the same curve; none for other stages.
    pub loss_percent: Option<f64>,
    /// In words.
    pub words: String,
}

/// Returns what the week makes longer or shorter, and what that does to the loss in drying.
///
/// # Arguments
/// * `batch`, `tasks`: what was planned
/// * `plan`: the week of all these tasks
#[must_use]
pub fn stretches(batch: &Batch, tasks: &Tasks, plan: &Schedule) -> Vec<Stretch> {
    let at = |key: &str| tasks.position(key).and_then(|place| plan.placed.get(place)).map(|placed| placed.start_min);
    let between = |from: &str, to: &str| Some(at(to)? - at(from)?);
    let design = &batch.design;
    let drained_h = batch.draining.done().map_or(0.0, |drained| drained.draining_h);
    let stages = [
        (Stage::Draining, "the cheeses drain", between("ladle", "unmould"), drained_h),
        (Stage::Drying, "the cheeses dry", between("unmould", "weigh"), design.drying.drying_h),
        (Stage::Pickling, "the cheeses are in the vinegar", between("vinegar", "sour"), design.pickling.pickling_h),
    ];
    stages
        .into_iter()
        .filter_map(|(stage, what, planned_min, hours)| {
            let (planned_min, reckoned_min) = (planned_min?, (60.0 * hours).round() as i64);
            if planned_min == reckoned_min {
                return None;
            }
            let dried = batch.drying.done().filter(|_| stage == Stage::Drying);
            let loss_percent = dried.and_then(|dried| loss_at(&dried.middle.points, planned_min as f64 / 60.0));
            let loss = dried.zip(loss_percent).map(|(dried, loss_percent)| {
                format!("; they lose about {loss_percent:.1} % instead of {:.1} %", dried.end.loss_percent)
            });
            let words = format!("{what} {} instead of {}{}", length(planned_min), length(reckoned_min), loss.unwrap_or_default());
            Some(Stretch { stage, reckoned_min, planned_min, loss_percent, words })
        })
        .collect()
}

/// Returns the loss at an hour: on the curve, and beyond its end along its last piece.
fn loss_at(points: &[DryingPoint], at_h: f64) -> Option<f64> {
    let right = points.iter().position(|point| point.at_h >= at_h).unwrap_or(points.len().saturating_sub(1)).max(1);
    let (before, after) = (points.get(right - 1)?, points.get(right)?);
    let rate = (after.loss_percent - before.loss_percent) / (after.at_h - before.at_h);
    Some(before.loss_percent + rate * (at_h - before.at_h)).filter(|loss_percent| loss_percent.is_finite())
}
