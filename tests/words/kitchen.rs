//! A known kitchen in words.

use crate::kitchen::invented::kitchen;
use crate::record::begun;
use vatsketch::design::{Design, KnownKitchen, Value};
use vatsketch::units::Units;
use vatsketch::words::{kitchen_line, kitchen_rows, kitchen_since};

/// A cook has no unit of diffusion: such a number is said over what is usual, one in hours or per cent as it is.
#[test]
fn what_a_kitchen_has_no_unit_for_is_said_over_what_is_usual() {
    let design = crate::example("first-vat");
    let known = kitchen(&design, &[("moisture_diffusivity", 0.7, 0.8, 0.9), ("drip_end_moisture_percent", 0.97, 1.02, 1.05)]);
    let rows = kitchen_rows(&known, Units::METRIC);
    assert_eq!(rows[0].value, "0.8 times the usual");
    let [now, before, ends] = rows[0].ranges;
    assert!(ends.0 < before.0 && before.0 < now.0 && now.1 < before.1 && before.1 < ends.1, "{rows:?}");
    // A triangle in the logarithm: 0.8 · (0.7/0.8)^0.553 and 0.8 · (0.9/0.8)^0.553, with 1 − √0.2 = 0.553.
    assert_eq!(rows[0].now, "0.74–0.85");
    assert!(rows[1].value.ends_with(" %"), "{rows:?}");
}

/// Of a temperature a log tells how far it is from what was chosen, and a difference has no zero point.
#[test]
fn a_temperature_is_said_as_a_difference_in_the_unit_that_is_shown() {
    let known = kitchen(&Design::default(), &[("warmth_of_moulds", 1.0, 1.003_411_2, 1.005)]);
    assert_eq!(kitchen_rows(&known, Units::METRIC)[0].value, "+1.0 °C from what was chosen");
    let us = &kitchen_rows(&known, Units::US)[0];
    assert_eq!(us.value, "+1.8 °F from what was chosen");
    assert!(us.before.starts_with('−'), "{us:?}");
}

#[test]
fn a_key_of_a_newer_program_is_shown_as_it_is() {
    let mut known = kitchen(&Design::default(), &[("buffer", 0.9, 1.0, 1.1)]);
    "of_a_newer_program".clone_into(&mut known.estimates[0].key);
    assert_eq!(kitchen_rows(&known, Units::METRIC)[0].what, "of_a_newer_program");
}

#[test]
fn it_is_said_when_the_log_has_more_than_the_kitchen_was_learned_from() {
    let mut log = begun("first-vat");
    let known = kitchen(&Design::default(), &[]);
    let at = log.batches[0].begun;
    let learned = |entries| KnownKitchen {
        learned_from: vec![vatsketch::design::KitchenBatch { number: 1, name: String::new(), begun: at, entries }],
        ..known.clone()
    };
    let entries = u32::try_from(log.batches[0].entries.len()).unwrap();
    assert_eq!(kitchen_since(&learned(entries), &log.batches), None);
    crate::record::done(&mut log, vatsketch::record::EntryKind::AirBegan, crate::record::at(7, 9, 0));
    assert!(kitchen_since(&learned(entries), &log.batches).unwrap().starts_with("You have written more"));
    let next = at.checked_add(jiff::Span::new().weeks(1)).unwrap();
    log.begin("second", next, Design::default(), None);
    assert!(kitchen_since(&learned(entries), &log.batches).unwrap().starts_with("You have begun one more batch"));
    assert_eq!(kitchen_since(&known, &[]), None, "of another log nothing is said");
}

#[test]
fn it_is_said_how_many_values_of_a_kitchen_a_design_does_not_use() {
    let mut design = crate::example("first-vat");
    assert_eq!(kitchen_line(&design), None);
    design.use_kitchen(kitchen(&design, &[("culture_rate", 0.8, 0.9, 1.0)])).unwrap();
    let line = kitchen_line(&design).unwrap();
    assert!(line.contains("31 measurements in 1 batch.") && !line.contains("not used"), "{line}");
    design.set("culture_kind", Value::Choice("thermophilic")).unwrap();
    assert!(kitchen_line(&design).unwrap().contains("One of its values"));
}
