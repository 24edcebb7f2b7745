//! Everything that follows from a design: the stages in order, how each ended, the mass balance.

mod balance;
mod judged;
mod progress;
mod reuse;
mod run;
mod souring;
mod stages;
mod times;

pub use balance::MassBalance;
pub use judged::judged_by;
pub use progress::Progress;
pub use run::{batch, batch_after, batch_given, batch_until};
pub use souring::{CultureCheck, culture_check, is_soured};
pub use stages::Batch;
pub use times::{dried_min, soaked_min};
