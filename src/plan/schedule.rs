//! The week: an exact dynamic programme over a grid of quarters of an hour.

use super::block::{Block, blocks};
use super::handling::Handling;
use super::waking::{alarm_points, is_night};
use super::{Hours, Lost, ScheduleError, Start};

/// A handling with its time.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Placed {
    /// When it begins, in minutes from the Monday 00:00.
    pub start_min: i64,
    /// How long hands are needed.
    pub hands_min: i64,
    /// What of that falls into taken hours.
    pub lost: Vec<Lost>,
    /// What its alarm costs; 0 if it wakes nobody.
    pub alarm_points: i64,
    /// How much later than usual it comes after the one before; negative if earlier.
    pub shift_min: i64,
    /// What that shift costs.
    pub shift_points: i64,
}

/// The handlings with their times, at the least cost there is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Schedule {
    /// What it costs in all.
    pub points: i64,
    /// What of that is waiting to begin, or being finished too soon.
    pub wait_points: i64,
    /// The handlings, in order.
    pub placed: Vec<Placed>,
}

impl Schedule {
    /// Returns in how many minutes hands are needed where nobody can be there; 0 if any plan keeps out of them.
    #[must_use]
    pub fn impossible_min(&self) -> i64 {
        let lost = self.placed.iter().flat_map(|placed| &placed.lost);
        lost.filter(|lost| lost.impossible).map(|lost| lost.minutes).sum()
    }

    /// Returns when the last hands are off.
    #[must_use]
    pub fn end_min(&self) -> i64 {
        self.placed.last().map_or(0, |last| last.start_min + last.hands_min)
    }
}

/// Returns the minute to which [`Hours`] must be known for a schedule.
///
/// # Errors
/// [`ScheduleError`], as [`schedule`].
pub fn horizon_min(handlings: &[Handling], start: &Start) -> Result<i64, ScheduleError> {
    let all = blocks(handlings, start)?;
    let ends = all.iter().flat_map(|block| block.steps.iter().map(|(at, hands)| block.minute(block.to) + at + hands));
    Ok(ends.max().unwrap_or(0))
}

/// Returns the times of the handlings at the least cost, by an exact dynamic programme from the last handling to the first.
///
/// V_K(t) = c_K(t); V_k(t) = c_k(t) + min over the gaps g of a_k·(max(n_lo − g, 0) + max(g − n_hi, 0))/15 + V_{k+1}(t + g),
/// where c_k(t) are the points of the minutes in which hands are needed while they are taken, or of the alarm if it begins in hours of sleep; an
/// alarm costs nothing so short after a handling at night that nobody slept, which makes a second V_k for a maker who is still up. A wish to begin
/// soon adds β(s₀ − E)/15, one to be finished by R makes V_K infinite past R and adds β⌊(R − end)/15⌋. Of equally cheap plans it takes the earliest start (the latest, if there is a
/// finish time), then the smallest shift, then the smallest gap. Minutes in which nobody can be there weigh more than all costs together: of all
/// plans it takes one with the fewest of them, and among those the cheapest. Handlings with a fixed gap between them keep it to the minute; all others begin on
/// the grid of a quarter of an hour.
///
/// # Arguments
/// * `handlings`: in order
/// * `hours`: the maker's hours, at least to [`horizon_min`]
/// * `start`: when it may begin, or by when it must be done
///
/// # Errors
/// [`ScheduleError`], with what would make it feasible.
///
/// # Example
/// ```
/// use vatsketch::plan::{Gap, Habit, Handling, Hours, Start, Taken, schedule};
/// let sleep = Habit::new(Taken::Sleep, Habit::EVERY_DAY, (22, 0), (6, 0));
/// let run = [Handling::new("ladle", 30, Gap::flexible(300, 60, 60, 2)), Handling::new("turn", 10, Gap::default())];
/// let start = Start::Earliest { from_min: 17 * 60, within_min: 0, wait_points: 0 };
/// let plan = schedule(&run, &Hours::of_habits(&[sleep], 2 * 1440), &start)?;
/// // Turned at once before bedtime, a quarter of an hour early: 2 points of shift instead of 200 for an alarm.
/// assert_eq!((plan.placed[1].start_min, plan.points), (21 * 60 + 45, 2));
/// # Ok::<(), vatsketch::plan::ScheduleError>(())
/// ```
pub fn schedule(handlings: &[Handling], hours: &Hours, start: &Start) -> Result<Schedule, ScheduleError> {
    let needed_min = horizon_min(handlings, start)?;
    if hours.until_min() < needed_min {
        return Err(ScheduleError::HoursEnd { known_min: hours.until_min(), needed_min });
    }
    let all = blocks(handlings, start)?;
    let least = least_points(&all, hours, start);
    let first = all.first().zip(least.first()).ok_or(ScheduleError::NothingToPlan)?;
    let place = best_start(first.0, &first.1.woken, start).ok_or(ScheduleError::NothingToPlan)?;
    let starts_min = starts(&all, &least, hours, place);
    Ok(written(handlings, hours, start, &starts_min))
}

