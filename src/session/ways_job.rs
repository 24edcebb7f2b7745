//! Every way to a target of the open design, looked for in the background.

use super::background::{Background, looked_at};
use super::command::Command;
use crate::analysis::{Goal, Way, ways};
use crate::batch::Batch;
use crate::design::{Design, Field, Value};
use crate::plan::{PriceChange, price_change};

/// What is asked for.
struct Order {
    batch: Batch,
    goal: Goal,
    choices: Vec<&'static Field>,
}

/// A way, and what it costs more to buy.
#[derive(Clone, Debug)]
pub struct PricedWay {
    /// The way.
    pub way: Way,
    /// What it changes of the price, if anything.
    pub price: Option<PriceChange>,
}

impl PricedWay {
    /// Returns the command that goes this way.
    #[must_use]
    pub const fn command(&self) -> Command {
        Command::SetInput { key: self.way.answer.choice.key, value: Value::Number(self.way.answer.value) }
    }
}

/// The ways to a target of a design.
#[derive(Clone, Debug)]
pub struct FoundWays {
    /// The design.
    pub design: Design,
    /// The target.
    pub goal: Goal,
    /// The ways, or in words why none can be looked for.
    pub ways: Result<Vec<PricedWay>, String>,
}

/// Every way to a target, looked for in the background: each choice takes some tenths of a second.
///
/// # Example
/// ```
/// use vatsketch::{analysis::Goal, batch::batch, design::{field, Design}, session::WaysJob};
/// let goal = Goal { figure: "drained_cheese_g".to_owned(), wanted: 120.0 };
/// let (tell, told) = std::sync::mpsc::channel();
/// let job = WaysJob::new(Box::new(move || tell.send(()).unwrap_or(())));
/// job.order(&batch(&Design::default())?, &goal, &[field("milk_l")?]);
/// told.recv().unwrap();
/// assert!(job.answer().unwrap().ways.as_ref().unwrap()[0].way.reached);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
pub struct WaysJob(Background<Order, FoundWays>);

impl WaysJob {
    /// Returns a job that waits for orders.
    ///
    /// # Arguments
    /// * `wake`: called in the background when an answer is there
    #[must_use]
    pub fn new(wake: Box<dyn Fn() + Send>) -> Self {
        let work = |Order { batch, goal, choices }: &Order, goes_on: &(dyn Fn() -> bool + Sync)| {
            let priced = |way: Way| PricedWay { price: price_change(batch, &way.batch), way };
            let found = match ways(batch, goal, choices, &|| goes_on()) {
                Ok(found) => Ok(found?.into_iter().map(priced).collect()),
                Err(error) => Err(format!("{error}.")),
            };
            Some(FoundWays { design: batch.design.clone(), goal: goal.clone(), ways: found })
        };
        Self(Background::new("ways", work, wake))
    }

    /// Orders the ways to a target of a batch by each of some choices; an older order is dropped.
    pub fn order(&self, batch: &Batch, goal: &Goal, choices: &[&'static Field]) {
        self.0.order(Order { batch: batch.clone(), goal: goal.clone(), choices: choices.to_vec() });
    }
}

looked_at!(WaysJob, FoundWays);
