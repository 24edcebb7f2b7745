//! The figures for another program: one object a stage, numbers in full.

use crate::batch::{Batch, StageEnd, stage_ends};
use crate::caution::cautions;
use crate::figure::{Figure, Reading, figures};
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
    let figures = figures(batch);
    let mut all = Map::new();
    all.insert("title".to_owned(), object!(batch.design.title));
    for end in stage_ends(batch) {
        all.insert(end.stage.key().to_owned(), stage(&end, &figures));
    }
    let likely = figures.iter().filter_map(|figure| figure.likely.map(|(low, high)| (figure.key.to_owned(), object!([low, high]))));
    all.insert("likely".to_owned(), Value::Object(likely.collect()));
    all.insert("cautions".to_owned(), json_cautions(batch));
    all.insert("balance".to_owned(), object!({ "greatest_relative_residual": batch.balance.greatest_relative_residual() }));
    format!("{:#}\n", Value::Object(all))
}

/// Returns the cautions of a batch as a JSON list.
#[must_use]
pub fn json_cautions(batch: &Batch) -> Value {
    let cautions = cautions(batch).into_iter().map(|caution| {
        object!({
            "key": caution.key, "severity": caution.severity.word().to_lowercase(), "caused_by": caution.caused_by,
            "what": caution.what, "remedy": caution.remedy, "source": format!("{:?}", caution.source),
        })
    });
    Value::Array(cautions.collect())
}

fn stage(end: &StageEnd, figures: &[Figure]) -> Value {
    let mut stage = Map::new();
    stage.insert("status".to_owned(), object!(end.status));
    if let Some(error) = &end.error {
        stage.insert("error".to_owned(), object!(error));
    }
    stage.extend(json_figures(figures.iter().filter(|figure| figure.stage == end.stage)));
    Value::Object(stage)
}

/// Returns figures as members of a JSON object, numbers in full.
pub fn json_figures<'a>(figures: impl IntoIterator<Item = &'a Figure>) -> Map<String, Value> {
    figures.into_iter().map(|figure| (figure.key.to_owned(), json_reading(&figure.reading))).collect()
}

fn json_reading(reading: &Reading) -> Value {
    match reading {
        // A number that is not finite has no JSON form and becomes null.
        Reading::Number(number) => object!(number),
        Reading::Words(words) => object!(words),
        Reading::Switch(on) => object!(on),
    }
}
