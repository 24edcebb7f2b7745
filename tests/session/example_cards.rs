//! What the examples come to.

use vatsketch::analysis::summary;
use vatsketch::batch::batch;
use vatsketch::design::Design;
use vatsketch::session::{EXAMPLES, ExampleCard, ExamplesJob};

#[test]
fn every_example_is_calculated_once_and_as_it_is_when_it_is_opened() {
    let (tell, told) = std::sync::mpsc::channel();
    let job = ExamplesJob::new(Box::new(move || tell.send(()).unwrap_or(())));
    assert!(job.is_running());
    told.recv().unwrap();
    assert!(!job.is_running());
    let cards = job.answer().unwrap();
    assert_eq!(cards.len(), EXAMPLES.len());
    for (example, card) in EXAMPLES.iter().zip(cards.iter()) {
        let batch = batch(&example.design().unwrap()).unwrap();
        let card = card.as_ref().unwrap_or_else(|| panic!("{} was not calculated", example.name));
        assert_eq!(card.summary, summary(&batch), "{}", example.name);
        let cheese_kg: f64 = card.layers.iter().map(|layer| layer.mass_kg).sum();
        let dried_kg = batch.drying.done().unwrap().cheese.total_kg();
        assert!((cheese_kg - dried_kg).abs() < 1e-9, "{}: {cheese_kg} of {dried_kg} kg", example.name);
    }
}

#[test]
fn a_batch_that_stops_has_no_cheese_to_draw() {
    let mut design = Design::default();
    design.draining.mould_count = 1;
    let card = ExampleCard::of(&batch(&design).unwrap());
    assert_eq!((card.drained, card.dried, card.summary.cheese_count), (None, None, None));
}
