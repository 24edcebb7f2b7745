//! What a known kitchen does to figures.

use crate::kitchen::invented::kitchen;
use vatsketch::report::{changed_batches, comparison, narrowed};
use vatsketch::session::{Work, spread};
use vatsketch::units::Units;

#[test]
fn what_a_kitchen_knows_makes_the_ranges_of_its_figures_narrower_and_leaves_germs_out() {
    let plain = crate::example("first-vat");
    let mut own = plain.clone();
    own.use_kitchen(kitchen(
        &plain,
        &[("moisture_diffusivity", 0.95, 1.0, 1.05), ("drying_wetness", 0.95, 1.0, 1.05)]
            .into_iter()
            .filter(|known| vatsketch::kitchen::Unknown::from_key(known.0).is_some())
            .collect::<Vec<_>>(),
    ))
    .unwrap();
    let of = |design| spread(design, &Work { draws: 20, threads: 2, goes_on: &|| true }).unwrap().unwrap();
    let rows = narrowed(&of(&plain), &of(&own), Units::METRIC);
    let moisture = rows.iter().find(|row| row.label.contains("oisture") && row.share() < 0.95).expect("a moisture is narrower");
    assert!(moisture.before != moisture.now, "{moisture:?}");
    assert!(rows.iter().all(|row| row.ranges[0].0 <= row.ranges[0].1 && row.ranges[1].0 <= row.ranges[1].1));
    assert!(!rows.iter().any(|row| row.label.contains("rowth")), "germs are not judged by a log");
}

#[test]
fn two_designs_for_different_kitchens_say_so() {
    let plain = crate::example("first-vat");
    let mut own = plain.clone();
    own.use_kitchen(kitchen(&plain, &[("buffer", 0.95, 1.0, 1.05)])).unwrap();
    let batch = |design| vatsketch::batch::batch(design).unwrap();
    let row = comparison(&batch(&plain), &batch(&own), Units::METRIC).choices.remove(0);
    assert_eq!((row.label.as_str(), row.a.as_str(), row.b.as_str()), ("Calculated for", "any kitchen", "invented"));
    let mut log = crate::record::begun("first-vat");
    let at = log.batches[0].begun;
    log.begin("", at, own, None);
    let changed = changed_batches(&log.batches[0], &log.batches[1], Units::METRIC);
    assert_eq!(changed.choices[0].b, "invented");
}
