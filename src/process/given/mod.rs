//! What a batch is calculated with besides its design: the uncertain parameters, and which runs are needed.

mod believed;
mod distribution;
mod place_temperature;
mod places;
mod rows;

pub use believed::Factors;
pub use distribution::{CONSTANTS, Distribution};
pub use place_temperature::{CONSTANTS as PLACE_CONSTANTS, place_warmth};
pub(crate) use places::KitchenPlaces;
pub use rows::{KnownConstants, SET_ONLY_PARAMETERS, UNCERTAIN_PARAMETERS, UncertainParameter, UncertainParameters};

use crate::design::{Design, Stage};

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
/// The default is what is judged most likely of any kitchen: every constant has its record's value.
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
    /// Between what the constants of a known kitchen lie.
    pub known: KnownConstants,
}

/// Shares of the draws below and above which a value no longer counts as likely: between them lie eight draws of ten.
pub const LIKELY_SHARES: (f64, f64) = (0.1, 0.9);

impl Given {
    /// Returns what a design is calculated with: what is known of its kitchen, and the records' values of all else.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::Design, process::Given};
    /// assert_eq!(Given::of(&Design::default()), Given::default());
    /// ```
    #[must_use]
    pub fn of(design: &Design) -> Self {
        Self::with(design, |_, known| known.value)
    }

    /// Returns the same with each constant as near to its record's value as eight of ten cases allow: what a log makes only likely lifts no
    /// caution, what it makes certain does.
    #[must_use]
    pub fn guarded(design: &Design) -> Self {
        Self::with(design, |parameter, known| {
            let record = parameter.record(design);
            1.0_f64.clamp(known.at_share(&record, LIKELY_SHARES.0), known.at_share(&record, LIKELY_SHARES.1))
        })
    }

    fn with(design: &Design, factor: impl Fn(&UncertainParameter, Factors) -> f64) -> Self {
        let mut given = Self::default();
        for parameter in UNCERTAIN_PARAMETERS {
            if let Some(known) = parameter.known(design) {
                given.parameters = parameter.set(given.parameters, factor(parameter, known));
                given.known = parameter.set_known(given.known, known);
            }
        }
        given
    }

    /// Returns whether a stage would come out the same under these and under others: nothing that it looks at differs.
    #[must_use]
    pub fn same_for(&self, stage: Stage, other: &Self) -> bool {
        let same = |parameter: &UncertainParameter| {
            let factors = parameter.of(&self.parameters).to_bits() == parameter.of(&other.parameters).to_bits();
            factors && parameter.known_of(&self.known) == parameter.known_of(&other.known)
        };
        self.runs == other.runs && UncertainParameter::all().filter(|parameter| parameter.stages.contains(&stage)).all(same)
    }
}
