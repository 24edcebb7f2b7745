//! The calendar file, read back by the crate `ical`, which writes nothing of it. Dates, titles and hours are invented.
//!
//! Sections are those of RFC 5545.

use crate::design::any::{any_design, any_text};
use ical::IcalParser;
use ical::parser::Component;
use ical::parser::ical::component::{IcalCalendar, IcalEvent};
use ical::property::Property;
use jiff::ToSpan;
use jiff::civil::{DateTime, date};
use jiff::tz::{Offset, TimeZone};
use proptest::prelude::*;
use std::collections::BTreeSet;
use vatsketch::batch::{Batch, batch};
use vatsketch::caution::{Caution, Severity, cautions};
use vatsketch::design::{Design, DesignId, Reached, Stage, Value, Wish};
use vatsketch::export::{ExportError, calendar, printable};
use vatsketch::plan::{KitchenWeek, Now, Pass, WeekTask, kitchen_week};
use vatsketch::units::Units;
use vatsketch::words::{FROM_A_MODEL, caution_line};

pub(super) const TITLE: &str = "Trial, with a comma; and more";

/// Friday.
pub(super) fn friday(hour: i8) -> DateTime {
    date(2031, 5, 9).at(hour, 0, 0, 0)
}

pub(super) fn now() -> Now {
    Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC }
}

fn planned(design: &Design) -> KitchenWeek {
    planned_at(design, &now())
}

pub(super) fn planned_at(design: &Design, now: &Now) -> KitchenWeek {
    kitchen_week(&batch(design).unwrap(), now).unwrap().unwrap()
}

pub(super) fn starting(at: DateTime) -> Design {
    let mut design = Design::default();
    design.week.wish = Wish::StartAt(at);
    design
}

/// The vat whose calendars these tests read, under a title.
pub(super) fn titled(title: &str) -> Batch {
    let mut batch = batch(&Design::default()).unwrap();
    title.clone_into(&mut batch.design.title);
    batch
}

/// The cautions that its calendars carry.
fn warned() -> Vec<Caution> {
    cautions(&titled(TITLE))
}

fn written(week: &KitchenWeek, title: &str) -> String {
    String::from_utf8(calendar(week, &titled(title), None, &now(), &[], Units::METRIC).unwrap()).unwrap()
}

/// Returns the only calendar of a file.
pub(super) fn read(text: &str) -> IcalCalendar {
    let all: Vec<IcalCalendar> = IcalParser::new(text.as_bytes()).map(Result::unwrap).collect();
    let [only] = <[IcalCalendar; 1]>::try_from(all).unwrap_or_else(|all| panic!("{} calendars", all.len()));
    only
}

pub(super) fn property<'a>(of: &'a IcalEvent, name: &str) -> Option<&'a Property> {
    let mut found = of.properties.iter().filter(|property| property.name == name);
    let first = found.next();
    assert!(found.next().is_none(), "{name} stands twice");
    first
}

pub(super) fn value(of: &IcalEvent, name: &str) -> Option<String> {
    property(of, name).map(|property| property.value.clone().unwrap_or_default())
}

/// Returns a text as it was before it was written (3.3.11); a comma, semicolon or backslash that is not escaped fails the test.
pub(super) fn text(written: &str) -> String {
    let mut plain = String::new();
    let mut letters = written.chars();
    while let Some(letter) = letters.next() {
        assert!(!matches!(letter, ',' | ';'), "not escaped in {written}");
        plain.push(match letter {
            '\\' => match letters.next() {
                Some('n' | 'N') => '\n',
                Some(escaped @ ('\\' | ',' | ';')) => escaped,
                other => panic!("{other:?} after a backslash in {written}"),
            },
            other => other,
        });
    }
    plain
}

