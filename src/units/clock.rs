//! Times of the day and lengths of time.

use super::{Clock, LongTimes, Units};
use crate::design::hour;
use jiff::civil::Time;

const HOUR_MIN: f64 = 60.0;
const DAY_MIN: f64 = 24.0 * HOUR_MIN;

impl Units {
    /// Returns a time of the day: `18:30` or `6:30 pm`.
    ///
    /// # Example
    /// ```
    /// use jiff::civil::time;
    /// use vatsketch::units::Units;
    /// let words = [time(0, 5, 0, 0), time(12, 0, 0, 0), time(18, 30, 0, 0)].map(|at| Units::US.hour(at));
    /// assert_eq!(words, ["12:05 am", "12:00 pm", "6:30 pm"]);
    /// assert_eq!(Units::default().hour(time(18, 30, 0, 0)), "18:30");
    /// ```
    #[must_use]
    pub fn hour(self, at: Time) -> String {
        if self.clock == Clock::Hours24 {
            return hour(at);
        }
        let half = if at.hour() < 12 { "am" } else { "pm" };
        let of_half = match at.hour() % 12 {
            0 => 12,
            other => other,
        };
        format!("{of_half}:{:02} {half}", at.minute())
    }

    /// Returns whether a length of time that is usually told in days is told in hours.
    #[must_use]
    pub fn without_days(self) -> bool {
        self.long_times == LongTimes::Hours
    }

    /// Returns a long time, which is usually told in hours, in days and hours: `2 d 12 h`; none where it is told in hours.
    ///
    /// # Example
    /// ```
    /// use vatsketch::units::{LongTimes, Units};
    /// let units = Units { long_times: LongTimes::Days, ..Units::default() };
    /// assert_eq!(units.in_days(3600.0).as_deref(), Some("2 d 12 h"));
    /// assert_eq!((units.in_days(600.0), Units::US.in_days(3600.0)), (None, None));
    /// ```
    #[must_use]
    pub fn in_days(self, minutes: f64) -> Option<String> {
        if self.long_times != LongTimes::Days || minutes < 2.0 * DAY_MIN {
            return None;
        }
        let hours = (minutes / HOUR_MIN).round();
        let (days, rest) = ((hours / 24.0).floor(), hours % 24.0);
        Some(if rest < 0.5 { format!("{days:.0} d") } else { format!("{days:.0} d {rest:.0} h") })
    }
}
