//! Times of the wall clock as the log keeps them: to the second, because probes count seconds.

use crate::design::{moment, read_moment};
use jiff::civil::DateTime;

/// Returns a time as the log has it: `2031-05-09 18:30`, with seconds where there are any.
///
/// # Example
/// ```
/// use vatsketch::record::log_moment;
/// let at = jiff::civil::date(2031, 5, 9).at(18, 30, 0, 0);
/// assert_eq!(log_moment(at), "2031-05-09 18:30");
/// assert_eq!(log_moment(at.with().second(5).build()?), "2031-05-09 18:30:05");
/// # Ok::<(), jiff::Error>(())
/// ```
#[must_use]
pub fn log_moment(at: DateTime) -> String {
    let minutes = moment(at);
    if at.second() == 0 { minutes } else { format!("{minutes}:{:02}", at.second()) }
}

/// Returns the time that [`log_moment`] wrote; none of any other text.
#[must_use]
pub fn read_log_moment(text: &str) -> Option<DateTime> {
    let minute = read_moment(text).ok()?;
    let second = text.trim().parse::<DateTime>().ok()?.second();
    minute.with().second(second).build().ok()
}
