//! `vatsketch plan`: the tasks of a vat in the maker's week.

mod json;
mod words;

use super::arguments::WeekOptions;
use super::ending::{CliError, Ending};
use super::text::{write_failures, write_json};
use super::{open, week};
use crate::batch::batch;
use crate::plan::{ScheduleError, counted, kitchen_week};
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
    let ending = write_failures(&batch, "", words)?;
    match kitchen_week(&batch, &now)? {
        Some(week) if as_json => write_json(&json::of_week(&batch, &week, &now), data)?,
        Some(week) => words::write_week(&batch, &week, data)?,
        None => {
            let counted = counted(&batch);
            if counted.tasks.is_empty() {
                return Err(CliError::Stage(ScheduleError::NothingToPlan.to_string()));
            }
            if as_json {
                write_json(&json::of_open(&batch, &counted, &now), data)?;
            } else {
                words::write_open(&batch, &counted, data)?;
            }
        }
    }
    Ok(ending)
}
