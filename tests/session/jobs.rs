//! The spread in the background.

use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::mpsc::{Receiver, channel};
use vatsketch::batch::{batch, matters};
use vatsketch::design::Design;
use vatsketch::session::{MattersJob, SpreadJob, Work, spread};

fn work(threads: usize) -> Work<'static> {
    Work { draws: 12, threads, goes_on: &|| true }
}

fn with_milk(milk_l: f64) -> Design {
    let mut design = Design::default();
    design.milk.milk_l = milk_l;
    design
}

/// A job, and where it tells that an answer is there.
fn job(draws: usize) -> (SpreadJob, Receiver<()>) {
    let (tell, told) = channel();
    (SpreadJob::with_draws(draws, Box::new(move || tell.send(()).unwrap_or(()))), told)
}

#[test]
fn the_answer_does_not_depend_on_the_threads() {
    let alone = spread(&Design::default(), &work(1)).unwrap().unwrap();
    for threads in [0, 2, 5, 40] {
        assert!(spread(&Design::default(), &work(threads)).unwrap().unwrap() == alone, "{threads} threads");
    }
}

#[test]
fn a_job_answers_what_the_draws_say() {
    let (job, told) = job(12);
    assert!(job.answer().is_none() && !job.is_running());
    job.order(&Design::default());
    told.recv().unwrap();
    assert!(!job.is_running());
    assert!(*job.answer().unwrap() == spread(&Design::default(), &work(1)).unwrap().unwrap());
}

#[test]
fn nothing_more_is_begun_once_it_is_told_to_stop() {
    let asked = AtomicUsize::new(0);
    let goes_on = || asked.fetch_add(1, Ordering::Relaxed) < 3;
    let stopped = Work { draws: 500, threads: 2, goes_on: &goes_on };
    assert!(spread(&Design::default(), &stopped).unwrap().is_none());
    assert!(asked.load(Ordering::Relaxed) <= 3 + 2, "each thread asks once in vain");
}

#[test]
fn a_newer_order_takes_the_place_of_an_older_one() {
    let (job, told) = job(12);
    for milk_l in [5.0, 7.0, 9.0] {
        job.order(&with_milk(milk_l));
        assert!(job.is_running());
    }
    told.recv().unwrap();
    assert_eq!(job.answer().unwrap().design, with_milk(9.0));
    assert!(told.try_recv().is_err(), "the older ones have no answer");
    // Another order works as the first did, and the old answer stays until the new one is there.
    job.order(&with_milk(4.0));
    assert!(job.answer().is_some());
    told.recv().unwrap();
    assert_eq!(job.answer().unwrap().design, with_milk(4.0));
}

#[test]
fn an_order_that_was_stopped_has_no_answer_and_the_next_one_has() {
    let (job, told) = job(12);
    job.order(&with_milk(5.0));
    job.stop();
    assert!(!job.is_running());
    job.order(&with_milk(8.0));
    told.recv().unwrap();
    assert_eq!(job.answer().unwrap().design, with_milk(8.0));
}

/// Ten thousand draws would take minutes: dropping the job does not wait for them.
#[test]
fn a_job_that_is_dropped_ends_between_two_draws() {
    let (job, told) = job(10_000);
    job.order(&Design::default());
    drop(job);
    assert!(told.recv().is_err(), "it has ended, and has told nothing");
}

/// A design out of its ranges is refused by the session; should one come here, the job goes on.
#[test]
fn a_design_that_is_refused_does_not_end_the_job() {
    assert!(spread(&with_milk(f64::NAN), &work(2)).is_err());
    let (job, told) = job(12);
    job.order(&with_milk(f64::NAN));
    told.recv().unwrap();
    assert!(job.answer().is_none() && !job.is_running());
    job.order(&Design::default());
    told.recv().unwrap();
    assert!(job.answer().is_some());
}

#[test]
fn what_matters_is_worked_out_in_the_background_and_says_for_which_figure() {
    let (tell, told) = channel();
    let job = MattersJob::new(Box::new(move || tell.send(()).unwrap_or(())));
    let made = batch(&Design::default()).unwrap();
    job.order(&made, "cream_g");
    told.recv().unwrap();
    let answer = job.answer().unwrap();
    assert_eq!((answer.figure.as_str(), &answer.design), ("cream_g", &made.design));
    assert_eq!(answer.movers.as_ref().unwrap().len(), matters(&made, "cream_g").unwrap().len());
    job.order(&made, "firmness");
    told.recv().unwrap();
    assert!(job.answer().unwrap().movers.as_ref().unwrap_err().contains("not a number"));
}