/// A week of one task, for what no batch gives.
fn one_task(task: WeekTask) -> KitchenWeek {
    KitchenWeek {
        zone: "Etc/UTC".to_owned(),
        tasks: vec![task],
        finished: None,
        finished_pass: None,
        points: 0,
        impossible: None,
        reasons: Vec::new(),
        stretches: Vec::new(),
        taken: Vec::new(),
        ends_before: None,
    }
}

fn task(start: DateTime, end: DateTime, hands_min: i64) -> WeekTask {
    WeekTask {
        key: "turn_1".to_owned(),
        stage: Stage::Draining,
        name: "Turn 1".to_owned(),
        what: String::new(),
        note: None,
        start,
        end,
        start_pass: Pass::only(Offset::UTC),
        end_pass: Pass::only(Offset::UTC),
        after_min: 0,
        hands_min,
        lost: Vec::new(),
        wakes: false,
        shift_min: 0,
        begun: false,
    }
}

/// 3.3.5, form 1: a date and a time of the wall clock, without a zone and without the Z of UTC.
fn floating(at: DateTime) -> String {
    at.strftime("%Y%m%dT%H%M%S").to_string()
}

/// RFC 7986, 5.2: a calendar has a description. That and an entry of the whole first day say what the plan is and warn.
fn check_notice(read: &IcalCalendar, to_read: &IcalEvent, week: &KitchenWeek) {
    let start = property(to_read, "DTSTART").unwrap();
    assert_eq!(start.params, Some(vec![("VALUE".to_owned(), vec!["DATE".to_owned()])]));
    assert_eq!(start.value, Some(week.tasks[0].start.date().strftime("%Y%m%d").to_string()));
    let of_calendar = |name: &str| {
        let found = read.properties.iter().find(|property| property.name == name);
        text(found.unwrap().value.as_ref().unwrap())
    };
    let serious: Vec<String> = warned()
        .iter()
        .filter(|caution| caution.severity == Severity::Stop)
        .map(|caution| caution_line(caution, Units::METRIC))
        .collect();
    assert!(serious.len() > 1);
    for described in [of_calendar("DESCRIPTION"), of_calendar("X-WR-CALDESC"), text(&value(to_read, "DESCRIPTION").unwrap())] {
        assert!(described.contains(FROM_A_MODEL), "{described}");
        assert!(serious.iter().all(|warning| described.contains(warning)), "{described}");
    }
}

