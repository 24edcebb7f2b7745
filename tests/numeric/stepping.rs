//! The length of the next step.

use vatsketch::numeric::{Stepping, Verdict};

#[test]
fn a_good_step_is_followed_by_a_longer_one_and_a_bad_one_by_a_shorter() {
    let mut stepping = Stepping::new(1.0, 1e-3);
    assert_eq!(stepping.judge(1.0, 0.01), Verdict::Taken);
    assert_eq!(stepping.next(100.0), 2.5, "no more than two and a half times as long");
    assert_eq!(stepping.judge(2.5, 4.0), Verdict::Refused);
    // 2.5 × 0.85/√4
    assert!((stepping.next(100.0) - 1.0625).abs() < 1e-12);
}

#[test]
fn an_error_that_is_no_number_is_refused_until_the_step_is_too_short() {
    let mut stepping = Stepping::new(1.0, 0.01);
    let verdicts: Vec<Verdict> = (0..4).map(|_| stepping.judge(stepping.next(9.0), f64::NAN)).collect();
    assert_eq!(verdicts, [Verdict::Refused, Verdict::Refused, Verdict::Refused, Verdict::TooShort]);
}

#[test]
fn a_step_cut_short_to_meet_the_end_does_not_shorten_the_plan() {
    let mut stepping = Stepping::new(4.0, 1e-3);
    assert_eq!(stepping.next(0.1), 0.1);
    stepping.judge(0.1, 0.5);
    assert_eq!(stepping.next(100.0), 4.0);
    stepping.at_most(1.0);
    assert_eq!(stepping.next(100.0), 1.0);
}
