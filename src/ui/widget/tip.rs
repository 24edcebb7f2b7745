//! Tips: what is said where the pointer rests.

use crate::words::explained;

/// Returns the tip of a label: what it means, and the word in it that needs explaining, if there is one.
pub(in crate::ui) fn tip(label: &str, means: &str) -> String {
    explained(label).map_or_else(
        || means.to_owned(),
        |term| {
            let means = if means.is_empty() { String::new() } else { format!("{means}\n") };
            format!("{means}{}: {}", term.term, term.means)
        },
    )
}
