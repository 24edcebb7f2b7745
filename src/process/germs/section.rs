//! The rings of a section: which is the centre, what each weighs, and how a quantity is carried from one way of cutting up to another.

use crate::numeric::Half;
use crate::process::DiscField;

/// Returns the indices of the places at the centre and at the rim half-way up.
pub(super) fn centre_and_rim(field: &DiscField) -> (usize, usize) {
    let heights = field.heights_mm.len();
    let middle = if field.half == Half::Upper { 0 } else { heights / 2 };
    (middle, field.radii_mm.len().saturating_sub(1) * heights + middle)
}

/// Returns the volume that each place owns, in some unit: between the midpoints to its neighbours.
pub(super) fn weights(field: &DiscField) -> Vec<f64> {
    let edges = |nodes: &[f64]| -> Vec<f64> {
        let between = nodes.iter().zip(nodes.iter().skip(1)).map(|(low, high)| 0.5 * (low + high));
        nodes.first().copied().into_iter().chain(between).chain(nodes.last().copied()).collect()
    };
    let (radii, heights) = (edges(&field.radii_mm), edges(&field.heights_mm));
    let rings = radii.iter().zip(radii.iter().skip(1)).map(|(inner, outer)| outer * outer - inner * inner);
    let layers: Vec<f64> = heights.iter().zip(heights.iter().skip(1)).map(|(low, high)| high - low).collect();
    rings.flat_map(|ring| layers.iter().map(move |layer| ring * layer).collect::<Vec<_>>()).collect()
}

/// Returns a quantity of one field at the places of another that shows the same cheese at other places; the places keep their share of radius and
/// height. Where a whole cheese becomes the half of one, the greater of both halves counts; where it becomes one of a pile, its heights stand `pile` times
/// above each other.
pub(super) fn carried(from: &DiscField, values: &[f64], to: &DiscField, pile: u32) -> Vec<f64> {
    let share = |nodes: &[f64], at: f64| {
        let most = nodes.last().copied().unwrap_or(1.0);
        if most > 0.0 { at / most } else { 0.0 }
    };
    let at = |radius: f64, above_middle: f64| {
        let height = if from.half == Half::Upper { above_middle.abs() } else { 0.5 + 0.5 * above_middle };
        between(from, values, radius, height)
    };
    to.radii_mm
        .iter()
        .flat_map(|radius| to.heights_mm.iter().map(move |height| (*radius, *height)))
        .map(|(radius_mm, height_mm)| {
            let (radius, height) = (share(&to.radii_mm, radius_mm), share(&to.heights_mm, height_mm));
            match to.half {
                Half::Upper => {
                    let height = in_own_cheese(height, pile);
                    at(radius, height).max(at(radius, -height))
                }
                Half::Whole => at(radius, 2.0 * height - 1.0),
            }
        })
        .collect()
}

/// Returns the height above the middle of the cheese in which a place lies, as a share of its half, from that above the middle of the pile.
fn in_own_cheese(above_middle: f64, pile: u32) -> f64 {
    let in_cheeses = 0.5 * above_middle * f64::from(pile);
    // The middle of an odd pile is that of a cheese, the middle of an even one lies between two.
    let from_its_floor = if pile % 2 == 1 { in_cheeses + 0.5 } else { in_cheeses };
    // The top of the pile is the top of the last cheese, not the floor of one above.
    let floor = from_its_floor.floor().min(f64::from(pile.div_ceil(2)) - 1.0);
    2.0 * (from_its_floor - floor) - 1.0
}

/// Returns a quantity between the places of a field, at shares of its radius and of its height.
fn between(field: &DiscField, values: &[f64], radius: f64, height: f64) -> f64 {
    let heights = field.heights_mm.len();
    let ((i, next_i, along), (j, next_j, up)) = (around(&field.radii_mm, radius), around(&field.heights_mm, height));
    let of = |i: usize, j: usize| values.get(i * heights + j).copied().unwrap_or_default();
    let low = of(i, j) + up * (of(i, next_j) - of(i, j));
    let high = of(next_i, j) + up * (of(next_i, next_j) - of(next_i, j));
    low + along * (high - low)
}

/// Returns the nodes before and after a share of the last one, and how far between them it lies.
fn around(nodes: &[f64], share: f64) -> (usize, usize, f64) {
    let at = share * nodes.last().copied().unwrap_or_default();
    let after = nodes.partition_point(|node| *node <= at).min(nodes.len().saturating_sub(1));
    let before = after.saturating_sub(1);
    match (nodes.get(before), nodes.get(after)) {
        (Some(low), Some(high)) if high > low => (before, after, ((at - low) / (high - low)).clamp(0.0, 1.0)),
        _ => (after, after, 0.0),
    }
}
