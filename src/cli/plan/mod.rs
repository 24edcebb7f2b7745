//! `vatsketch plan`: the tasks of a vat in the maker's week.

mod json;
mod words;

use super::arguments::WeekOptions;
use super::text::{write_failures, write_json};
use super::{CliError, Ending, open, week};
use crate::batch::{Batch, batch, stage_ends};
use crate::plan::{Hours, Schedule, Start, Tasks, kitchen_week, tasks};
use std::io::Write;
use std::path::Path;

pub(super) fn run(
    (path, set): (&Path, &[String]),
    options: &WeekOptions,
    as_json: bool,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let mut design = open::design(path, set)?;
    let now = week::laid_over(options, &mut design.week)?;
    let batch = batch(&design)?;
    // First, because it may be why there is nothing to plan.
    let ending = write_failures(&stage_ends(&batch), words)?;
    match kitchen_week(&batch, &now)? {
        Some(week) if as_json => write_json(&json::of_week(&batch, &week, &now), data)?,
        Some(week) => words::write_week(&batch, &week, data)?,
        None => {
            let (tasks, plan) = without_a_clock(&batch)?;
            if as_json {
                write_json(&json::of_open(&batch, &tasks, &plan, &now), data)?;
            } else {
                words::write_open(&batch, &tasks, &plan, data)?;
            }
        }
    }
    Ok(ending)
}

/// Returns the tasks with their times from the start, as they were worked out: no hours are taken.
fn without_a_clock(batch: &Batch) -> Result<(Tasks, Schedule), CliError> {
    let tasks = tasks(batch);
    let start = Start::Here { at_min: 0, by_min: None };
    let plan = crate::plan::week(&tasks, &start, |until_min| Ok(Hours::new(Vec::new(), until_min)));
    let plan = plan.map_err(|why| CliError::Stage(why.to_string()))?;
    Ok((tasks, plan))
}
