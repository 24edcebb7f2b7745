//! What the schedule refuses, and what it then says.

use vatsketch::plan::{Gap, Handling, Hours, ScheduleError, Start, schedule};

fn run() -> Vec<Handling> {
    vec![
        Handling::new("warm", 45, Gap::fixed(60)),
        Handling::new("ladle", 30, Gap::flexible(600, 120, 120, 1)),
        Handling::new("unmould", 20, Gap::default()),
    ]
}

fn refused(run: &[Handling], start: Start) -> ScheduleError {
    schedule(run, &Hours::of_habits(&[], 20_000), &start).unwrap_err()
}

#[test]
fn a_finished_by_in_the_past_is_refused_and_says_how_long_ago() {
    let error = refused(&run(), Start::FinishedBy { by_min: 500, from_min: 800, spare_points: 0 });
    assert_eq!(error, ScheduleError::FinishedInThePast { past_min: 300 });
    assert!(error.to_string().contains("5 h before"), "{error}");
}

#[test]
fn a_finished_by_too_soon_says_what_would_make_it_feasible() {
    let error = refused(&run(), Start::FinishedBy { by_min: 1000, from_min: 600, spare_points: 0 });
    // At least 60 + 480 + 20 = 560 min from 600 on; 400 are left.
    let ScheduleError::NoFeasibleStart { left_min, shortest_min, later_min, earlier_min, .. } = error.clone() else {
        panic!("{error}")
    };
    assert_eq!((left_min, shortest_min, later_min, earlier_min), (400, 560, 160, 165));
    let words = error.to_string();
    assert!(
        words.contains("finish 2 h 40 min later") && words.contains("begin 2 h 45 min earlier") && words.contains("“ladle”"),
        "{words}"
    );
}

#[test]
fn limits_that_are_not_in_order_are_refused_by_name() {
    let wrong = [
        Gap { least_min: 100, usual_from_min: 90, usual_to_min: 120, most_min: 150, shift_points: 1 },
        Gap { least_min: 60, usual_from_min: 130, usual_to_min: 120, most_min: 150, shift_points: 1 },
        Gap { least_min: 60, usual_from_min: 90, usual_to_min: 160, most_min: 150, shift_points: 1 },
        Gap { least_min: -15, usual_from_min: 90, usual_to_min: 120, most_min: 150, shift_points: 1 },
        Gap { least_min: 60, usual_from_min: 90, usual_to_min: 120, most_min: 150, shift_points: -1 },
    ];
    for gap in wrong {
        let mut run = run();
        run[1].then = gap;
        let error = refused(&run, Start::Earliest { from_min: 0, within_min: 60, wait_points: 0 });
        assert_eq!(error, ScheduleError::InvertedLimits { name: "ladle".to_owned(), gap });
        assert!(error.to_string().contains(&format!("{} min", gap.least_min)), "{error}");
    }
}

#[test]
fn what_cannot_be_a_plan_is_refused_with_its_numbers() {
    let earliest = |from_min, within_min, wait_points| Start::Earliest { from_min, within_min, wait_points };
    assert_eq!(refused(&[], earliest(0, 60, 0)), ScheduleError::NothingToPlan);
    assert_eq!(refused(&run(), earliest(1, 10, 0)), ScheduleError::NoQuarterHour { within_min: 10 });
    assert_eq!(refused(&run(), earliest(0, -60, 0)), ScheduleError::NoQuarterHour { within_min: -60 });
    assert_eq!(refused(&run(), earliest(-30, 600, 0)), ScheduleError::BeforeMonday { before_min: 30 });
    assert!(matches!(refused(&run(), earliest(0, 60, -1)), ScheduleError::WrongPoints { points: -1, .. }));
    assert!(matches!(refused(&run(), earliest(0, 900_000, 0)), ScheduleError::TooLong { days: 625, .. }));
    assert!(matches!(refused(&run(), earliest(19_500, 600, 0)), ScheduleError::HoursEnd { known_min: 20_000, .. }));
    let mut hands = run();
    hands[0].hands_min = -5;
    assert!(matches!(refused(&hands, earliest(0, 60, 0)), ScheduleError::NegativeHands { hands_min: -5, .. }));
}

#[test]
fn the_last_step_may_end_at_the_very_minute_of_finished_by() {
    let start = |by_min| Start::FinishedBy { by_min, from_min: 600, spare_points: 3 };
    let plan = schedule(&run(), &Hours::of_habits(&[], 20_000), &start(1160)).unwrap();
    assert_eq!((plan.placed[0].start_min, plan.end_min(), plan.wait_points), (600, 1160, 0));
    assert!(matches!(refused(&run(), start(1159)), ScheduleError::NoFeasibleStart { later_min: 1, earlier_min: 15, .. }));
}
