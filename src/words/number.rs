//! Numbers of the records in words, so that none is typed twice.

use crate::source::Constant;

/// Returns a number with the digits that it was given with; very small and very large ones with a power of ten.
///
/// # Example
/// ```
/// assert_eq!(vatsketch::words::number_words(4.2), "4.2");
/// assert_eq!(vatsketch::words::number_words(1.21e-9), "1.21 × 10^-9");
/// ```
#[must_use]
pub fn number_words(value: f64) -> String {
    let size = value.abs();
    if size > 0.0 && !(1e-3..1e6).contains(&size) { format!("{value:e}").replace('e', " × 10^") } else { format!("{value}") }
}

/// Returns the value of a record without its unit.
///
/// # Example
/// ```
/// assert_eq!(vatsketch::words::value(&vatsketch::law::growth::TABLE_B_PH), "4.2");
/// ```
#[must_use]
pub fn value(record: &Constant) -> String {
    number_words(record.value)
}

/// Returns the value of a record with its unit.
///
/// # Example
/// ```
/// assert_eq!(vatsketch::words::quantity(&vatsketch::law::growth::COLD_ENOUGH), "4 °C");
/// ```
#[must_use]
pub fn quantity(record: &Constant) -> String {
    match record.unit {
        // Neither a bare number nor a pH has a unit to say.
        "1" | "pH" => value(record),
        unit => format!("{} {unit}", value(record)),
    }
}

/// Returns the range of a record without its unit.
///
/// # Example
/// ```
/// assert_eq!(vatsketch::words::range_words(&vatsketch::law::growth::SERVICE_HOURS), "2 to 4");
/// ```
#[must_use]
pub fn range_words(record: &Constant) -> String {
    let (least, most) = record.range;
    format!("{} to {}", number_words(least), number_words(most))
}
