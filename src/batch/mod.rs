//! Everything that follows from a design: the stages in order, the mass balance, the figures and the cautions.

mod balance;
mod caution;
mod constants;
mod readout;
mod run;

pub use balance::MassBalance;
pub use caution::{Caution, Severity, cautions};
pub use constants::{constant_lists, constants, correlation_lists};
pub use readout::{Reading, Readout, Weight, readouts};
pub use run::{Batch, Progress, batch};
