//! Times as a maker writes them. The dates are invented; their days of the week follow from the calendar (5 May 2031 is a Monday).

use jiff::civil::{DateTime, date};
use proptest::prelude::*;
use vatsketch::plan::{Lean, SpokenError, day_words, spoken_time, time_words};

/// Monday, 5 May 2031, 08:00.
fn now() -> DateTime {
    date(2031, 5, 5).at(8, 0, 0, 0)
}

fn ahead(text: &str) -> Result<DateTime, SpokenError> {
    spoken_time(text, now(), Lean::Ahead)
}

#[test]
fn every_way_to_write_a_time_is_understood() {
    for (text, wanted) in [
        ("2031-05-09 18:30", date(2031, 5, 9).at(18, 30, 0, 0)),
        ("2031-05-09T18:30", date(2031, 5, 9).at(18, 30, 0, 0)),
        ("9 May 18:30", date(2031, 5, 9).at(18, 30, 0, 0)),
        ("18:30 on 9 may", date(2031, 5, 9).at(18, 30, 0, 0)),
        ("May 9th, 6:30 pm", date(2031, 5, 9).at(18, 30, 0, 0)),
        ("9 May 18", date(2031, 5, 9).at(18, 0, 0, 0)),
        ("9.5. 6pm", date(2031, 5, 9).at(18, 0, 0, 0)),
        ("9.5.2032 07:05", date(2032, 5, 9).at(7, 5, 0, 0)),
        ("2 February 2032 12:00", date(2032, 2, 2).at(12, 0, 0, 0)),
        ("tomorrow 9:00", date(2031, 5, 6).at(9, 0, 0, 0)),
        ("Today at 12 am", date(2031, 5, 5).at(0, 0, 0, 0)),
        ("today 12pm", date(2031, 5, 5).at(12, 0, 0, 0)),
        ("yesterday 21:15", date(2031, 5, 4).at(21, 15, 0, 0)),
        ("Fri 18:30", date(2031, 5, 9).at(18, 30, 0, 0)),
        ("friday 9", date(2031, 5, 9).at(9, 0, 0, 0)),
        // The same day of the week: today if the hour is still to come, else in a week.
        ("monday 9:00", date(2031, 5, 5).at(9, 0, 0, 0)),
        ("monday 7:00", date(2031, 5, 12).at(7, 0, 0, 0)),
        ("9:15", date(2031, 5, 5).at(9, 15, 0, 0)),
        ("7:15", date(2031, 5, 6).at(7, 15, 0, 0)),
        // A date without a year that has passed is one of the next year; 29 February waits for a leap year.
        ("2 Feb 12:00", date(2032, 2, 2).at(12, 0, 0, 0)),
        ("29 Feb 12:00", date(2032, 2, 29).at(12, 0, 0, 0)),
        ("Fri 9 May 18:30", date(2031, 5, 9).at(18, 30, 0, 0)),
    ] {
        assert_eq!(ahead(text), Ok(wanted), "{text}");
    }
}

#[test]
fn what_was_done_lies_behind() {
    for (text, wanted) in [
        ("7:15", date(2031, 5, 5).at(7, 15, 0, 0)),
        ("9:15", date(2031, 5, 4).at(9, 15, 0, 0)),
        ("sunday 22:00", date(2031, 5, 4).at(22, 0, 0, 0)),
        ("monday 9:00", date(2031, 4, 28).at(9, 0, 0, 0)),
        ("9 May 18:30", date(2030, 5, 9).at(18, 30, 0, 0)),
    ] {
        assert_eq!(spoken_time(text, now(), Lean::Back), Ok(wanted), "{text}");
    }
}

#[test]
fn what_is_no_time_is_refused_with_a_reason_of_its_own() {
    for text in ["", "soon", "next week", "9", "25:00", "9:75", "13 pm", "9 May 9 May", "the 9th 8:00", "1 2 3 4 5"] {
        assert!(matches!(ahead(text), Err(SpokenError::NotUnderstood { .. })), "{text}: {:?}", ahead(text));
    }
    for text in ["9 May", "May 9", "tomorrow", "Friday", "2031-05-09", "9.5."] {
        assert!(matches!(ahead(text), Err(SpokenError::NoHour { .. })), "{text}: {:?}", ahead(text));
    }
    for text in ["31 June 9:00", "30 Feb 9:00", "29 Feb 2031 9:00"] {
        assert!(matches!(ahead(text), Err(SpokenError::NoSuchDay { .. })), "{text}: {:?}", ahead(text));
    }
    assert!(matches!(ahead("9/5 18:30"), Err(SpokenError::TwoWays { .. })));
    let other = ahead("Sat 9 May 2031 18:30").unwrap_err();
    assert_eq!(other.to_string(), "2031-05-09 is a Friday, not a Saturday; leave the day of the week out, or write another date");
}

#[test]
fn the_ends_of_the_calendar_are_refused_and_not_a_panic() {
    let last = date(9999, 12, 31).at(23, 0, 0, 0);
    for text in ["tomorrow 9:00", "9:00", "monday 9:00", "1 Jan 9:00"] {
        assert!(spoken_time(text, last, Lean::Ahead).is_err(), "{text}");
    }
    assert_eq!(spoken_time("23:30", last, Lean::Ahead), Ok(date(9999, 12, 31).at(23, 30, 0, 0)));
}

proptest! {
    #[test]
    fn a_time_that_is_said_is_read_again(days in 0_i32..360, minute in 0_i32..1440) {
        let at = date(2031, 5, 6).at(0, 0, 0, 0).checked_add(jiff::Span::new().days(days).minutes(minute)).unwrap();
        prop_assert_eq!(ahead(&time_words(at)), Ok(at), "{}", time_words(at));
        prop_assert!(time_words(at).starts_with(&day_words(at.date())));
    }

    #[test]
    fn any_text_is_read_or_refused(text in ".{0,30}") {
        let _ = ahead(&text);
    }
}