fn check(week: &KitchenWeek, title: &str) -> IcalCalendar {
    let written = written(week, title);
    // 3.1: lines end in CR LF and are no longer than 75 octets; neither stands alone.
    assert!(written.ends_with("\r\n") && !written.replace("\r\n", "").contains(['\r', '\n']));
    assert!(written.split("\r\n").all(|line| line.len() <= 75), "a line is too long");
    let read = read(&written);
    assert!(read.timezones.is_empty() && !written.contains("TZID"));
    let (to_read, events) = read.events.split_last().unwrap();
    check_notice(&read, to_read, week);
    assert_eq!(events.len(), week.tasks.len());
    for (event, task) in events.iter().zip(&week.tasks) {
        // 3.8.1.12: a short word for the event, what is done and in which vat.
        let kept = printable(&title.replace("\r\n", "\n").replace('\r', "\n").replace('\t', " ")).trim().to_owned();
        let summary = if kept.is_empty() { task.name.clone() } else { format!("{} – {kept}", task.name) };
        assert_eq!(text(&value(event, "SUMMARY").unwrap()), summary);
        let described = text(&value(event, "DESCRIPTION").unwrap());
        assert!(described.contains(&task.what) && described.contains(FROM_A_MODEL), "{described}");
        if let Some(note) = &task.note {
            assert!(described.contains(note), "{described}");
        }
        if task.is_last_day() {
            // 3.6.1: a date without an end is that whole day.
            let start = property(event, "DTSTART").unwrap();
            assert_eq!(start.params, Some(vec![("VALUE".to_owned(), vec!["DATE".to_owned()])]));
            assert_eq!(start.value, Some(task.start.date().strftime("%Y%m%d").to_string()));
        } else {
            // 3.3.5, form 2: an hour that comes twice is told in UTC.
            let twice = [&task.start_pass, &task.end_pass].into_iter().any(|pass| pass.name.is_some());
            let moment = task.start_pass.offset.to_timestamp(task.start).unwrap();
            let start = if twice { moment.strftime("%Y%m%dT%H%M%SZ").to_string() } else { floating(task.start) };
            assert_eq!((property(event, "DTSTART").unwrap().params.clone(), value(event, "DTSTART")), (None, Some(start)));
        }
        let hands = task.hands_min > 0;
        // 3.6.1: a time without an end takes no time; 3.8.2.2: an end is later than the start; 3.8.2.7: what takes no hands leaves the time free.
        assert_eq!(value(event, "DTEND").is_some(), hands, "{}", task.key);
        assert_eq!(value(event, "TRANSP").is_some_and(|busy| busy == "TRANSPARENT"), !hands, "{}", task.key);
        if hands {
            assert!(value(event, "DTEND") > value(event, "DTSTART"), "{}", task.key);
        }
        // 3.6.6: an alarm that shows something has an action, a description and a trigger, each once.
        for alarm in &event.alarms {
            let of = |name: &str| {
                let mut found = alarm.properties.iter().filter(|property| property.name == name);
                found.next().filter(|_| found.next().is_none()).and_then(|property| property.value.as_deref())
            };
            assert_eq!(of("ACTION"), Some("DISPLAY"));
            assert!(of("DESCRIPTION").is_some_and(|words| !text(words).is_empty()) && of("TRIGGER").is_some());
        }
        let with_hands = event
            .alarms
            .iter()
            .filter(|alarm| alarm.get_property("TRIGGER").and_then(|property| property.value.as_deref()) == Some("-PT5M"));
        assert_eq!(with_hands.count(), usize::from(hands), "{}", task.key);
    }
    let names: BTreeSet<String> = read.events.iter().map(|event| value(event, "UID").unwrap()).collect();
    // One more than the tasks: what to read first.
    assert_eq!(names.len(), week.tasks.len() + 1, "3.8.4.7: no two events have one name");
    read
}

#[test]
fn every_task_is_an_event_that_another_reader_finds_with_its_times_and_words() {
    let mut design = starting(friday(15));
    design.set("kept_in", Value::Choice("oil")).unwrap();
    // Sour enough for oil to be planned.
    design.set("pickling_h", Value::Number(2000.0)).unwrap();
    let week = planned(&design);
    assert!(week.tasks.iter().any(|task| task.hands_min == 0 && !task.is_last_day()), "the jars rest without hands");
    let read = check(&week, TITLE);
    for (event, task) in read.events.iter().zip(&week.tasks).filter(|(_, task)| task.hands_min > 0) {
        assert_eq!(value(event, "DTEND"), Some(floating(task.end)));
    }
    let of = |name: &str| read.get_property(name).and_then(|property| property.value.clone()).unwrap();
    assert_eq!((of("VERSION"), of("CALSCALE")), ("2.0".to_owned(), "GREGORIAN".to_owned()));
    assert!(of("PRODID").starts_with("-//Vatsketch//"));
    assert_eq!([text(&of("NAME")), text(&of("X-WR-CALNAME"))], [TITLE, TITLE]);
}

