//! What is shown of the open design: calculated once for each change, never for each drawing.

use crate::analysis::{Summary, summary};
use crate::batch::Batch;
use crate::caution::{Caution, Severity, cautions, worst_by_stage};
use crate::curve::{Run, Spread, run};
use crate::design::Stage;
use crate::figure::{Figure, figures};
use crate::report::{LawRow, laws};
use std::cell::OnceCell;

/// What is shown of a batch.
pub(in crate::ui) struct Shown {
    /// The picture of the run.
    pub run: Run,
    /// Every figure.
    pub figures: Vec<Figure>,
    /// Every caution.
    pub cautions: Vec<Caution>,
    /// The stages of which a choice causes a caution, with the gravest.
    pub worst: Vec<(Stage, Severity)>,
    /// What the foot says.
    pub summary: Summary,
    /// The laws behind the figures, once the sources are looked at.
    laws: OnceCell<Vec<LawRow>>,
}

impl Shown {
    /// Returns that of a batch.
    pub(in crate::ui) fn of(batch: &Batch) -> Self {
        let cautions = cautions(batch);
        let worst = worst_by_stage(&cautions);
        Self { run: run(batch), figures: figures(batch), cautions, worst, summary: summary(batch), laws: OnceCell::new() }
    }

    /// Puts the ranges that the draws of a spread give in the place of those of a run or two.
    pub(in crate::ui) fn take_ranges(&mut self, spread: &Spread) {
        for figure in &mut self.figures {
            if let Some((least, most)) = spread.figure(figure.key).and_then(|likely| likely.least.zip(likely.most)) {
                figure.take_range(least, most);
            }
        }
    }

    /// Returns the laws behind the figures of the batch that this belongs to.
    pub(in crate::ui) fn laws(&self, batch: &Batch) -> &[LawRow] {
        self.laws.get_or_init(|| laws(batch))
    }
}
