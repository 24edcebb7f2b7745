//! The line that says what the last change did.

use crate::batch::{Batch, Reading, Readout, Weight, readouts};
use crate::design::lower_first;

/// Figures that are named at most.
const MOST_NAMED: usize = 3;

/// Returns what a change did, in one line: the change itself, then the figures that it moved most.
///
/// Only the figures that are always shown count, and only if they move by more than their rounding.
#[must_use]
pub fn what_changed(name: &str, before: Option<&Batch>, after: &Batch) -> String {
    let Some(before) = before else { return name.to_owned() };
    let (old, new) = (readouts(before), readouts(after));
    let mut moved: Vec<(f64, String)> =
        new.iter().filter(|figure| figure.weight == Weight::Lead).filter_map(|figure| moved(&old, figure)).collect();
    moved.sort_by(|one, other| other.0.total_cmp(&one.0));
    let named: Vec<String> = moved.into_iter().take(MOST_NAMED).map(|(_, words)| words).collect();
    if named.is_empty() { format!("{name}: no main figure moves") } else { format!("{name}: {}", named.join(", ")) }
}

/// Returns how far a figure moved, relative to its size, and that in words; nothing if it shows the same as before.
fn moved(old: &[Readout], figure: &Readout) -> Option<(f64, String)> {
    let before = old.iter().find(|before| before.key == figure.key)?;
    let (Reading::Number(from), Reading::Number(to)) = (&before.reading, &figure.reading) else { return None };
    if before.text() == figure.text() {
        return None;
    }
    let size = from.abs().max(to.abs()).max(f64::MIN_POSITIVE);
    Some(((to - from).abs() / size, format!("{} {} → {}", lower_first(figure.label), before.text(), figure.text())))
}
