//! What a known kitchen does to the figures of a design: their likely ranges before and now.

use crate::analysis::LikelyFigure;
use crate::curve::Spread;
use crate::figure::{Weight, is_of_germs};
use crate::units::Units;

/// One figure with its likely range in any kitchen, and in this one.
#[derive(Clone, Debug, PartialEq)]
pub struct NarrowedRow {
    /// Its name.
    pub label: String,
    /// The range in any kitchen, in words.
    pub before: String,
    /// The range in this one.
    pub now: String,
    /// The same as numbers, in the figure's unit.
    pub ranges: [(f64, f64); 2],
}

impl NarrowedRow {
    /// Returns how wide the range is now over what it was.
    ///
    /// # Example
    /// ```
    /// use vatsketch::report::NarrowedRow;
    /// let row = NarrowedRow { label: String::new(), before: String::new(), now: String::new(), ranges: [(1.0, 5.0), (2.0, 4.0)] };
    /// assert_eq!(row.share(), 0.5);
    /// ```
    #[must_use]
    pub fn share(&self) -> f64 {
        let [before, now] = self.ranges.map(|(least, most)| most - least);
        now / before
    }
}

/// A range counts as narrower from this share of its width on.
const NARROWER: f64 = 0.95;

/// Returns the figures that are always in sight and whose ranges a known kitchen makes narrower, in the order of the stages. Growth of germs is left out: it is
/// judged by the worse of two batches, and no log makes it a number to go by.
///
/// # Arguments
/// * `before`: the spread of a design in any kitchen
/// * `now`: the spread of the same design in the known one
#[must_use]
pub fn narrowed(before: &Spread, now: &Spread, units: Units) -> Vec<NarrowedRow> {
    let counts = |likely: &&LikelyFigure| {
        likely.figure.weight == Weight::Lead && likely.moves() && !is_of_germs(likely.figure.key) && !likely.figure.by_thumb
    };
    let row = |before: &LikelyFigure| {
        let now = now.figure(before.figure.key)?;
        Some(NarrowedRow {
            label: before.figure.label_in(units),
            before: before.range_words(units)?,
            now: now.range_words(units)?,
            ranges: [before.least.zip(before.most)?, now.least.zip(now.most)?],
        })
    };
    before.figures.iter().filter(counts).filter_map(row).filter(|row| row.share() <= NARROWER && row.now != row.before).collect()
}
