//! How long the next step of an adaptive method is, from the error of the last.

/// What came of a step.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// Its error is within the tolerance.
    Taken,
    /// It is not; try again with a shorter one.
    Refused,
    /// It is not, and a shorter one is not allowed.
    TooShort,
}

/// The length of the next step of a method of second order with an error estimate of first order.
///
/// A step's error grows with the square of its length, so the next is 0.85/√error times as long, within a quarter and two and a half times.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stepping {
    planned: f64,
    shortest: f64,
}

/// γ of the linearly implicit method of second order with factored directions (ROS2): ½ + √3/6, stable for both, and measured to need
/// fewer steps in our discs than the other usual values.
pub const GAMMA: f64 = 0.788_675_134_594_812_9;
/// Share of the ideal length that is used, against refusals.
const CAUTION: f64 = 0.85;
/// Least and greatest change of length from one step to the next.
const CHANGE: (f64, f64) = (0.25, 2.5);

impl Stepping {
    /// Returns a stepping that begins with a step of this length.
    #[must_use]
    pub const fn new(first: f64, shortest: f64) -> Self {
        Self { planned: first, shortest }
    }

    /// Makes the next step no longer than this, as where the equations change.
    pub const fn at_most(&mut self, length: f64) {
        self.planned = self.planned.min(length);
    }

    /// Returns the length of the next step: the planned one, the whole way left, or half of it rather than one long and one tiny step.
    ///
    /// # Example
    /// ```
    /// use vatsketch::numeric::Stepping;
    /// let stepping = Stepping::new(2.0, 1e-3);
    /// assert_eq!((stepping.next(10.0), stepping.next(3.0), stepping.next(1.5)), (2.0, 1.5, 1.5));
    /// ```
    #[must_use]
    pub fn next(&self, left: f64) -> f64 {
        if self.planned >= left {
            left
        } else if 2.0 * self.planned > left {
            0.5 * left
        } else {
            self.planned
        }
    }

    /// Judges a step of this length by its error in tolerances, and plans the next.
    pub fn judge(&mut self, length: f64, error: f64) -> Verdict {
        let (least, most) = CHANGE;
        let factor = if error.is_finite() { (CAUTION / error.max(1e-4).sqrt()).clamp(least, most) } else { least };
        if error <= 1.0 {
            // A step cut short to meet the end says little about the next one.
            self.planned = if length < self.planned { self.planned.max(length * factor) } else { length * factor };
            return Verdict::Taken;
        }
        self.planned = length * factor;
        if self.planned < self.shortest { Verdict::TooShort } else { Verdict::Refused }
    }
}
