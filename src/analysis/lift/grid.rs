//! The values of a number on one side of where it is, on the steps of its slider.

use super::causes::Toward;
use crate::design::{Field, Kind};

/// The values of a number from where it is to an end, on its steps; the end itself is the last.
#[derive(Clone, Copy, Debug)]
pub(super) struct Grid {
    start: f64,
    /// The last step on this side of the start, or the start itself; counted in steps.
    first: f64,
    step: f64,
    end: f64,
    /// The whole range of the number.
    range: f64,
}

/// What rounding may make of a value that lies on a step.
const ROUNDING: f64 = 1e-9;

/// Returns a multiple of a step without what binary multiples leave behind: nine decimals are beyond any step.
fn tidy(value: f64) -> f64 {
    (value * 1e9).round() / 1e9
}

impl Grid {
    /// Returns the values of a number toward one end of its range; nothing if the choice is no number.
    pub(super) fn toward(field: &Field, start: f64, toward: Toward) -> Option<Self> {
        let Kind::Number { least, most, .. } = field.kind else { return None };
        let end = if toward == Toward::More { most } else { least };
        let grid = Self::up_to(field, start, end)?;
        // The end itself may lie between two steps.
        Some(Self { end, ..grid })
    }

    /// Returns the values of a number up to another, or to the last step before it; it is brought into the range.
    pub(super) fn up_to(field: &Field, start: f64, end: f64) -> Option<Self> {
        let Kind::Number { least, most, step, .. } = field.kind else { return None };
        let up = end >= start;
        // The last step that is not passed, or toward which a value between two steps is brought.
        let whole = |steps: f64| if up { (steps + ROUNDING).floor() } else { (steps - ROUNDING).ceil() };
        let first = whole(start / step);
        let end = if (least..=most).contains(&end) { tidy(whole(end / step) * step) } else { end };
        let end = if up { end.max(start) } else { end.min(start) }.clamp(least, most);
        Some(Self { start, first, step, end, range: most - least })
    }

    /// Returns how many steps there are to the end.
    pub(super) fn steps(&self) -> u32 {
        (((self.end / self.step) - self.first).abs() - ROUNDING).ceil().max(0.0) as u32
    }

    /// Returns the value so many steps away, at most the end; the start itself for none.
    pub(super) fn at(&self, steps: u32) -> f64 {
        if steps == 0 {
            return self.start;
        }
        let up = self.end >= self.start;
        let signed = if up { f64::from(steps) } else { -f64::from(steps) };
        let value = tidy((self.first + signed) * self.step);
        if up { value.min(self.end) } else { value.max(self.end) }
    }

    /// Returns how many steps stay within a share of the whole range.
    pub(super) fn steps_within(&self, share: f64) -> u32 {
        let into_step = (self.start / self.step - self.first).abs();
        let most = (share * self.range / self.step + into_step + ROUNDING).floor().max(0.0);
        self.steps().min(most as u32)
    }
}
