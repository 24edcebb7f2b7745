//! Quantities in words: one amount, a range, a tolerance.

use super::scale::{DAY_H, LONG_H};
use super::{LongTimes, Masses, Scale, Units};
use crate::design::Unit;
use crate::law::legal_measures::{OUNCE_G, POUND};

/// Minutes with parts of them are told in seconds below so many.
const SECONDS_BELOW_MIN: f64 = 2.0;

/// An amount in two units: so many of the large one, and the rest in the small one.
struct Parts {
    large: &'static str,
    /// Of the calculation's unit.
    large_size: f64,
    small: Scale,
}

impl Units {
    /// Returns one amount as it is measured: `6 qt 11 fl oz`, `2 lb 4.2 oz`, `95 °F`; none where it is shown in the unit of the calculation.
    ///
    /// Number and unit are parted by a plain space.
    ///
    /// # Arguments
    /// * `decimals`: that the amount has in `unit`
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::Unit, units::Units};
    /// assert_eq!(Units::US.text(Unit::Litre, 6.0, 2).as_deref(), Some("6 qt 11 fl oz"));
    /// assert_eq!(Units::US.text(Unit::Gram, 61.0, 0).as_deref(), Some("2.2 oz"));
    /// assert_eq!(Units::US.text(Unit::Celsius, 35.0, 1).as_deref(), Some("95 °F"));
    /// assert_eq!(Units::US.text(Unit::Gram, 0.43, 2), None);
    /// assert_eq!(Units::METRIC.text(Unit::Minute, 0.25, 2).as_deref(), Some("15 s"));
    /// ```
    #[must_use]
    pub fn text(self, unit: Unit, value: f64, decimals: usize) -> Option<String> {
        // No clock shows parts of a minute.
        if unit == Unit::Minute && decimals > 0 && value.abs() < SECONDS_BELOW_MIN {
            return Some(format!("{:.0} {}", 60.0 * value, Unit::Second.symbol()));
        }
        if let Some(parts) = self.parts(unit, value) {
            return Some(parts.text(value, decimals));
        }
        let scale = self.scale(unit, value);
        (!scale.is_own()).then(|| format!("{} {}", scale.digits(value, decimals), scale.symbol))
    }

    /// Returns a range: `2–2.4 oz`, or with the units of each where they are measured in two; none where it is shown in the unit of the
    /// calculation.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::Unit, units::Units};
    /// assert_eq!(Units::US.range(Unit::Gram, (39.0, 54.0), 0).as_deref(), Some("1.4–1.9 oz"));
    /// assert_eq!(Units::US.range(Unit::Kilogram, (1.1, 1.3), 2).as_deref(), Some("2 lb 6.8 oz–2 lb 13.8 oz"));
    /// ```
    #[must_use]
    pub fn range(self, unit: Unit, (least, most): (f64, f64), decimals: usize) -> Option<String> {
        if self.parts(unit, most).is_some() {
            return Some(format!("{}–{}", self.text(unit, least, decimals)?, self.text(unit, most, decimals)?));
        }
        let scale = self.scale(unit, most);
        (!scale.is_own()).then(|| format!("{}–{} {}", scale.digits(least, decimals), scale.digits(most, decimals), scale.symbol))
    }

    /// Returns how near to an amount is near enough: `1` for ±1 °F, or with its unit where the amount has two of them; none where it is shown
    /// in the unit of the calculation.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::Unit, units::Units};
    /// // ±1 °C is ±1.8 °F: a difference has no zero point.
    /// assert_eq!(Units::US.spread(Unit::Celsius, 38.0, 1.0, 1).as_deref(), Some("2"));
    /// assert_eq!(Units::US.spread(Unit::Litre, 6.0, 0.06, 2).as_deref(), Some("2 fl oz"));
    /// ```
    #[must_use]
    pub fn spread(self, unit: Unit, value: f64, spread: f64, decimals: usize) -> Option<String> {
        if let Some(parts) = self.parts(unit, value) {
            return Some(format!("{} {}", parts.small.spread_digits(spread, decimals), parts.small.symbol));
        }
        let scale = self.scale(unit, value);
        (!scale.is_own()).then(|| scale.spread_digits(spread, decimals))
    }

    /// Returns the two units that an amount is measured in, if it is.
    fn parts(self, unit: Unit, value: f64) -> Option<Parts> {
        let size = value.abs();
        let parts = match unit {
            Unit::Litre | Unit::Millilitre => {
                let ((large, large_ml), (_, ounce_ml)) = self.volumes.measures()?;
                let in_ml = if unit == Unit::Litre { 1000.0 } else { 1.0 };
                Parts { large, large_size: large_ml / in_ml, small: self.scale(Unit::Millilitre, ounce_ml).of_larger(in_ml) }
            }
            Unit::Kilogram | Unit::Gram if self.masses == Masses::Pounds => {
                let in_g = if unit == Unit::Kilogram { 1000.0 } else { 1.0 };
                Parts { large: "lb", large_size: POUND.value / in_g, small: self.scale(Unit::Gram, OUNCE_G).of_larger(in_g) }
            }
            Unit::Hour if self.long_times == LongTimes::Days && size >= LONG_H => {
                Parts { large: "d", large_size: DAY_H, small: Scale::whole(Unit::Hour) }
            }
            _ => return None,
        };
        (size >= parts.large_size).then_some(parts)
    }
}

impl Parts {
    fn text(&self, value: f64, decimals: usize) -> String {
        let step = self.small.step(decimals);
        let in_large = self.small.shown(self.large_size);
        // Rounded as a whole first, so that no rest rounds up to a whole large unit.
        let all = (self.small.shown(value.abs()) / step).round() * step;
        let whole = (all / in_large + 1e-9).floor();
        let rest = (all - whole * in_large).max(0.0);
        let sign = if value < 0.0 { "-" } else { "" };
        let large = if self.large == "cups" && whole < 1.5 { "cup" } else { self.large };
        if rest < 0.5 * step {
            return format!("{sign}{whole:.0} {large}");
        }
        let digits = self.small.digits(self.small.kept(rest), decimals);
        let digits = digits.strip_suffix(".0").unwrap_or(&digits);
        format!("{sign}{whole:.0} {large} {digits} {}", self.small.symbol)
    }
}
