//! How long a step takes, as plain words.

use crate::report::Target;

/// Returns how long a step takes as a sentence of its own behind it: that it is the least of a time must not be lost.
pub(super) fn lasting(lasts: &Target) -> String {
    let mut label = lasts.label.chars();
    let first = label.next().map(|letter| letter.to_uppercase().to_string()).unwrap_or_default();
    format!(" {first}{} {}.", label.as_str(), lasts.amount_words())
}
