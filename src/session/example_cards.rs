//! What each example comes to, calculated in the background: for whoever chooses one.

use super::background::Background;
use super::examples::{EXAMPLES, Example};
use crate::analysis::{Summary, summary};
use crate::batch::{Batch, batch};
use crate::curve::{Layer, run};
use crate::design::Stage;
use std::sync::Arc;

/// Diameter and thickness of a cheese, mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CheeseSize {
    /// Diameter.
    pub diameter_mm: f64,
    /// Thickness.
    pub thickness_mm: f64,
}

/// What an example comes to.
#[derive(Clone, Debug, PartialEq)]
pub struct ExampleCard {
    /// Its few main figures.
    pub summary: Summary,
    /// A cheese as it leaves its mould, if the batch came that far.
    pub drained: Option<CheeseSize>,
    /// A dried cheese, if the batch came that far.
    pub dried: Option<CheeseSize>,
    /// What the dried cheeses are made of.
    pub layers: Vec<Layer>,
}

impl ExampleCard {
    /// Returns what a batch comes to.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{batch::batch, design::Design, session::ExampleCard};
    /// let card = ExampleCard::of(&batch(&Design::default())?);
    /// let (drained, dried) = (card.drained.unwrap(), card.dried.unwrap());
    /// assert!(dried.diameter_mm < drained.diameter_mm, "it shrinks as it dries");
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    #[must_use]
    pub fn of(batch: &Batch) -> Self {
        let drained = batch.draining.done();
        let dried = batch.drying.done().map(|dried| dried.end);
        let station = run(batch).stations.into_iter().find(|station| station.stage == Stage::Drying);
        Self {
            summary: summary(batch),
            drained: drained.map(|end| CheeseSize { diameter_mm: end.diameter_mm, thickness_mm: end.thickness_mm }),
            dried: dried.map(|end| CheeseSize { diameter_mm: end.diameter_mm, thickness_mm: end.thickness_mm }),
            layers: station.map_or_else(Vec::new, |station| station.layers.to_vec()),
        }
    }
}

/// What every example comes to, calculated once in the background.
///
/// # Example
/// ```
/// use vatsketch::session::{EXAMPLES, ExamplesJob};
/// let (tell, told) = std::sync::mpsc::channel();
/// let job = ExamplesJob::new(Box::new(move || tell.send(()).unwrap_or(())));
/// told.recv().unwrap();
/// assert_eq!(job.answer().unwrap().len(), EXAMPLES.len());
/// ```
pub struct ExamplesJob(Background<(), Vec<Option<ExampleCard>>>);

impl ExamplesJob {
    /// Begins to calculate.
    ///
    /// # Arguments
    /// * `wake`: called in the background when the answer is there
    #[must_use]
    pub fn new(wake: Box<dyn Fn() + Send>) -> Self {
        let card = |example: &Example| Some(ExampleCard::of(&batch(&example.design().ok()?).ok()?));
        let work = move |(): &(), _: &(dyn Fn() -> bool + Sync)| Some(EXAMPLES.iter().map(card).collect());
        let job = Background::new("examples", work, wake);
        job.order(());
        Self(job)
    }

    /// Returns what each example comes to, in their order, once that is calculated; nothing for one that could not be.
    #[must_use]
    pub fn answer(&self) -> Option<Arc<Vec<Option<ExampleCard>>>> {
        self.0.answer()
    }

    /// Returns whether it is still being calculated.
    #[must_use]
    pub fn is_running(&self) -> bool {
        self.0.is_running()
    }
}
