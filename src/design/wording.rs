//! A value as a reader wants it.

use super::{Field, Kind, Value};

impl<D: Default> Field<D> {
    /// Returns a value of this input in words, without a unit: a choice by its label, a number without a tail of digits.
    ///
    /// # Example
    /// ```
    /// use vatsketch::design::{field, Value};
    /// assert_eq!(field("milk_l")?.words(Value::Number(7.5)), "7.5");
    /// assert_eq!(field("milk_kind")?.words(Value::Choice("cow")), "Cow");
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    #[must_use]
    pub fn words(&self, value: Value) -> String {
        match (self.kind, value) {
            (Kind::Choice(choices), Value::Choice(key)) => {
                choices.iter().find(|choice| choice.key == key).map_or(key, |choice| choice.label).to_owned()
            }
            (_, Value::Number(number)) => {
                let text = format!("{number:.3}");
                text.trim_end_matches('0').trim_end_matches('.').to_owned()
            }
            (_, value) => value.to_string(),
        }
    }

    /// Returns the same with the unit of this input.
    #[must_use]
    pub fn words_with_unit(&self, value: Value) -> String {
        let words = self.words(value);
        if self.unit.symbol().is_empty() { words } else { format!("{words} {}", self.unit.symbol()) }
    }
}

/// Returns words for the middle of a sentence: the first letter small, the others as they are.
///
/// # Example
/// ```
/// use vatsketch::design::lower_first;
/// assert_eq!(lower_first("Centre below pH 4.2 after"), "centre below pH 4.2 after");
/// ```
#[must_use]
pub fn lower_first(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| first.to_lowercase().chain(letters).collect())
}