#[test]
fn a_plan_to_another_time_moves_the_same_events_and_is_a_later_revision() {
    let (week, later) = (planned(&starting(friday(15))), planned(&starting(friday(15).checked_add(3.days()).unwrap())));
    let names = |week: &KitchenWeek, title: &str| {
        let read = read(&written(week, title));
        let named = week.tasks.iter().zip(&read.events);
        named.map(|(task, event)| (task.key.clone(), value(event, "UID").unwrap())).collect::<BTreeSet<_>>()
    };
    assert_eq!(names(&week, TITLE), names(&later, TITLE));
    assert_eq!(
        names(&week, TITLE),
        names(&week, &format!(" {}  ", TITLE.to_uppercase())),
        "capitals and spaces are no other title"
    );
    assert!(names(&week, TITLE).is_disjoint(&names(&week, "Another vat")));
    // From where the maker is in the plan, the rest keeps its names.
    let began = week.tasks.iter().find(|task| task.key == "cut").unwrap().start;
    let mut design = starting(friday(15));
    design.week.reached = Some(Reached { task: "cut".to_owned(), began });
    let rest = names(&planned_at(&design, &Now { at: began, ..now() }), TITLE);
    assert!(rest.len() > 5 && rest.is_subset(&names(&week, TITLE)));
    // Made a day later: 1440 minutes more.
    let tomorrow = Now { at: now().at.checked_add(1.day()).unwrap(), ..now() };
    let revision = |now: &Now| {
        let read = read(&String::from_utf8(calendar(&week, &titled(TITLE), None, now, &[], Units::METRIC).unwrap()).unwrap());
        value(&read.events[0], "SEQUENCE").unwrap().parse::<u32>().unwrap()
    };
    assert_eq!(revision(&tomorrow) - revision(&now()), 1440);
    assert_eq!(
        calendar(&week, &titled(TITLE), None, &now(), &[], Units::METRIC),
        calendar(&week, &titled(TITLE), None, &now(), &[], Units::METRIC),
        "the same plan is the same file"
    );
}

/// RFC 9562, 5.5: a name of version 5. The value is that of Python's `uuid.uuid5` for the same namespace and words.
#[test]
fn the_name_of_an_event_is_what_another_library_makes_of_title_and_key() {
    let read = read(&written(&planned(&starting(friday(15))), "Twelve for the garden table"));
    assert_eq!(value(&read.events[0], "UID").unwrap(), "20649095-320f-5631-8e48-23ad09e88201");
}

/// The value is that of Python's `uuid.uuid5` for the id and the key of the first task.
#[test]
fn a_design_with_an_id_names_its_events_by_it_whatever_its_title() {
    let week = planned(&starting(friday(15)));
    let id = DesignId::read("5b0f6a4e-3c1d-4f7a-9d2e-8a61c70b94f3").unwrap();
    let names = |title: &str, id: Option<DesignId>| -> Vec<String> {
        let read = read(&String::from_utf8(calendar(&week, &titled(title), id, &now(), &[], Units::METRIC).unwrap()).unwrap());
        read.events.iter().map(|event| value(event, "UID").unwrap()).collect()
    };
    assert_eq!(names(TITLE, Some(id)), names("Another title", Some(id)));
    assert_eq!(week.tasks[0].key, "sanitise");
    assert_eq!(names(TITLE, Some(id))[0], "d808b555-f9eb-5c0f-bc20-b2a2b42fd97a");
    let own: BTreeSet<String> = names(TITLE, Some(id)).into_iter().collect();
    assert_eq!(own.len(), week.tasks.len() + 1, "each task has its own name, and so has the entry to read first");
    for other in [None, Some(DesignId::from_random_bits(1))] {
        assert!(names(TITLE, other).iter().all(|name| !own.contains(name)), "{other:?}");
    }
}

#[test]
fn the_stamp_is_the_time_of_the_plan_in_utc() {
    let ahead = Now { at: friday(1), zone: TimeZone::fixed(jiff::tz::offset(2)) };
    let bytes = calendar(&planned(&starting(friday(15))), &titled(TITLE), None, &ahead, &[], Units::METRIC).unwrap();
    let read = read(&String::from_utf8(bytes).unwrap());
    assert!(read.events.iter().all(|event| value(event, "DTSTAMP").unwrap() == "20310508T230000Z"), "3.8.7.2");
}

