//! Tests of `src/record`.

mod dates;
mod entries;
mod example;
mod import;
mod kinds;
pub(crate) mod simulated;

use jiff::civil::DateTime;
use vatsketch::record::{EntryKind, EntryValue, Log};

/// Returns a time of an invented day.
pub(crate) fn at(day: i8, hour: i8, minute: i8) -> DateTime {
    jiff::civil::date(2031, 5, day).at(hour, minute, 0, 0)
}

/// Returns a log with one batch of an example, begun at 09:00 on the fifth.
pub(crate) fn begun(example: &str) -> Log {
    let mut log = Log::default();
    log.begin("", at(5, 9, 0), crate::example(example), None);
    log
}

/// Writes numbers down in the first batch.
pub(crate) fn numbers(log: &mut Log, kind: EntryKind, of: &[(DateTime, f64)]) {
    for (when, number) in of {
        log.enter(1, *when, kind, EntryValue::Number(*number)).unwrap();
    }
}

/// Writes down in the first batch that something was done.
pub(crate) fn done(log: &mut Log, kind: EntryKind, when: DateTime) {
    log.enter(1, when, kind, EntryValue::Done).unwrap();
}
