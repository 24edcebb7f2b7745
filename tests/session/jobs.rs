//! The spread in the background.

use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::mpsc::{Receiver, Sender, channel};
use std::time::Duration;
use vatsketch::analysis::sensitivity;
use vatsketch::batch::batch;
use vatsketch::design::Design;
use vatsketch::session::{Background, SensitivityJob, SpreadJob, Work, spread};

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

/// Work that waits at a gate for each order, so that nothing depends on how quick the machine is.
struct Gated {
    job: Background<u32, u32>,
    /// What was begun.
    begun: Receiver<u32>,
    /// Lets one order through.
    gate: Sender<()>,
    told: Receiver<()>,
}

fn gated() -> Gated {
    let ((begins, begun), (gate, opened), (tell, told)) = (channel(), channel::<()>(), channel());
    let work = move |order: &u32, goes_on: &(dyn Fn() -> bool + Sync)| {
        begins.send(*order).unwrap_or(());
        while goes_on() {
            if opened.recv_timeout(Duration::from_millis(1)).is_ok() {
                return Some(*order);
            }
        }
        None
    };
    Gated { job: Background::new("gated", work, Box::new(move || tell.send(()).unwrap_or(()))), begun, gate, told }
}

#[test]
fn a_newer_order_takes_the_place_of_an_older_one() {
    let Gated { job, begun, gate, told } = gated();
    job.order(1);
    assert_eq!(begun.recv().unwrap(), 1);
    job.order(2);
    // The first one was told to stop, and has no answer.
    assert_eq!(begun.recv().unwrap(), 2);
    assert!(job.is_running() && job.answer().is_none() && told.try_recv().is_err());
    gate.send(()).unwrap();
    told.recv().unwrap();
    assert_eq!((*job.answer().unwrap(), job.is_running()), (2, false));
    // The old answer stays until the new one is there.
    job.order(3);
    assert_eq!((begun.recv().unwrap(), *job.answer().unwrap()), (3, 2));
    gate.send(()).unwrap();
    told.recv().unwrap();
    assert_eq!(*job.answer().unwrap(), 3);
}

/// The work never ends by itself: only the question whether it goes on ends it.
#[test]
fn a_job_that_is_dropped_stops_its_work_and_tells_nothing() {
    let Gated { job, begun, gate: _gate, told } = gated();
    job.order(1);
    begun.recv().unwrap();
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
    let job = SensitivityJob::new(Box::new(move || tell.send(()).unwrap_or(())));
    let made = batch(&Design::default()).unwrap();
    job.order(&made, "cream_g");
    told.recv().unwrap();
    let answer = job.answer().unwrap();
    assert_eq!((answer.figure.as_str(), &answer.design), ("cream_g", &made.design));
    assert_eq!(answer.effects.as_ref().unwrap().len(), sensitivity(&made, "cream_g").unwrap().len());
    job.order(&made, "firmness");
    told.recv().unwrap();
    assert!(job.answer().unwrap().effects.as_ref().unwrap_err().contains("not a number"));
}

#[test]
fn work_that_breaks_down_is_no_longer_running_and_the_next_order_is_done() {
    let (tell, told) = channel();
    let work = |order: &u32, _: &(dyn Fn() -> bool + Sync)| {
        assert!(*order != 13, "an invented fault");
        Some(*order)
    };
    let job = Background::new("breaks down", work, Box::new(move || tell.send(()).unwrap_or(())));
    job.order(13);
    told.recv().unwrap();
    assert!(job.has_failed() && !job.is_running() && job.answer().is_none());
    job.order(14);
    told.recv().unwrap();
    assert!(!job.has_failed() && !job.is_running());
    assert_eq!(*job.answer().unwrap(), 14);
}

#[test]
fn a_spread_that_cannot_be_calculated_is_told_as_failed() {
    let (job, told) = job(12);
    job.order(&with_milk(-1.0));
    told.recv().unwrap();
    assert!(job.has_failed() && !job.is_running() && job.answer().is_none());
}
