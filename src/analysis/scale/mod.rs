//! The whole design scaled: to so much milk, to a pot, to so many moulds or full jars.

mod choices;
mod error;
mod goal;
mod now;
mod scaled;

pub use choices::{CONSTANTS as SCALE_CONSTANTS, Kept, POT_FILLED, Scaling, scaling_of};
pub use error::ScaleError;
pub use goal::{ScaleGoal, ScaleTo};
pub use now::amount_now;
pub use scaled::{Scaled, ScaledChoice, scale};
