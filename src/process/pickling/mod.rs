//! One cheese in vinegar: how acid comes in, and when it is sour all through.

mod cheese;
mod course;
mod direction;
mod error;
mod fill;
mod flows;
mod inside;
mod leach;
mod likely;
mod outcome;
mod pickle;
mod point;
mod rest;
mod shown;
mod slow;
mod soak;
mod solver;
mod stage;
mod sweep;
mod swell;

pub use cheese::{PickledCheese, VinegarBath};
pub use error::PicklingError;
pub use inside::{Inside, InsidePoint};
pub use leach::{LeachRun, salt_left};
pub use likely::CONSTANTS as LIKELY_CONSTANTS;
pub use outcome::PicklingOutcome;
pub use pickle::{PickleRun, STRONGEST_BUFFER, pickle, pickle_given};
pub use point::{LONGEST_SOAK_H, PH_TARGETS, PicklePoint, TargetHours};
pub use rest::{EvenedOut, REST_H, Rest};
pub use slow::SlowSoak;
pub use soak::Soak;
pub use solver::{SoakRun, SoakState};
pub use stage::{pickling, pickling_given};
pub use swell::{Swelling, SwollenPoint};
