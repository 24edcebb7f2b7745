//! How quantities are shown: in metric units or others. Never a part of a design, which keeps its own units whatever is shown.

mod choice;
mod clock;
mod field;
mod reading;
mod scale;
mod text;
mod told;

pub use choice::{Clock, LongTimes, Masses, Temperatures, Units, Volumes};
pub use reading::{UNIT_WORDS, UnknownUnits};
pub use scale::Scale;
