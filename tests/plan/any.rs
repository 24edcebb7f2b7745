//! Any small run, and a slow look at every way to place it.

use proptest::prelude::*;
use vatsketch::plan::{GRID_MIN, Gap, Habit, Handling, Hours, Span, Start, Taken};

/// Returns limits in order, not always on the grid.
fn any_gap() -> impl Strategy<Value = Gap> {
    let limits = (0_i64..240, 0_i64..50, 0_i64..40, 0_i64..50, 0_i64..4);
    let free = limits.prop_map(|(least_min, usual, free, more, shift_points)| {
        let usual_from_min = least_min + usual;
        let usual_to_min = usual_from_min + free;
        Gap { least_min, usual_from_min, usual_to_min, most_min: usual_to_min + more, shift_points }
    });
    prop_oneof![1 => (0_i64..200).prop_map(Gap::fixed), 3 => free]
}

/// Returns one to four handlings.
pub fn any_run() -> impl Strategy<Value = Vec<Handling>> {
    let one = (0_i64..40, any_gap()).prop_map(|(hands_min, then)| Handling::new("step", hands_min, then));
    prop::collection::vec(one, 1..5)
}

/// Returns hours with sleep, some working days and a busy span.
pub fn any_hours(until_min: i64) -> impl Strategy<Value = Hours> {
    let working = prop::array::uniform7(any::<bool>());
    (working, 0_u8..24, 0_u8..24, 0_i64..2000, 1_i64..300, 0_i64..15).prop_map(
        move |(days, asleep, awake, busy_min, long, points)| {
            let habits = [
                Habit::new(Taken::Sleep, Habit::EVERY_DAY, (asleep, 10), (awake, 0)),
                Habit::new(Taken::Work, days, (9, 0), (17, 30)),
            ];
            let mut spans: Vec<Span> = habits.iter().flat_map(|habit| habit.spans(until_min)).collect();
            spans.push(Span {
                by: Taken::Busy,
                from_min: busy_min,
                to_min: busy_min + long,
                points,
                alarm_points: 0,
                impossible: false,
            });
            Hours::new(spans, until_min)
        },
    )
}

/// Returns such hours with spans of any price in which nobody can be there.
pub fn any_impossible_hours(until_min: i64) -> impl Strategy<Value = Hours> {
    let spans = prop::collection::vec((0_i64..2500, 1_i64..600, 0_i64..15), 1..4);
    (any_hours(until_min), spans).prop_map(move |(hours, given)| {
        let away = given.into_iter().map(|(from_min, long, points)| Span {
            by: Taken::Busy,
            from_min,
            to_min: from_min + long,
            points,
            alarm_points: 0,
            impossible: true,
        });
        Hours::new(hours.spans().iter().copied().chain(away).collect(), until_min)
    })
}

/// Returns a start of any of the three ways.
pub fn any_start() -> impl Strategy<Value = Start> {
    prop_oneof![
        (0_i64..1500, 15_i64..400, 0_i64..3).prop_map(|(from_min, within_min, wait_points)| Start::Earliest {
            from_min,
            within_min,
            wait_points
        }),
        (0_i64..800, 0_i64..1500, 0_i64..3).prop_map(|(from_min, more, spare_points)| Start::FinishedBy {
            by_min: from_min + more,
            from_min,
            spare_points
        }),
        (0_i64..1500, prop::option::of(0_i64..1500))
            .prop_map(|(at_min, more)| Start::Here { at_min, by_min: more.map(|more| at_min + more) }),
    ]
}

/// Returns every start that a run may have.
fn starts(start: &Start) -> Vec<i64> {
    match *start {
        Start::Earliest { from_min, within_min, .. } => {
            (from_min..=from_min + within_min).filter(|at| at % GRID_MIN == 0).collect()
        }
        Start::FinishedBy { by_min, from_min, .. } => (from_min..=by_min).filter(|at| at % GRID_MIN == 0).collect(),
        Start::Here { at_min, .. } => vec![at_min],
    }
}

/// Returns the gaps that lead from a minute to the grid; a gap that does not give, or that holds no such minute, is kept as it is.
fn gaps(gap: &Gap, at_min: i64) -> Vec<i64> {
    if gap.least_min == gap.most_min {
        return vec![gap.least_min];
    }
    let all: Vec<i64> = (gap.least_min..=gap.most_min).filter(|minutes| (at_min + minutes) % GRID_MIN == 0).collect();
    if all.is_empty() { vec![gap.usual_from_min] } else { all }
}

