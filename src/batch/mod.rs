//! Everything that follows from a design: the stages in order, the mass balance, the figures and the cautions.

mod balance;
mod caution;
mod constants;
mod ends;
mod readout;
mod reuse;
mod run;
mod summary;

pub use balance::MassBalance;
pub use caution::{Caution, Severity, caution_begins, cautions, hours_in_zone};
pub use constants::{constant_lists, constants, correlation_lists};
pub use ends::{StageEnd, stage_ends};
pub use readout::{Reading, Readout, Weight, readouts, salting_readouts};
pub use run::{Batch, Progress, batch, batch_after};
pub use summary::{Summary, hours_in_words, summary};
