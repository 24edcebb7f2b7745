//! The figures for another program: one object a stage, numbers in full.

use super::printable::is_printable;
use crate::batch::{Batch, Progress};
use crate::caution::{Caution, Severity, cautions};
use crate::design::{Believed, KnownKitchen, Stage};
use crate::figure::{Figure, GermTable, Reading, every_key, figures, germ_table};
use crate::process::GermLine;
use crate::units::Units;
use crate::words::{CautionWords, FROM_A_MODEL, POTENTIAL_GROWTH, caution_words};
use serde_json::{Map, Value, json as object};

/// Returns the figures of a batch as JSON over several lines: how each stage ended and its figures by key, likely ranges, cautions, balance.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, export::json};
/// let text = json(&batch(&Design::default())?);
/// assert!(text.contains("\"vat_milk_l\": "));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn json(batch: &Batch) -> String {
    json_text(json_signed(json_members(batch)))
}

/// Returns the members of that object, without what wrote it.
#[must_use]
pub fn json_members(batch: &Batch) -> Map<String, Value> {
    let figures = figures(batch);
    let mut all = Map::new();
    all.insert("title".to_owned(), object!(batch.design.title));
    all.extend(batch.design.kitchen.as_ref().map(|kitchen| ("kitchen".to_owned(), json_kitchen(kitchen))));
    for stage in Stage::ALL {
        all.insert(stage.key().to_owned(), json_stage(batch, stage, &figures));
    }
    let likely = figures.iter().filter(|figure| figure.likely.is_some());
    all.insert("likely".to_owned(), Value::Object(json_by_key(likely, |figure| object!(figure.likely))));
    all.extend(germ_table(batch).map(|table| ("germs".to_owned(), json_germs(&table))));
    all.insert("cautions".to_owned(), json_cautions(batch));
    all.insert("balance".to_owned(), object!({ "greatest_relative_residual": batch.balance.greatest_relative_residual() }));
    all.extend(json_notice(&cautions(batch)));
    all
}

/// Returns the kitchen that was used, and what is known of it.
fn json_kitchen(kitchen: &KnownKitchen) -> Value {
    let estimates = kitchen.estimates.iter().map(|own| {
        let range = |of: Believed| object!({ "value": of.value, "least": of.least, "most": of.most });
        object!({ "key": own.key, "unit": own.unit, "now": range(own.now), "before": range(own.before) })
    });
    object!({
        "name": kitchen.name, "batches": kitchen.learned_from.iter().map(|batch| batch.number).collect::<Vec<_>>(),
        "measurements": kitchen.measurements, "estimates": estimates.collect::<Vec<_>>(),
    })
}

/// The number of the shape of every JSON output: one more whenever a member that scripts may read is renamed, moved or given another meaning.
/// A member that is only added leaves it as it is.
const SHAPE: u32 = 1;

/// Returns a JSON object with its first member in front, which says what wrote it: the program's version, and the number of the shape.
///
/// # Example
/// ```
/// use serde_json::{Map, json};
/// let whole = vatsketch::export::json_signed(Map::from_iter([("milk_l".to_owned(), json!(6.0))]));
/// assert_eq!(whole.keys().next().unwrap(), "vatsketch");
/// assert_eq!(whole["vatsketch"]["shape"], 1);
/// ```
#[must_use]
pub fn json_signed(members: Map<String, Value>) -> Map<String, Value> {
    let signature = object!({ "version": env!("CARGO_PKG_VERSION"), "shape": SHAPE });
    std::iter::once(("vatsketch".to_owned(), signature)).chain(members).collect()
}

/// Returns the text of a JSON object over several lines. What could give orders to a terminal is written as `\\u` and a number, which a
/// reader of JSON takes for the same letter.
///
/// # Example
/// ```
/// use serde_json::{Map, json};
/// let members = Map::from_iter([("title".to_owned(), json!("a\u{9b}b"))]);
/// assert!(vatsketch::export::json_text(members).contains(r"a\u009bb"));
/// ```
#[must_use]
pub fn json_text(members: Map<String, Value>) -> String {
    let text = format!("{:#}\n", Value::Object(members));
    let escaped = |letter: char| {
        if is_printable(letter) { letter.to_string() } else { format!("\\u{:04x}", u32::from(letter)) }
    };
    text.chars().map(escaped).collect()
}

