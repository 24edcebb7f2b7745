//! The ledger of sources, read once from the text that is built in.

use super::SourceId;
use serde::Deserialize;
use std::sync::LazyLock;

/// The ledger as text: `resources/sources.ron`, built in so that the core reads no file.
pub const LEDGER_TEXT: &str = include_str!("../../resources/sources.ron");

/// One source: who wrote it, what it is called, and how much of it was seen.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
pub struct SourceRow {
    /// The name by which records refer to it.
    pub id: SourceId,
    /// Author, title, place of publication, year.
    pub title: String,
    /// What was seen of it: the text, an abstract, a quotation, nothing.
    pub seen: String,
}

/// The ledger could not be read.
#[derive(Debug, thiserror::Error)]
#[error("the ledger of sources, resources/sources.ron, cannot be read: {0}; correct the file and build again")]
pub struct LedgerError(#[from] ron::error::SpannedError);

/// Returns every row of the ledger, in the file's order.
///
/// # Errors
/// [`LedgerError`] if the built-in text is not a list of rows.
///
/// # Example
/// ```
/// let rows = vatsketch::source::ledger()?;
/// assert!(rows.iter().any(|row| row.title.contains("Pitzer")));
/// # Ok::<(), &vatsketch::source::LedgerError>(())
/// ```
pub fn ledger() -> Result<&'static [SourceRow], &'static LedgerError> {
    ROWS.as_ref().map(Vec::as_slice)
}

/// The rows, read when they are first asked for.
static ROWS: LazyLock<Result<Vec<SourceRow>, LedgerError>> = LazyLock::new(|| Ok(ron::from_str(LEDGER_TEXT)?));
