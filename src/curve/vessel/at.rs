//! Which vessel is filled at a station.

use super::jar::jar;
use super::mould::mould;
use super::pot::pot;
use super::shape::Vessel;
use super::tray::tray;
use crate::batch::Batch;
use crate::design::Stage;

/// Returns the vessel that is filled at a station; none where none is, or its stage was not calculated.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, curve::vessel, design::{Design, Stage}};
/// let design = Design::default();
/// let jar = vessel(&batch(&design)?, Stage::Pickling).unwrap();
/// assert_eq!(jar.width_mm, design.pickling.jar_width_mm);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn vessel(batch: &Batch, stage: Stage) -> Option<Vessel> {
    match stage {
        Stage::Milk | Stage::Vat => Some(pot(batch, batch.milk.done()?)),
        Stage::Draining => Some(mould(batch, batch.draining.done()?)),
        Stage::Salting => None,
        Stage::Drying => tray(batch, batch.salting.done()?, batch.drying.done()?),
        Stage::Pickling | Stage::Keeping => jar(batch, batch.drying.done()?, batch.pickling.done()?),
    }
}
