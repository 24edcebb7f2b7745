//! `vatsketch plan`: the tasks of a vat in the maker's week.

mod json;
mod words;

use super::ending::{CliError, Ending};
use super::options::{DesignOptions, FormOptions, WeekOptions};
use super::text::{with_notice, write_failures, write_json};
use super::{open, week};
use crate::batch::batch;
use crate::plan::{ScheduleError, counted, fewer_turns, kitchen_week};
use std::io::Write;

pub(super) fn run(
    from: &DesignOptions,
    options: &WeekOptions,
    form: &FormOptions,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let mut design = open::design(from)?;
    let now = week::laid_over(options, &mut design.week)?;
    let batch = batch(&design)?;
    // First, because it may be why there is nothing to plan.
    let units = form.shown.units;
    let ending = write_failures(&batch, "", units, words)?;
    let planned = kitchen_week(&batch, &now).map_err(|error| week::trouble(&error, options, &from.file))?;
    if let Some(week) = planned {
        let turns = fewer_turns(&batch, &week, &now);
        if form.json {
            write_json(with_notice(json::of_week(&batch, &week, turns.as_ref(), &now), &batch), data)?;
        } else {
            words::write_week(&batch, &week, turns.as_ref(), units, data)?;
        }
        return Ok(ending);
    }
    let counted = counted(&batch);
    if counted.tasks.is_empty() {
        return Err(CliError::Stage(ScheduleError::NothingToPlan.to_string()));
    }
    if form.json {
        write_json(with_notice(json::of_open(&batch, &counted, &now), &batch), data)?;
    } else {
        words::write_open(&batch, &counted, units, data)?;
    }
    Ok(ending)
}
