//! Steps of an adaptive method: how long the next one is, from the error of the last, and the loop that tries until one is taken.

/// γ of the linearly implicit method of second order with factored directions (ROS2): ½ + √3/6, stable for both, and measured to need
/// fewer steps in our discs than the other usual values.
pub const GAMMA: f64 = 0.788_675_134_594_812_9;
/// Share of the ideal length that is used, against refusals.
const CAUTION: f64 = 0.85;
/// Least and greatest change of length from one step to the next.
const CHANGE: (f64, f64) = (0.25, 2.5);

/// A step became shorter than is allowed, and its error was still beyond the tolerance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TooShort {
    /// Where the method came to.
    pub at: f64,
}

/// A step that was taken.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Taken<T> {
    /// Its length.
    pub length: f64,
    /// Where it ends: exactly the end asked for, if it reaches that.
    pub at: f64,
    /// What the attempt returned.
    pub outcome: T,
}

/// The steps of a method of second order with an error estimate of first order.
///
/// A step's error grows with the square of its length, so the next is 0.85/√error times as long, within a quarter and two and a half times.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stepping {
    planned: f64,
    shortest: f64,
    taken: u32,
    refused: u32,
}

impl Stepping {
    /// Returns a stepping that begins with a step of this length.
    #[must_use]
    pub const fn new(first: f64, shortest: f64) -> Self {
        Self { planned: first, shortest, taken: 0, refused: 0 }
    }

    /// Makes the next step no longer than this, as where the equations change.
    pub const fn at_most(&mut self, length: f64) {
        self.planned = self.planned.min(length);
    }

    /// Returns how long the next step is meant to be.
    #[must_use]
    pub const fn planned(&self) -> f64 {
        self.planned
    }

    /// Returns how many steps were taken, and how many attempts were refused.
    #[must_use]
    pub const fn counts(&self) -> (u32, u32) {
        (self.taken, self.refused)
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

    /// Takes one step from `at` towards `to`: makes attempts, each shorter than the last, until the error of one is within the tolerance.
    ///
    /// # Arguments
    /// * `at`, `to`: `at` < `to`
    /// * `attempt`: given a length, returns the error of such a step in tolerances and whatever the caller needs to take it
    ///
    /// # Errors
    /// [`TooShort`] if the next attempt would have to be shorter than is allowed.
    ///
    /// # Example
    /// ```
    /// use vatsketch::numeric::Stepping;
    /// let mut stepping = Stepping::new(1.0, 1e-3);
    /// // An error of 4 at the length 1 is 1 at half of that.
    /// let step = stepping.step(0.0, 10.0, |length| (4.0 * length * length, "done")).unwrap();
    /// assert!(step.length < 0.5 && step.at == step.length && step.outcome == "done");
    /// assert_eq!(stepping.counts(), (1, 1));
    /// ```
    pub fn step<T>(&mut self, at: f64, to: f64, mut attempt: impl FnMut(f64) -> (f64, T)) -> Result<Taken<T>, TooShort> {
        let left = to - at;
        loop {
            let length = self.next(left);
            let (error, outcome) = attempt(length);
            if self.accept(length, error) {
                self.taken += 1;
                return Ok(Taken { length, at: if length.to_bits() == left.to_bits() { to } else { at + length }, outcome });
            }
            if self.planned < self.shortest {
                return Err(TooShort { at });
            }
            self.refused += 1;
        }
    }

    /// Returns whether an error, in tolerances, is within the tolerance, and plans the next step by it.
    fn accept(&mut self, length: f64, error: f64) -> bool {
        let (least, most) = CHANGE;
        let factor = if error.is_finite() { (CAUTION / error.max(1e-4).sqrt()).clamp(least, most) } else { least };
        let accepted = error <= 1.0;
        // A step cut short to meet the end says little about the next one.
        let keeps_plan = accepted && length < self.planned;
        self.planned = if keeps_plan { self.planned.max(length * factor) } else { length * factor };
        accepted
    }
}
