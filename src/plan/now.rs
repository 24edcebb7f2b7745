//! What time it is, and in which zone.

use super::clock::pass_at;
use super::{ClockError, KitchenWeekError};
use crate::design::WeekDesign;
use jiff::civil::DateTime;
use jiff::tz::TimeZone;

/// The clock on the wall as it is read at the edge of the house: what time it is, and the computer's zone.
#[derive(Clone, Debug)]
pub struct Now {
    /// What the wall clock says.
    pub at: DateTime,
    /// Zone that counts where the design names none.
    pub zone: TimeZone,
}

impl Now {
    /// Returns what the wall clock of another zone says at this moment.
    ///
    /// # Errors
    /// [`ClockError::Beyond`].
    ///
    /// # Example
    /// ```
    /// use jiff::{civil::date, tz::{TimeZone, offset}};
    /// use vatsketch::plan::Now;
    /// let now = Now { at: date(2031, 5, 5).at(23, 30, 0, 0), zone: TimeZone::UTC };
    /// assert_eq!(now.in_zone(&TimeZone::fixed(offset(2)))?, date(2031, 5, 6).at(1, 30, 0, 0));
    /// # Ok::<(), vatsketch::plan::ClockError>(())
    /// ```
    pub fn in_zone(&self, zone: &TimeZone) -> Result<DateTime, ClockError> {
        let moment = self.zone.to_timestamp(self.at).map_err(|_| ClockError::Beyond { at: self.at.to_string() })?;
        Ok(zone.to_datetime(moment))
    }

    /// Returns a time of this wall clock with its distance from UTC, as ISO 8601 has it; of a repeated time the first.
    #[must_use]
    pub fn with_offset(&self, at: DateTime) -> Option<String> {
        let moment = self.zone.to_timestamp(at).ok()?;
        pass_at(&self.zone, moment).with_offset(at)
    }

    /// Returns the same moment by the clock of the zone that a week names; as it is where it names none that is known.
    #[must_use]
    pub fn for_week(&self, week: &WeekDesign) -> Self {
        let named = if week.zone.is_empty() { None } else { zone_named(&week.zone).ok() };
        let there = named.and_then(|zone| Some(Self { at: self.in_zone(&zone).ok()?, zone }));
        there.unwrap_or_else(|| self.clone())
    }
}

/// Returns the time zone of this name.
pub(super) fn zone_named(name: &str) -> Result<TimeZone, KitchenWeekError> {
    TimeZone::get(name).map_err(|_| no_zone(name, jiff::tz::db().available().next().is_some()))
}

/// Returns why there is no zone of this name: it is wrong, or this computer knows none at all.
pub(super) fn no_zone(name: &str, any_is_known: bool) -> KitchenWeekError {
    let zone = name.to_owned();
    if any_is_known { KitchenWeekError::NoSuchZone { zone } } else { KitchenWeekError::NoZones { zone } }
}

/// Checks the name of a time zone; an empty one is the computer's.
///
/// # Errors
/// [`KitchenWeekError::NoSuchZone`].
///
/// # Example
/// ```
/// assert!(vatsketch::plan::check_zone("Etc/UTC").is_ok());
/// assert!(vatsketch::plan::check_zone("Kitchen").is_err());
/// ```
pub fn check_zone(name: &str) -> Result<(), KitchenWeekError> {
    if name.is_empty() { Ok(()) } else { zone_named(name).map(|_| ()) }
}
