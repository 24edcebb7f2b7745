//! What is worked out in the background: the newest order only, without ever keeping the window waiting.

use super::draws::{Work, cores, spread};
use crate::batch::DRAWS;
use crate::design::Design;
use crate::figure::Spread;
use std::sync::{Arc, Condvar, Mutex, MutexGuard, PoisonError};
use std::thread::{Builder, JoinHandle};

/// What the window and the background share.
#[derive(Default)]
struct Board {
    state: Mutex<State>,
    /// Told when there is something new to do.
    changed: Condvar,
}

#[derive(Default)]
struct State {
    /// Number of the newest order; the worker stops at an older one.
    newest: u64,
    /// The newest order, until it is taken up.
    waiting: Option<Design>,
    running: bool,
    answer: Option<Arc<Spread>>,
    closing: bool,
}

impl Board {
    /// Returns the state; a thread that broke down while it held it has left it whole, for every change is a single one.
    fn state(&self) -> MutexGuard<'_, State> {
        self.state.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Waits for an order; none when the board closes.
    fn next(&self) -> Option<(u64, Design)> {
        let mut state = self.state();
        loop {
            if state.closing {
                return None;
            }
            if let Some(design) = state.waiting.take() {
                return Some((state.newest, design));
            }
            state = self.changed.wait(state).unwrap_or_else(PoisonError::into_inner);
        }
    }

    /// Returns whether an order is still the newest.
    fn wants(&self, order: u64) -> bool {
        let state = self.state();
        !state.closing && state.newest == order
    }

    /// Pins up what came of an order; returns whether it is still the newest.
    fn pin(&self, order: u64, spread: Option<Spread>) -> bool {
        let mut state = self.state();
        let newest = state.newest == order && !state.closing;
        if newest {
            state.running = false;
            if let Some(spread) = spread {
                state.answer = Some(Arc::new(spread));
            }
        }
        newest
    }
}

/// The spread of the open design, worked out in the background on all cores.
///
/// A newer order stops an older one between two draws. The last answer stays until the next is there; it says to which design it belongs.
///
/// # Example
/// ```
/// use vatsketch::{design::Design, session::SpreadJob};
/// let (tell, told) = std::sync::mpsc::channel();
/// let job = SpreadJob::with_draws(10, Box::new(move || tell.send(()).unwrap_or(())));
/// job.order(&Design::default());
/// told.recv().unwrap();
/// assert_eq!(job.answer().unwrap().design, Design::default());
/// assert!(!job.is_running());
/// ```
pub struct SpreadJob {
    board: Arc<Board>,
    worker: Option<JoinHandle<()>>,
}

impl SpreadJob {
    /// Returns a job that waits for orders.
    ///
    /// # Arguments
    /// * `wake`: called in the background when an answer is there, as to have the window drawn again
    #[must_use]
    pub fn new(wake: Box<dyn Fn() + Send>) -> Self {
        Self::with_draws(DRAWS, wake)
    }

    /// Returns the same with another number of draws.
    #[must_use]
    pub fn with_draws(draws: usize, wake: Box<dyn Fn() + Send>) -> Self {
        let board = Arc::new(Board::default());
        let shared = Arc::clone(&board);
        let work = move || {
            while let Some((order, design)) = shared.next() {
                let work = Work { draws, threads: cores(), goes_on: &|| shared.wants(order) };
                // A design that is out of its ranges has no spread; the session refuses it before it comes here.
                let answer = spread(&design, &work).ok().flatten();
                if shared.pin(order, answer) {
                    wake();
                }
            }
        };
        // Where the machine refuses the thread, there is no answer, and nothing else is lost.
        let worker = Builder::new().name("spread".to_owned()).spawn(work).ok();
        Self { board, worker }
    }

    /// Orders the spread of a design; an older order is dropped.
    pub fn order(&self, design: &Design) {
        let mut state = self.board.state();
        state.newest += 1;
        state.waiting = Some(design.clone());
        state.running = self.worker.is_some();
        self.board.changed.notify_one();
    }

    /// Drops the order that is being worked out, if there is one.
    pub fn stop(&self) {
        let mut state = self.board.state();
        state.newest += 1;
        state.waiting = None;
        state.running = false;
    }

    /// Returns the last answer.
    #[must_use]
    pub fn answer(&self) -> Option<Arc<Spread>> {
        self.board.state().answer.clone()
    }

    /// Returns whether the newest order is still without its answer.
    #[must_use]
    pub fn is_running(&self) -> bool {
        self.board.state().running
    }
}

impl Drop for SpreadJob {
    /// Stops between two draws and waits for the background to end.
    fn drop(&mut self) {
        self.board.state().closing = true;
        self.board.changed.notify_one();
        if let Some(worker) = self.worker.take() {
            // A worker that broke down is no reason to break down here.
            let _ = worker.join();
        }
    }
}
