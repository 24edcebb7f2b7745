//! Between which values a choice can be moved, in which steps, and how they lie along a rail.

use crate::design::{Field, Kind};

/// The limits of a choice.
#[derive(Clone, Copy)]
pub(in crate::ui) struct Limits {
    pub(in crate::ui) least: f64,
    pub(in crate::ui) most: f64,
    pub(in crate::ui) step: f64,
    pub(in crate::ui) whole: bool,
}

/// How values lie along a rail.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Scale {
    Even,
    Roots,
    Ratios,
}

impl Limits {
    /// Returns the limits of a choice; none where it is no number.
    pub(in crate::ui) fn of(field: &Field) -> Option<Self> {
        let Kind::Number { least, most, step, whole } = field.kind else { return None };
        Some(Self { least, most, step, whole })
    }

    /// How values lie along the rail: in equal ratios where the range spans more than a factor of fifty, by the square root where such a
    /// range begins at zero, evenly otherwise.
    fn scale(self) -> Scale {
        if self.least > 0.0 && self.most / self.least > 50.0 {
            Scale::Ratios
        } else if self.least.abs() < f64::EPSILON && self.most / self.step > 300.0 {
            Scale::Roots
        } else {
            Scale::Even
        }
    }

    /// Returns where on its rail a value lies, from 0 to 1.
    pub(in crate::ui) fn share(self, value: f64) -> f32 {
        let even = (value - self.least) / (self.most - self.least);
        let share = match self.scale() {
            Scale::Even => even,
            Scale::Roots => even.max(0.0).sqrt(),
            Scale::Ratios => (value / self.least).ln() / (self.most / self.least).ln(),
        };
        share.clamp(0.0, 1.0) as f32
    }

    /// Returns the value at a share of the rail.
    pub(in crate::ui) fn at(self, share: f64) -> f64 {
        match self.scale() {
            Scale::Even => self.least + share * (self.most - self.least),
            Scale::Roots => self.most * share * share,
            Scale::Ratios => self.least * (self.most / self.least).powf(share),
        }
    }

    /// Rounds a dragged value to the step; a typed one is never rounded.
    pub(in crate::ui) fn rounded(self, value: f64) -> f64 {
        let steps = (value / self.step).round();
        // Written so that 0.1 × 42 is 4.2 and not 4.200000000000001.
        let per_unit = (1.0 / self.step).round();
        if (per_unit * self.step - 1.0).abs() < 1e-9 { steps / per_unit } else { steps * self.step }
    }

    /// Returns the value within the limits, whole where only whole ones count.
    pub(in crate::ui) fn fit(self, value: f64) -> f64 {
        let within = value.clamp(self.least, self.most);
        if self.whole { within.round() } else { within }
    }
}
