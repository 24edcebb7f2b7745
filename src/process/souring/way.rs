//! The souring of milk, curd and cheese from the start of the warming to the end of the drying.

use super::SourPoint;
use crate::process::{DrainingOutcome, DryingOutcome, VatOutcome};

/// Returns how milk, curd and cheese sour, in hours from the start of the warming, as far as the stages were calculated.
///
/// Where one stage follows another there are two points at the same hour: the curd is another matter than its milk, and a pH may have been measured.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, process::souring_on_the_way};
/// let batch = batch(&Design::default())?;
/// let way = souring_on_the_way(batch.vat.done().unwrap(), batch.draining.done(), None);
/// assert!(way.first().unwrap().ph > way.last().unwrap().ph);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn souring_on_the_way(vat: &VatOutcome, drained: Option<&DrainingOutcome>, dried: Option<&DryingOutcome>) -> Vec<SourPoint> {
    let ladled_h = vat.to_ladle_min / 60.0;
    let unmoulded_h = ladled_h + drained.map_or(0.0, |drained| drained.draining_h);
    let later = |from_h: f64| move |point: &SourPoint| SourPoint { at_h: from_h + point.at_h, ..*point };
    let in_moulds = drained.into_iter().flat_map(|drained| &drained.souring).map(later(ladled_h));
    let in_air = dried.into_iter().flat_map(|dried| &dried.souring).map(later(unmoulded_h));
    vat.souring.iter().copied().chain(in_moulds).chain(in_air).collect()
}

/// Returns the pH at an hour along some points, straight between them; none outside them.
#[must_use]
pub fn ph_at(points: &[SourPoint], hour: f64) -> Option<f64> {
    points.iter().zip(points.iter().skip(1)).find(|(before, after)| before.at_h <= hour && hour <= after.at_h).map(
        |(before, after)| {
            let length_h = after.at_h - before.at_h;
            let share = if length_h > 0.0 { (hour - before.at_h) / length_h } else { 1.0 };
            before.ph + share * (after.ph - before.ph)
        },
    )
}
