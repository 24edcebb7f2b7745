//! That a design uses a kitchen, in words.

use super::number_words;
use crate::design::{Design, KitchenEstimate, KnownKitchen};
use crate::kitchen::Unknown;
use crate::record::BatchRecord;

/// Returns that a design is calculated for a known kitchen, and how many of its values say nothing of this design; none where no kitchen is known.
///
/// # Example
/// ```
/// use vatsketch::design::{Design, KnownKitchen};
/// use vatsketch::words::kitchen_line;
/// let mut design = Design::default();
/// assert_eq!(kitchen_line(&design), None);
/// design.use_kitchen(KnownKitchen { name: "cellar".to_owned(), learned_from: vec![], measurements: 12, estimates: vec![] })?;
/// assert_eq!(
///     kitchen_line(&design).unwrap(),
///     "Calculated for the kitchen “cellar”, from 12 measurements in 0 batches. What they do not show is taken as in any kitchen."
/// );
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn kitchen_line(design: &Design) -> Option<String> {
    let kitchen = design.kitchen.as_ref()?;
    let name = if kitchen.name.is_empty() { "your kitchen".to_owned() } else { format!("the kitchen “{}”", kitchen.name) };
    let (measurements, batches) = (kitchen.measurements as usize, kitchen.learned_from.len());
    let (measurements, batches) =
        (counted_in(measurements, "measurement", "measurements"), counted_in(batches, "batch", "batches"));
    let unused = match kitchen.estimates.iter().filter(|estimate| !is_used(estimate, design)).count() {
        0 => String::new(),
        1 => " One of its values belongs to another way of making, such as another culture, and is not used.".to_owned(),
        more => format!(" {more} of its values belong to another way of making, such as another culture, and are not used."),
    };
    Some(format!(
        "Calculated for {name}, from {measurements} in {batches}. What they do not show is taken as in any kitchen.{unused}"
    ))
}

/// Returns whether a design is calculated with an estimate of its kitchen.
fn is_used(estimate: &KitchenEstimate, design: &Design) -> bool {
    match Unknown::from_key(&estimate.key) {
        Some(Unknown::Constant(parameter)) => parameter.known(design).is_some(),
        Some(Unknown::DripEnd) => true,
        None => false,
    }
}

fn counted_in(count: usize, one: &str, more: &str) -> String {
    format!("{count} {}", if count == 1 { one } else { more })
}

/// How what was written down since comes into the design.
const AGAIN: &str = "Learn again, then calculate the design for your kitchen again.";

/// Returns what was written down since a kitchen was learned; none where nothing was, or where it was learned from another log.
#[must_use]
pub fn kitchen_since(kitchen: &KnownKitchen, batches: &[BatchRecord]) -> Option<String> {
    let learned =
        |batch: &BatchRecord| kitchen.learned_from.iter().find(|own| own.number == batch.number && own.begun == batch.begun);
    let known = batches.iter().filter_map(|batch| Some((batch, learned(batch)?)));
    let grown = known.clone().any(|(batch, own)| batch.entries.len() > own.entries as usize);
    let newest = known.map(|(batch, _)| batch.begun).max()?;
    let later = batches.iter().filter(|batch| batch.begun > newest).count();
    match (grown, later) {
        (false, 0) => None,
        (true, 0) => Some(format!("You have written more in these batches since. {AGAIN}")),
        (_, 1) => Some(format!("You have begun one more batch since. Once it has measurements, tick it. {AGAIN}")),
        (_, more) => Some(format!("You have begun {more} more batches since. Tick those that have measurements. {AGAIN}")),
    }
}

/// Returns a number to three figures, which is more than any of these is known to.
///
/// # Example
/// ```
/// assert_eq!(vatsketch::words::three_figures(0.123_456), "0.123");
/// assert_eq!(vatsketch::words::three_figures(1234.0), "1230");
/// ```
#[must_use]
pub fn three_figures(value: f64) -> String {
    // By its text, so that no rounding of a power of ten shows.
    number_words(format!("{value:.2e}").parse().unwrap_or(value))
}
