//! What the maker must be told, each caution with the choice that causes it.

mod drying;
mod keeping;
mod milk;
mod pickling;
mod salting;
mod stopped;
mod time;
mod vat;

pub use time::hours_in_zone;

use super::Batch;
use crate::source::SourceId;

/// How loudly a caution is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// Good to know.
    Note,
    /// Something may go wrong.
    Caution,
    /// Somebody may be hurt, or the batch will be lost.
    Stop,
}

impl Severity {
    /// Returns the word that stands before the caution.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Note => "Note",
            Self::Caution => "Caution",
            Self::Stop => "Stop",
        }
    }
}

/// One caution.
#[derive(Clone, Debug, PartialEq)]
pub struct Caution {
    /// A name that never changes, for tests and JSON.
    pub key: &'static str,
    /// How loudly it is said.
    pub severity: Severity,
    /// The input that causes it, if it is one.
    pub caused_by: Option<&'static str>,
    /// What is the matter, in one sentence.
    pub what: String,
    /// What would lessen it, in one sentence.
    pub remedy: String,
    /// Where that stands.
    pub source: SourceId,
}

impl Caution {
    fn new(
        key: &'static str,
        severity: Severity,
        caused_by: Option<&'static str>,
        source: SourceId,
        what: impl Into<String>,
        remedy: impl Into<String>,
    ) -> Self {
        Self { key, severity, caused_by, what: what.into(), remedy: remedy.into(), source }
    }
}

/// The constants of the cautions, one list a file.
pub(super) const CONSTANT_LISTS: [(&str, &[crate::source::Constant]); 6] = [
    ("moulds", time::CONSTANTS),
    ("milk and salt", milk::CONSTANTS),
    ("setting", vat::CONSTANTS),
    ("pepper", salting::CONSTANTS),
    ("dryness", drying::CONSTANTS),
    ("oil", keeping::CONSTANTS),
];

/// Returns the value of an input from which a caution is likely, where that does not depend on the other inputs.
///
/// # Example
/// ```
/// assert_eq!(vatsketch::batch::caution_begins("calcium_dose_percent"), Some(0.02));
/// assert_eq!(vatsketch::batch::caution_begins("milk_l"), None);
/// ```
#[must_use]
pub fn caution_begins(key: &str) -> Option<f64> {
    match key {
        "calcium_dose_percent" => Some(crate::law::calcium::LEGAL_LIMIT.value),
        "draining_temperature_c" => Some(crate::law::growth::COLD_DRAINING.value),
        "acid_g_per_100ml" => Some(crate::law::acidity::LEAST_VINEGAR.value),
        "pickling_temperature_c" | "keeping_temperature_c" => Some(crate::law::growth::COLD_ENOUGH.value),
        "bath_set_temperature_c" => Some(crate::law::bath::DEPOSITS_BEGIN.value),
        "cabinet_temperature_c" | "day_temperature_c" => Some(crate::law::growth::SERVICE_WARM.value),
        _ => None,
    }
}

/// Returns every caution of a batch, the gravest first; those of one severity in the order of the stages.
///
/// # Example
/// ```
/// use vatsketch::{batch::{batch, Severity}, design::Design};
/// let batch = batch(&Design::default())?;
/// assert_eq!(batch.cautions[0].severity, Severity::Stop);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn cautions(batch: &Batch) -> Vec<Caution> {
    let mut all = Vec::new();
    stopped::cautions(batch, &mut all);
    time::cautions(batch, &mut all);
    milk::cautions(batch, &mut all);
    vat::cautions(batch, &mut all);
    salting::cautions(batch, &mut all);
    drying::cautions(batch, &mut all);
    pickling::cautions(batch, &mut all);
    keeping::cautions(batch, &mut all);
    // The sort is stable, so the order of the stages stays within a severity.
    all.sort_by_key(|caution| std::cmp::Reverse(caution.severity));
    all
}
