//! What a step is to reach, and how long it takes, as plain words.

use crate::report::Target;

/// Returns how long a step takes as a sentence of its own behind it: that it is the least of a time must not be lost.
pub(super) fn lasting(lasts: &Target) -> String {
    let mut label = lasts.label.chars();
    let first = label.next().map(|letter| letter.to_uppercase().to_string()).unwrap_or_default();
    format!(" {first}{} {}.", label.as_str(), amount(lasts))
}

/// Returns what is to be reached, with its amount.
pub(super) fn aim(target: &Target) -> String {
    format!("{}: {}", target.label, amount(target))
}

/// Returns an amount with how near is near enough, and its kitchen measure.
pub(super) fn amount(target: &Target) -> String {
    let tolerance = match target.tolerance() {
        Some(around) if around.starts_with('±') => format!(" {around}"),
        Some(range) => format!(" ({range})"),
        None => String::new(),
    };
    let kitchen = target.kitchen.as_ref().map(|kitchen| format!(" ({kitchen})")).unwrap_or_default();
    format!("{}{tolerance}{kitchen}", target.amount)
}
