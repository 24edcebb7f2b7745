//! One uncertain quantity, and how values of it are drawn from the range of its record.

use super::UncertainParameters;
use crate::design::{Design, Stage};
use crate::source::Constant;

crate::constants! {
    /// Where ranges are drawn in their logarithm.
    DRAWN_IN_LOGARITHM = { "Greatest over least value from which on a range is drawn in its logarithm", 2.0, "1", (1.5, 3.0), Ourselves, "a range of half to twice is as wide down as up only so; below it the two ways hardly differ", Judged }
}

/// How a quantity is drawn between the least and the greatest value of its record.
///
/// Triangular on either side of the value, with half of the draws below it and half above: the ends of a range are what is barely
/// plausible, the value is what we would bet on, and so the middle of the draws is what is shown. The shape is our own judgement.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Distribution {
    /// In the value itself.
    Straight,
    /// In its logarithm, where the range spans a factor of two or more.
    InLogarithm,
}

/// One uncertain quantity.
#[derive(Clone, Copy, Debug)]
pub struct UncertainParameter {
    /// Its name in data, as the member of [`UncertainParameters`].
    pub key: &'static str,
    /// What it is, in a maker's words.
    pub words: &'static str,
    /// The stages that look at it.
    pub stages: &'static [Stage],
    pub(super) record: fn(&Design) -> Constant,
    pub(super) get: fn(&UncertainParameters) -> f64,
    pub(super) set: fn(&mut UncertainParameters, f64),
}

impl UncertainParameter {
    /// Returns the record of which it is a factor, with value, range and source; which of two it is may depend on the design.
    #[must_use]
    pub fn record(&self, design: &Design) -> Constant {
        (self.record)(design)
    }

    /// Returns the factor that some parameters hold of it.
    #[must_use]
    pub fn of(&self, parameters: &UncertainParameters) -> f64 {
        (self.get)(parameters)
    }

    /// Returns some parameters with another factor of it.
    #[must_use]
    pub fn set(&self, parameters: UncertainParameters, factor: f64) -> UncertainParameters {
        let mut changed = parameters;
        (self.set)(&mut changed, factor);
        changed
    }

    /// Returns the factors at the least and the greatest value of its record.
    #[must_use]
    pub fn ends(&self, design: &Design) -> (f64, f64) {
        let record = self.record(design);
        (record.range.0 / record.value, record.range.1 / record.value)
    }

    /// Returns how it is drawn.
    #[must_use]
    pub fn drawn(&self, design: &Design) -> Distribution {
        let (least, most) = self.ends(design);
        if least > 0.0 && most >= DRAWN_IN_LOGARITHM.value * least { Distribution::InLogarithm } else { Distribution::Straight }
    }

    /// Returns the factor below which a share of all draws lies: least + (1 − least) √(2 u) below the middle, likewise above it, for the
    /// factor or for its logarithm.
    ///
    /// # Arguments
    /// * `share`: u, 0 to 1; 0 gives the least value, 0.5 the record's, 1 the greatest
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::Design, process::UNCERTAIN_PARAMETERS};
    /// let design = Design::default();
    /// for parameter in UNCERTAIN_PARAMETERS {
    ///     assert_eq!(parameter.at_share(&design, 0.5), 1.0);
    /// }
    /// ```
    #[must_use]
    pub fn at_share(&self, design: &Design, share: f64) -> f64 {
        let (least, most) = self.ends(design);
        let between = |least: f64, value: f64, most: f64| {
            if share < 0.5 {
                least + (value - least) * (2.0 * share).sqrt()
            } else {
                most - (most - value) * (2.0 * (1.0 - share)).sqrt()
            }
        };
        match self.drawn(design) {
            Distribution::Straight => between(least, 1.0, most),
            Distribution::InLogarithm => between(least.ln(), 0.0, most.ln()).exp(),
        }
    }
}
