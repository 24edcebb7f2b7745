//! The laws behind the figures of the paper, those of one law together.

use crate::analysis::link;
use crate::batch::Batch;
use crate::figure::{Figure, Weight, figures};
use crate::source::ledger;

/// One law, and the figures that it gives.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LawRow {
    /// Names of the figures.
    pub figures: Vec<&'static str>,
    /// The law in one line.
    pub law: &'static str,
    /// Where it comes from.
    pub source: String,
}

/// Returns the laws behind the main figures of a batch, in the trade's order.
pub(super) fn main_laws(batch: &Batch) -> Vec<LawRow> {
    of(batch, |figure| figure.weight == Weight::Lead)
}

/// Returns the laws behind every figure of a batch, in the trade's order.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, report::laws};
/// let laws = laws(&batch(&Design::default())?);
/// assert!(laws.iter().any(|row| row.figures.contains(&"Weight lost in drying") && row.source.contains("Diffusion")));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn laws(batch: &Batch) -> Vec<LawRow> {
    of(batch, |_| true)
}

fn of(batch: &Batch, wanted: impl Fn(&Figure) -> bool) -> Vec<LawRow> {
    // The ledger is built in and a test reads it; a paper without the titles of its laws is still a paper.
    let ledger = ledger().unwrap_or_default();
    let mut rows: Vec<LawRow> = Vec::new();
    for figure in figures(batch).iter().filter(|figure| wanted(figure)) {
        let Some(link) = link(figure.key) else { continue };
        let title = ledger.iter().find(|row| row.id == link.source).map_or("", |row| row.title.as_str());
        // Some titles name the place too.
        let source = if title.contains(link.locator) { title.to_owned() } else { format!("{title}; {}", link.locator) };
        match rows.iter_mut().find(|row| row.law == figure.law && row.source == source) {
            Some(row) => row.figures.push(figure.label),
            None => rows.push(LawRow { figures: vec![figure.label], law: figure.law, source }),
        }
    }
    rows
}
