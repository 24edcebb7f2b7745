//! A batch against its plan, in words.

use crate::record::{at, begun, done, numbers};
use vatsketch::batch::batch;
use vatsketch::record::EntryKind;
use vatsketch::report::{against_plan, changed_batches, duration};
use vatsketch::units::Units;

#[test]
fn what_was_off_says_what_when_and_by_how_much() {
    let mut log = begun("first-vat");
    done(&mut log, EntryKind::WarmingBegan, at(5, 9, 0));
    done(&mut log, EntryKind::RennetAdded, at(5, 15, 0));
    numbers(&mut log, EntryKind::MilkPoured, &[(at(5, 9, 0), 5.0)]);
    let batch = batch(&crate::example("first-vat")).unwrap();
    let to_rennet = batch.vat.done().unwrap().to_rennet_min;
    let against = against_plan(&batch, log.batch(1).unwrap(), None, Units::METRIC);
    let off: Vec<String> = against.off().map(|row| row.in_words().replace('\u{a0}', " ")).collect();
    assert_eq!(off.len(), 1, "the milk is as planned: {off:?}");
    assert!(off[0].starts_with("Mon 5 May, 15:00: Rennet stirred in, after 6 h; plan "), "{off:?}");
    assert!(off[0].ends_with(&format!("{} later.", duration(360.0 - to_rennet, Units::METRIC).replace('\u{a0}', " "))), "{off:?}");
    assert_eq!(against.rows.iter().find(|row| row.kind == EntryKind::MilkPoured).unwrap().apart(), "as planned");
}

#[test]
fn what_cannot_be_laid_beside_the_plan_says_what_is_missing() {
    let mut log = begun("first-vat");
    numbers(&mut log, EntryKind::CheeseWeight, &[(at(7, 9, 0), 95.0)]);
    let against = against_plan(&batch(&crate::example("first-vat")).unwrap(), log.batch(1).unwrap(), None, Units::METRIC);
    assert!(against.rows.is_empty());
    assert_eq!(
        against.not_compared,
        ["Weight of the marked cheese: write down first when the cheeses were laid out to dry: its hours count from there."]
    );
    let mut log = begun("small-vat");
    numbers(&mut log, EntryKind::CentrePh, &[(at(7, 9, 0), 4.1)]);
    let against = against_plan(&batch(&crate::example("small-vat")).unwrap(), log.batch(1).unwrap(), None, Units::METRIC);
    assert!(against.not_compared[0].contains("do not go into vinegar"), "{:?}", against.not_compared);
}

/// A difference of 5 °C is one of 9 °F: NIST Handbook 44, appendix C.
#[test]
fn it_is_told_in_the_units_that_are_shown() {
    let mut log = begun("first-vat");
    let (a, b) = ((at(5, 9, 0), 18.0), (at(5, 10, 0), 23.0));
    numbers(&mut log, EntryKind::AirTemperature, &[a]);
    log.begin("", at(9, 9, 0), crate::example("first-vat"), None);
    log.enter(2, b.0, EntryKind::AirTemperature, vatsketch::record::EntryValue::Number(b.1)).unwrap();
    let changed = |units| changed_batches(log.batch(1).unwrap(), log.batch(2).unwrap(), units).entries;
    assert_eq!(changed(Units::METRIC)[0].change.replace('\u{a0}', " "), "+5.0 °C");
    assert_eq!(changed(Units::US)[0].change.replace('\u{a0}', " "), "+9 °F");
    let against = against_plan(&batch(&crate::example("first-vat")).unwrap(), log.batch(2).unwrap(), None, Units::US);
    let planned = crate::example("first-vat").drying.cabinet_temperature_c;
    assert_eq!(against.rows[0].apart(), format!("{:.0} °F above", 1.8 * (23.0 - planned)));
}
