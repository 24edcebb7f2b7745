//! What is looked for: the uncertain constants, and the moisture at which the drip ends.

use crate::design::{Design, Kind, Value, field};
use crate::numeric::normal_share;
use crate::process::{Distribution, Factors, UNCERTAIN_PARAMETERS, UncertainParameter, UncertainParameters};
use crate::record::DRIP_END_KNOWN;
use crate::source::Constant;

/// The choice that a maker guesses at first and can learn.
const DRIP_END: &str = "drip_end_moisture_percent";

/// One thing that is looked for; each is a factor on what is believed before.
#[derive(Clone, Copy, Debug)]
pub enum Unknown {
    /// An uncertain constant.
    Constant(&'static UncertainParameter),
    /// The moisture at which the drip ends, over what the design says.
    DripEnd,
}

impl Unknown {
    /// Returns all of them.
    pub(super) fn all() -> Vec<Self> {
        UNCERTAIN_PARAMETERS.iter().map(Self::Constant).chain([Self::DripEnd]).collect()
    }

    /// Returns the one with this key.
    ///
    /// # Example
    /// ```
    /// use vatsketch::kitchen::Unknown;
    /// assert_eq!(Unknown::from_key("drip_end_moisture_percent").unwrap().words(), "moisture of the curd when the drip ends");
    /// assert!(Unknown::from_key("milk_l").is_none());
    /// ```
    #[must_use]
    pub fn from_key(key: &str) -> Option<Self> {
        Self::all().into_iter().find(|unknown| unknown.key() == key)
    }

    /// Returns its name in data.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Constant(parameter) => parameter.key,
            Self::DripEnd => DRIP_END,
        }
    }

    /// Returns what it is, in a maker's words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Constant(parameter) => parameter.words,
            Self::DripEnd => "moisture of the curd when the drip ends",
        }
    }

    /// Returns the value that a design goes by, and its unit.
    #[must_use]
    pub fn value(self, design: &Design) -> (f64, &'static str) {
        match self {
            Self::Constant(_) => {
                let record = self.record(design);
                (record.value, record.unit)
            }
            Self::DripEnd => (design.draining.drip_end_moisture_percent, "%"),
        }
    }

    /// Returns the factors between which it lies in any kitchen.
    #[must_use]
    pub fn ends(self, design: &Design) -> (f64, f64) {
        let Factors { least, most, .. } = Factors::of_record(&self.record(design));
        (least, most)
    }

    /// Returns the factor at a place of the axis of beliefs: as many of the draws of a spread lie below it as of a normal distribution below
    /// the place, so that a normal belief of no record is what the draws are made of. No place is beyond the range.
    #[must_use]
    pub(super) fn factor(self, design: &Design, place: f64) -> f64 {
        Factors::of_record(&self.record(design)).at_share(&self.record(design), normal_share(place))
    }

    /// Returns whether it is drawn in its logarithm.
    pub(super) fn is_in_logarithm(self, design: &Design) -> bool {
        let (least, most) = self.ends(design);
        Distribution::between(least, most) == Distribution::InLogarithm
    }

    /// Returns whether it is the same in two designs: the rate of one culture says nothing of another.
    pub(super) fn same_in(self, one: &Design, other: &Design) -> bool {
        self.record(one) == self.record(other)
    }

    fn record(self, design: &Design) -> Constant {
        match self {
            Self::Constant(parameter) => parameter.record(design),
            Self::DripEnd => DRIP_END_KNOWN,
        }
    }
}

/// What a kitchen is made with: the constants, and the moisture at the end of the drip over what the design says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct KitchenConstants {
    /// The uncertain constants.
    pub parameters: UncertainParameters,
    /// Moisture at the end of the drip over what the design says.
    pub drip_end: f64,
}

impl Default for KitchenConstants {
    fn default() -> Self {
        Self { parameters: UncertainParameters::default(), drip_end: 1.0 }
    }
}

impl KitchenConstants {
    /// Returns the same with another factor of one of them.
    #[must_use]
    pub fn set(self, unknown: Unknown, factor: f64) -> Self {
        match unknown {
            Unknown::Constant(parameter) => Self { parameters: parameter.set(self.parameters, factor), ..self },
            Unknown::DripEnd => Self { drip_end: factor, ..self },
        }
    }

    /// Returns the factor of one of them.
    #[must_use]
    pub fn of(&self, unknown: Unknown) -> f64 {
        match unknown {
            Unknown::Constant(parameter) => parameter.of(&self.parameters),
            Unknown::DripEnd => self.drip_end,
        }
    }

    /// Returns a design as its batch is made here: the drip ends where it does, as near as the choice can say it.
    #[must_use]
    pub fn made(&self, design: &Design) -> Design {
        let mut made = design.clone();
        if self.drip_end.to_bits() == 1.0_f64.to_bits() {
            return made;
        }
        let Ok(field) = field(DRIP_END) else { return made };
        let Kind::Number { least, most, .. } = field.kind else { return made };
        let percent = (self.drip_end * design.draining.drip_end_moisture_percent).clamp(least, most);
        // A clamped value is within the range, and so is taken.
        let _ = made.set(DRIP_END, Value::Number(percent));
        made
    }
}
