//! Dates, times and the moment of a plan, as a calendar file writes them.

use super::super::ExportError;
use crate::plan::{Now, Pass};
use jiff::civil::{Date, DateTime};
use jiff::tz::TimeZone;

/// 2020-01-01 00:00 UTC, in seconds from 1970: from here revisions are counted.
const REVISIONS_FROM_S: i64 = 1_577_836_800;

/// When a plan was made, as events say it.
pub(super) struct Stamp {
    pub(super) utc: String,
    pub(super) revision: i64,
}

impl Stamp {
    pub(super) fn of(now: &Now) -> Result<Self, ExportError> {
        let moment = now.zone.to_timestamp(now.at).map_err(|_| beyond(now.at))?;
        // An integer of the standard has 32 bits (3.3.8): enough for four thousand years.
        let revision = (moment.as_second() - REVISIONS_FROM_S).div_euclid(60).clamp(0, i64::from(i32::MAX));
        Ok(Self { utc: format!("{}Z", date_time(TimeZone::UTC.to_datetime(moment))?), revision })
    }
}

/// Returns a date as RFC 5545, 3.3.4 has it.
pub(super) fn date(date: Date) -> Result<String, ExportError> {
    let writable = (0..=9999).contains(&date.year());
    if writable { Ok(format!("{:04}{:02}{:02}", date.year(), date.month(), date.day())) } else { Err(beyond(date.at(0, 0, 0, 0))) }
}

/// Returns a time of the wall clock as RFC 5545, 3.3.5 has it in its first form.
pub(super) fn date_time(at: DateTime) -> Result<String, ExportError> {
    Ok(format!("{}T{:02}{:02}00", date(at.date())?, at.hour(), at.minute()))
}

/// Returns a time of the wall clock in UTC, as RFC 5545, 3.3.5 has it in its second form.
pub(super) fn in_utc(at: DateTime, pass: &Pass) -> Result<String, ExportError> {
    let moment = pass.offset.to_timestamp(at).map_err(|_| beyond(at))?;
    Ok(format!("{}Z", date_time(TimeZone::UTC.to_datetime(moment))?))
}

pub(super) fn beyond(at: DateTime) -> ExportError {
    ExportError::Calendar { why: format!("{at} lies beyond what a calendar file can hold; choose a year from 0000 to 9999") }
}
