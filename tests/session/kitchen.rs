//! Learning a kitchen in the background; using it is one step to undo.

use crate::kitchen::invented::kitchen;
use std::sync::mpsc::channel;
use vatsketch::design::Design;
use vatsketch::session::{Command, KitchenJob, Logbook, Session};

#[test]
fn a_kitchen_is_used_and_taken_back() {
    let plain = Design::default();
    let known = kitchen(&plain, &[("moisture_diffusivity", 0.6, 0.7, 0.8), ("drip_end_moisture_percent", 0.97, 1.02, 1.05)]);
    let mut session = Session::open(plain.clone(), None).unwrap();
    session.apply(Command::UseKitchen(Some(Box::new(known.clone())))).unwrap();
    assert_eq!(session.history().undo_name(), Some("Calculate for the kitchen “invented”"));
    assert_eq!(session.design().kitchen.as_ref(), Some(&known));
    assert_eq!(session.batch().given.parameters.moisture_diffusivity, 0.7);
    session.apply(Command::UseKitchen(None)).unwrap();
    assert_eq!(session.design(), &plain);
    session.undo().unwrap();
    assert_eq!(session.batch().given.parameters.moisture_diffusivity, 0.7);
    session.undo().unwrap();
    assert_eq!(session.design(), &plain);
    session.redo().unwrap();
    assert!(session.design().kitchen.is_some());
}

#[test]
fn what_a_batch_tells_comes_with_the_spread_of_the_open_design_before_and_now() {
    let (tell, told) = channel();
    let job = KitchenJob::with_draws(6, Box::new(move || tell.send(()).unwrap_or(())));
    let book = Logbook::example().unwrap();
    let design = crate::example("first-vat");
    job.order(&book.batches()[2..], &design);
    told.recv().unwrap();
    let found = job.answer().unwrap();
    let known = found.known("cellar").unwrap();
    assert_eq!((known.name.as_str(), known.learned_from.len(), known.learned_from[0].number), ("cellar", 1, 3));
    let (before, now) = found.spreads.as_ref().unwrap();
    assert!(before.design == design && now.design.kitchen.as_ref().unwrap().estimates == known.estimates);
    let mut own = design.clone();
    own.use_kitchen(known).unwrap();
    assert!(found.is_of(&design) && found.is_of(&own), "whatever kitchen the design uses");
    assert!(!found.is_of(&Design::default()));
}

#[test]
fn learning_that_is_given_up_ends_without_an_answer_and_is_no_failure() {
    let job = KitchenJob::with_draws(6, Box::new(|| ()));
    job.order(Logbook::example().unwrap().batches(), &Design::default());
    job.give_up();
    assert!(!job.is_running() && !job.has_failed() && job.answer().is_none());
    // Ends at its next batch: what is dropped waits for its thread.
    drop(job);
}
