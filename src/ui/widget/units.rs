//! Other units as a way of showing: never in the file, never a reason for the dirty mark.

use crate::analysis::{Difference, Likeness};
use crate::curve::Curve;
use crate::design::Unit;
use crate::figure::{Figure, Reading};
use crate::law::kitchen::CUP;
use crate::ui::widget::number_text::trimmed;

/// How quantities are shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Units {
    /// Temperatures in degrees Fahrenheit.
    pub fahrenheit: bool,
    /// Litres as cups.
    pub cups: bool,
}

/// Litres in a cup.
const CUP_L: f64 = 0.001 * CUP.value;

impl Units {
    /// Returns a value as it is shown, and the symbol of its unit.
    #[must_use]
    pub fn shown(self, unit: Unit, value: f64) -> (f64, &'static str) {
        match unit {
            Unit::Celsius if self.fahrenheit => (1.8 * value + 32.0, "°F"),
            Unit::Litre if self.cups => (value / CUP_L, "cups"),
            _ => (value, unit.symbol()),
        }
    }

    /// Returns a number that was typed without a unit, in the input's own unit.
    #[must_use]
    pub fn typed(self, unit: Unit, value: f64) -> f64 {
        match unit {
            Unit::Celsius if self.fahrenheit => (value - 32.0) / 1.8,
            Unit::Litre if self.cups => value * CUP_L,
            _ => value,
        }
    }

    /// Returns an input's value with its unit.
    #[must_use]
    pub fn input_text(self, unit: Unit, value: f64) -> String {
        let (shown, symbol) = self.shown(unit, value);
        let same = shown.to_bits() == value.to_bits();
        let number = if same { trimmed(value) } else { trimmed((shown * 100.0).round() / 100.0) };
        if symbol.is_empty() { number } else { format!("{number} {symbol}") }
    }

    /// Returns a figure as it is shown.
    #[must_use]
    pub fn figure_text(self, figure: &Figure) -> String {
        match figure.reading {
            Reading::Number(value) if self.shown(figure.unit, value).1 != figure.unit.symbol() => {
                let (shown, symbol) = self.shown(figure.unit, value);
                format!("{shown:.*} {symbol}", figure.decimals)
            }
            _ => figure.text(),
        }
    }

    /// Returns a figure of two designs as it is shown.
    #[must_use]
    pub(in crate::ui) fn compared(self, figure: &Difference) -> Compared {
        let bare = |one: &Figure| match one.reading {
            Reading::Number(value) => one.digits(self.shown(one.unit, value).0),
            Reading::Words(_) | Reading::Switch(_) => one.text(),
        };
        let of = |one: &Option<Figure>| one.as_ref().map_or_else(|| "–".to_owned(), bare);
        let either = figure.a.as_ref().or(figure.b.as_ref());
        let change = match (figure.likeness, figure.change, either) {
            (Likeness::Differs, Some(change), Some(one)) => {
                // A difference of degrees has no zero point.
                let apart = self.shown(one.unit, change).0 - self.shown(one.unit, 0.0).0;
                format!("{}{}", if apart < 0.0 { '−' } else { '+' }, one.digits(apart.abs()))
            }
            _ => figure.change_text(),
        };
        let symbol = either.map_or("", |one| self.shown(one.unit, 0.0).1);
        Compared { unit: symbol, a: of(&figure.a), b: of(&figure.b), change }
    }

    /// Returns a curve as it is shown.
    #[must_use]
    pub fn curve(self, mut figure: Curve) -> Curve {
        if self.fahrenheit && figure.y.unit == Unit::Celsius.symbol() {
            let warm = |value: f64| self.shown(Unit::Celsius, value).0;
            figure.series.iter_mut().flat_map(|series| &mut series.points).for_each(|point| point[1] = warm(point[1]));
            figure.bands.iter_mut().flat_map(|band| &mut band.points).for_each(|[_, low, high]| {
                (*low, *high) = (warm(*low), warm(*high));
            });
            // Round marks in the new unit, and the freezing point of water as the least.
            figure.y.most = (warm(figure.y.most) / 20.0).ceil() * 20.0;
            figure.y.least = 20.0;
            figure.y.unit = "°F";
        }
        figure
    }
}

/// A figure of two designs as it is shown: without units, which stand in its name.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(in crate::ui) struct Compared {
    /// Symbol of the unit.
    pub unit: &'static str,
    /// The first design's.
    pub a: String,
    /// The second design's.
    pub b: String,
    /// Second less first, with its sign, or in words.
    pub change: String,
}
