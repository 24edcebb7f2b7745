//! `vatsketch figures`: everything that follows from a design.

use super::text::{write_failures, write_figures};
use super::{CliError, Ending, open};
use crate::batch::{Batch, Readout, StageEnd, batch, readouts, stage_ends};
use crate::design::Stage;
use crate::export::{self, printable};
use std::io::Write;
use std::path::Path;

pub(super) fn run(
    path: &Path,
    set: &[String],
    json: bool,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let batch = batch(&open::design(path, set)?)?;
    let ends = stage_ends(&batch);
    if json {
        write!(data, "{}", export::json(&batch))?;
    } else {
        write_text(&batch, &ends, data)?;
    }
    Ok(write_failures(&ends, "", words)?)
}

fn of_stage(figures: &[Readout], stage: Stage) -> Vec<Readout> {
    figures.iter().filter(|figure| figure.stage == stage).cloned().collect()
}

fn write_text(batch: &Batch, ends: &[StageEnd], data: &mut dyn Write) -> Result<(), CliError> {
    let figures = readouts(batch);
    if !batch.design.title.is_empty() {
        writeln!(data, "{}", printable(&batch.design.title))?;
    }
    for end in ends {
        writeln!(data, "\n{}", end.stage.title())?;
        if let Some(error) = &end.error {
            writeln!(data, "  {}: {error}", end.status.replace('_', " "))?;
        }
        write_figures(&of_stage(&figures, end.stage), data)?;
    }
    writeln!(data, "\nCautions")?;
    for caution in &batch.cautions {
        writeln!(data, "  {}: {} {}", caution.severity.word(), caution.what, caution.remedy)?;
    }
    writeln!(data, "\nA plan from a model, not a measurement.")?;
    Ok(())
}
