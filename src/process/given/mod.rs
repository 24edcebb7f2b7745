//! What a batch is worked out under, beside its design: what is believed of the uncertain constants, and which runs are wanted.

mod distribution;
mod rows;

pub use distribution::{CONSTANTS, Distribution};
pub use rows::{UNCERTAIN_PARAMETERS, UncertainParameter, UncertainParameters};

use crate::design::Stage;

/// Which runs of a stage are worked out.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Runs {
    /// The one that is shown, and those to either side of it from which a stage makes its likely ranges.
    #[default]
    WithLikely,
    /// The one that is shown alone: the runs to either side are copies of it, and a likely range that they would give is none.
    MiddleOnly,
}

/// What a batch is worked out under.
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
    /// What is believed of the uncertain constants.
    pub parameters: UncertainParameters,
    /// Which runs are wanted.
    pub runs: Runs,
}

impl Given {
    /// Returns whether a stage would come out the same under these and under others: nothing that it looks at differs.
    #[must_use]
    pub fn same_for(&self, stage: Stage, other: &Self) -> bool {
        let same =
            |parameter: &UncertainParameter| parameter.of(&self.parameters).to_bits() == parameter.of(&other.parameters).to_bits();
        self.runs == other.runs && UNCERTAIN_PARAMETERS.iter().filter(|parameter| parameter.stages.contains(&stage)).all(same)
    }
}
