//! Between what an uncertain constant lies: in any kitchen as its record says, in a known one as its log tells.

use super::distribution::Distribution;
use crate::design::{Believed, KitchenEstimate};
use crate::source::Constant;

/// Rounding of a number that was written to a file and read again.
const SAME: f64 = 1e-9;

/// What is believed of a constant, as factors on its record's value.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Factors {
    /// The most likely.
    pub value: f64,
    /// What it is barely plausible to lie below.
    pub least: f64,
    /// What it is barely plausible to lie above.
    pub most: f64,
}

impl Factors {
    /// Returns what a record says of any kitchen.
    #[must_use]
    pub fn of_record(record: &Constant) -> Self {
        Self { value: 1.0, least: record.range.0 / record.value, most: record.range.1 / record.value }
    }

    /// Returns what is known, or else what the record says.
    #[must_use]
    pub fn known_or(known: Option<Self>, record: &Constant) -> Self {
        known.unwrap_or_else(|| Self::of_record(record))
    }

    /// Returns what an estimate of a kitchen says; none where it was learned under another record, of which it says nothing.
    pub(super) fn of_estimate(estimate: &KitchenEstimate, record: &Constant) -> Option<Self> {
        let Believed { value, least, most } = estimate.before;
        let same = |one: f64, other: f64| (one - other).abs() <= SAME * other.abs();
        let own = same(value, record.value) && same(least, record.range.0) && same(most, record.range.1);
        let now = estimate.now;
        own.then(|| Self { value: now.value / record.value, least: now.least / record.value, most: now.most / record.value })
    }

    /// Returns the factor below which a share of all draws is, as [`Distribution::at_share`] has it about the most likely one.
    ///
    /// # Arguments
    /// * `record`: whose range says whether it is drawn in its logarithm
    /// * `share`: 0 to 1
    #[must_use]
    pub fn at_share(self, record: &Constant, share: f64) -> f64 {
        let Self { value, least, most } = self;
        let drawn = Distribution::between(record.range.0 / record.value, record.range.1 / record.value);
        value * drawn.at_share(least / value, most / value, share)
    }
}
