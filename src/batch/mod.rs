//! Everything that follows from a design: the stages in order, how each ended, the mass balance.

mod balance;
mod ends;
mod reuse;
mod run;
mod times;

pub use balance::MassBalance;
pub use ends::{StageEnd, stage_ends};
pub use run::{Batch, Progress, batch, batch_after, batch_given, batch_until};
pub use times::{dried_min, soaked_min};
