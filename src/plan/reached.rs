//! Where a maker is in the plan, by what was written down.

use super::Tasks;
use crate::design::Reached;
use crate::record::{BatchRecord, Entry, EntryKind, EntryValue};
use jiff::civil::DateTime;

crate::constants! {
    /// Time between two entries from which they are of two turns.
    SAME_TURN = { "Time between two entries from which they are of two turns", 45.0, "min", (20.0, 60.0), Ourselves, "nobody turns that often, and whoever writes two things at one turn does so sooner", Judged }
}

/// Returns the task that was begun last, and when, by what was written down until now, with the number of the entry that says so; none where
/// nothing tells.
///
/// It is the task furthest on of which an entry says that it was begun, whatever was left out before it. Where several entries say it of one
/// task, the first counts: a clean break and the cut are of the same.
///
/// # Example
/// ```
/// use jiff::civil::date;
/// use vatsketch::{batch::batch, design::Design, plan::{reached, tasks}, record::{EntryKind, EntryValue, Log}};
/// let (mut log, at) = (Log::default(), |hour, minute| date(2031, 5, 9).at(hour, minute, 0, 0));
/// log.begin("", at(8, 0), Design::default(), None);
/// log.enter(1, at(9, 2), EntryKind::RennetAdded, EntryValue::Done)?;
/// log.enter(1, at(9, 40), EntryKind::CleanBreak, EntryValue::Done)?;
/// let tasks = tasks(&batch(&Design::default())?);
/// let here = |now| reached(&log.batches[0], &tasks, now).map(|(here, _)| (here.task, here.began));
/// assert_eq!(here(at(8, 30)), None);
/// assert_eq!(here(at(9, 10)), Some(("rennet".to_owned(), at(9, 2))));
/// assert_eq!(here(at(9, 50)), Some(("cut".to_owned(), at(9, 40))));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn reached(record: &BatchRecord, tasks: &Tasks, now: DateTime) -> Option<(Reached, u32)> {
    let mut turn: (u32, Option<DateTime>) = (0, None);
    let mut furthest: Option<(usize, &Entry)> = None;
    for entry in record.standing().into_iter().filter(|entry| entry.at <= now) {
        let key = match (entry.kind, &entry.value) {
            (EntryKind::TaskBegun, EntryValue::Words(key)) => key.clone(),
            (EntryKind::TurnSalt | EntryKind::TurnWhey, _) => {
                let is_same = turn.1.is_some_and(|last| last.duration_until(entry.at).as_secs_f64() < 60.0 * SAME_TURN.value);
                if !is_same {
                    turn = (turn.0 + 1, Some(entry.at));
                }
                format!("turn_{}", turn.0)
            }
            (kind, _) => task_of(kind).unwrap_or_default().to_owned(),
        };
        let Some(place) = tasks.position(&key) else { continue };
        if furthest.is_none_or(|(so_far, _)| so_far < place) {
            furthest = Some((place, entry));
        }
    }
    let (place, entry) = furthest?;
    Some((Reached { task: tasks.all.get(place)?.key.clone(), began: entry.at }, entry.number))
}

/// Returns the key of the task that is begun with what an entry says; none of what is measured at any time, or at one of many tasks.
fn task_of(kind: EntryKind) -> Option<&'static str> {
    Some(match kind {
        EntryKind::SanitisedWith => "sanitise",
        EntryKind::MilkPoured | EntryKind::CreamPoured | EntryKind::ColdMilkPh => "measure",
        EntryKind::HeatedMilk => "pasteurise",
        EntryKind::HeldMilk => "hold",
        EntryKind::WarmingBegan => "warm",
        EntryKind::CultureAdded => "culture",
        EntryKind::CalciumAdded => "calcium",
        EntryKind::RennetAdded | EntryKind::RennetPoured => "rennet",
        EntryKind::CleanBreak | EntryKind::CurdCut => "cut",
        EntryKind::Ladled | EntryKind::MouldsFilled => "ladle",
        EntryKind::UnmouldedPh | EntryKind::UnmouldedSecondPh | EntryKind::PepperLeft | EntryKind::AirBegan => "unmould",
        EntryKind::VinegarPoured => "vinegar",
        _ => return None,
    })
}

/// Returns what is written down when a task is begun: what the log has a name for, or else the step by its key.
///
/// # Example
/// ```
/// use vatsketch::{plan::begins, record::{EntryKind, EntryValue}};
/// assert_eq!(begins("rennet"), (EntryKind::RennetAdded, EntryValue::Done));
/// assert_eq!(begins("turn_3"), (EntryKind::TaskBegun, EntryValue::Words("turn_3".to_owned())));
/// ```
#[must_use]
pub fn begins(task: &str) -> (EntryKind, EntryValue) {
    // The curd is tested before it is cut: that the test was begun does not say that it was clean, nor that it was cut.
    let named = [EntryKind::WarmingBegan, EntryKind::CultureAdded, EntryKind::RennetAdded, EntryKind::Ladled];
    let own = named.into_iter().find(|kind| task_of(*kind) == Some(task));
    own.map_or_else(|| (EntryKind::TaskBegun, EntryValue::Words(task.to_owned())), |kind| (kind, EntryValue::Done))
}
