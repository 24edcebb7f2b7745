//! What the events of a calendar say and when they call, read back by the crate `ical`. Sections are those of RFC 5545. Titles and hours are
//! invented.

use super::calendar::{friday, now, read, text, value};
use ical::parser::Component;
use ical::parser::ical::component::IcalEvent;
use jiff::civil::date;
use jiff::tz::TimeZone;
use jiff::{SignedDuration, Span, Timestamp};
use std::collections::BTreeMap;
use vatsketch::batch::{Batch, batch};
use vatsketch::design::{Design, Reached, Value, Wish};
use vatsketch::export::week_calendar;
use vatsketch::plan::{KitchenWeek, Now, kitchen_week};
use vatsketch::units::Units;

const TITLE: &str = "Twelve for the garden table";

/// Soured by a culture, dried warm, kept in oil after a long soak.
fn soured() -> Design {
    let mut design = Design { title: TITLE.to_owned(), ..Design::default() };
    let choices =
        [("soured_by", "culture"), ("kept_in", "oil"), ("drying_place", "cabinet")].map(|(key, word)| (key, Value::Choice(word)));
    let numbers = [("pickling_h", 2000.0), ("cabinet_temperature_c", 24.0), ("rennet_temperature_c", 33.0)];
    for (key, value) in choices.into_iter().chain(numbers.map(|(key, number)| (key, Value::Number(number)))) {
        design.set(key, value).unwrap();
    }
    design.week.wish = Wish::StartAt(friday(15));
    design
}

fn events(batch: &Batch, now: &Now, units: Units) -> BTreeMap<String, IcalEvent> {
    let bytes = week_calendar(batch, None, now, &[], units).unwrap();
    let read = read(&String::from_utf8(bytes).unwrap());
    read.events.into_iter().map(|event| (value(&event, "X-VATSKETCH-TASK").unwrap(), event)).collect()
}

fn said(event: &IcalEvent) -> Vec<String> {
    text(&value(event, "DESCRIPTION").unwrap()).lines().map(str::to_owned).collect()
}

/// Triggers and words of the alarms of an event (3.6.6).
fn calls(event: &IcalEvent) -> Vec<(String, String)> {
    let of = |name: &str, alarm: &ical::parser::ical::component::IcalAlarm| {
        alarm.get_property(name).and_then(|property| property.value.clone()).unwrap()
    };
    event.alarms.iter().map(|alarm| (of("TRIGGER", alarm), text(&of("DESCRIPTION", alarm)))).collect()
}

/// The start of an event of the wall clock (3.3.5, form 1) as a moment in a zone.
fn begins(event: &IcalEvent, zone: &TimeZone) -> Timestamp {
    let at = jiff::civil::DateTime::strptime("%Y%m%dT%H%M%S", value(event, "DTSTART").unwrap()).unwrap();
    zone.to_timestamp(at).unwrap()
}

/// A trigger (3.8.6.3) is a length of time from the start, negative if before it; hours and minutes of 3.3.6 are exact.
fn exact(trigger: &str) -> SignedDuration {
    assert!(trigger.starts_with("-PT"), "{trigger} is exact");
    // RFC 5545, 3.3.6 writes durations as ISO 8601 does, which another library reads.
    trigger.parse::<Span>().unwrap().to_duration(jiff::SpanRelativeTo::days_are_24_hours()).unwrap()
}

/// 3.8.1.12: the summary is the title of an event.
#[test]
fn every_title_has_the_name_of_the_vat_and_stands_alone_without_one() {
    let mut design = soured();
    let of = |design: &Design| events(&batch(design).unwrap(), &now(), Units::METRIC);
    assert_eq!(value(&of(&design)["turn_3"], "SUMMARY").unwrap(), "Turn 3 – Twelve for the garden table");
    assert!(of(&design).values().all(|event| text(&value(event, "SUMMARY").unwrap()).ends_with(&format!(" – {TITLE}"))));
    "  ".clone_into(&mut design.title);
    assert_eq!(value(&of(&design)["turn_3"], "SUMMARY").unwrap(), "Turn 3");
    assert!(of(&design).values().all(|event| !value(event, "SUMMARY").unwrap().contains('–')));
}

