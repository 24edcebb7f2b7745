//! The week of a batch as a calendar file: planned and written in one go, for window and command line alike.

use super::{ExportError, calendar};
use crate::batch::Batch;
use crate::design::DesignId;
use crate::plan::{KitchenWeekError, Now, kitchen_week};
use crate::units::Units;

/// Why a batch has no calendar.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum WeekCalendarError {
    /// The design has no time to begin or to be finished.
    #[error("the vat has no time to begin or to be finished, and a calendar needs one")]
    NoTime,
    /// There is no week as the design asks for it.
    #[error(transparent)]
    Week(#[from] KitchenWeekError),
    /// The calendar cannot be written.
    #[error(transparent)]
    Export(#[from] ExportError),
}

/// Returns the week of a batch as iCalendar, as [`calendar`] writes it.
///
/// # Arguments
/// * `id`: of the design, from which its events get their names
/// * `now`: what the clock on the wall shows in the zone of the design's week
/// * `before`: the file whose place this one takes, or nothing: what it has and the new week has not is cancelled
/// * `units`: of what is said in it
///
/// # Errors
/// [`WeekCalendarError`].
///
/// # Example
/// ```
/// use jiff::{civil::date, tz::TimeZone};
/// use vatsketch::{batch::batch, design::{Design, Wish}, export::{WeekCalendarError, week_calendar}, plan::Now, units::Units};
/// let now = Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC };
/// let mut design = Design::default();
/// assert_eq!(week_calendar(&batch(&design)?, None, &now, &[], Units::METRIC), Err(WeekCalendarError::NoTime));
/// design.week.wish = Wish::StartAt(date(2031, 5, 9).at(14, 30, 0, 0));
/// assert!(week_calendar(&batch(&design)?, None, &now, &[], Units::METRIC)?.starts_with(b"BEGIN:VCALENDAR\r\n"));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn week_calendar(
    batch: &Batch,
    id: Option<DesignId>,
    now: &Now,
    before: &[u8],
    units: Units,
) -> Result<Vec<u8>, WeekCalendarError> {
    let week = kitchen_week(batch, now)?.ok_or(WeekCalendarError::NoTime)?;
    Ok(calendar(&week, batch, id, now, before, units)?)
}
