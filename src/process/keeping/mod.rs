//! The jar and its keeping: what the whole way there amounts to, and what published tables say of the end of it.

mod so_far;
mod stage;
mod zone;

pub use so_far::SoFar;
pub use stage::{ColdKeeping, KeepingError, KeepingOutcome, keeping, keeping_given};
pub use zone::{StageHours, draining_hours, drying_hours, vat_hours};
