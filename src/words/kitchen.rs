//! A kitchen that a design uses, in words.

use super::number_words;
use crate::design::{Believed, Design, KitchenEstimate, KnownKitchen};
use crate::kitchen::Unknown;
use crate::process::Distribution;
use crate::record::BatchRecord;

/// What the log has told of one constant, before and now.
#[derive(Clone, Debug, PartialEq)]
pub struct KitchenRow {
    /// What it is, in a maker's words.
    pub what: String,
    /// The most likely value with its unit.
    pub value: String,
    /// Between what it lies in eight cases of ten.
    pub now: (f64, f64),
    /// The same before any batch was logged.
    pub before: (f64, f64),
    /// What it lies between at all, for a picture.
    pub ends: (f64, f64),
}

impl KitchenRow {
    /// Returns a range in words: "0.82–1.1".
    #[must_use]
    pub fn range(of: (f64, f64)) -> String {
        format!("{}–{}", three_figures(of.0), three_figures(of.1))
    }
}

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

/// Returns what is known of a kitchen, row by row.
#[must_use]
pub fn kitchen_rows(kitchen: &KnownKitchen) -> Vec<KitchenRow> {
    kitchen.estimates.iter().map(row).collect()
}

/// Units that a kitchen has; a number in any other is said over what is usual.
const KITCHEN_UNITS: [&str; 8] = ["%", "h", "min", "°C", "g", "kg", "L", "mL"];

/// The unit of all others.
const USUAL: &str = "times the usual";

fn row(estimate: &KitchenEstimate) -> KitchenRow {
    let KitchenEstimate { key, unit, now, before } = estimate;
    let (unit, over) = if KITCHEN_UNITS.contains(&unit.as_str()) { (unit.as_str(), 1.0) } else { (USUAL, before.value) };
    // Two figures of what is usual are as much as any log tells.
    let said = |number: f64| if unit == USUAL { two_figures(number / over) } else { number };
    let over = |(least, most): (f64, f64)| (said(least), said(most));
    let (value, _) = over((now.value, now.value));
    KitchenRow {
        // A newer program may know more of them.
        what: Unknown::from_key(key).map_or_else(|| key.clone(), |unknown| unknown.words().to_owned()),
        value: format!("{} {unit}", three_figures(value)),
        now: over(likely(*now, *before)),
        before: over(likely(*before, *before)),
        ends: over((before.least, before.most)),
    }
}

/// Returns between what lie eight of ten draws from a range, drawn as that before it is.
fn likely(of: Believed, before: Believed) -> (f64, f64) {
    let Believed { value, least, most } = of;
    let drawn = Distribution::between(before.least / before.value, before.most / before.value);
    let at = |share: f64| value * drawn.at_share(least / value, most / value, share);
    (at(0.1), at(0.9))
}

fn two_figures(number: f64) -> f64 {
    // By its text, so that no rounding of a power of ten shows.
    format!("{number:.1e}").parse().unwrap_or(number)
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
