//! Where a day is from left to right.

use crate::plan::WALL_DAY_MIN;
use egui::{Rangef, Rect};

/// Room of the days at the left.
const GUTTER: f32 = 104.0;

/// Room right of midnight.
const MARGIN: f32 = 14.0;

/// Height of a line of labels.
pub(in crate::ui) const LINE: f32 = 19.0;

/// Where a day lies from left to right.
#[derive(Clone, Copy)]
pub(in crate::ui) struct Track {
    left: f32,
    width: f32,
}

impl Track {
    /// Returns the track of a row.
    pub(in crate::ui) fn of(rect: Rect) -> Self {
        Self { left: rect.left() + GUTTER, width: rect.width() - GUTTER - MARGIN }
    }

    /// Returns where a minute of the day lies.
    pub(in crate::ui) fn x(self, minute: i64) -> f32 {
        self.left + self.width * minute as f32 / WALL_DAY_MIN as f32
    }

    /// Returns the minutes that a way to the right stands for.
    pub(in crate::ui) fn minutes(self, way: f32) -> i64 {
        (way / self.width * WALL_DAY_MIN as f32).round() as i64
    }

    /// Returns its two ends.
    pub(in crate::ui) fn range(self) -> Rangef {
        Rangef::new(self.left, self.left + self.width)
    }
}
