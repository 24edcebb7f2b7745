//! What is calculated in the background: the spread of the open design, and what one of its figures is sensitive to.

use super::background::{Background, looked_at};
use super::draws::{Work, cores, spread};
use crate::analysis::{DRAWS, Effect, sensitivity};
use crate::batch::Batch;
use crate::curve::Spread;
use crate::design::Design;

/// The spread of the open design, calculated in the background on all cores.
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
pub struct SpreadJob(Background<Design, Spread>);

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
        let work = move |design: &Design, goes_on: &(dyn Fn() -> bool + Sync)| {
            // A design that is out of its ranges has no spread; the session refuses it before it comes here.
            spread(design, &Work { draws, threads: cores(), goes_on }).ok().flatten()
        };
        Self(Background::new("spread", work, wake))
    }

    /// Orders the spread of a design; an older order is dropped.
    pub fn order(&self, design: &Design) {
        self.0.order(design.clone());
    }
}

looked_at!(SpreadJob, Spread);

/// What a figure of a design is sensitive to, strongest first, or in words why nothing can be said.
#[derive(Clone, Debug)]
pub struct Sensitivity {
    /// The design.
    pub design: Design,
    /// The figure.
    pub figure: String,
    /// What moves it.
    pub effects: Result<Vec<Effect>, String>,
}

/// What one figure is sensitive to, calculated in the background.
pub struct SensitivityJob(Background<(Batch, String), Sensitivity>);

impl SensitivityJob {
    /// Returns a job that waits for orders.
    ///
    /// # Arguments
    /// * `wake`: called in the background when an answer is there
    #[must_use]
    pub fn new(wake: Box<dyn Fn() + Send>) -> Self {
        let work = |batch: &Batch, figure: &str| sensitivity(batch, figure).map_err(|error| error.to_string());
        Self::with_work(work, wake)
    }

    /// Returns the same with another way to find the effects.
    #[must_use]
    pub fn with_work(
        work: impl Fn(&Batch, &str) -> Result<Vec<Effect>, String> + Send + 'static,
        wake: Box<dyn Fn() + Send>,
    ) -> Self {
        let work = move |(batch, figure): &(Batch, String), _: &(dyn Fn() -> bool + Sync)| {
            Some(Sensitivity { design: batch.design.clone(), figure: figure.clone(), effects: work(batch, figure) })
        };
        Self(Background::new("sensitivity", work, wake))
    }

    /// Orders what a figure of a batch is sensitive to; an older order is dropped.
    pub fn order(&self, batch: &Batch, figure: &str) {
        self.0.order((batch.clone(), figure.to_owned()));
    }
}

looked_at!(SensitivityJob, Sensitivity);
