//! When to begin or to be ready, from the command line laid over the design's own wish.

use super::CliError;
use super::arguments::WeekOptions;
use crate::design::{Reached, WeekDesign, Wish, read_moment};
use crate::plan::{KitchenWeekError, Now};
use crate::session;
use jiff::civil::DateTime;
use jiff::tz::TimeZone;

/// Lays the options over the week of a design, and returns what time counts as now.
///
/// A start takes the place of the wish and of where the maker stood; a ready-by only of the wish.
pub(super) fn laid_over(options: &WeekOptions, week: &mut WeekDesign) -> Result<Now, CliError> {
    if let Some(zone) = &options.zone {
        week.zone.clone_from(zone);
    }
    // No more than one of them is given.
    if let Some(at) = moment(options.start.as_deref())? {
        week.wish = Wish::StartAt(at);
    }
    if let Some(at) = moment(options.soon.as_deref())? {
        week.wish = Wish::SoonAfter(at);
    }
    if let Some(by) = moment(options.ready.as_deref())? {
        week.wish = Wish::ReadyBy(by);
    }
    if options.start.is_some() || options.soon.is_some() {
        week.reached = None;
    }
    if let Some(here) = &options.here {
        week.reached = Some(reached(here)?);
    }
    let clock = session::now();
    let Some(at) = moment(options.as_of.as_deref())? else { return Ok(clock) };
    // A zone that does not exist is told when the week is planned.
    let named = if week.zone.is_empty() { None } else { TimeZone::get(&week.zone).ok() };
    Ok(Now { at, zone: named.unwrap_or(clock.zone) })
}

fn moment(text: Option<&str>) -> Result<Option<DateTime>, CliError> {
    Ok(text.map(read_moment).transpose()?)
}

/// Reads `TASK@WHEN`.
fn reached(text: &str) -> Result<Reached, CliError> {
    let wrong = || CliError::Arguments(format!("`{text}` must be written TASK@WHEN, as in cut@2031-05-09T12:10"));
    let (task, when) = text.split_once('@').ok_or_else(wrong)?;
    Ok(Reached { task: task.trim().to_owned(), began: read_moment(when)? })
}

impl From<KitchenWeekError> for CliError {
    fn from(error: KitchenWeekError) -> Self {
        match error {
            KitchenWeekError::NoSuchZone { .. } | KitchenWeekError::NoSuchTask { .. } | KitchenWeekError::Clock(_) => {
                Self::Arguments(error.to_string())
            }
            KitchenWeekError::ReadyInThePast { .. }
            | KitchenWeekError::TooSoon { .. }
            | KitchenWeekError::TooLateNow { .. }
            | KitchenWeekError::Schedule(_) => Self::Stage(error.to_string()),
        }
    }
}
