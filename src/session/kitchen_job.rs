//! What a log tells of its kitchen, and what that does to the open design, calculated in the background.

use super::background::{Background, looked_at};
use super::draws::{Work, cores, spread};
use crate::analysis::DRAWS;
use crate::curve::Spread;
use crate::design::{Design, KnownKitchen};
use crate::kitchen::{LearnedKitchen, learn_while};
use crate::record::BatchRecord;

/// What is asked for.
struct Order {
    records: Vec<BatchRecord>,
    design: Design,
}

/// What some batches tell of their kitchen.
#[derive(Clone, Debug)]
pub struct FoundKitchen {
    /// The batches.
    pub records: Vec<BatchRecord>,
    /// The open design as it was then, in any kitchen.
    pub design: Design,
    /// What they tell, or in words why they tell nothing.
    pub learned: Result<LearnedKitchen, String>,
    /// The spread of the design in any kitchen and in this one; none where nothing is told or the design cannot be calculated.
    pub spreads: Option<(Spread, Spread)>,
}

impl FoundKitchen {
    /// Returns what designs may use of it; none where the batches tell nothing.
    ///
    /// `name`: what the maker calls the kitchen
    #[must_use]
    pub fn known(&self, name: &str) -> Option<KnownKitchen> {
        let learned = self.learned.as_ref().ok()?;
        let records: Vec<&BatchRecord> = self.records.iter().collect();
        Some(learned.known(name, &records)).filter(|known| !known.estimates.is_empty())
    }

    /// Returns whether it was found of these batches as they are.
    #[must_use]
    pub fn is_from(&self, records: &[&BatchRecord]) -> bool {
        records.iter().copied().eq(&self.records)
    }

    /// Returns whether its spreads are those of a design, whatever kitchen that uses.
    #[must_use]
    pub fn is_of(&self, design: &Design) -> bool {
        let mut plain = design.clone();
        plain.leave_kitchen();
        plain.same_cheese(&self.design)
    }
}

/// What a log tells of its kitchen, worked out in the background: it takes some seconds for each batch.
///
/// # Example
/// ```
/// use vatsketch::{design::Design, session::{KitchenJob, Logbook}};
/// let (tell, told) = std::sync::mpsc::channel();
/// let job = KitchenJob::with_draws(4, Box::new(move || tell.send(()).unwrap_or(())));
/// job.order(&[], &Design::default());
/// told.recv().unwrap();
/// assert!(job.answer().unwrap().learned.as_ref().unwrap_err().contains("write down temperatures"));
/// ```
pub struct KitchenJob(Background<Order, FoundKitchen>);

impl KitchenJob {
    /// Returns a job that waits for orders.
    ///
    /// # Arguments
    /// * `wake`: called in the background when an answer is there
    #[must_use]
    pub fn new(wake: Box<dyn Fn() + Send>) -> Self {
        Self::with_draws(DRAWS, wake)
    }

    /// Returns the same with another number of draws in each spread.
    #[must_use]
    pub fn with_draws(draws: usize, wake: Box<dyn Fn() + Send>) -> Self {
        let work =
            move |order: &Order, goes_on: &(dyn Fn() -> bool + Sync)| found(order, &Work { draws, threads: cores(), goes_on });
        Self(Background::new("kitchen", work, wake))
    }

    /// Orders what some batches tell, and what that does to a design; an older order is dropped.
    pub fn order(&self, records: &[BatchRecord], design: &Design) {
        let mut design = design.clone();
        design.leave_kitchen();
        self.0.order(Order { records: records.to_vec(), design });
    }

    /// Gives up the newest order.
    pub fn give_up(&self) {
        self.0.give_up();
    }
}

looked_at!(KitchenJob, FoundKitchen);

fn found(order: &Order, work: &Work<'_>) -> Option<FoundKitchen> {
    let records: Vec<&BatchRecord> = order.records.iter().collect();
    let learned = learn_while(&records, work.goes_on).map_err(|error| format!("{error}."));
    if !(work.goes_on)() {
        return None;
    }
    let mut found = FoundKitchen { records: order.records.clone(), design: order.design.clone(), learned, spreads: None };
    if let Some(known) = found.known("") {
        let mut own = order.design.clone();
        // What was learned is a range in order, and so is taken; a design that cannot be calculated has no spread.
        let spread_of = |design: &Design| spread(design, work).ok().flatten();
        found.spreads = own.use_kitchen(known).ok().and_then(|()| spread_of(&order.design).zip(spread_of(&own)));
    }
    Some(found)
}