/// The rule of the zone is the test's own: one hour ahead, two in summer; forward on 2031-03-30 at 02:00, back on 2031-10-26 at 03:00.
#[test]
fn over_a_change_of_the_clock_times_are_those_of_the_wall() {
    let zone = TimeZone::posix("CET-1CEST,M3.5.0,M10.5.0/3").unwrap();
    for day in [date(2031, 3, 29), date(2031, 10, 25)] {
        let now = Now { at: day.at(8, 0, 0, 0), zone: zone.clone() };
        let week = kitchen_week(&batch(&starting(day.at(16, 0, 0, 0))).unwrap(), &now).unwrap().unwrap();
        check(&week, TITLE);
    }
    // Ten minutes from 02:55, when the clock goes back at 03:00: the wall then shows 02:05. Calculated by hand: 00:55 to 01:05 UTC.
    let day = date(2031, 10, 26);
    let pass = |hours: i8, name: &str| Pass { offset: jiff::tz::offset(hours), name: Some(name.to_owned()) };
    let (start, end) = (day.at(2, 55, 0, 0), day.at(2, 5, 0, 0));
    let week = one_task(WeekTask { start_pass: pass(2, "CEST"), end_pass: pass(1, "CET"), ..task(start, end, 10) });
    let read = check(&week, TITLE);
    let of = |name: &str| value(&read.events[0], name).unwrap();
    assert_eq!((of("DTSTART").as_str(), of("DTEND").as_str()), ("20311026T005500Z", "20311026T010500Z"));
}

#[test]
fn a_title_cannot_smuggle_anything_into_the_file() {
    let week = one_task(task(friday(15), friday(16), 60));
    for title in ["a\r\nEND:VCALENDAR\r\nBEGIN:VEVENT", "a\nUID:b", "a\\nb, c; d\\", "\u{1b}[2J\u{7}\u{85}", "x\ty"] {
        let read = check(&week, title);
        assert_eq!((read.events.len(), read.properties.len()), (2, 7), "{title:?}");
        assert!(!written(&week, title).contains(['\u{1b}', '\u{7}', '\t', '\u{85}']));
    }
    assert_eq!(read(&written(&week, " ")).properties.len(), 5, "without a title there is no name");
}

#[test]
fn a_year_that_the_file_cannot_hold_is_refused() {
    let past = date(-5, 5, 9).at(15, 0, 0, 0);
    let error = calendar(&one_task(task(past, past, 0)), &titled(TITLE), None, &now(), &[], Units::METRIC).unwrap_err();
    assert!(
        matches!(error, ExportError::Calendar { .. }) && error.to_string().contains("choose a year from 0000 to 9999"),
        "{error}"
    );
}

proptest! {
    #[test]
    fn any_words_come_back_but_for_what_no_calendar_can_hold(title in any_text(300), note in any_text(300)) {
        // The reader loses colons at the beginning of a value.
        let title = format!("a{title}");
        let noted = WeekTask { note: Some(note.clone()), ..task(friday(15), friday(16), 60) };
        let written = written(&one_task(noted), &title);
        prop_assert!(written.split("\r\n").all(|line| line.len() <= 75));
        let event = &read(&written).events[0];
        let described = text(&value(event, "DESCRIPTION").unwrap());
        let turns = |letter: char| matches!(letter, '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}');
        let kept = |words: &str| {
            let ends = words.replace("\r\n", "\n").replace('\r', "\n").replace('\t', " ");
            ends.chars().map(|letter| if letter != '\n' && (letter.is_control() || turns(letter)) { '\u{fffd}' } else { letter }).collect::<String>().trim().to_owned()
        };
        prop_assert!(described.starts_with(&kept(&title)) && described.contains(&kept(&note)), "{described:?}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn the_week_of_any_design_is_a_calendar_that_another_reader_reads(design in any_design(0.1), hour in 0_i8..24) {
        let mut design = design;
        design.week.wish = Wish::StartAt(friday(hour));
        // A vat of which no task can be planned has no week, and its design is told why.
        if let Ok(Some(week)) = kitchen_week(&batch(&design).unwrap(), &now()) {
            check(&week, &design.title);
        }
    }
}
