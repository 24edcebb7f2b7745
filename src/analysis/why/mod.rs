//! Why a figure is what it is: the choices that enter with their values, the law, where it comes from, its constants, its spread.

mod draining;
mod drying;
mod germs;
mod jar;
mod link;
mod milk;
mod souring;
mod vat;

pub use link::Link;

use super::moved::FigureError;
use crate::batch::Batch;
use crate::design::{Field, Value, fields, nearest};
use crate::figure::{Figure, current_key, figures};
use crate::process::place_warmth;
use crate::source::{AnyCorrelation, Constant, SourceRow, ledger};
use std::collections::BTreeSet;

/// The chain behind one figure, down to what enters directly; each figure that it rests on has a chain of its own.
#[derive(Clone, Debug)]
pub struct Why {
    /// The figure, with its value, its law in one line and its likely range.
    pub figure: Figure,
    /// The choices that enter at this link and have an effect in this design, each with its value.
    pub inputs: Vec<(&'static Field, Value)>,
    /// The figures that enter.
    pub rests_on: Vec<Figure>,
    /// Choices of earlier stages and have an effect in this design.
    pub further_inputs: Vec<(&'static Field, Value)>,
    /// The row of the ledger that the law comes from, if the ledger can be read.
    pub source: Option<SourceRow>,
    /// Where in that source.
    pub locator: &'static str,
    /// The constants that enter.
    pub constants: Vec<Constant>,
    /// The correlations that enter.
    pub correlations: Vec<AnyCorrelation>,
}

/// Returns every link, in the trade's order.
pub fn links() -> impl Iterator<Item = &'static Link> {
    [milk::LINKS, vat::LINKS, souring::LINKS, draining::LINKS, drying::LINKS, jar::LINKS, germs::LINKS].into_iter().flatten()
}

/// Returns the link of a figure.
#[must_use]
pub fn link(key: &str) -> Option<&'static Link> {
    let key = current_key(key);
    links().find(|link| link.figures.contains(&key))
}

/// Returns the constants that enter at a link: its own, and how far each place may be off whose temperature is chosen there.
pub fn constants_of(link: &Link) -> impl Iterator<Item = Constant> {
    let places = link.inputs.iter().filter_map(|choice| place_warmth(choice));
    let mut seen = BTreeSet::new();
    link.constants.iter().flat_map(|list| list.iter().copied()).chain(places).filter(move |record| seen.insert(record.name))
}

/// Returns the keys of all choices that enter a figure, at its own link and further up.
///
/// # Example
/// ```
/// let inputs = vatsketch::analysis::inputs_of("drained_curd_kg");
/// assert!(inputs.contains("fat_target_percent") && !inputs.contains("jar_width_mm"));
/// ```
#[must_use]
pub fn inputs_of(key: &str) -> BTreeSet<&'static str> {
    let (mut inputs, mut seen) = (BTreeSet::new(), BTreeSet::new());
    let mut open: Vec<&Link> = link(key).into_iter().collect();
    while let Some(link) = open.pop() {
        inputs.extend(link.inputs);
        for figure in link.rests_on {
            if seen.insert(*figure) {
                open.extend(self::link(figure));
            }
        }
    }
    inputs
}

/// Returns why a figure of a batch is what it is.
///
/// # Errors
/// [`FigureError::Unknown`] if this batch has no such figure.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, analysis::why, design::Design};
/// let why = why(&batch(&Design::default())?, "drained_curd_kg").unwrap();
/// assert!(why.rests_on.iter().any(|figure| figure.key == "casein_percent"));
/// assert!(why.constants.iter().any(|record| record.name == "Casein kept by the curd"));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
pub fn why(batch: &Batch, key: &str) -> Result<Why, FigureError> {
    let (all, key) = (figures(batch), current_key(key));
    let found = all.iter().find(|figure| figure.key == key).cloned().zip(link(key));
    let Some((figure, link)) = found else {
        let nearest = nearest(key, all.iter().map(|figure| figure.key));
        return Err(FigureError::Unknown { key: key.to_owned(), nearest });
    };
    let design = &batch.design;
    let with_value = |wanted: &dyn Fn(&str) -> bool| {
        let chosen = fields().filter(|field| wanted(field.key) && (field.used)(design));
        chosen.map(|field| (field, field.get(design))).collect::<Vec<_>>()
    };
    let everywhere = inputs_of(key);
    Ok(Why {
        inputs: with_value(&|key| link.inputs.contains(&key)),
        further_inputs: with_value(&|key| everywhere.contains(key) && !link.inputs.contains(&key)),
        rests_on: link.rests_on.iter().filter_map(|key| all.iter().find(|figure| figure.key == *key).cloned()).collect(),
        source: ledger().ok().and_then(|rows| rows.iter().find(|row| row.id == link.source).cloned()),
        locator: link.locator,
        constants: constants_of(link).collect(),
        correlations: link.correlations.iter().flat_map(|list| list.iter().copied()).collect(),
        figure,
    })
}
