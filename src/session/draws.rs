//! The draws of a spread, shared among threads.

use crate::analysis::{drawn_batch, draws};
use crate::batch::batch;
use crate::curve::{Kept, Spread, Spreading};
use crate::design::{Design, DesignError};
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::thread::{Builder, available_parallelism, scope};

/// How a spread is calculated.
pub struct Work<'a> {
    /// Draws.
    pub draws: usize,
    /// Threads at most, the caller's own among them; at least one.
    pub threads: usize,
    /// Asked before each draw; once it says no, nothing more is begun.
    pub goes_on: &'a (dyn Fn() -> bool + Sync),
}

/// Returns the cores of this machine, as far as it tells.
#[must_use]
pub fn cores() -> usize {
    available_parallelism().map_or(1, usize::from)
}

/// Returns the spread of a design, or none if it was told to stop. The answer does not depend on the threads.
///
/// # Errors
/// [`DesignError`] as for [`batch()`].
///
/// # Example
/// ```
/// use vatsketch::{design::Design, session::{spread, Work}};
/// let work = Work { draws: 10, threads: 2, goes_on: &|| true };
/// let spread = spread(&Design::default(), &work)?.unwrap();
/// assert_eq!(spread.draws, 10);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
pub fn spread(design: &Design, work: &Work<'_>) -> Result<Option<Spread>, DesignError> {
    let parameters = draws(design, work.draws);
    let spreading = Spreading::of(batch(design)?);
    let next = AtomicUsize::new(0);
    let done: Mutex<Vec<(usize, Kept)>> = Mutex::new(Vec::with_capacity(work.draws));
    let one_after_the_other = || -> Result<(), DesignError> {
        while (work.goes_on)() {
            let number = next.fetch_add(1, Ordering::Relaxed);
            let Some(parameters) = parameters.get(number) else { break };
            let kept = spreading.keep(&drawn_batch(spreading.design(), parameters)?);
            if let Ok(mut done) = done.lock() {
                done.push((number, kept));
            }
        }
        Ok(())
    };
    scope(|scope| {
        // A thread that the machine refuses is no trouble: the others take its draws.
        let helpers: Vec<_> = (1..work.threads.min(work.draws))
            .filter_map(|_| Builder::new().name("draws".to_owned()).spawn_scoped(scope, one_after_the_other).ok())
            .collect();
        let own = one_after_the_other();
        // A helper that broke down has left its draws undone, which is seen below.
        helpers.into_iter().filter_map(|helper| helper.join().ok()).fold(own, Result::and)
    })?;
    let mut done = done.into_inner().unwrap_or_default();
    if done.len() < work.draws {
        return Ok(None);
    }
    done.sort_by_key(|(number, _)| *number);
    let kept: Vec<Kept> = done.into_iter().map(|(_, kept)| kept).collect();
    Ok(Some(spreading.spread(&kept)))
}