/// 3.8.1.5: the description says more than the summary; the amounts are those of the printed steps.
#[test]
fn a_body_has_the_amounts_and_temperatures_of_its_step_in_the_maker_s_units() {
    let batch = batch(&soured()).unwrap();
    for units in [Units::METRIC, Units::US] {
        let plan = vatsketch::report::plan(&batch).shown_in(units);
        let printed = vatsketch::export::text(&plan).split_whitespace().collect::<Vec<_>>().join(" ");
        let events = events(&batch, &now(), units);
        let mut amounts = 0;
        for key in ["measure", "culture", "rennet", "ladle", "turn_1", "unmould", "vinegar", "sour"] {
            let aims: Vec<String> =
                said(&events[key]).iter().filter_map(|line| Some(line.strip_prefix("- ")?.to_owned())).collect();
            assert!(!aims.is_empty(), "{key}");
            assert!(aims.iter().all(|aim| printed.contains(aim)), "{key}: {aims:?}");
            amounts += aims.len();
        }
        assert!(amounts > 12);
    }
    let warm = |units: Units| said(&events(&batch, &now(), units)["warm"]).join("\n");
    assert!(warm(Units::METRIC).contains("milk: ") && warm(Units::METRIC).contains("°C ± 0.5"), "{}", warm(Units::METRIC));
    assert!(warm(Units::US).contains("°F") && !warm(Units::US).contains("°C"), "{}", warm(Units::US));
}

#[test]
fn a_body_says_what_must_be_measured_or_tested_first_and_only_where_it_must() {
    let holds = |design: &Design, units: Units| -> BTreeMap<String, String> {
        let events = events(&batch(design).unwrap(), &now(), units);
        let of = |event: &IcalEvent| {
            let lines: Vec<String> = said(event).into_iter().filter(|line| line.starts_with("Hold: ")).collect();
            assert!(lines.len() < 2, "{lines:?}");
            lines.into_iter().next()
        };
        events.iter().filter_map(|(key, event)| Some((key.clone(), of(event)?))).collect()
    };
    let soured = soured();
    let found = holds(&soured, Units::METRIC);
    let keys: Vec<&str> = found.keys().map(String::as_str).filter(|key| !key.starts_with("test_")).collect();
    assert_eq!(keys, ["cut", "rennet", "sour", "unmould"]);
    assert!(found["rennet"].starts_with("Hold: Is the milk at 32.5 to 33.5 °C? Only then the rennet."), "{}", found["rennet"]);
    let in_fahrenheit = &holds(&soured, Units::US)["rennet"];
    assert!(in_fahrenheit.starts_with("Hold: Is the milk at 91 to 92 °F?"), "{in_fahrenheit}");
    assert!(found["cut"].starts_with("Hold: Does the cut open clean"), "{}", found["cut"]);
    // What is soured for warm drying must be at pH 4.8 first (our own limit), and table B of the Food Code asks for less than 4.2.
    assert!(found["unmould"].starts_with("Hold: Do both read no more than pH 4.8? Only then to the air."), "{}", found["unmould"]);
    assert!(found["sour"].starts_with("Hold: Do both read less than pH 4.2? Pour nothing off before."), "{}", found["sour"]);
    let mut cool = soured.clone();
    cool.set("drying_place", Value::Choice("open_air")).unwrap();
    cool.set("day_temperature_c", Value::Number(12.0)).unwrap();
    assert!(!holds(&cool, Units::METRIC).contains_key("unmould"), "cool air asks for no acid first");
    let mut without = soured;
    without.set("soured_by", Value::Choice("nothing")).unwrap();
    assert!(!holds(&without, Units::METRIC).contains_key("unmould"), "nothing sours it, so no meter is asked");
}

