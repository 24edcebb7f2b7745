//! The schedule against a slow look at every way, and what no schedule may do.

use super::any::{any_hours, any_run, any_start, every_way, points};
use proptest::prelude::*;
use vatsketch::plan::{Gap, Handling, Hours, ScheduleError, Start, horizon_min, schedule};

/// Longer than any of these small runs.
const UNTIL_MIN: i64 = 6000;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn no_way_to_place_a_small_run_costs_less(run in any_run(), hours in any_hours(UNTIL_MIN), start in any_start()) {
        let ways = every_way(&run, &hours, &start);
        match schedule(&run, &hours, &start) {
            Ok(plan) => {
                let least = ways.iter().map(|(points, _)| *points).min().unwrap();
                prop_assert_eq!(plan.points, least);
                let starts: Vec<i64> = plan.placed.iter().map(|placed| placed.start_min).collect();
                prop_assert!(ways.iter().any(|(_, way)| *way == starts), "{starts:?} is none of the ways");
                prop_assert_eq!(points(&run, &hours, &start, &starts), plan.points);
                let firsts = ways.iter().filter(|(points, _)| *points == least).map(|(_, way)| way[0]);
                let wanted = if matches!(start, Start::FinishedBy { .. }) { firsts.max() } else { firsts.min() };
                prop_assert_eq!(Some(starts[0]), wanted);
            }
            Err(_) => prop_assert!(ways.is_empty(), "refused, but {:?} is a way", ways.first()),
        }
    }

    #[test]
    fn what_the_refusal_proposes_is_feasible_and_no_minute_less(run in any_run(), from_min in 2000_i64..2100, left in 0_i64..700) {
        let hours = Hours::of_habits(&[], 9000);
        let finished = |by_min, from_min| schedule(&run, &hours, &Start::FinishedBy { by_min, from_min, spare_points: 0 });
        let by_min = from_min + left;
        if let Err(error) = finished(by_min, from_min) {
            let ScheduleError::NoFeasibleStart { later_min, earlier_min, left_min, .. } = error else { panic!("{error}") };
            prop_assert_eq!(left_min, left);
            prop_assert!(finished(by_min + later_min, from_min).is_ok());
            prop_assert!(finished(by_min + later_min - 1, from_min).is_err());
            prop_assert!(finished(by_min, from_min - earlier_min).is_ok());
        }
    }

    #[test]
    fn a_later_hour_of_the_same_week_day_moves_the_plan_by_whole_weeks(run in any_run(), from_min in 0_i64..3000, weeks in 1_i64..4) {
        let habits = [vatsketch::plan::Habit::new(vatsketch::plan::Taken::Sleep, [true, false, true, true, true, false, true], (22, 0), (6, 30))];
        let plan = |from_min| {
            let start = Start::Earliest { from_min, within_min: 2880, wait_points: 1 };
            let hours = Hours::of_habits(&habits, horizon_min(&run, &start).unwrap());
            schedule(&run, &hours, &start).unwrap()
        };
        let (now, later) = (plan(from_min), plan(from_min + weeks * 7 * 1440));
        prop_assert_eq!(now.points, later.points);
        for (one, other) in now.placed.iter().zip(&later.placed) {
            prop_assert_eq!(one.start_min + weeks * 7 * 1440, other.start_min);
        }
    }
}

#[test]
fn without_taken_hours_a_run_begins_at_once_and_keeps_every_usual_gap() {
    let run = vec![
        Handling::new("warm", 40, Gap::fixed(47)),
        Handling::new("rennet", 3, Gap::fixed(52)),
        Handling::new("ladle", 20, Gap::flexible(351, 60, 60, 2)),
        Handling::new("turn", 10, Gap::default()),
    ];
    let start = Start::Earliest { from_min: 601, within_min: 300, wait_points: 0 };
    let plan = schedule(&run, &Hours::of_habits(&[], 5000), &start).unwrap();
    let starts: Vec<i64> = plan.placed.iter().map(|placed| placed.start_min).collect();
    // 615 + 47 + 52 + 351 = 1065 lies on the grid by the choice of 351.
    assert_eq!((starts, plan.points), (vec![615, 662, 714, 1065], 0));
}

#[test]
fn of_equal_costs_the_smallest_shift_wins_and_then_the_smallest_gap() {
    let gap = Gap { least_min: 60, usual_from_min: 90, usual_to_min: 120, most_min: 150, shift_points: 0 };
    let run = vec![Handling::new("one", 5, gap), Handling::new("other", 5, Gap::default())];
    let start = Start::Earliest { from_min: 0, within_min: 0, wait_points: 0 };
    let plan = schedule(&run, &Hours::of_habits(&[], 500), &start).unwrap();
    assert_eq!(plan.placed[1].start_min, 90);
}
