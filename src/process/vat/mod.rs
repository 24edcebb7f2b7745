//! The vat: warming, setting and cutting.

mod course;
mod curd;
mod error;
mod heat_step;
mod setting;
mod souring;
mod stage;
mod warming;

pub use course::{WarmingEvent, WarmingMark, WarmingPoint};
pub use curd::{Curd, curd};
pub use error::VatError;
pub use heat_step::HeatStep;
pub use setting::{Setting, setting};
pub use stage::{VatOutcome, vat, vat_given};
pub use warming::CONSTANTS as WARMING_CONSTANTS;
