//! The words of one caution.

use super::number::{quantity, value};
use crate::caution::COLD_DAYS;
use crate::law::growth::{COLD_ENOUGH, TABLE_B_PH};

/// One caution in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CautionWords {
    /// What is the matter.
    pub what: String,
    /// What the maker can do about it.
    pub remedy: String,
    /// Both in at most seventy letters, for the page that hangs in the kitchen, the calendar and the foot.
    pub short: String,
}

/// Returns the words of a caution.
pub(super) fn said(what: impl Into<String>, remedy: impl Into<String>, short: impl Into<String>) -> CautionWords {
    CautionWords { what: what.into(), remedy: remedy.into(), short: short.into() }
}

/// Returns how cold cold is, such as "4 °C or colder".
pub(super) fn cold() -> String {
    format!("{} or colder", quantity(&COLD_ENOUGH))
}

/// Returns where a meter must show which pH before the acid counts.
pub(super) fn measured() -> String {
    format!("a pH meter shows less than pH {} at the centre of a cheese and in a blended sample", value(&TABLE_B_PH))
}

/// Returns the germs that may grow, as a sentence with a space before it; nothing if none of those listed may.
pub(super) fn may_grow(growers: &[&str]) -> String {
    if growers.is_empty() { String::new() } else { format!(" These germs may grow there: {}.", growers.join(", ")) }
}

/// Returns how long food without acid is kept at most, as a sentence.
pub(super) fn discard() -> String {
    format!(
        "Unless {}, keep it no longer than {} days, the day of making counted (the most that food-service rules allow, whatever the plan says), and then discard it.",
        measured(),
        value(&COLD_DAYS)
    )
}
