//! The hour at which a cut through a cheese tells most.

use super::SectionKey;
use super::section::parts;
use crate::batch::Batch;
use crate::process::{DiscFrame, GermLine};

/// Returns the moment at which the places of a cheese differ most, as a share of the time that the quantity is known for: there a cut has most to
/// show. The end where nothing differs or nothing is known.
///
/// The measure is the variance of the quantity over the places of the cheese, each place counted alike.
///
/// # Arguments
/// * `germ`: as for [`section`](super::section())
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, curve::{telling_share, SectionKey}};
/// // While a cheese dries, rim and centre part and come together again: the end is not where they differ most.
/// let share = telling_share(&batch(&Design::default())?, SectionKey::Moisture, None);
/// assert!((0.0..=1.0).contains(&share));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn telling_share(batch: &Batch, key: SectionKey, germ: Option<GermLine>) -> f64 {
    let (parts, _) = parts(batch, key, germ);
    let moments = parts.iter().flat_map(|part| part.field.frames.iter().map(|frame| (part.from_h + frame.at_h, variance(frame))));
    let last_h = moments.clone().map(|(at_h, _)| at_h).fold(0.0, f64::max);
    let most = moments.filter(|(_, variance)| *variance > 0.0).max_by(|one, other| one.1.total_cmp(&other.1));
    most.filter(|_| last_h > 0.0).map_or(1.0, |(at_h, _)| at_h / last_h)
}

/// Returns the variance of a quantity over the places of a cheese.
fn variance(frame: &DiscFrame) -> f64 {
    let count = frame.values.len().max(1) as f64;
    let mean = frame.values.iter().map(|value| f64::from(*value)).sum::<f64>() / count;
    frame.values.iter().map(|value| (f64::from(*value) - mean).powi(2)).sum::<f64>() / count
}