/// V of a block at every place where it may begin.
struct Least {
    /// Where its first handling has its own alarm, if it is at night.
    woken: Vec<i64>,
    /// Where the maker is still up from the handling before.
    up: Vec<i64>,
}

/// Returns V of every block at every place where it may begin.
fn least_points(all: &[Block], hours: &Hours, start: &Start) -> Vec<Least> {
    let mut least: Vec<Least> = Vec::with_capacity(all.len());
    let mut after: Option<(&Block, Least)> = None;
    for block in all.iter().rev() {
        let places = || block.from..=block.to;
        let onward: Vec<i64> = match &after {
            Some((next, values)) => onward_points(block, next, values, hours),
            None => places().map(|place| finished_points(block, place, start)).collect(),
        };
        let up: Vec<i64> = places().zip(onward).map(|(place, onward)| block.points(place, hours) + onward).collect();
        let woken = places().zip(&up).map(|(place, points)| block.first_alarm(place, hours) + points).collect();
        if let Some((_, values)) = after.replace((block, Least { woken, up })) {
            least.push(values);
        }
    }
    least.extend(after.map(|(_, values)| values));
    least.reverse();
    least
}

/// Returns the least cost of any gap and all that follows it, for every place of a block.
///
/// Gaps that cost nothing are looked at all at once, however many they are; only those outside the usual one by one, and those in which nobody
/// sleeps.
fn onward_points(block: &Block, next: &Block, values: &Least, hours: &Hours) -> Vec<i64> {
    let free_from = block.gap_points.iter().position(|points| *points == 0).unwrap_or(block.gap_points.len());
    let free = block.gap_points.iter().skip(free_from).take_while(|points| **points == 0).count();
    let free_least = window_least(&values.woken, free);
    let priced = block.gap_points.iter().enumerate().filter(|(gap, _)| !(free_from..free_from + free).contains(gap));
    let priced: Vec<(usize, i64)> = priced.map(|(gap, points)| (gap, *points)).collect();
    (block.from..=block.to)
        .map(|place| {
            let skip = skipped(block, place, next);
            let ways = priced.iter().filter_map(|(gap, points)| Some(values.woken.get(skip + gap)? + points));
            let up = ways_up(block, place, next, values, hours);
            ways.chain(up).chain(free_least.get(skip + free_from).copied()).min().unwrap_or(0)
        })
        .collect()
}

/// Returns how many places of the next block the shortest gap leaves out.
fn skipped(block: &Block, place: i64, next: &Block) -> usize {
    usize::try_from(place + block.jump() - next.from).unwrap_or(0)
}

/// Returns what every gap in which nobody sleeps costs with all that follows, the shortest first; none where the last handling is by day.
fn ways_up<'a>(block: &'a Block, place: i64, next: &Block, values: &'a Least, hours: &Hours) -> impl Iterator<Item = i64> + 'a {
    let short = if is_night(hours, block.last(place)) { block.short_gaps() } else { 0 };
    let onward = values.up.get(skipped(block, place, next)..).unwrap_or_default();
    onward.iter().zip(&block.gap_points).take(short).map(|(onward, gap)| onward + gap)
}

/// Returns the least of so many values from each place on, or of those that are left near the end; nothing for a width of 0.
fn window_least(values: &[i64], width: usize) -> Vec<i64> {
    if width == 0 {
        return Vec::new();
    }
    let mut least = values.to_vec();
    let mut known = 1;
    while known < width {
        // Two windows of the known width make one up to twice as wide; they may overlap.
        let step = known.min(width - known);
        let shifted: Vec<i64> = least.iter().skip(step).copied().collect();
        for (value, later) in least.iter_mut().zip(shifted) {
            *value = later.min(*value);
        }
        known += step;
    }
    least
}

