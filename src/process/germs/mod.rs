//! How far germs could grow in the batch, where and when: published rates, summed up along what every place goes through.
//!
//! A potential increase compares designs of one maker. It says nothing of how many germs there are, and where it foresees none that is no proof.

mod airless;
mod drying;
mod jar;
mod line;
mod met;
mod outcome;
mod places;
mod section;
mod uniform;
mod water;
mod way;

pub use airless::AirlessHours;
pub use line::GermLine;
pub use met::{GermHold, GermsNow, MetInStage, MetMoment};
pub use outcome::{GermCourse, GermMap, GermPoint, GermsOutcome, StageSpan};
pub use water::CONSTANTS;
pub use way::{GermsWay, germs, germs_given};
