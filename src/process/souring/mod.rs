//! Souring through the stages: what sours the milk, how far it has come, and what it turns into.

mod run;
mod sourness;
mod way;

pub(super) use run::SouringRun;
pub use run::{SourPoint, hours_to_ph};
pub(super) use sourness::{CELLS_KEPT, CURD_PH_FALL};
pub use sourness::{CONSTANTS, CultureNow, OtherAcid, Sourness, turned};
pub use way::{ph_at, souring_on_the_way};
