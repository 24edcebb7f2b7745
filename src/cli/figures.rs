//! `vatsketch figures`: everything that follows from a design.

use super::text::{write_failures, write_figures};
use super::{CliError, Ending, open};
use crate::batch::{Batch, StageEnd, batch, stage_ends};
use crate::caution::cautions;
use crate::design::Stage;
use crate::export::{self, printable};
use crate::figure::{Figure, figures};
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

fn of_stage(figures: &[Figure], stage: Stage) -> Vec<Figure> {
    figures.iter().filter(|figure| figure.stage == stage).cloned().collect()
}

fn write_text(batch: &Batch, ends: &[StageEnd], data: &mut dyn Write) -> Result<(), CliError> {
    let figures = figures(batch);
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
    for caution in cautions(batch) {
        writeln!(data, "  {}: {} {}", caution.severity.word(), caution.what, caution.remedy)?;
    }
    writeln!(data, "\nA plan from a model, not a measurement.")?;
    Ok(())
}
