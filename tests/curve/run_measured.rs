//! What was really weighed, at the stations of the run.

use vatsketch::batch::batch;
use vatsketch::curve::{measured, run, run_measured};
use vatsketch::design::Stage;
use vatsketch::session::Logbook;

/// The first batch of the invented log: 102 g on the scale when the cheeses went to the air, 81 g when they came back.
#[test]
fn cheeses_are_as_heavy_as_the_marked_one_says() {
    let book = Logbook::example().unwrap();
    let record = &book.batches()[0];
    let batch = batch(&record.design).unwrap();
    let weighed = run_measured(&batch, record, &measured(&batch, record, None));
    let stages: Vec<Stage> = weighed.iter().map(|(stage, _)| *stage).collect();
    assert_eq!(stages, [Stage::Milk, Stage::Salting, Stage::Drying]);
    let count = f64::from(record.design.draining.mould_count);
    // The run weighs cheese alone; the scale shows one cheese, to the gram, with the pepper on it.
    let pepper_g = batch.salting.done().unwrap().pepper_each_g;
    for ((_, kg), grams) in weighed.iter().skip(1).zip([102.0, 81.0]) {
        let alone_g = 1000.0 * kg / count;
        assert!((alone_g - (grams - pepper_g)).abs() < 0.5, "{alone_g} g of {grams} g with {pepper_g} g of pepper");
    }
}

/// 5.04 L of milk instead of 5: forty millilitres are forty-one grams.
#[test]
fn milk_counts_by_what_was_poured_beside_what_was_planned() {
    let book = Logbook::example().unwrap();
    let record = &book.batches()[0];
    let batch = batch(&record.design).unwrap();
    let weighed = run_measured(&batch, record, &[]);
    let planned = run(&batch).stations[0].goes_on_kg.unwrap();
    let density = batch.milk.done().unwrap().bought_density_kg_l;
    assert_eq!(weighed.len(), 1);
    assert!((weighed[0].1 - planned - 0.04 * density).abs() < 1e-9);
}
