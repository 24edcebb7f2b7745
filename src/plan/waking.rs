//! Being woken: an alarm costs once, and what is done before anybody could sleep again rings no other.

use super::Hours;
use super::taken::STILL_UP;

/// When a handling begins, and how long hands are needed; minutes.
pub(super) type Visit = (i64, i64);

/// Returns what the alarm for a handling costs: nothing where nobody is woken, nothing without hands, and nothing while the maker is still up
/// from the handling before.
pub(super) fn alarm_points(hours: &Hours, before: Option<Visit>, (start_min, hands_min): Visit) -> i64 {
    let up = before.is_some_and(|before| is_night(hours, before) && still_up(start_min - before.0, before.1));
    if hands_min <= 0 || up { 0 } else { hours.alarm_points(start_min) }
}

/// Returns whether a handling begins where an alarm counts.
pub(super) fn is_night(hours: &Hours, visit: Visit) -> bool {
    hours.alarm_points(visit.0) > 0
}

/// Returns whether nobody sleeps between a handling at night and the next one, so long after its start.
pub(super) const fn still_up(gap_min: i64, hands_min: i64) -> bool {
    gap_min - hands_min <= STILL_UP.value as i64
}
