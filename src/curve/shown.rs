//! A curve as it is shown, in metric units or others.

use super::{Along, Axis, Curve, Dot};
use crate::design::Unit;
use crate::units::{Scale, Units};

/// Units of axes that can be shown otherwise, each with a size that is beyond doubt: an axis has one unit, however little it holds.
const AXES: [(Unit, f64); 3] = [(Unit::Celsius, 0.0), (Unit::Gram, 1e6), (Unit::Hour, 1e6)];
/// Units in the sentence about a curve of which every mention is a whole quantity.
const SAID: [Unit; 3] = [Unit::Gram, Unit::Kilogram, Unit::Hour];
/// The same where grams are parts of something.
const SAID_OF_PARTS: [Unit; 1] = [Unit::Hour];

impl Curve {
    /// Returns the curve as it is shown: points, bands, events, axes and words.
    ///
    /// The curve of two designs, or of a spread, is put together first and shown then.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{batch::batch, curve::{curve, CurveKey}, design::Design, units::Units};
    /// let warming = curve(&batch(&Design::default())?, CurveKey::Warming);
    /// let [_, first_c] = warming.series[0].points[0];
    /// let shown = warming.shown_in(Units::US);
    /// assert_eq!((shown.y.unit, shown.series[0].points[0][1]), ("°F", 1.8 * first_c + 32.0));
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    #[must_use]
    pub fn shown_in(mut self, units: Units) -> Self {
        if units.are_metric() {
            return self;
        }
        let of_parts = self.y.unit.contains('/');
        let (x, y) = (scale(&self.x, units), scale(&self.y, units));
        let to = |scale: Option<Scale>, value: f64| scale.map_or(value, |scale| scale.shown(value));
        for [at, value] in self.series.iter_mut().flat_map(|series| &mut series.points) {
            (*at, *value) = (to(x, *at), to(y, *value));
        }
        for [at, low, high] in self.bands.iter_mut().flat_map(|band| &mut band.points) {
            (*at, *low, *high) = (to(x, *at), to(y, *low), to(y, *high));
        }
        for event in &mut self.events {
            event.at = to(x, event.at);
        }
        for Dot { at: [at, value], .. } in &mut self.dots {
            (*at, *value) = (to(x, *at), to(y, *value));
        }
        for handle in &mut self.handles {
            let [at, value] = handle.at;
            let along = if handle.along == Along::Time { x } else { y };
            handle.for_one /= to(along, 1.0) - to(along, 0.0);
            handle.at = [to(x, at), to(y, value)];
        }
        if let Some(cut) = &mut self.cut {
            (cut.from, cut.to) = (to(x, cut.from), to(x, cut.to));
        }
        let ends_with_limit = self.x.most;
        (self.x, self.y) = (axis(self.x, x), axis(self.y, y));
        // A limit runs through the whole frame, and the frame ends at a round number in its own unit.
        let (was, most) = (to(x, ends_with_limit), self.x.most);
        for [at, _] in self.series.iter_mut().filter_map(|series| series.points.last_mut()) {
            if (*at - was).abs() < f64::EPSILON * was.abs() {
                *at = most;
            }
        }
        self.in_words = units.told_of(&self.in_words, if of_parts { &SAID_OF_PARTS } else { &SAID });
        self.empty_because = self.empty_because.map(|why| units.told(&why));
        self
    }
}

/// Returns the unit in which an axis is shown, if it is not its own.
fn scale(axis: &Axis, units: Units) -> Option<Scale> {
    let (unit, size) = AXES.into_iter().find(|(unit, _)| unit.symbol() == axis.unit)?;
    Some(units.scale(unit, size)).filter(|scale| !scale.is_own())
}

fn axis(axis: Axis, scale: Option<Scale>) -> Axis {
    match scale {
        None => axis,
        Some(scale) => {
            Axis { unit: scale.symbol, least: scale.axis_limit(axis.least, false), most: scale.axis_limit(axis.most, true), ..axis }
        }
    }
}
