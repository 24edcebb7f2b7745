//! What one plot shows.

use crate::curve::Curve;

/// What one plot shows.
pub(in crate::ui) struct PlottedCurves<'a> {
    /// The open design's curve.
    pub a: &'a Curve,
    /// The same before the last change.
    pub ghost: Option<&'a Curve>,
    /// The second design's, in the same frame.
    pub b: Option<&'a Curve>,
}

impl PlottedCurves<'_> {
    /// Returns what the plot shows in words.
    pub(in crate::ui) fn in_words(&self) -> String {
        self.b.map_or_else(|| self.a.in_words.clone(), |b| format!("A: {} B: {}", self.a.in_words, b.in_words))
    }
}