/// 3.6.6 and 3.8.6.3: alarms before the start. 19:00 on the eve of Friday 15:00 is twenty hours before, by hand.
#[test]
fn it_calls_on_the_evening_before_five_minutes_before_hands_and_a_day_before_what_must_be_at_hand() {
    let events = events(&batch(&soured()).unwrap(), &now(), Units::METRIC);
    let triggers = |key: &str| calls(&events[key]).into_iter().map(|(trigger, _)| trigger).collect::<Vec<_>>();
    assert_eq!(triggers("sanitise"), ["-PT5M", "-PT20H"]);
    assert_eq!(calls(&events["sanitise"])[1].1, "The vat begins tomorrow – Twelve for the garden table");
    assert_eq!(triggers("ladle"), ["-PT5M"]);
    for key in ["vinegar", "unmould", "sour"] {
        assert_eq!(triggers(key), ["-PT5M", "-P1D"], "{key}");
    }
    let wanted = |key: &str| calls(&events[key])[1].1.clone();
    assert!(wanted("vinegar").starts_with("Wanted tomorrow: the vinegar."));
    assert!(wanted("sour").starts_with("Wanted tomorrow: the pH meter, calibrated."));
    // The culture is checked with the meter once more, in whichever task that is.
    let readings = events.values().filter(|event| calls(event).iter().any(|(_, words)| words.contains("pH meter"))).count();
    assert_eq!(readings, 3);
    for silent in ["rest", "last_day", "read_first"] {
        assert!(events[silent].alarms.is_empty(), "{silent} needs no hands");
    }
}

/// The rule of the zone is the test's own: forward on 2031-03-30 at 02:00. 3.3.6: hours are exact, so that night has one fewer.
#[test]
fn the_evening_before_is_at_seven_by_the_wall_clock_also_when_the_clock_changes() {
    let zone = TimeZone::posix("CET-1CEST,M3.5.0,M10.5.0/3").unwrap();
    for (day, hour) in [(date(2031, 3, 30), 9), (date(2031, 10, 26), 8), (date(2031, 10, 27), 0), (date(2031, 5, 9), 20)] {
        let start = day.at(hour, 20, 0, 0);
        let mut design = soured();
        design.week.wish = Wish::StartAt(start);
        let now = Now { at: date(2031, 3, 1).at(8, 0, 0, 0), zone: zone.clone() };
        let events = events(&batch(&design).unwrap(), &now, Units::METRIC);
        let first = &events["sanitise"];
        let trigger = &calls(first)[1].0;
        let evening = zone.to_datetime(begins(first, &zone) + exact(trigger));
        assert_eq!(evening, day.yesterday().unwrap().at(19, 0, 0, 0), "{start}: {trigger}");
    }
}

#[test]
fn what_would_call_before_the_plan_was_made_is_left_out() {
    let late = Now { at: date(2031, 5, 8).at(21, 0, 0, 0), ..now() };
    let events_of = |design: &Design, now: &Now| events(&batch(design).unwrap(), now, Units::METRIC);
    let at_night = events_of(&soured(), &late);
    assert_eq!(calls(&at_night["sanitise"]).len(), 1, "seven in the evening is over");
    // Planned on from the cut: nothing begins tomorrow, and what is within a day cannot be called a day before.
    let week: KitchenWeek = kitchen_week(&batch(&soured()).unwrap(), &now()).unwrap().unwrap();
    let began = week.tasks.iter().find(|task| task.key == "unmould").unwrap().start;
    let mut design = soured();
    design.week.reached = Some(Reached { task: "unmould".to_owned(), began });
    let rest = events_of(&design, &Now { at: began, ..now() });
    let all: Vec<(String, String)> = rest.values().flat_map(calls).collect();
    assert!(all.iter().all(|(_, words)| !words.starts_with("The vat begins")), "{all:?}");
    assert_eq!(calls(&rest["unmould"]).len(), 1);
    assert_eq!(calls(&rest["sour"]).len(), 2);
}