/// Returns the cautions of a batch as a JSON list.
#[must_use]
pub fn json_cautions(batch: &Batch) -> Value {
    Value::Array(cautions(batch).iter().map(json_caution).collect())
}

/// Returns a caution as a JSON object, in metric units as all data for other programs.
fn json_caution(caution: &Caution) -> Value {
    let CautionWords { what, remedy, .. } = caution_words(caution, Units::METRIC);
    object!({
        "key": caution.key, "severity": caution.severity.key(), "caused_by": caution.caused_by, "always": caution.always,
        "what": what, "remedy": remedy, "source": caution.source,
    })
}

/// Returns what every JSON output has: what it is and is not, and the serious warnings, as members of an object.
///
/// # Arguments
/// * `cautions`: of what is put out; those that are less grave are left out
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, caution::cautions, design::Design, export::json_notice};
/// let members = json_notice(&cautions(&batch(&Design::default())?));
/// assert!(members["notice"].as_str().is_some_and(|line| line.contains("not a measurement")));
/// assert_eq!(members["serious_warnings"][0]["key"], "no_acid");
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn json_notice(cautions: &[Caution]) -> Map<String, Value> {
    let serious = cautions.iter().filter(|caution| caution.severity == Severity::Stop).map(json_caution);
    Map::from_iter([("notice".to_owned(), object!(FROM_A_MODEL)), ("serious_warnings".to_owned(), Value::Array(serious.collect()))])
}

/// Returns germ by stage as a JSON object, in tenfold steps in full; null where a stage was not gone through.
fn json_germs(table: &GermTable) -> Value {
    let rows = table.rows.iter().map(|row| {
        let stages =
            GermTable::STAGES.iter().map(|stage| stage.key().to_owned()).zip(row.by_stage.iter().map(|log10| object!(log10)));
        object!({
            "key": row.line.key(), "name": row.line.name(), "decides": row.decides, "most_log10": row.line.germ().most_log(),
            "stages": stages.collect::<Map<_, _>>(), "whole": row.whole,
        })
    });
    object!({
        "potential_growth_log10": Value::Array(rows.collect()), "beside": json_figures(&table.others), "notes": table.notes(GermLine::name),
        "notice": POTENTIAL_GROWTH,
    })
}

fn json_stage(batch: &Batch, stage: Stage, figures: &[Figure]) -> Value {
    let ending = batch.ending(stage);
    let error = match &ending {
        Progress::Done(_) => None,
        Progress::Failed(error) => Some(error.to_string()),
        // Another program reads the key of the stage, not its heading.
        Progress::NotReached { waits_for } => Some(format!("waits for {}", waits_for.key())),
    };
    let mut members = Map::new();
    members.insert("status".to_owned(), object!(ending.status()));
    if let Some(error) = error {
        members.insert("error".to_owned(), object!(error));
    }
    members.extend(json_figures(figures.iter().filter(|figure| figure.stage == stage)));
    Value::Object(members)
}

/// Returns figures as members of a JSON object, numbers in full.
pub fn json_figures<'a>(figures: impl IntoIterator<Item = &'a Figure>) -> Map<String, Value> {
    json_by_key(figures, json_figure)
}

/// Returns something of each figure by its key. A figure that had another key before has a second member with that key.
pub fn json_by_key<'a>(figures: impl IntoIterator<Item = &'a Figure>, of: impl Fn(&Figure) -> Value) -> Map<String, Value> {
    let members = |figure: &'a Figure| {
        let value = of(figure);
        every_key(figure.key).map(move |key| (key.to_owned(), value.clone()))
    };
    figures.into_iter().flat_map(members).collect()
}

/// Returns what a figure shows, a number in full.
#[must_use]
pub fn json_figure(figure: &Figure) -> Value {
    match &figure.reading {
        // A number that is not finite has no JSON form and becomes null.
        Reading::Number(number) => object!(number),
        Reading::Words(words) => object!(words),
        Reading::Switch(on) => object!(on),
    }
}
