//! Which of two passes of the clock a time lies in, where the clock on the wall repeats an hour.

use jiff::civil::DateTime;
use jiff::tz::Offset;

/// How far the clock on the wall is from UTC at a time, and what it is then called if that hour comes twice.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Pass {
    /// Distance from UTC.
    pub offset: Offset,
    /// The zone's short name for this pass, such as CET; none where the hour comes once.
    pub name: Option<String>,
}

impl Pass {
    /// Returns an hour that comes once.
    #[must_use]
    pub const fn only(offset: Offset) -> Self {
        Self { offset, name: None }
    }

    /// Returns a time of this pass with its distance from UTC, as ISO 8601 has it.
    ///
    /// # Example
    /// ```
    /// use jiff::{civil::date, tz::offset};
    /// use vatsketch::plan::Pass;
    /// let late = Pass::only(offset(1)).with_offset(date(2031, 10, 26).at(2, 30, 0, 0));
    /// assert_eq!(late.as_deref(), Some("2031-10-26T02:30:00+01:00"));
    /// ```
    #[must_use]
    pub fn with_offset(&self, at: DateTime) -> Option<String> {
        let moment = self.offset.to_timestamp(at).ok()?;
        Some(moment.display_with_offset(self.offset).to_string())
    }

    /// Returns an hour in words with the name of its pass, where it has one: "02:30 CET".
    #[must_use]
    pub fn said(&self, hour: String) -> String {
        match &self.name {
            Some(name) => format!("{hour} {name}"),
            None => hour,
        }
    }
}
