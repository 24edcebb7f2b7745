//! The hour at which a cut through a cheese tells most.

use super::SectionKey;
use super::section::{Part, parts};
use crate::batch::Batch;
use crate::process::{DiscFrame, GermLine};

/// Share of the places of a cheese that are still seen.
const A_TENTH: f64 = 0.1;

/// Returns the moment at which a cut has most to show, as a share of the time that the quantity is known for; the end where nothing is known.
///
/// Of pH it is the last moment at which a tenth of the places of the cheese, each counted alike, is not below the first line that is drawn: there
/// one sees what the acid reaches last. Of everything else, and of a cheese that begins below that line, it is the moment at which the places
/// differ most, by their variance.
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
    if let Some(at_h) = last_unsoured_h(key, &parts).filter(|at_h| *at_h > 0.0 && last_h > 0.0) {
        return at_h / last_h;
    }
    let most = moments.filter(|(_, variance)| *variance > 0.0).max_by(|one, other| one.1.total_cmp(&other.1));
    most.filter(|_| last_h > 0.0).map_or(1.0, |(at_h, _)| at_h / last_h)
}

/// Returns the last hour at which a tenth of the places is not below the first line of a cut of pH.
fn last_unsoured_h(key: SectionKey, parts: &[Part<'_>]) -> Option<f64> {
    let line = *key.lines().first().filter(|_| key == SectionKey::Ph)?;
    let many = |frame: &&DiscFrame| {
        let above = frame.values.iter().filter(|value| f64::from(**value) >= line).count();
        above as f64 >= A_TENTH * frame.values.len() as f64
    };
    let last = |part: &Part<'_>| Some(part.from_h + part.field.frames.iter().rev().find(many)?.at_h);
    parts.iter().rev().find_map(last)
}

/// Returns the variance of a quantity over the places of a cheese.
fn variance(frame: &DiscFrame) -> f64 {
    let count = frame.values.len().max(1) as f64;
    let mean = frame.values.iter().map(|value| f64::from(*value)).sum::<f64>() / count;
    frame.values.iter().map(|value| (f64::from(*value) - mean).powi(2)).sum::<f64>() / count
}
