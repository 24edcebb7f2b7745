//! What comes next, while a batch is made: the plan from where the maker is.

use super::when::to_five;
use super::{Plan, Step, StepTime, Stopped, hold_of, plan_at, short_moment};
use crate::batch::Batch;
use crate::caution::Caution;
use crate::design::{Reached, Wish, upper_first};
use crate::plan::{KitchenWeek, Now, Tasks, begins, counted, kitchen_week, reached, tasks};
use crate::record::{BatchRecord, EntryKind, EntryValue};
use crate::units::Units;
use jiff::civil::DateTime;

/// Minutes by which a task has to lie beside the plan of the day before that is said: what is named is rounded to five.
const MOVED_MIN: f64 = 10.0;

/// One task that comes, or is under way.
#[derive(Clone, Debug, PartialEq)]
pub struct NextTask {
    /// Its key.
    pub task: String,
    /// What it is called in the plan.
    pub name: String,
    /// When it is to begin, or was begun.
    pub time: StepTime,
    /// When the plan of the day had it, where that lies apart.
    pub planned: Option<DateTime>,
    /// Its steps, each with the targets, what to do if it is off, and the cautions that belong before it.
    pub steps: Vec<Step>,
    /// What must be checked before it goes on, in a line; the hold at the end of one task belongs to the task that waits for it.
    pub hold: Option<String>,
    /// What can be written down with it, in the order of the paper.
    pub records: Vec<EntryKind>,
    /// What is written down when it is begun.
    pub begins: (EntryKind, EntryValue),
}

impl NextTask {
    /// Returns what is done, a sentence each.
    #[must_use]
    pub fn words(&self) -> Vec<String> {
        self.steps.iter().map(|step| format!("{} {}", step.verb, step.what)).collect()
    }

    /// Returns since when it is under way: to the minute, for that was written down.
    #[must_use]
    pub fn since(&self, units: Units) -> String {
        self.time.clock.map_or_else(|| self.time.words_with_day(), |clock| short_moment(clock, units))
    }

    /// Returns when it comes, such as `Next: Fri 9 May, 14:30, in 25 min, 10 min later than planned`.
    #[must_use]
    pub fn when(&self, now: DateTime, units: Units) -> String {
        let shown = self.time.words_with_day();
        let Some(clock) = self.time.clock else {
            return if self.time.at_min < 1.0 { "Next, at the start".to_owned() } else { format!("Next, {shown} after the start") };
        };
        // Counted from the time that is shown, which is rounded.
        let minutes = (now.duration_until(to_five(clock)).as_secs_f64() / 60.0).round() as i64;
        let wait = match minutes {
            _ if self.time.whole_day => String::new(),
            0 => ", now".to_owned(),
            1.. => format!(", in {}", crate::plan::length(minutes)),
            _ => format!(", {} ago", crate::plan::length(-minutes)),
        };
        let was = if minutes < 0 && !self.time.whole_day { "Next, was due" } else { "Next:" };
        let moved = self.moved(units).map(|moved| format!(", {moved}")).unwrap_or_default();
        format!("{was} {shown}{}{moved}", units.told(&wait))
    }

    /// Returns by how much it lies beside the plan of the day, such as `25 min later than planned`; nothing where it does not.
    #[must_use]
    pub fn moved(&self, units: Units) -> Option<String> {
        let minutes = self.planned?.duration_until(self.time.clock?).as_secs_f64() / 60.0;
        let way = if minutes > 0.0 { "later" } else { "earlier" };
        let minutes = 5 * (minutes.abs() / 5.0).round() as i64;
        Some(units.told(&format!("{} {way} than planned", crate::plan::length(minutes))))
    }
}

