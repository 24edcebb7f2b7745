//! What one plot shows.

use crate::curve::{Curve, Handle};
use crate::session::Which;

/// What one plot shows.
pub(in crate::ui) struct PlottedCurves<'a> {
    /// The open design's curve.
    pub a: &'a Curve,
    /// The same before the last change.
    pub ghost: Option<&'a Curve>,
    /// The second design's, in the same frame.
    pub b: Option<&'a Curve>,
    /// Of two designs the one whose choices can be moved.
    pub edited: Which,
}

impl PlottedCurves<'_> {
    /// Returns the choices that can be moved in the plot.
    pub(in crate::ui) fn handles(&self) -> &[Handle] {
        match (self.edited, self.b) {
            (Which::Second, Some(b)) => &b.handles,
            _ => &self.a.handles,
        }
    }

    /// Returns what the plot shows in words.
    pub(in crate::ui) fn in_words(&self) -> String {
        self.b.map_or_else(|| self.a.in_words.clone(), |b| format!("A: {} B: {}", self.a.in_words, b.in_words))
    }
}
