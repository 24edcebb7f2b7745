//! What a batch is calculated with besides its design: the uncertain parameters, and which runs are needed.

mod distribution;
mod place_temperature;
mod places;
mod rows;

pub use distribution::{CONSTANTS, Distribution};
pub use place_temperature::{CONSTANTS as PLACE_CONSTANTS, place_warmth};
pub(crate) use places::KitchenPlaces;
pub use rows::{SET_ONLY_PARAMETERS, UNCERTAIN_PARAMETERS, UncertainParameter, UncertainParameters};

use crate::design::Stage;

/// Which runs of a stage are calculated.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Runs {
    /// The one that is shown, and those to either side of it from which a stage makes its likely ranges.
    #[default]
    WithLikely,
    /// The one that is shown alone: the runs to either side are copies of it, and a likely range that they would give is none.
    MiddleOnly,
}

/// What a batch is calculated with besides its design.
///
/// The default is what is judged most likely: every constant has its record's value.
///
/// # Example
/// ```
/// use vatsketch::process::{UncertainParameters, Given};
/// let slow_drip = Given { parameters: UncertainParameters { mould_time: 1.2, ..UncertainParameters::default() }, ..Given::default() };
/// assert!(slow_drip != Given::default());
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Given {
    /// A factor on each uncertain constant.
    pub parameters: UncertainParameters,
    /// Which runs are needed.
    pub runs: Runs,
}

impl Given {
    /// Returns whether a stage would come out the same under these and under others: nothing that it looks at differs.
    #[must_use]
    pub fn same_for(&self, stage: Stage, other: &Self) -> bool {
        let same =
            |parameter: &UncertainParameter| parameter.of(&self.parameters).to_bits() == parameter.of(&other.parameters).to_bits();
        self.runs == other.runs && UncertainParameter::all().filter(|parameter| parameter.stages.contains(&stage)).all(same)
    }
}
