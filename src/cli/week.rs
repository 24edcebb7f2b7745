//! When to begin or to be finished, from the command line laid over the design's own wish.

use super::ending::CliError;
use super::open::named;
use super::options::WeekOptions;
use crate::design::{Reached, WeekDesign, Wish, read_moment};
use crate::plan::{ClockError, KitchenWeekError, Lean, Now, SpokenError, spoken_time};
use crate::session;
use jiff::civil::DateTime;
use std::path::Path;

/// Lays the options over the week of a design, and returns what time counts as now.
///
/// A start takes the place of the wish and of where the maker stood; a finish time only of the wish.
pub(super) fn laid_over(options: &WeekOptions, week: &mut WeekDesign) -> Result<Now, CliError> {
    if let Some(zone) = &options.zone {
        week.zone.clone_from(zone);
    }
    let now = now(options, week)?;
    let wish = |text: &Option<String>| text.as_deref().map(|text| spoken_time(text, now.at, Lean::Ahead)).transpose();
    // No more than one of them is given.
    if let Some(at) = wish(&options.start)? {
        week.wish = Wish::StartAt(at);
    }
    if let Some(at) = wish(&options.soon)? {
        week.wish = Wish::SoonAfter(at);
    }
    if let Some(by) = wish(&options.finished_by)? {
        week.wish = Wish::FinishedBy(by);
    }
    if options.start.is_some() || options.soon.is_some() {
        week.reached = None;
    }
    if let Some(here) = &options.here {
        week.reached = Some(reached(here, now.at)?);
    }
    Ok(now)
}

/// Returns what the clock says in the zone of the week, or what is said instead of it.
fn now(options: &WeekOptions, week: &WeekDesign) -> Result<Now, CliError> {
    let clock = session::now().for_week(week);
    Ok(match &options.as_of {
        None => clock,
        Some(text) => Now { at: read_moment(text)?, ..clock },
    })
}

/// Reads `TASK@WHEN`; what was begun lies behind.
fn reached(text: &str, now: DateTime) -> Result<Reached, CliError> {
    let wrong = || CliError::Arguments(format!("`{text}` must be written TASK@WHEN, as in cut@12:10 or cut@2031-05-09T12:10"));
    let (task, when) = text.split_once('@').ok_or_else(wrong)?;
    Ok(Reached { task: task.trim().to_owned(), began: spoken_time(when, now, Lean::Back)? })
}

impl From<SpokenError> for CliError {
    fn from(error: SpokenError) -> Self {
        Self::Arguments(error.to_string())
    }
}

/// Returns how a command ends that has no week: by a wrong argument, by a wrong file where the argument was not given, or because it cannot be.
pub(super) fn trouble(error: &KitchenWeekError, options: &WeekOptions, file: &Path) -> CliError {
    let given = match error {
        KitchenWeekError::FinishedInThePast { .. }
        | KitchenWeekError::TooSoon { .. }
        | KitchenWeekError::TooLateNow { .. }
        // Without a list of zones neither arguments nor file are wrong.
        | KitchenWeekError::NoZones { .. }
        | KitchenWeekError::Schedule(_) => return CliError::Stage(error.to_string()),
        KitchenWeekError::NoSuchZone { .. } => options.zone.is_some(),
        KitchenWeekError::NoSuchTask { .. } => options.here.is_some(),
        KitchenWeekError::Clock(ClockError::Backwards { .. }) => false,
        KitchenWeekError::Clock(ClockError::Skipped { .. } | ClockError::Beyond { .. }) => {
            [&options.start, &options.soon, &options.finished_by, &options.here, &options.as_of].iter().any(|text| text.is_some())
        }
    };
    if given { CliError::Arguments(error.to_string()) } else { CliError::InFile { file: named(file), why: error.to_string() } }
}