/// Returns every way to place a run that keeps the start and the finish, with its points counted minute by minute.
pub fn every_way(run: &[Handling], hours: &Hours, start: &Start) -> Vec<(i64, Vec<i64>)> {
    let mut ways: Vec<Vec<i64>> = starts(start).into_iter().map(|at| vec![at]).collect();
    for handling in &run[..run.len() - 1] {
        ways = ways
            .into_iter()
            .flat_map(|way| {
                let at = *way.last().unwrap();
                gaps(&handling.then, at).into_iter().map(move |gap| [way.clone(), vec![at + gap]].concat())
            })
            .collect();
    }
    let end = |way: &[i64]| way.last().unwrap() + run.last().unwrap().hands_min;
    let in_time = |way: &[i64]| match *start {
        Start::Earliest { .. } | Start::Here { by_min: None, .. } => true,
        Start::FinishedBy { by_min, .. } | Start::Here { by_min: Some(by_min), .. } => end(way) <= by_min,
    };
    ways.into_iter().filter(|way| in_time(way)).map(|way| (points(run, hours, start, &way), way)).collect()
}

/// Returns the span at a minute that counts: an impossible one, then the dearest, the first of equals.
fn dearest(hours: &Hours, minute: i64) -> Option<&Span> {
    let here = hours.spans().iter().filter(|span| (span.from_min..span.to_min).contains(&minute));
    let weight = |span: &Span| (span.impossible, span.points);
    let here = here.filter(|span| weight(span) > (false, 0));
    here.fold(None, |best: Option<&Span>, span| best.filter(|best| weight(best) >= weight(span)).or(Some(span)))
}

/// Returns the minutes of one way to place a run in which nobody can be there.
pub fn impossible_min(run: &[Handling], hours: &Hours, way: &[i64]) -> i64 {
    let away = |minute: &i64| hours.spans().iter().any(|span| span.impossible && (span.from_min..span.to_min).contains(minute));
    let each = run.iter().zip(way).map(|(handling, at)| (*at..at + handling.hands_min).filter(away).count());
    i64::try_from(each.sum::<usize>()).unwrap()
}

/// Returns what an alarm at a minute costs.
fn alarm(hours: &Hours, minute: i64) -> i64 {
    dearest(hours, minute).map_or(0, |span| span.alarm_points)
}

/// Two tasks at night so far apart, hands off to hands on, let nobody sleep in between; as in its record.
const STILL_UP_MIN: i64 = 30;

/// Returns the points of one way to place a run, minute by minute and alarm by alarm.
pub fn points(run: &[Handling], hours: &Hours, start: &Start, way: &[i64]) -> i64 {
    let minute = |begun: i64, minute: i64| {
        let span = dearest(hours, minute);
        span.filter(|span| alarm(hours, begun) == 0 || span.alarm_points == 0).map_or(0, |span| span.points)
    };
    let each = || run.iter().zip(way);
    let hands: i64 = each().map(|(handling, at)| (*at..at + handling.hands_min).map(|now| minute(*at, now)).sum::<i64>()).sum();
    let own = |(handling, at): (&Handling, &i64)| if handling.hands_min > 0 { alarm(hours, *at) } else { 0 };
    let mut alarms = each().next().map_or(0, own);
    for ((before, from), (handling, at)) in each().zip(each().skip(1)) {
        let up = alarm(hours, *from) > 0 && at - (from + before.hands_min) <= STILL_UP_MIN;
        alarms += if up { 0 } else { own((handling, at)) };
    }
    let shifts: i64 = run
        .iter()
        .zip(way.windows(2))
        .map(|(handling, pair)| {
            let (gap, limits) = (pair[1] - pair[0], handling.then);
            let outside = (limits.usual_from_min - gap).max(0) + (gap - limits.usual_to_min).max(0);
            limits.shift_points * outside / 15
        })
        .sum();
    let end = way.last().unwrap() + run.last().unwrap().hands_min;
    let waits = match *start {
        Start::Earliest { from_min, wait_points, .. } => wait_points * ((way[0] - from_min) / 15),
        Start::FinishedBy { by_min, spare_points, .. } => spare_points * ((by_min - end) / 15),
        Start::Here { .. } => 0,
    };
    hands + alarms + shifts + waits
}
