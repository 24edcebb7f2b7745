//! The batch as it was made: where a choice was measured, what was measured counts and not what was planned.

use crate::design::{Value, field};
use crate::record::{BatchRecord, Beside, EntryKind};

/// Returns a record whose design has the measured choices: the milk that was poured, the air as it was on average.
///
/// A value that the choice refuses leaves it as it was planned.
pub(super) fn as_made(record: &BatchRecord) -> BatchRecord {
    let mut made = record.clone();
    // What a kitchen told the design came from earlier records, which count themselves.
    made.design.leave_kitchen();
    for kind in EntryKind::ALL {
        let Beside::Choice(key) = kind.row().beside else { continue };
        let amounts: Vec<f64> = record.of_kind(*kind).iter().filter_map(|entry| entry.amount()).collect();
        let used = field(key).is_ok_and(|field| (field.used)(&made.design));
        if amounts.is_empty() || !used {
            continue;
        }
        let mean = amounts.iter().sum::<f64>() / amounts.len() as f64;
        let _ = made.design.set(key, Value::Number(mean));
    }
    made
}