/// What is under way and what comes next.
#[derive(Clone, Debug, PartialEq)]
pub struct NextTasks {
    /// What was begun last, by what was written down.
    pub begun: Option<NextTask>,
    /// The entry that says so; none where the design of the day does.
    pub begun_by: Option<u32>,
    /// Everything that follows, in order.
    pub next: Vec<NextTask>,
    /// When one cheese is to be weighed while it dries, as far as that lies ahead, and what it is to weigh.
    pub weighings: Vec<super::Weighing>,
    /// The cautions that belong to no step, to be read before anything is begun; none once something is.
    pub before_all: Vec<Caution>,
    /// Where the plan ends for want of a stage, and why.
    pub stopped: Option<Stopped>,
    /// Why the plan is not as it was wished, in a sentence without its full stop.
    pub trouble: Option<String>,
}

/// Returns what is under way in a batch and what comes next: late or early, the rest of the plan moves.
///
/// # Arguments
/// * `batch`: of the design of the record
/// * `now`: what the clock on the wall says
///
/// # Example
/// ```
/// use jiff::{civil::date, tz::TimeZone};
/// use vatsketch::{batch::batch, design::{Design, Wish}, plan::Now, record::{EntryKind, EntryValue, Log}, report::next_tasks, units::Units};
/// let at = |hour, minute| date(2031, 5, 9).at(hour, minute, 0, 0);
/// let mut design = Design::default();
/// design.week.wish = Wish::StartAt(at(9, 0));
/// let mut log = Log::default();
/// log.begin("", at(8, 0), design.clone(), None);
/// // It was begun half an hour late.
/// log.enter(1, at(9, 30), EntryKind::TaskBegun, EntryValue::Words("sanitise".to_owned()))?;
/// let next = next_tasks(&batch(&design)?, log.batch(1)?, &Now { at: at(9, 32), zone: TimeZone::UTC }, Units::METRIC);
/// assert_eq!(next.begun.unwrap().task, "sanitise");
/// assert_eq!(next.next[0].task, "measure");
/// assert!(next.next[0].moved(Units::METRIC).unwrap().ends_with("later than planned"));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn next_tasks(batch: &Batch, record: &BatchRecord, now: &Now, units: Units) -> NextTasks {
    let now = now.for_week(&record.design.week);
    let planned_tasks = tasks(batch);
    let (here, begun_by) = reached(record, &planned_tasks, now.at).unzip();
    let here = here.or_else(|| record.design.week.reached.clone());
    let (plan, trouble) = from_here(batch, here.clone(), &now);
    let plan = plan.shown_in(units);
    let planned = of_the_day(batch, record, &now);
    let mut all = in_order(&plan, &planned_tasks, planned.as_ref());
    let is_begun = |task: &NextTask| here.as_ref().is_some_and(|here| here.task == task.task);
    let begun = all.first().is_some_and(is_begun).then(|| all.remove(0));
    let weighings = plan.weighings.into_iter().filter(|weighing| weighing.time.clock.is_none_or(|clock| clock >= now.at)).collect();
    let before_all = if here.is_none() { plan.before_all } else { Vec::new() };
    NextTasks { begun, begun_by, next: all, weighings, before_all, stopped: plan.stopped.into_iter().next(), trouble }
}

/// Days after the end of a plan until which a batch may still be going on: who is late, is late by days.
const LATE_DAYS: f64 = 14.0;

/// Returns whether a batch may still be going on: its plan, counted from when its record was begun, is not long over.
///
/// # Example
/// ```
/// use jiff::civil::date;
/// use vatsketch::{batch::batch, design::Design, record::Log, report::may_be_going_on};
/// let (mut log, day) = (Log::default(), date(2031, 5, 9).at(8, 0, 0, 0));
/// log.begin("", day, Design::default(), None);
/// let batch = batch(&Design::default()).unwrap();
/// assert!(may_be_going_on(&batch, log.batch(1)?, day));
/// assert!(!may_be_going_on(&batch, log.batch(1)?, date(2033, 5, 9).at(8, 0, 0, 0)));
/// # Ok::<(), vatsketch::record::RecordError>(())
/// ```
#[must_use]
pub fn may_be_going_on(batch: &Batch, record: &BatchRecord, now: DateTime) -> bool {
    let planned_min = counted(batch).tasks.last().map_or(0, |task| task.after_min) as f64;
    let gone_min = record.begun.duration_until(now).as_secs_f64() / 60.0;
    gone_min <= planned_min + 24.0 * 60.0 * LATE_DAYS
}

