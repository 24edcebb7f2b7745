//! Dates as probes write them.

use jiff::civil::date;
use jiff::tz::{TimeZone, offset};
use vatsketch::record::{DateOrder, EntryKind, Import, import, log_moment, read_log_moment};

/// Returns the time that a table with this one line gives, or why it gives none.
fn read_in(text: &str, order: Option<DateOrder>, zone: TimeZone) -> Result<String, String> {
    let wanted = Import { kind: EntryKind::MilkTemperature, time: None, value: None, order, zone };
    let imported = import(&format!("When;Value\n{text};20\n"), &wanted).map_err(|error| error.to_string())?;
    match &imported.read[..] {
        [line] => Ok(log_moment(line.at)),
        _ => Err(imported.refused[0].why.clone()),
    }
}

/// ISO 8601 for the first three; the others are common practice, no source.
#[test]
fn the_common_forms_mean_the_same_moment() {
    for text in [
        "2031-05-09 18:30:05",
        "2031-05-09T18:30:05",
        "2031-05-09T18:30:05.250",
        "2031/05/09 18:30:05",
        "09.05.2031 18:30:05",
        "9.5.31 18:30:05",
        "9 May 2031 18:30:05",
        "9-May-2031, 18:30:05",
        "May 9, 2031 6:30:05 PM",
        "09/05/2031 6:30:05 p.m.",
        "9-5-2031 18:30:05",
    ] {
        assert_eq!(read_in(text, Some(DateOrder::DayFirst), TimeZone::UTC).as_deref(), Ok("2031-05-09 18:30:05"), "{text}");
    }
    assert_eq!(read_in("05/09/2031 12:05 AM", Some(DateOrder::MonthFirst), TimeZone::UTC).as_deref(), Ok("2031-05-09 00:05"));
}

/// RFC 3339, section 5.8: 1996-12-19T16:39:57-08:00 is 1996-12-20T00:39:57Z.
#[test]
fn a_distance_from_utc_is_brought_to_the_zone_of_the_kitchen() {
    assert_eq!(read_in("1996-12-19T16:39:57-08:00", None, TimeZone::UTC).as_deref(), Ok("1996-12-20 00:39:57"));
    assert_eq!(read_in("1996-12-20T00:39:57Z", None, TimeZone::fixed(offset(2))).as_deref(), Ok("1996-12-20 02:39:57"));
}

#[test]
fn what_can_be_read_in_two_ways_asks_and_what_no_calendar_has_is_refused() {
    for (text, said) in [
        ("05/09/2031 18:30", "say which: day first"),
        ("2031-02-30 18:30", "no such day"),
        ("2031-05-09 25:30", "no such day or time"),
        ("2031-05-09 13:30 pm", "no such day or time"),
    ] {
        let refused = read_in(text, None, TimeZone::UTC);
        assert!(refused.as_ref().is_err_and(|why| why.contains(said)), "{text}: {refused:?}");
    }
    // One line that can be read in one way only tells of all.
    let wanted = Import { kind: EntryKind::MilkTemperature, time: None, value: None, order: None, zone: TimeZone::UTC };
    let imported = import("t,v\n05/09/2031 18:30,20\n05/13/2031 18:30,21\n", &wanted).unwrap();
    assert_eq!(imported.read[0].at.date(), date(2031, 5, 9));
}

#[test]
fn the_log_keeps_seconds_and_reads_back_what_it_wrote() {
    for text in ["2031-05-09 18:30", "2031-05-09 00:00", "2031-05-09 18:30:05"] {
        assert_eq!(read_log_moment(text).map(log_moment).as_deref(), Some(text));
    }
    assert_eq!((read_log_moment("2031-05-09"), read_log_moment("yesterday 9:00")), (None, None));
}
