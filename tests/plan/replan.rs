//! Going on from where the maker is in the plan.

use vatsketch::plan::{Gap, Habit, Handling, Here, Hours, ScheduleError, Taken, rest, schedule};

fn run() -> Vec<Handling> {
    vec![
        Handling::new("rennet", 5, Gap::fixed(50)),
        Handling::new("cut", 10, Gap::fixed(25)),
        Handling::new("ladle", 25, Gap::flexible(360, 135, 135, 2)),
        Handling::new("turn 1", 15, Gap::flexible(360, 135, 135, 2)),
        Handling::new("turn 2", 15, Gap::default()),
    ]
}

#[test]
fn a_late_curd_moves_what_follows_and_leaves_what_was_done() {
    let sleep = Habit::new(Taken::Sleep, Habit::EVERY_DAY, (22, 0), (6, 0));
    let left = rest(&run(), &Here { done: 1, began_min: 1013, now_min: 1020 }, None).unwrap();
    assert_eq!((left.handlings.len(), left.overdue_min), (4, 0));
    let plan = schedule(&left.handlings, &Hours::of_habits(&[sleep], 3 * 1440), &left.start).unwrap();
    let starts: Vec<i64> = plan.placed.iter().map(|placed| placed.start_min).collect();
    // Ladled to the minute 25 min after the cut; turned at 21:45 before bedtime and at 06:00 after it.
    assert_eq!(starts, [1013, 1038, 1305, 1800]);
    assert!(plan.placed.iter().all(|placed| placed.lost.is_empty()));
}

#[test]
fn a_step_that_is_overdue_is_planned_from_now_on_and_says_so() {
    let left = rest(&run(), &Here { done: 2, began_min: 600, now_min: 1170 }, None).unwrap();
    // The gap to the first turn should be 495 min at most; 570 have gone.
    assert_eq!(left.overdue_min, 75);
    let plan = schedule(&left.handlings, &Hours::of_habits(&[], 4000), &left.start).unwrap();
    assert_eq!(plan.placed[1].start_min, 1170);
}

#[test]
fn a_finished_by_that_the_rest_cannot_keep_is_refused_with_how_late_it_will_be() {
    let left = rest(&run(), &Here { done: 2, began_min: 600, now_min: 610 }, Some(900)).unwrap();
    let error = schedule(&left.handlings, &Hours::of_habits(&[], 4000), &left.start).unwrap_err();
    // 225 + 225 + 15 min at least after 600.
    assert_eq!(error, ScheduleError::TooLateNow { left_min: 300, shortest_min: 465, later_min: 165 });
    assert!(error.to_string().contains("2 h 45 min later"), "{error}");
}

#[test]
fn steps_that_do_not_exist_or_lie_ahead_are_refused() {
    let none = rest(&run(), &Here { done: 5, began_min: 0, now_min: 0 }, None).unwrap_err();
    assert_eq!(none, ScheduleError::NoSuchStep { given: 6, steps: 5 });
    let ahead = rest(&run(), &Here { done: 0, began_min: 100, now_min: 90 }, None).unwrap_err();
    assert_eq!(ahead, ScheduleError::NotYetBegun { ahead_min: 10 });
}

#[test]
fn after_the_last_step_nothing_is_left_and_nothing_is_overdue() {
    let left = rest(&run(), &Here { done: 4, began_min: 100, now_min: 9000 }, None).unwrap();
    assert_eq!((left.handlings.len(), left.overdue_min), (1, 0));
}
