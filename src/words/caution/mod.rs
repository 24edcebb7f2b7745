//! Every caution in words: in full for window and command line, in few words for the kitchen.

mod draining;
mod drying;
mod fresh;
mod germs;
mod hours;
mod keeping;
mod milk;
mod pickling;
mod salting;
mod souring;
mod stopped;
mod vat;

use super::said::CautionWords;
use crate::analysis::ComparedCaution;
use crate::caution::{Caution, CautionKind, Severity};
use crate::units::Units;

/// Returns a caution in words, its quantities as they are shown.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, caution::cautions, design::Design, units::Units, words::caution_words};
/// let batch = batch(&Design::default())?;
/// assert!(caution_words(&cautions(&batch)[0], Units::METRIC).what.contains("Listeria"));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn caution_words(caution: &Caution, units: Units) -> CautionWords {
    let CautionWords { what, remedy, short } = metric(caution);
    CautionWords { what: units.told(&what), remedy: units.told(&remedy), short: units.told(&short) }
}

/// Returns a caution in words and in the units of the calculation.
fn metric(caution: &Caution) -> CautionWords {
    match &caution.kind {
        CautionKind::Stopped(failed) => stopped::words(failed),
        CautionKind::Fresh(caution) => fresh::words(caution),
        CautionKind::Germs(caution) => germs::words(caution),
        CautionKind::Hours(caution) => hours::words(caution),
        CautionKind::Draining(caution) => draining::words(caution),
        CautionKind::Milk(caution) => milk::words(caution),
        CautionKind::Vat(caution) => vat::words(caution),
        CautionKind::Salting(caution) => salting::words(caution),
        CautionKind::Souring(caution) => souring::words(caution),
        CautionKind::Drying(caution) => drying::words(caution),
        CautionKind::Pickling(caution) => pickling::words(caution),
        CautionKind::Keeping(caution) => keeping::words(caution),
    }
}

/// The word before what no choice lifts.
const ALWAYS_TRUE: &str = "Always true";

/// Returns a caution in full on one line: how grave, what is the matter, what to do.
#[must_use]
pub fn caution_line(caution: &Caution, units: Units) -> String {
    let CautionWords { what, remedy, .. } = caution_words(caution, units);
    format!("{}: {what} {remedy}", caution_word(caution))
}

/// Returns what the second of two designs is told, where both have a caution and its words differ.
#[must_use]
pub fn said_of_b(compared: &ComparedCaution, units: Units) -> Option<String> {
    let of_b = caution_words(compared.of_b.as_ref()?, units).what;
    (of_b != caution_words(&compared.caution, units).what).then_some(of_b)
}

/// Returns the word before a caution: how grave it is, or that it is true of every cheese like this.
#[must_use]
pub const fn caution_word(caution: &Caution) -> &'static str {
    if caution.always { ALWAYS_TRUE } else { severity_word(caution.severity) }
}

/// Returns the word for a severity.
///
/// # Example
/// ```
/// use vatsketch::{caution::Severity, words::severity_word};
/// assert_eq!(severity_word(Severity::Stop), "Serious warning");
/// ```
#[must_use]
pub const fn severity_word(severity: Severity) -> &'static str {
    match severity {
        Severity::Note => "Note",
        Severity::Caution => "Caution",
        Severity::Stop => "Serious warning",
    }
}

/// Returns how many cautions of each severity there are, the gravest first; what is true of every cheese like this is not counted.
///
/// # Example
/// ```
/// use vatsketch::words::counted_words;
/// assert_eq!(counted_words(&[]), "No warning from this model, which proves nothing");
/// ```
#[must_use]
pub fn counted_words(cautions: &[Caution]) -> String {
    let count = |severity| cautions.iter().filter(|caution| !caution.always && caution.severity == severity).count();
    let kinds = [Severity::Stop, Severity::Caution, Severity::Note].map(|severity| (severity, count(severity)));
    let said: Vec<String> =
        kinds.into_iter().filter(|(_, count)| *count > 0).map(|(severity, count)| counted(severity, count)).collect();
    if said.is_empty() { "No warning from this model, which proves nothing".to_owned() } else { said.join(", ") }
}

/// Returns how many cautions of a severity there are.
///
/// # Example
/// ```
/// use vatsketch::{caution::Severity, words::counted};
/// assert_eq!(counted(Severity::Stop, 3), "3 serious warnings");
/// ```
#[must_use]
pub fn counted(severity: Severity, count: usize) -> String {
    let plural = if count == 1 { "" } else { "s" };
    format!("{count} {}{plural}", severity_word(severity).to_lowercase())
}
