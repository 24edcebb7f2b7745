//! Which moments of a run are kept for a picture.

/// Moments kept of one run, at most.
const MOST_FRAMES: u32 = 40;

/// Tells at which steps of a run a picture is due: never more than [`MOST_FRAMES`] of them, the first and the last among them.
#[derive(Clone, Copy, Debug)]
pub(super) struct FrameClock {
    end: f64,
    early: i32,
    next: u32,
}

impl FrameClock {
    /// Returns the clock of a run from 0 to `end`; with `early` 1 the moments lie evenly, with 2 closer at the beginning.
    pub(super) const fn new(end: f64, early: i32) -> Self {
        Self { end, early, next: 0 }
    }

    /// Returns whether a picture is due at this time, which is not before the last one asked for.
    pub(super) fn due(&mut self, at: f64) -> bool {
        let due = self.next < MOST_FRAMES && at >= self.moment();
        while self.next < MOST_FRAMES && at >= self.moment() {
            self.next += 1;
        }
        due
    }

    fn moment(&self) -> f64 {
        self.end * (f64::from(self.next) / f64::from(MOST_FRAMES - 1)).powi(self.early)
    }
}