/// Returns what every gap costs with all that follows, the shortest gap first; none leads past the last place of the next block.
fn ways_on<'a>(block: &'a Block, place: i64, next: &Block, values: &'a Least, hours: &Hours) -> impl Iterator<Item = i64> + 'a {
    let up: Vec<i64> = ways_up(block, place, next, values, hours).collect();
    let onward = values.woken.get(skipped(block, place, next)..).unwrap_or_default();
    let woken = onward.iter().zip(&block.gap_points).map(|(onward, gap)| onward + gap).skip(up.len());
    up.into_iter().chain(woken)
}

/// Returns what being finished too soon costs.
fn finished_points(last: &Block, place: i64, start: &Start) -> i64 {
    match start {
        Start::FinishedBy { .. } => start.points(0, last.minute(place) + last.whole_min()),
        Start::Earliest { .. } | Start::Here { .. } => 0,
    }
}

fn best_start(first: &Block, values: &[i64], start: &Start) -> Option<i64> {
    let waits = |place: i64| match start {
        Start::Earliest { .. } => start.points(first.minute(place), 0),
        Start::FinishedBy { .. } | Start::Here { .. } => 0,
    };
    let costs = (first.from..=first.to).zip(values).map(|(place, value)| (value + waits(place), place));
    match start {
        Start::FinishedBy { .. } => costs.min_by_key(|(points, place)| (*points, -place)),
        Start::Earliest { .. } | Start::Here { .. } => costs.min(),
    }
    .map(|(_, place)| place)
}

/// Returns the start of every handling, block by block.
fn starts(all: &[Block], least: &[Least], hours: &Hours, first_place: i64) -> Vec<i64> {
    let mut starts_min = Vec::new();
    let mut place = first_place;
    for (at, block) in all.iter().enumerate() {
        starts_min.extend(block.steps.iter().map(|(at_min, _)| block.minute(place) + at_min));
        let (Some(next), Some(values)) = (all.get(at + 1), least.get(at + 1)) else { break };
        // Equal costs: the smallest shift, then the smallest gap.
        let ways = ways_on(block, place, next, values, hours).zip(0_i64..);
        let shift = |longer: i64| block.shifts_min.get(usize::try_from(longer).unwrap_or(0)).copied().unwrap_or(0).abs();
        let best = ways.min_by_key(|(points, longer)| (*points, shift(*longer), *longer));
        place += block.jump() + best.map_or(0, |(_, longer)| longer);
    }
    starts_min
}

/// Returns the schedule with what it costs and why.
fn written(handlings: &[Handling], hours: &Hours, start: &Start, starts_min: &[i64]) -> Schedule {
    let gaps = starts_min.windows(2).map(|pair| match pair {
        [one, next] => next - one,
        _ => 0,
    });
    let shifts = handlings.iter().zip(gaps).map(|(before, gap_min)| (before.then.shift_min(gap_min), before.then.points(gap_min)));
    let shifts = std::iter::once((0, 0)).chain(shifts);
    let mut before = None;
    let mut placed = Vec::with_capacity(handlings.len());
    for ((handling, &start_min), (shift_min, shift_points)) in handlings.iter().zip(starts_min).zip(shifts) {
        let visit = (start_min, handling.hands_min);
        placed.push(Placed {
            start_min,
            hands_min: handling.hands_min,
            lost: hours.taken(start_min, handling.hands_min),
            alarm_points: alarm_points(hours, before.replace(visit), visit),
            shift_min,
            shift_points,
        });
    }
    let mut schedule = Schedule { points: 0, wait_points: 0, placed };
    let start_min = schedule.placed.first().map_or(0, |first| first.start_min);
    schedule.wait_points = start.points(start_min, schedule.end_min());
    let hands: i64 = schedule.placed.iter().flat_map(|placed| &placed.lost).map(|lost| lost.points).sum();
    let others: i64 = schedule.placed.iter().map(|placed| placed.alarm_points + placed.shift_points).sum();
    schedule.points = schedule.wait_points + hands + others;
    schedule
}
