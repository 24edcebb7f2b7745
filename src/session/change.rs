//! The line that says what the last change did.

use crate::batch::Batch;
use crate::design::{Design, SuppliesDesign, WeekDesign, lower_first};
use crate::figure::{Figure, Reading, Weight, figures};

/// Figures that are named at most.
const MOST_NAMED: usize = 3;

/// Returns what a change did, in one line: the change itself, then the figures that it moved most.
///
/// Only the figures that are always shown count, and only if they move by more than their rounding.
#[must_use]
pub fn what_changed(name: &str, before: Option<&Batch>, after: &Batch) -> String {
    let Some(before) = before else { return name.to_owned() };
    let (old, new) = (figures(before), figures(after));
    let mut moved: Vec<(f64, String)> =
        new.iter().filter(|figure| figure.weight == Weight::Lead).filter_map(|figure| moved(&old, figure)).collect();
    moved.sort_by(|one, other| other.0.total_cmp(&one.0));
    let named: Vec<String> = moved.into_iter().take(MOST_NAMED).map(|(_, words)| words).collect();
    match named.as_slice() {
        // What touches only the week or the supplies is not expected to move a figure of the vat.
        [] if same_vat(&before.design, &after.design) => name.to_owned(),
        [] => format!("{name}: no main figure changes"),
        named => format!("{name}: {}", named.join(", ")),
    }
}

/// Returns whether two designs differ in nothing but the week and the supplies.
fn same_vat(one: &Design, other: &Design) -> bool {
    let vat = |design: &Design| Design { week: WeekDesign::default(), supplies: SuppliesDesign::default(), ..design.clone() };
    vat(one) == vat(other)
}

/// Returns how far a figure moved, relative to its size, and that in words; nothing if it shows the same as before.
///
/// A number that became words, or words that became a number, went as far as can be: a time that is never reached any more is named first.
fn moved(old: &[Figure], figure: &Figure) -> Option<(f64, String)> {
    let before = old.iter().find(|before| before.key == figure.key)?;
    let (far, from, to) = match (&before.reading, &figure.reading) {
        (Reading::Number(_), Reading::Number(_)) if before.text() == figure.text() => return None,
        (Reading::Number(from), Reading::Number(to)) => {
            let size = from.abs().max(to.abs()).max(f64::MIN_POSITIVE);
            ((to - from).abs() / size, before.text(), figure.text())
        }
        (Reading::Number(_), Reading::Words(words)) => (f64::INFINITY, before.text(), in_short(words).to_owned()),
        (Reading::Words(words), Reading::Number(_)) => (f64::INFINITY, in_short(words).to_owned(), figure.text()),
        _ => return None,
    };
    Some((far, format!("{} {from} → {to}", lower_first(figure.label))))
}

/// Returns what stands before the reason: "never" of "never, it settles at pH 4.48".
fn in_short(words: &str) -> &str {
    words.split_once(", ").map_or(words, |(short, _)| short)
}
