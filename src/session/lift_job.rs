//! What would lift a warning of the open design, looked for in the background.

use super::background::{Background, looked_at};
use super::command::Command;
use crate::analysis::{Lift, Lifted, lifts};
use crate::batch::Batch;
use crate::caution::Caution;
use crate::design::Design;
use crate::plan::{PriceChange, price_change};
use std::collections::BTreeSet;

/// What is asked for.
struct Order {
    batch: Batch,
    warning: Caution,
    pins: BTreeSet<&'static str>,
}

/// A lift, and what it costs more to buy.
#[derive(Clone, Debug)]
pub struct PricedLift {
    /// The lift.
    pub lift: Lift,
    /// What it changes of the price, if anything.
    pub price: Option<PriceChange>,
}

impl PricedLift {
    /// Returns the command that moves its choices, as one step.
    #[must_use]
    pub fn command(&self) -> Command {
        Command::SetInputs(self.lift.changes.iter().map(|change| (change.field.key, change.to)).collect())
    }
}

/// What lifts a warning of a design.
#[derive(Clone, Debug)]
pub struct FoundLifts {
    /// The design.
    pub design: Design,
    /// The warning, why nothing lifts it if nothing does, and its lifts without their prices.
    pub lifted: Lifted,
    /// The lifts.
    pub lifts: Vec<PricedLift>,
}

/// What would lift one warning, looked for in the background: it takes a second or two.
///
/// # Example
/// ```
/// use std::collections::BTreeSet;
/// use vatsketch::{batch::batch, caution::cautions, design::Design, session::LiftJob};
/// let mut design = Design::default();
/// design.milk.calcium_dose_percent = 0.03;
/// let batch = batch(&design)?;
/// let warning = cautions(&batch).into_iter().find(|caution| caution.key == "calcium_above_limit").unwrap();
/// let (tell, told) = std::sync::mpsc::channel();
/// let job = LiftJob::new(Box::new(move || tell.send(()).unwrap_or(())));
/// job.order(&batch, &warning, &BTreeSet::new());
/// told.recv().unwrap();
/// assert_eq!(job.answer().unwrap().lifts[0].lift.changes[0].field.key, "calcium_dose_percent");
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
pub struct LiftJob(Background<Order, FoundLifts>);

impl LiftJob {
    /// Returns a job that waits for orders.
    ///
    /// # Arguments
    /// * `wake`: called in the background when an answer is there
    #[must_use]
    pub fn new(wake: Box<dyn Fn() + Send>) -> Self {
        let work = |Order { batch, warning, pins }: &Order, _: &(dyn Fn() -> bool + Sync)| {
            let lifted = lifts(batch, pins, warning);
            let priced = |lift: &Lift| PricedLift { price: price_change(batch, &lift.batch), lift: lift.clone() };
            Some(FoundLifts { design: batch.design.clone(), lifts: lifted.lifts.iter().map(priced).collect(), lifted })
        };
        Self(Background::new("lifts", work, wake))
    }

    /// Orders what lifts a warning of a batch; an older order is dropped.
    ///
    /// # Arguments
    /// * `pins`: keys of choices that are left alone
    pub fn order(&self, batch: &Batch, warning: &Caution, pins: &BTreeSet<&'static str>) {
        self.0.order(Order { batch: batch.clone(), warning: warning.clone(), pins: pins.clone() });
    }
}

looked_at!(LiftJob, FoundLifts);