/// Returns the plan from where the maker is. Where what was wished can no longer be had, it goes on without the wish, and that is said.
fn from_here(batch: &Batch, here: Option<Reached>, now: &Now) -> (Plan, Option<String>) {
    let mut batch = batch.clone();
    let is_begun = here.is_some();
    batch.design.week.reached = here;
    let plan = plan_at(&batch, now);
    let Some(why) = plan.no_week.clone().filter(|_| is_begun) else {
        let trouble = plan.no_week.clone();
        return (plan, trouble);
    };
    batch.design.week.wish = Wish::Open;
    (plan_at(&batch, now), Some(why))
}

/// Returns the week as it was planned when the record was begun; none where no time was wished for, or none could be had.
fn of_the_day(batch: &Batch, record: &BatchRecord, now: &Now) -> Option<KitchenWeek> {
    kitchen_week(batch, &Now { at: record.begun, ..now.clone() }).ok().flatten()
}

/// Returns the tasks of a plan by time, each with its steps.
fn in_order(plan: &Plan, tasks: &Tasks, planned: Option<&KitchenWeek>) -> Vec<NextTask> {
    let mut all: Vec<NextTask> = Vec::new();
    for step in &plan.steps {
        for time in &step.times {
            match all.iter_mut().find(|task| task.task == time.task) {
                Some(task) => task.push(step),
                None => all.push(NextTask::of(step, time, planned)),
            }
        }
    }
    for task in &mut all {
        task.hold = hold_of(&task.task, &plan.steps);
        if let Some(named) = tasks.position(&task.task).and_then(|place| tasks.all.get(place)) {
            task.name.clone_from(&named.handling.name);
        }
    }
    // Those of one time stay in the order of the trade.
    all.sort_by(|a, b| match (a.time.clock, b.time.clock) {
        (Some(a), Some(b)) => a.cmp(&b),
        _ => a.time.at_min.total_cmp(&b.time.at_min),
    });
    all
}

impl NextTask {
    fn of(step: &Step, time: &StepTime, planned: Option<&KitchenWeek>) -> Self {
        let of_the_day = planned.and_then(|week| Some(week.tasks.iter().find(|task| task.key == time.task)?.start));
        let apart = |planned: &DateTime| {
            let clock = time.clock.filter(|_| !time.whole_day);
            clock.is_some_and(|clock| planned.duration_until(clock).as_secs_f64().abs() >= 60.0 * MOVED_MIN)
        };
        let mut task = Self {
            task: time.task.clone(),
            name: upper_first(&time.name),
            hold: None,
            time: time.clone(),
            planned: of_the_day.filter(apart),
            steps: Vec::new(),
            records: Vec::new(),
            begins: begins(&time.task),
        };
        task.push(step);
        task
    }

    /// Adds a step, and what can be written down with it.
    fn push(&mut self, step: &Step) {
        let turn = step.times.iter().any(|time| time.task.starts_with("turn_"));
        let hold = step.hold.iter().flat_map(|hold| hold.records.iter().copied());
        let kinds = step.record.into_iter().chain(hold).chain(turn.then_some(EntryKind::TurnWhey));
        for kind in kinds.chain(step.begins_drying().then_some(EntryKind::CheeseWeight)) {
            // What says that it was begun has its own button.
            if !self.records.contains(&kind) && kind != self.begins.0 && kind != EntryKind::OtherTask {
                self.records.push(kind);
            }
        }
        self.steps.push(step.clone());
    }
}
