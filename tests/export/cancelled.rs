//! Events of the calendar that are gone, read back by the crate `ical`. Sections are those of RFC 5545.

use super::calendar::{TITLE, friday, now, planned_at, read, starting, titled};
use ical::parser::Component;
use ical::parser::ical::component::IcalEvent;
use jiff::ToSpan;
use vatsketch::design::{DesignId, Value};
use vatsketch::export::calendar;
use vatsketch::plan::Now;
use vatsketch::units::Units;

/// Names of the events of a file by their key, and whether each is cancelled.
fn events(text: &str) -> std::collections::BTreeMap<String, (String, bool)> {
    let of = |event: &IcalEvent| {
        let value = |name: &str| event.get_property(name).and_then(|property| property.value.clone());
        (value("X-VATSKETCH-TASK").unwrap(), (value("UID").unwrap(), value("STATUS").as_deref() == Some("CANCELLED")))
    };
    read(text).events.iter().map(of).collect()
}

/// RFC 5545, 3.8.1.11: an event that does not take place is CANCELLED; 3.8.7.4: under the same UID, with a higher SEQUENCE.
#[test]
fn a_plan_with_fewer_turns_cancels_the_events_that_are_gone() {
    let id = Some(DesignId::from_random_bits(0x11));
    let write = |turns: f64, now: &Now, id: Option<DesignId>, before: &str| {
        let mut design = starting(friday(15));
        design.set("turn_count", Value::Number(turns)).unwrap();
        String::from_utf8(calendar(&planned_at(&design, now), &titled(TITLE), id, now, before.as_bytes(), Units::METRIC).unwrap())
            .unwrap()
    };
    let later = Now { at: now().at.checked_add(2.hours()).unwrap(), ..now() };
    let first = write(5.0, &now(), id, "");
    assert!(events(&first).values().all(|(_, cancelled)| !cancelled));
    let second = write(3.0, &later, id, &first);
    let (before, after) = (events(&first), events(&second));
    let gone: Vec<&String> = after.iter().filter(|(_, (_, cancelled))| *cancelled).map(|(key, _)| key).collect();
    assert_eq!(gone.len(), before.len() - events(&write(3.0, &later, id, "")).len());
    assert!(!gone.is_empty() && gone.iter().all(|key| before[*key].0 == after[*key].0), "{gone:?}");
    assert!(before.keys().all(|key| after.contains_key(key)), "none is only left out");
    // They stay cancelled for those who skipped a file, and come back as events when they are planned again.
    assert_eq!(events(&write(3.0, &later, id, &second)), after);
    assert!(events(&write(5.0, &later, id, &second)).values().all(|(_, cancelled)| !cancelled));
    // Another design's events, what has been, and what is no calendar are left alone.
    let alone = events(&write(3.0, &later, id, ""));
    let other = Some(DesignId::from_random_bits(0x12));
    assert_eq!(events(&write(3.0, &later, id, &write(5.0, &now(), other, ""))), alone);
    let long_after = Now { at: friday(15).checked_add(400.days()).unwrap(), ..now() };
    let mut again = starting(friday(15).checked_add(500.days()).unwrap());
    again.set("turn_count", Value::Number(3.0)).unwrap();
    let text =
        calendar(&planned_at(&again, &long_after), &titled(TITLE), id, &long_after, first.as_bytes(), Units::METRIC).unwrap();
    assert!(events(&String::from_utf8(text).unwrap()).values().all(|(_, cancelled)| !cancelled));
    assert_eq!(events(&write(3.0, &later, id, "BEGIN:VCALENDAR\r\nno calendar")), alone);
}
