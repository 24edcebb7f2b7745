//! How values are drawn from the range of a record.

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

impl Distribution {
    /// Returns how a factor is drawn between its least and its greatest value.
    #[must_use]
    pub fn between(least: f64, most: f64) -> Self {
        if least > 0.0 && most >= DRAWN_IN_LOGARITHM.value * least { Self::InLogarithm } else { Self::Straight }
    }

    /// Returns the factor below which a share of all draws is: least + (1 − least) √(2 u) below the middle, likewise above it, for the
    /// factor or for its logarithm.
    ///
    /// # Arguments
    /// * `least`, `most`: ends of the range, of which 1 is the middle
    /// * `share`: u, 0 to 1; 0 gives the least value, 0.5 gives 1, 1 the greatest
    #[must_use]
    pub fn at_share(self, least: f64, most: f64, share: f64) -> f64 {
        let between = |least: f64, value: f64, most: f64| {
            if share < 0.5 {
                least + (value - least) * (2.0 * share).sqrt()
            } else {
                most - (most - value) * (2.0 * (1.0 - share)).sqrt()
            }
        };
        match self {
            Self::Straight => between(least, 1.0, most),
            Self::InLogarithm => between(least.ln(), 0.0, most.ln()).exp(),
        }
    }
}
