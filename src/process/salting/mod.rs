//! Salting between the turns.

mod column;
mod dry_salting;
mod profile;
mod run;
mod sorting;
mod stage;

pub use column::{Face, SaltColumn};
pub use profile::{SaltPoint, SaltProfile};
pub use run::{SaltRun, SaltStuck, WaterAt};
pub use stage::{SaltingError, SaltingOutcome, salting, salting_given};
