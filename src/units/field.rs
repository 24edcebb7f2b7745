//! The values of inputs as they are shown: an input has one unit over its whole range.

use super::{Scale, Units};
use crate::design::{Field, Kind, Value};

impl Units {
    /// Returns the unit in which an input is shown.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::field, units::Units};
    /// assert_eq!(Units::US.scale_of(field("milk_l")?).symbol, "qt");
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    #[must_use]
    pub fn scale_of<D>(self, field: &Field<D>) -> Scale {
        let most = if let Kind::Number { most, .. } = field.kind { most } else { 0.0 };
        self.scale(field.unit, most)
    }

    /// Returns a value of an input as it is shown, with its unit: to the hundredth in another unit than its own, with no zeros at the end.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::{field, Value}, units::Units};
    /// let milk = field("milk_l")?;
    /// assert_eq!(Units::US.choice_text(milk, Value::Number(6.0)), "6.34 qt");
    /// assert_eq!(Units::default().choice_text(milk, Value::Number(6.0)), "6 L");
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    #[must_use]
    pub fn choice_text<D: Default>(self, field: &Field<D>, value: Value) -> String {
        let scale = self.scale_of(field);
        match value {
            Value::Number(number) if !scale.is_own() => {
                let hundredths = (100.0 * scale.shown(number)).round() / 100.0;
                format!("{} {}", hundredths + 0.0, scale.symbol)
            }
            Value::Number(_) | Value::Choice(_) | Value::Switch(_) => field.words_with_unit(value),
        }
    }

    /// Returns a change of an input as it is shown, with its unit.
    #[must_use]
    pub fn step_text<D: Default>(self, field: &Field<D>, step: f64) -> String {
        let scale = self.scale_of(field);
        if scale.is_own() {
            return field.words_with_unit(Value::Number(step));
        }
        format!("{} {}", (100.0 * scale.apart(step)).round() / 100.0, scale.symbol)
    }
}
