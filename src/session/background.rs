//! Work in the background: the newest order only, without ever keeping the window waiting.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::{Arc, Condvar, Mutex, MutexGuard, PoisonError};
use std::thread::{Builder, JoinHandle};

/// What the window and the background share.
struct Board<O, A> {
    state: Mutex<State<O, A>>,
    /// Told when there is something new to do.
    changed: Condvar,
}

struct State<O, A> {
    /// Number of the newest order; the worker stops at an older one.
    newest: u64,
    /// The newest order, until it is taken up.
    waiting: Option<O>,
    running: bool,
    /// Whether the newest order ended without an answer.
    failed: bool,
    answer: Option<Arc<A>>,
    closing: bool,
}

impl<O, A> Board<O, A> {
    /// Returns the state; a thread that broke down while it held it has left it whole, for every change is a single one.
    fn state(&self) -> MutexGuard<'_, State<O, A>> {
        self.state.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Waits for an order; none when the board closes.
    fn next(&self) -> Option<(u64, O)> {
        let mut state = self.state();
        loop {
            if state.closing {
                return None;
            }
            if let Some(order) = state.waiting.take() {
                return Some((state.newest, order));
            }
            state = self.changed.wait(state).unwrap_or_else(PoisonError::into_inner);
        }
    }

    /// Returns whether an order is still the newest.
    fn wants(&self, number: u64) -> bool {
        let state = self.state();
        !state.closing && state.newest == number
    }

    /// Pins up what came of an order; returns whether it is still the newest.
    fn pin(&self, number: u64, answer: Option<A>) -> bool {
        let mut state = self.state();
        let newest = state.newest == number && !state.closing;
        if newest {
            state.running = false;
            state.failed = answer.is_none();
            if let Some(answer) = answer {
                state.answer = Some(Arc::new(answer));
            }
        }
        newest
    }
}

/// One kind of work in the background. The last answer stays until the next is there, so it must say to which order it belongs.
///
/// # Example
/// ```
/// use vatsketch::session::Background;
/// let (tell, told) = std::sync::mpsc::channel();
/// let double = Background::new("double", |order: &i32, _| Some((*order, 2 * order)), Box::new(move || tell.send(()).unwrap_or(())));
/// double.order(21);
/// told.recv().unwrap();
/// assert_eq!(*double.answer().unwrap(), (21, 42));
/// ```
pub struct Background<O, A> {
    board: Arc<Board<O, A>>,
    worker: Option<JoinHandle<()>>,
}

impl<O: Send + 'static, A: Send + Sync + 'static> Background<O, A> {
    /// Returns a job that waits for orders.
    ///
    /// # Arguments
    /// * `name`: of the thread
    /// * `work`: works an order out; it is given a question that says no once a newer order is there, and may then stop without an answer
    /// * `wake`: called in the background when an answer is there, as to have the window drawn again
    #[must_use]
    pub fn new(
        name: &str,
        work: impl Fn(&O, &(dyn Fn() -> bool + Sync)) -> Option<A> + Send + 'static,
        wake: Box<dyn Fn() + Send>,
    ) -> Self {
        let state = State { newest: 0, waiting: None, running: false, failed: false, answer: None, closing: false };
        let board = Arc::new(Board { state: Mutex::new(state), changed: Condvar::new() });
        let shared = Arc::clone(&board);
        let run = move || {
            while let Some((number, order)) = shared.next() {
                // Work that breaks down is an order without an answer: the window must not wait for it for ever, and the next order
                // may well do. Nothing of the work outlives it, so nothing half done is seen again.
                let answer = catch_unwind(AssertUnwindSafe(|| work(&order, &|| shared.wants(number)))).unwrap_or(None);
                if shared.pin(number, answer) {
                    wake();
                }
            }
        };
        // Where the machine refuses the thread, every order fails, and nothing else is lost.
        let worker = Builder::new().name(name.to_owned()).spawn(run).ok();
        Self { board, worker }
    }
}

impl<O, A> Background<O, A> {
    /// Orders something; an older order is dropped.
    pub fn order(&self, order: O) {
        let mut state = self.board.state();
        state.newest += 1;
        state.waiting = Some(order);
        state.running = self.worker.is_some();
        state.failed = !state.running;
        self.board.changed.notify_one();
    }

    /// Gives up the newest order: no answer will come of it, and that is no failure.
    pub fn give_up(&self) {
        let mut state = self.board.state();
        state.newest += 1;
        state.waiting = None;
        (state.running, state.failed) = (false, false);
    }

    /// Returns the last answer.
    #[must_use]
    pub fn answer(&self) -> Option<Arc<A>> {
        self.board.state().answer.clone()
    }

    /// Returns whether the newest order is still without its answer.
    #[must_use]
    pub fn is_running(&self) -> bool {
        self.board.state().running
    }

    /// Returns whether the newest order ended without an answer: its work broke down or could not be begun.
    #[must_use]
    pub fn has_failed(&self) -> bool {
        self.board.state().failed
    }
}

impl<O, A> Drop for Background<O, A> {
    /// Stops at the next question and waits for the background to end.
    fn drop(&mut self) {
        self.board.state().closing = true;
        self.board.changed.notify_one();
        if let Some(worker) = self.worker.take() {
            // A worker that broke down is no reason to break down here.
            let _ = worker.join();
        }
    }
}

/// Gives a job what is asked of every one: its last answer, and how the newest order goes.
macro_rules! looked_at {
    ($job:ident, $answer:ty) => {
        impl $job {
            /// Returns the last answer.
            #[must_use]
            pub fn answer(&self) -> Option<std::sync::Arc<$answer>> {
                self.0.answer()
            }

            /// Returns whether the newest order is still without its answer.
            #[must_use]
            pub fn is_running(&self) -> bool {
                self.0.is_running()
            }

            /// Returns whether the newest order ended without an answer.
            #[must_use]
            pub fn has_failed(&self) -> bool {
                self.0.has_failed()
            }
        }
    };
}
pub(super) use looked_at;
