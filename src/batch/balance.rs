//! The mass balance over all stages.

use crate::design::Stage;
use crate::law::Matter;
use crate::process::StageBalance;

/// What went in and what came out, stage by stage.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct MassBalance {
    /// The stages that were calculated, in order.
    pub stages: Vec<(Stage, StageBalance)>,
}

impl MassBalance {
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
