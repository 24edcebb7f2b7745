//! A value as a reader expects it.

use super::field::Field;
use super::{Kind, Value};

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

/// The first words of the names of germs, which keep their capital.
const GERMS: [&str; 6] = ["Listeria", "Staphylococcus", "Salmonella", "Escherichia", "Bacillus", "Clostridium"];

/// Returns words for the middle of a sentence: the first letter small, the others as they are. Abbreviations and the names of germs keep
/// their capital.
///
/// # Example
/// ```
/// use vatsketch::design::lower_first;
/// assert_eq!(lower_first("Centre below pH 4.2 after"), "centre below pH 4.2 after");
/// assert_eq!(lower_first("GDL to add"), "GDL to add");
/// assert_eq!(lower_first("Salmonella could grow by"), "Salmonella could grow by");
/// ```
#[must_use]
pub fn lower_first(words: &str) -> String {
    let name = words.split_whitespace().next().unwrap_or_default().trim_end_matches(',');
    let is_abbreviation = name.chars().nth(1).is_some_and(char::is_uppercase);
    if is_abbreviation || GERMS.contains(&name) {
        return words.to_owned();
    }
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| first.to_lowercase().chain(letters).collect())
}

/// Returns words for the beginning of a sentence: the first letter a capital, the others as they are.
///
/// # Example
/// ```
/// use vatsketch::design::upper_first;
/// assert_eq!(upper_first("the vat has no time to begin"), "The vat has no time to begin");
/// ```
#[must_use]
pub fn upper_first(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// Returns hours as a maker says them: "2 h 15 min", "3 days 4 h".
///
/// # Example
/// ```
/// use vatsketch::design::hours_in_words;
/// assert_eq!(hours_in_words(2.25), "2 h 15 min");
/// assert_eq!(hours_in_words(76.2), "3 days 4 h");
/// assert_eq!(hours_in_words(500.0), "21 days");
/// ```
#[must_use]
pub fn hours_in_words(hours: f64) -> String {
    let minutes = (hours * 60.0).round().max(0.0);
    if minutes < 60.0 {
        return format!("{minutes:.0} min");
    }
    if minutes < 48.0 * 60.0 {
        let (whole, rest) = ((minutes / 60.0).floor(), minutes % 60.0);
        return if rest < 0.5 { format!("{whole:.0} h") } else { format!("{whole:.0} h {rest:.0} min") };
    }
    let rounded = hours.round();
    let (days, rest) = ((rounded / 24.0).floor(), rounded % 24.0);
    // Hours say nothing where the days themselves are uncertain.
    if days >= 7.0 {
        return format!("{:.0} days", (rounded / 24.0).round());
    }
    if rest < 0.5 { format!("{days:.0} days") } else { format!("{days:.0} days {rest:.0} h") }
}
