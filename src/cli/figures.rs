//! `vatsketch figures`: everything that follows from a design.

use super::text::{json_figures, printable, write_figures, write_json};
use super::{CliError, Ending, open};
use crate::batch::{Batch, Progress, Readout, batch, readouts};
use crate::design::Stage;
use serde_json::{Map, Value, json};
use std::io::Write;
use std::path::Path;

/// How one stage ended, whatever its outcome's type.
struct StageEnd {
    stage: Stage,
    status: &'static str,
    error: Option<String>,
}

fn end<T>(stage: Stage, progress: &Progress<T>) -> StageEnd {
    match progress {
        Progress::Done(_) => StageEnd { stage, status: "done", error: None },
        Progress::Failed(error) => StageEnd { stage, status: "failed", error: Some(error.to_string()) },
        Progress::NotReached { waits_for } => {
            StageEnd { stage, status: "not_reached", error: Some(format!("waits for {}", waits_for.key())) }
        }
    }
}

fn ends(batch: &Batch) -> Vec<StageEnd> {
    Stage::ALL
        .into_iter()
        .map(|stage| match stage {
            Stage::Milk => end(stage, &batch.milk),
            Stage::Vat => end(stage, &batch.vat),
            Stage::Draining => end(stage, &batch.draining),
            Stage::Salting => end(stage, &batch.salting),
            Stage::Drying => end(stage, &batch.drying),
            Stage::Pickling => end(stage, &batch.pickling),
            Stage::Keeping => end(stage, &batch.keeping),
        })
        .collect()
}

pub(super) fn run(
    path: &Path,
    set: &[String],
    json: bool,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let batch = batch(&open::design(path, set)?)?;
    let figures = readouts(&batch);
    let ends = ends(&batch);
    if json {
        write_json(&as_json(&batch, &figures, &ends), data)?;
    } else {
        write_text(&batch, &figures, &ends, data)?;
    }
    for failed in ends.iter().filter(|end| end.status == "failed") {
        writeln!(words, "vatsketch: {}: {}", failed.stage.key(), failed.error.as_deref().unwrap_or_default())?;
    }
    Ok(if ends.iter().all(|end| end.status == "done") { Ending::Done } else { Ending::StageFailed })
}

fn of_stage(figures: &[Readout], stage: Stage) -> Vec<Readout> {
    figures.iter().filter(|figure| figure.stage == stage).cloned().collect()
}

fn as_json(batch: &Batch, figures: &[Readout], ends: &[StageEnd]) -> Value {
    let mut all = Map::new();
    all.insert("title".to_owned(), json!(batch.design.title));
    for end in ends {
        let mut stage = Map::new();
        stage.insert("status".to_owned(), json!(end.status));
        if let Some(error) = &end.error {
            stage.insert("error".to_owned(), json!(error));
        }
        stage.extend(json_figures(&of_stage(figures, end.stage)));
        all.insert(end.stage.key().to_owned(), Value::Object(stage));
    }
    let likely = figures.iter().filter_map(|figure| figure.likely.map(|(low, high)| (figure.key.to_owned(), json!([low, high]))));
    all.insert("likely".to_owned(), Value::Object(likely.collect()));
    let cautions: Vec<Value> = batch
        .cautions
        .iter()
        .map(|caution| {
            json!({
                "key": caution.key, "severity": caution.severity.word().to_lowercase(), "caused_by": caution.caused_by,
                "what": caution.what, "remedy": caution.remedy, "source": format!("{:?}", caution.source),
            })
        })
        .collect();
    all.insert("cautions".to_owned(), Value::Array(cautions));
    all.insert("balance".to_owned(), json!({ "greatest_relative_residual": batch.balance.greatest_relative_residual() }));
    Value::Object(all)
}

fn write_text(batch: &Batch, figures: &[Readout], ends: &[StageEnd], data: &mut dyn Write) -> Result<(), CliError> {
    if !batch.design.title.is_empty() {
        writeln!(data, "{}", printable(&batch.design.title))?;
    }
    for end in ends {
        writeln!(data, "\n{}", end.stage.title())?;
        if let Some(error) = &end.error {
            writeln!(data, "  {}: {error}", end.status.replace('_', " "))?;
        }
        write_figures(&of_stage(figures, end.stage), data)?;
    }
    writeln!(data, "\nCautions")?;
    for caution in &batch.cautions {
        writeln!(data, "  {}: {} {}", caution.severity.word(), caution.what, caution.remedy)?;
    }
    writeln!(data, "\nA plan from a model, not a measurement.")?;
    Ok(())
}
