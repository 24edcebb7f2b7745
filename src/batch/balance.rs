//! The mass balance over all stages.

use super::Batch;
use crate::design::Stage;
use crate::law::Matter;
use crate::process::StageBalance;

/// What went in and what came out, stage by stage.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct MassBalance {
    /// The stages that were worked out, in order.
    pub stages: Vec<(Stage, StageBalance)>,
}

impl MassBalance {
    pub(super) fn of(batch: &Batch) -> Self {
        let stages = [
            (Stage::Milk, batch.milk.done().map(|outcome| &outcome.balance)),
            (Stage::Vat, batch.vat.done().map(|outcome| &outcome.balance)),
            (Stage::Draining, batch.draining.done().map(|outcome| &outcome.balance)),
            (Stage::Salting, batch.salting.done().map(|outcome| &outcome.balance)),
            (Stage::Drying, batch.drying.done().map(|outcome| &outcome.balance)),
            (Stage::Pickling, batch.pickling.done().map(|outcome| &outcome.balance)),
            (Stage::Keeping, batch.keeping.done().map(|outcome| &outcome.balance)),
        ];
        Self { stages: stages.into_iter().filter_map(|(stage, balance)| Some((stage, balance?.clone()))).collect() }
    }

    /// Returns the sum of the stages' residuals plus the gaps between what one hands on and the next receives.
    #[must_use]
    pub fn residual(&self) -> Matter {
        let inside: Matter = self.stages.iter().map(|(_, balance)| balance.residual()).sum();
        let between: Matter = self
            .stages
            .windows(2)
            .filter_map(|pair| match pair {
                [(_, before), (_, after)] => Some(before.goes_on - after.came),
                _ => None,
            })
            .sum();
        inside + between
    }

    /// Returns the greatest residual of any component, as a share of all that came in.
    #[must_use]
    pub fn greatest_relative_residual(&self) -> f64 {
        let came_kg: f64 = self.stages.first().map_or(0.0, |(_, balance)| balance.came.total_kg());
        let added_kg: f64 = self.stages.iter().flat_map(|(_, balance)| &balance.added).map(|stream| stream.matter.total_kg()).sum();
        let all_kg = came_kg + added_kg;
        let worst_kg = self.residual().parts_kg().iter().fold(0.0_f64, |worst, part| worst.max(part.abs()));
        if all_kg > 0.0 { worst_kg / all_kg } else { 0.0 }
    }
}
