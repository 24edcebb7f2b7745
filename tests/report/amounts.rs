//! Numbers as they are written.

use proptest::prelude::*;
use vatsketch::design::Unit;
use vatsketch::report::{Amount, Target, duration, elapsed};
use vatsketch::units::{LongTimes, Units};

#[test]
fn a_number_keeps_its_unit_with_a_space_that_does_not_break() {
    // ISO 80000-1, 7.1.4: a space between number and unit symbol, also before % and °C.
    assert_eq!(Amount::new(228.4, Unit::Gram, 0).to_string(), "228\u{a0}g");
    assert_eq!(Amount::new(35.0, Unit::Celsius, 1).to_string(), "35.0\u{a0}°C");
    assert_eq!(Amount::new(12.0, Unit::One, 0).to_string(), "12");
}

#[test]
fn nothing_is_never_written_as_minus_nothing() {
    assert_eq!(Amount::new(-0.04, Unit::Percent, 1).to_string(), "0.0\u{a0}%");
}

#[test]
fn a_tolerance_is_said_the_short_way_when_it_is_even_and_as_a_range_when_it_is_not() {
    let amount = Amount::new(50.0, Unit::Minute, 0);
    assert_eq!(Target::near("x", amount, 15.0).tolerance().as_deref(), Some("±\u{a0}15"));
    let uneven = Target { within: Some((42.0, 71.0)), ..Target::exact("x", amount) };
    assert_eq!(uneven.tolerance().as_deref(), Some("42–71"));
    assert_eq!(Target::exact("x", amount).tolerance(), None);
}

#[test]
fn a_tolerance_finer_than_the_number_is_written_with_one_place_more() {
    let target = Target::near("milk", Amount::new(6.0, Unit::Litre, 1), 0.06);
    assert_eq!(target.tolerance().as_deref(), Some("±\u{a0}0.06"));
}

#[test]
fn times_are_minutes_first_then_five_minutes_from_two_hours_on_and_hours_from_two_days_on() {
    assert_eq!(elapsed(0.2, Units::METRIC), "start");
    assert_eq!(elapsed(21.0, Units::METRIC), "+21\u{a0}min");
    assert_eq!(elapsed(66.0, Units::METRIC), "+1\u{a0}h\u{a0}6\u{a0}min");
    assert_eq!(elapsed(126.0, Units::METRIC), "+2\u{a0}h\u{a0}5\u{a0}min");
    assert_eq!(duration(119.7, Units::METRIC), "2\u{a0}h");
    assert_eq!(duration(4310.0, Units::METRIC), "72\u{a0}h");
    assert_eq!(elapsed(4310.0, Units::METRIC), "+3\u{a0}d");
    assert_eq!(elapsed(4400.0, Units::METRIC), "+3\u{a0}d\u{a0}1\u{a0}h");
    let hours = Units { long_times: LongTimes::Hours, ..Units::METRIC };
    assert_eq!(elapsed(4310.0, hours), "+72\u{a0}h");
}

/// Reads a length of time back.
fn minutes(text: &str) -> f64 {
    let words: Vec<&str> = text.split('\u{a0}').collect();
    match words.as_slice() {
        [minutes, "min"] => minutes.parse().unwrap(),
        [hours, "h"] => 60.0 * hours.parse::<f64>().unwrap(),
        [hours, "h", rest, "min"] => 60.0 * hours.parse::<f64>().unwrap() + rest.parse::<f64>().unwrap(),
        _ => panic!("{text} is no length of time"),
    }
}

proptest! {
    #[test]
    fn a_written_time_lies_within_its_rounding(time in 0.0_f64..20_000.0) {
        let rounding = match time { _ if time < 120.0 => 0.5, _ if time < 2880.0 => 2.5, _ => 30.0 };
        let off = (minutes(&duration(time, Units::METRIC)) - time).abs();
        prop_assert!(off <= rounding + 1e-9, "{time} was written as {}", duration(time, Units::METRIC));
    }
}
