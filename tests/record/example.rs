//! The invented log that comes with the program.

use super::at;
use super::simulated::simulate;
use vatsketch::batch::batch;
use vatsketch::design::{Design, Value};
use vatsketch::file::LogFile;
use vatsketch::process::UncertainParameters;
use vatsketch::record::{EntryKind, EntryValue, Log};
use vatsketch::report::against_plan;
use vatsketch::units::Units;

fn path() -> String {
    format!("{}/resources/examples/three-batches.log.ron", env!("CARGO_MANIFEST_DIR"))
}

/// Three batches of one invented kitchen: its bath heats less than the records say, its rennet is weaker, water moves more slowly in its cheese
/// and acid faster.
fn invented() -> Log {
    let kitchen = UncertainParameters {
        bath_side: 0.8,
        clotting: 1.2,
        mould_time: 1.25,
        moisture_diffusivity: 0.7,
        acid_obstruction: 1.2,
        ..UncertainParameters::default()
    };
    let of = |set: &[(&str, f64)]| {
        let mut design: Design = crate::example("first-vat");
        "An invented scenario, not a recipe: one batch of an invented log.".clone_into(&mut design.note);
        for (key, value) in set {
            design.set(key, Value::Number(*value)).unwrap();
        }
        design
    };
    let mut log = Log::default();
    let words = ("mild and sour", "firm, a little crumbly");
    simulate(&mut log, ("invented, first", at(5, 9, 0)), &of(&[]), &kitchen, 1, words);
    let slower = of(&[("drying_h", 96.0)]);
    simulate(&mut log, ("invented, dried longer", at(12, 9, 30)), &slower, &kitchen, 2, ("mild, saltier than the last", "firmer"));
    let more = of(&[("drying_h", 96.0), ("rennet_dose_imcu_kg", 42.0)]);
    simulate(&mut log, ("invented, with more rennet", at(19, 8, 45)), &more, &kitchen, 3, ("mild and sour", "firm and smooth"));
    let weight = log.batch(3).unwrap().latest(EntryKind::CheeseWeight).unwrap().number;
    let right = log.batch(3).unwrap().latest(EntryKind::CheeseWeight).unwrap().amount().unwrap();
    log.correct(weight, None, EntryValue::Number(right + 10.0)).unwrap();
    let slip = log.end().after_entry;
    log.correct(slip, None, EntryValue::Number(right)).unwrap();
    log
}

/// Writes the example again, after the model has changed so far that it no longer looks like one kitchen.
#[test]
#[ignore = "writes the example; cargo test example_log -- --ignored"]
fn example_log_is_written_again() {
    let _ = std::fs::remove_file(path());
    let mut file = LogFile::of(invented());
    file.append(path().as_ref()).unwrap();
}

#[test]
fn the_example_opens_whole_and_says_that_it_is_invented() {
    let file = LogFile::read(path().as_ref()).unwrap();
    assert!(file.lost.is_empty(), "{:?}", file.lost);
    assert_eq!(file.log.batches.len(), 3);
    for batch in &file.log.batches {
        assert!(batch.name.contains("invented") && batch.design.note.contains("invented"), "{}", batch.name);
        assert!(batch.standing().len() > 30, "{} has {} entries", batch.name, batch.standing().len());
    }
}

/// It is there to learn from: it differs from the plan where its kitchen does, and not everywhere.
#[test]
fn the_example_is_off_where_its_kitchen_is() {
    let file = LogFile::read(path().as_ref()).unwrap();
    for record in &file.log.batches {
        let against = against_plan(&batch(&record.design).unwrap(), record, None, Units::METRIC);
        let off: Vec<_> = against.off().map(|row| row.kind).collect();
        assert!(against.not_compared.is_empty(), "{:?}", against.not_compared);
        assert!(off.contains(&EntryKind::MilkTemperature), "{} warms more slowly: {off:?}", record.name);
        assert!(2 * off.len() < against.rows.len(), "{}: {} of {} are off", record.name, off.len(), against.rows.len());
    }
}
