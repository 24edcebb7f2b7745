//! The time from one handling to the next, and how far it may give.

/// The grid on which handlings may be moved.
pub const GRID_MIN: i64 = 15;

/// The most points that anything may cost, a minute or a quarter of an hour; far above any wish, far below what a sum could not hold.
pub(super) const MOST_POINTS: i64 = 1_000_000;

/// What a minute of hands counts where nobody can be there, while a plan is searched: more than all that a plan can cost otherwise, so that no
/// such minute is taken for anything that is only disliked. It is no price, and no plan shows it.
pub(super) const IMPOSSIBLE_POINTS: i64 = 1_000_000 * MOST_POINTS;

/// The time from the start of one handling to the start of the next, and how far it may give.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Gap {
    /// It is never shorter.
    pub least_min: i64,
    /// From here it costs nothing …
    pub usual_from_min: i64,
    /// … up to here.
    pub usual_to_min: i64,
    /// It is never longer.
    pub most_min: i64,
    /// What a quarter of an hour outside the usual costs.
    pub shift_points: i64,
}

impl Gap {
    /// Returns a gap that does not give.
    #[must_use]
    pub const fn fixed(minutes: i64) -> Self {
        Self { least_min: minutes, usual_from_min: minutes, usual_to_min: minutes, most_min: minutes, shift_points: 0 }
    }

    /// Returns a gap that may be so much shorter or longer than usual.
    ///
    /// # Example
    /// ```
    /// use vatsketch::plan::Gap;
    /// let gap = Gap::flexible(360, 60, 90, 2);
    /// assert_eq!((gap.least_min, gap.most_min), (300, 450));
    /// assert_eq!(gap.points(390), 4);
    /// ```
    #[must_use]
    pub const fn flexible(usual_min: i64, shorter_min: i64, longer_min: i64, shift_points: i64) -> Self {
        Self {
            least_min: usual_min - shorter_min,
            usual_from_min: usual_min,
            usual_to_min: usual_min,
            most_min: usual_min + longer_min,
            shift_points,
        }
    }

    /// Returns how far a gap lies outside the usual: negative if it is shorter, 0 inside.
    #[must_use]
    pub const fn shift_min(&self, gap_min: i64) -> i64 {
        if gap_min < self.usual_from_min {
            gap_min - self.usual_from_min
        } else if gap_min > self.usual_to_min {
            gap_min - self.usual_to_min
        } else {
            0
        }
    }

    /// Returns what a gap costs: a·(max(n_lo − g, 0) + max(g − n_hi, 0))/15, whole points.
    #[must_use]
    pub const fn points(&self, gap_min: i64) -> i64 {
        self.shift_points * self.shift_min(gap_min).abs() / GRID_MIN
    }

    /// Returns the gap with no end before so many minutes; limits that lie earlier move there, because it is already too late for them.
    #[must_use]
    pub fn not_before(&self, minutes: i64) -> Self {
        let least_min = self.least_min.max(minutes);
        let usual_from_min = self.usual_from_min.max(least_min);
        let usual_to_min = self.usual_to_min.max(usual_from_min);
        Self { least_min, usual_from_min, usual_to_min, most_min: self.most_min.max(usual_to_min), ..*self }
    }

    /// Returns whether its limits are in order and its points within measure.
    pub(super) const fn in_order(&self) -> bool {
        0 <= self.least_min
            && self.least_min <= self.usual_from_min
            && self.usual_from_min <= self.usual_to_min
            && self.usual_to_min <= self.most_min
            && 0 <= self.shift_points
            && self.shift_points <= MOST_POINTS
    }
}
