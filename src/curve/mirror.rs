//! A field of which only the upper half is known, made whole by its mirror image.

use crate::numeric::Half;
use crate::process::DiscField;

/// Returns the heights from the underside to the top, those below the middle added where only the upper half is known.
pub(super) fn whole_heights(field: &DiscField) -> Vec<f64> {
    if field.half == Half::Whole {
        return field.heights_mm.clone();
    }
    let middle_mm = field.heights_mm.last().copied().unwrap_or(0.0);
    let below = field.heights_mm.iter().skip(1).rev().map(|mm| middle_mm - mm);
    below.chain(field.heights_mm.iter().map(|mm| middle_mm + mm)).collect()
}

/// Returns what is known of the places from the underside to the top, the mirror image below the middle added where only the upper half is known.
pub(super) fn whole<T: Copy>(field: &DiscField, values: &[T]) -> Vec<T> {
    if field.half == Half::Whole {
        return values.to_vec();
    }
    let columns = values.chunks_exact(field.heights_mm.len().max(1));
    columns.flat_map(|column| column.iter().skip(1).rev().chain(column).copied().collect::<Vec<T>>()).collect()
}
