//! The chain behind a figure in words: what it is, the choices and figures that enter, the law, its source, its constants, its spread.

use super::record::{RecordRow, constant_row, correlation_row};
use crate::analysis::Why;
use crate::design::Value;
use crate::source::ledger;
use crate::units::Units;

/// The chain behind a figure, ready to be written down.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WhyWords {
    /// The figure with its value.
    pub figure: String,
    /// Its likely range, and what that means.
    pub spread: String,
    /// The law in one line.
    pub law: String,
    /// Where the law comes from.
    pub source: String,
    /// The choices that enter here: key, label and value.
    pub inputs: Vec<(&'static str, &'static str, String)>,
    /// The figures that enter: key, label and value.
    pub rests_on: Vec<(&'static str, &'static str, String)>,
    /// The choices of earlier stages that enter: key, label and value.
    pub further_inputs: Vec<(&'static str, &'static str, String)>,
    /// The constants and formulae that enter.
    pub records: Vec<RecordRow>,
}

/// Returns the chain behind a figure in words.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, analysis::why, design::Design, report::why_words, units::Units};
/// let words = why_words(&why(&batch(&Design::default())?, "drained_cheese_g").unwrap(), Units::default());
/// assert!(words.spread.starts_with("rule of thumb") && !words.records.is_empty());
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn why_words(why: &Why, units: Units) -> WhyWords {
    let figure = &why.figure;
    // The ledger is built in and a test reads it.
    let rows = ledger().unwrap_or_default();
    let spread = figure.likely_text(units).map_or_else(
        || "no rule of thumb: as uncertain as what goes into it".to_owned(),
        |likely| {
            if figure.by_thumb {
                format!("rule of thumb: {likely}")
            } else {
                format!("likely: {likely}, by runs at the ends of what is likely")
            }
        },
    );
    let source = why.source.as_ref().map_or_else(String::new, |row| format!("{} (seen: {}); ", row.title, row.seen));
    let plain = |inputs: &[(&'static crate::design::Field, Value)]| {
        inputs.iter().map(|(field, value)| (field.key, field.label, units.choice_text(field, *value))).collect::<Vec<_>>()
    };
    let constants = why.constants.iter().map(|record| constant_row(record, rows));
    let correlations = why.correlations.iter().map(|record| correlation_row(record, rows));
    WhyWords {
        figure: format!("{}: {}", figure.label_in(units), figure.text_in(units)),
        spread,
        law: units.told(figure.law),
        source: format!("{source}{}", why.locator),
        inputs: plain(&why.inputs),
        further_inputs: plain(&why.further_inputs),
        rests_on: why.rests_on.iter().map(|figure| (figure.key, figure.label, figure.text_in(units))).collect(),
        records: constants.chain(correlations).collect(),
    }
}
