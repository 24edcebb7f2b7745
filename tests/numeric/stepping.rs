//! The length of the next step, and the loop that tries until a step is taken.

use vatsketch::numeric::{Stepping, TooShort};

#[test]
fn a_good_step_is_followed_by_a_longer_one() {
    let mut stepping = Stepping::new(1.0, 1e-3);
    let step = stepping.step(0.0, 100.0, |_| (0.01, ())).unwrap();
    assert_eq!((step.length, step.at), (1.0, 1.0));
    assert_eq!(stepping.next(100.0), 2.5, "no more than two and a half times as long");
    assert_eq!(stepping.counts(), (1, 0));
}

#[test]
fn a_bad_step_is_tried_again_shorter_and_only_what_was_taken_is_returned() {
    let mut stepping = Stepping::new(2.5, 1e-3);
    let mut tried = Vec::new();
    let step = stepping.step(0.0, 100.0, |length| {
        tried.push(length);
        (if tried.len() == 1 { 4.0 } else { 0.5 }, tried.len())
    });
    // 2.5 × 0.85/√4
    assert!((tried[1] - 1.0625).abs() < 1e-12, "{tried:?}");
    let step = step.unwrap();
    assert_eq!((step.length, step.outcome), (tried[1], 2));
    assert_eq!(stepping.counts(), (1, 1));
}

#[test]
fn an_error_that_is_no_number_is_refused_until_the_step_is_too_short() {
    let mut stepping = Stepping::new(1.0, 0.01);
    let mut attempts = 0;
    let step = stepping.step(3.0, 12.0, |_| {
        attempts += 1;
        (f64::NAN, ())
    });
    assert_eq!(step, Err(TooShort { at: 3.0 }));
    // Of 1, 1/4, 1/16 and 1/64; the next would be below 1/100.
    assert_eq!((attempts, stepping.counts()), (4, (0, 3)));
}

#[test]
fn a_step_cut_short_to_meet_the_end_meets_it_exactly_and_does_not_shorten_the_plan() {
    let mut stepping = Stepping::new(4.0, 1e-3);
    let step = stepping.step(0.2, 0.3, |_| (0.5, ())).unwrap();
    assert_eq!(step.at, 0.3);
    assert_eq!(stepping.next(100.0), 4.0);
    stepping.at_most(1.0);
    assert_eq!(stepping.next(100.0), 1.0);
}
