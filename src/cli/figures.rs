//! `vatsketch figures`: everything that follows from a design.

use super::ending::{CliError, Ending};
use super::open;
use super::options::{DesignOptions, FormOptions, ParameterOptions};
use super::parameters::Parameters;
use super::text::{write_failures, write_figures, write_json};
use crate::batch::{Batch, batch_given};
use crate::caution::cautions;
use crate::design::Stage;
use crate::export::{json_members, printable};
use crate::figure::{Figure, figures, germ_table};
use crate::process::{GermLine, Given};
use crate::units::Units;
use crate::words::{FROM_A_MODEL, POTENTIAL_GROWTH, TRUE_OF_ALL, caution_line, kitchen_line};
use serde_json::Value;
use std::io::Write;

pub(super) fn run(
    design: &DesignOptions,
    parameters: &ParameterOptions,
    form: &FormOptions,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let design = open::design(design)?;
    let parameters = Parameters::read(parameters, &design)?;
    let batch = batch_given(&design, &Given { parameters: parameters.values, ..Given::default() })?;
    if form.json {
        write_json(parameters.beside(Value::Object(json_members(&batch))), data)?;
    } else {
        write_text(&batch, form.shown.units, data)?;
        parameters.write(data)?;
    }
    Ok(write_failures(&batch, "", form.shown.units, words)?)
}

fn of_stage(figures: &[Figure], stage: Stage) -> Vec<Figure> {
    figures.iter().filter(|figure| figure.stage == stage).cloned().collect()
}

/// Writes germ by stage as an aligned table, and what it leaves out.
fn write_germs(batch: &Batch, data: &mut dyn Write) -> std::io::Result<()> {
    let Some(table) = germ_table(batch) else { return Ok(()) };
    writeln!(data, "\nPotential growth of germs, tenfold steps")?;
    let rows: Vec<Vec<String>> = std::iter::once(table.headings()).chain(table.cells(GermLine::name)).collect();
    let width = rows.iter().filter_map(|row| row.first()).map(|name| name.chars().count()).max().unwrap_or(0);
    for row in &rows {
        let (name, cells) = row.split_first().map_or(("", &[][..]), |(name, cells)| (name, cells));
        write!(data, "  {name:<width$}")?;
        cells.iter().try_for_each(|cell| write!(data, "{cell:>9}"))?;
        writeln!(data)?;
    }
    table.notes(GermLine::name).iter().try_for_each(|note| writeln!(data, "  {note}"))?;
    writeln!(data, "  {POTENTIAL_GROWTH}")
}

fn write_text(batch: &Batch, units: Units, data: &mut dyn Write) -> Result<(), CliError> {
    let figures = figures(batch);
    if !batch.design.title.is_empty() {
        writeln!(data, "{}", printable(&batch.design.title))?;
    }
    if let Some(line) = kitchen_line(&batch.design) {
        writeln!(data, "{}", printable(&line))?;
    }
    for stage in Stage::ALL {
        writeln!(data, "\n{}", stage.title())?;
        let ending = batch.ending(stage);
        if let Some(why) = ending.why_not() {
            writeln!(data, "  {}: {}", ending.status().replace('_', " "), units.told(&why))?;
        }
        write_figures(&of_stage(&figures, stage), units, data)?;
    }
    write_germs(batch, data)?;
    let (always, own): (Vec<_>, Vec<_>) = cautions(batch).into_iter().partition(|caution| caution.always);
    for (title, cautions) in [("Cautions", own), (TRUE_OF_ALL, always)] {
        if !cautions.is_empty() {
            writeln!(data, "\n{title}")?;
        }
        for caution in cautions {
            writeln!(data, "  {}", caution_line(&caution, units))?;
        }
    }
    writeln!(data, "\n{FROM_A_MODEL}")?;
    Ok(())
}
