//! Every constant is a record with a source that the ledger holds.

use super::texts;
use std::collections::BTreeSet;
use vatsketch::source::{Constant, SourceId, Standing, ledger};

/// Every constant: those of a batch, and those of the plan, which a batch may not know.
fn constants() -> Vec<Constant> {
    let of_the_plan = vatsketch::plan::CONSTANT_LISTS.into_iter().flat_map(|(_, list)| list.iter().copied());
    vatsketch::analysis::constants().into_iter().chain(of_the_plan).collect()
}

#[test]
fn every_source_named_by_a_record_is_in_the_ledger_once() {
    let rows = ledger().unwrap();
    let ids: Vec<SourceId> = rows.iter().map(|row| row.id).collect();
    let unique: BTreeSet<SourceId> = ids.iter().copied().collect();
    assert_eq!(ids.len(), unique.len(), "a row stands twice");
    let records = constants();
    for record in &records {
        assert!(unique.contains(&record.source), "{} names a source that the ledger lacks", record.name);
    }
}

#[test]
fn every_constant_lies_in_its_own_range_and_says_what_it_is() {
    for record in constants() {
        let (least, most) = record.range;
        let within = least <= record.value && record.value <= most;
        assert!(within, "{}: {} is not in {least} to {most}", record.name, record.value);
        assert!(!record.name.is_empty() && !record.unit.is_empty(), "{record:?} lacks a name or a unit");
        let explained = !record.locator.is_empty() || record.standing == Standing::FromMemory;
        assert!(explained, "{} does not say where it stands in its source", record.name);
    }
}

#[test]
fn no_constant_is_left_out_of_the_list() {
    let listed: BTreeSet<&str> = constants().iter().map(|record| record.name).collect();
    assert!(listed.len() > 30, "only {} constants are listed", listed.len());
    let declared = texts("src", ".rs")
        .into_iter()
        .filter(|(path, _)| !path.ends_with("source/record.rs"))
        .filter(|(_, text)| text.contains("constants! {"))
        .count();
    let modules = vatsketch::analysis::constant_lists().len() + vatsketch::plan::CONSTANT_LISTS.len();
    assert_eq!(
        declared, modules,
        "a module declares constants that neither `analysis::constant_lists` nor `plan::CONSTANT_LISTS` names"
    );
}

#[test]
fn no_record_is_declared_outside_the_macros() {
    let by_hand: Vec<String> = texts("src", ".rs")
        .into_iter()
        .filter(|(path, _)| !path.ends_with("source/record.rs"))
        .filter(|(_, text)| text.contains(": Constant = Constant {") || text.contains("> = Correlation {"))
        .map(|(path, _)| path.display().to_string())
        .collect();
    assert!(by_hand.is_empty(), "declare these with the macros, which list them: {by_hand:?}");
}

/// What nobody here has read is not called published, and an abstract is second-hand.
#[test]
fn a_published_value_comes_from_a_source_that_was_seen() {
    let rows = ledger().unwrap();
    let seen = |id: SourceId| rows.iter().find(|row| row.id == id).map(|row| row.seen.clone()).unwrap();
    let records = constants().into_iter().map(|record| (record.name, record.source, record.standing));
    let correlations = vatsketch::analysis::correlation_lists();
    let correlations =
        correlations.iter().flat_map(|(_, list)| list.iter().map(|record| (record.name, record.source, record.standing)));
    let wrong: Vec<String> = records
        .chain(correlations)
        .filter(|(_, _, standing)| *standing == Standing::Published)
        .map(|(name, source, _)| (name, seen(source)))
        .filter(|(_, seen)| {
            ["nothing", "an abstract", "abstracts", "no source", "not applicable"].iter().any(|word| seen.starts_with(word))
        })
        .map(|(name, seen)| format!("{name}: {seen}"))
        .collect();
    assert!(wrong.is_empty(), "{wrong:#?}");
}
