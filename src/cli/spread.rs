//! `vatsketch spread`: between what every figure likely lies.

use super::ending::{CliError, Ending};
use super::open;
use super::options::{DesignOptions, FormOptions};
use super::parameters;
use super::text::{with_notice, write_failures, write_json, write_notice};
use crate::analysis::{LikelyFigure, draws};
use crate::batch::batch;
use crate::curve::{LineSpread, SPREAD_NAME, Spread};
use crate::design::Stage;
use crate::figure::every_key;
use crate::process::UNCERTAIN_PARAMETERS;
use crate::session::{Work, cores, spread};
use crate::units::Units;
use serde_json::{Map, Value, json};
use std::io::Write;

/// What is wanted of a spread.
pub(super) struct Wanted {
    /// How many trial runs.
    pub(super) draws: usize,
    /// Whether the values of the constants in each are told.
    pub(super) trials: bool,
}

pub(super) fn run(
    options: &DesignOptions,
    wanted: &Wanted,
    form: &FormOptions,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let design = open::design(options)?;
    let batch = batch(&design)?;
    let work = Work { draws: wanted.draws, threads: cores(), goes_on: &|| true };
    let Some(spread) = spread(&design, &work)? else {
        return Err(CliError::Stage("the trial runs could not be calculated".to_owned()));
    };
    if form.json {
        let mut json = in_json(&spread);
        if let (true, Some(members)) = (wanted.trials, json.as_object_mut()) {
            let trials = draws(&design, wanted.draws).iter().map(|trial| parameters::drawn_json(trial, &design)).collect();
            members.insert("trials".to_owned(), Value::Array(trials));
        }
        write_json(with_notice(json, &batch), data)?;
    } else {
        write_words(&spread, form.shown.units, data)?;
        write_notice(&batch, form.shown.units, data)?;
    }
    Ok(write_failures(&batch, "", form.shown.units, words)?)
}

fn write_words(spread: &Spread, units: Units, data: &mut dyn Write) -> Result<(), CliError> {
    let moved: Vec<&LikelyFigure> = spread.figures.iter().filter(|likely| likely.moves()).collect();
    let width = moved.iter().map(|likely| likely.figure.label_in(units).chars().count()).max().unwrap_or(0);
    let shown = moved.iter().map(|likely| likely.figure.text_in(units).chars().count()).max().unwrap_or(0);
    for stage in Stage::ALL {
        let of_stage: Vec<&&LikelyFigure> = moved.iter().filter(|likely| likely.figure.stage == stage).collect();
        if of_stage.is_empty() {
            continue;
        }
        writeln!(data, "\n{}", stage.title())?;
        for likely in of_stage {
            writeln!(
                data,
                "  {:<width$}  {:<shown$}  {}",
                likely.figure.label_in(units),
                likely.figure.text_in(units),
                likely.in_words(units)
            )?;
        }
    }
    let still = spread.figures.len() - moved.len();
    writeln!(
        data,
        "\n8 of 10 of {} trial runs with {} uncertain constants are in these ranges, always the same runs; {still} more figures do not change.",
        spread.draws,
        UNCERTAIN_PARAMETERS.len()
    )?;
    writeln!(
        data,
        "The trial runs cover the ranges of the constants, not what the model leaves out: of four published trials of eggs in vinegar this model meets three and is late in one; if one of the three was kept warm, which its summary leaves open, the model is early there."
    )?;
    Ok(())
}

fn in_json(spread: &Spread) -> Value {
    let of = |likely: &LikelyFigure| {
        let value = figure(likely);
        every_key(likely.figure.key).map(move |key| (key.to_owned(), value.clone()))
    };
    let figures: Map<String, Value> = spread.figures.iter().flat_map(of).collect();
    let lines: Vec<Value> = spread.lines.iter().map(line).collect();
    json!({ "title": spread.design.title, "draws": spread.draws, "figures": figures, "bands": SPREAD_NAME, "lines": lines })
}

fn figure(likely: &LikelyFigure) -> Value {
    json!({
        "unit": likely.figure.unit.symbol(), "least": likely.least, "middle": likely.middle, "most": likely.most,
        "never_share": likely.never, "failed_share": likely.failed,
    })
}

fn line(line: &LineSpread) -> Value {
    json!({ "curve": line.figure.key(), "line": line.line, "points": line.points })
}
