//! Tasks that a plan could not keep out of hours in which nobody can be there, and what would help.

use super::asked::{Asked, SOON_WITHIN_MIN};
use super::taken::WAIT_POINTS;
use super::{ClockError, Schedule, Start, WishOffer, length, time_words};
use crate::design::Wish;
use jiff::civil::DateTime;

/// What falls into impossible hours, because no plan that was asked for avoids them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Impossible {
    /// Keys of the tasks.
    pub tasks: Vec<String>,
    /// Which tasks they are and when, as a sentence.
    pub words: String,
    /// What would help, as a sentence.
    pub help: String,
    /// A wish with which none of them does, where one was found.
    pub offer: Option<WishOffer>,
}

/// A task that falls into impossible hours.
pub(super) struct Touched {
    /// Its key.
    pub(super) key: String,
    /// What is done.
    pub(super) name: String,
    /// When it begins.
    pub(super) start: DateTime,
    /// Its minutes in which nobody can be there.
    pub(super) minutes: i64,
}

/// Returns what is to be said of the tasks that fall into impossible hours, with what would help; nothing where none does.
///
/// # Arguments
/// * `begun`: whether the vat was begun, so that no other start is left
/// * `until_finished`: how many tasks finish the cheeses
/// * `planned`: plans once more with another start
pub(super) fn impossible(
    touched: &[Touched],
    asked: &Asked,
    (begun, until_finished): (bool, usize),
    planned: impl Fn(&Start) -> Option<Schedule>,
) -> Option<Impossible> {
    if touched.is_empty() {
        return None;
    }
    let offer = if begun { None } else { offer(asked, until_finished, planned) };
    let help = offer
        .as_ref()
        .map_or_else(|| elsewise(begun), |offer| format!("{}: then somebody can be there for every task.", offer.words));
    let said = |task: &Touched| format!("“{}” on {} ({} of it)", task.name, time_words(task.start), length(task.minutes));
    let names: Vec<String> = touched.iter().map(said).collect();
    let falls = if names.len() == 1 { "falls" } else { "fall" };
    let words = format!("{} {falls} into hours when nobody can be there.", listed(&names));
    Some(Impossible { tasks: touched.iter().map(|task| task.key.clone()).collect(), words, help, offer })
}

/// Returns what would help where no other time does.
fn elsewise(begun: bool) -> String {
    let start = if begun {
        "The vat has been started"
    } else {
        "No start within a week was found that keeps every task out of the hours when nobody can be there"
    };
    format!(
        "{start}: let somebody else be there, change the times between the tasks (turns, drying, soak), or mark those hours “only if need be”."
    )
}

fn listed(names: &[String]) -> String {
    match names.split_last() {
        Some((last, before)) if !before.is_empty() => format!("{} and {last}", before.join(", ")),
        _ => names.concat(),
    }
}

/// Returns the wish for another time within a week with which no task falls into impossible hours, if there is one.
fn offer(asked: &Asked, until_finished: usize, planned: impl Fn(&Start) -> Option<Schedule>) -> Option<WishOffer> {
    let start = other_start(asked).ok()??;
    let plan = planned(&start).filter(|plan| plan.impossible_min() == 0)?;
    if let Start::FinishedBy { .. } = start {
        let last = plan.placed.get(until_finished.checked_sub(1)?)?;
        let by = asked.clock.local(last.start_min + last.hands_min).ok()?;
        return Some(WishOffer { words: format!("Finish by {}", time_words(by)), wish: Wish::FinishedBy(by) });
    }
    let at = asked.clock.local(plan.placed.first()?.start_min).ok()?;
    Some(WishOffer { words: format!("Begin on {}", time_words(at)), wish: Wish::StartAt(at) })
}

/// Returns where else the plan may lie: up to a week later than what was wished.
fn other_start(asked: &Asked) -> Result<Option<Start>, ClockError> {
    let wait_points = WAIT_POINTS.value as i64;
    let within = |from_min: i64| Start::Earliest { from_min, within_min: SOON_WITHIN_MIN, wait_points };
    Ok(match asked.wish {
        Wish::Open => None,
        Wish::StartAt(at) => Some(within(asked.clock.minute(at)?)),
        // The week after it was looked through already.
        Wish::SoonAfter(at) => Some(within(asked.clock.minute(at)? + SOON_WITHIN_MIN)),
        Wish::FinishedBy(by) => Some(Start::FinishedBy {
            by_min: asked.clock.minute(by)? + SOON_WITHIN_MIN,
            from_min: asked.clock.minute(asked.now)?,
            spare_points: wait_points,
        }),
    })
}
