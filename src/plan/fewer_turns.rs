//! Fewer turns, further apart, where they save a night.

use super::{KitchenWeek, Now, kitchen_week};
use crate::batch::{Batch, batch_after};
use crate::caution::{Severity, cautions};
use crate::design::{DrainingDesign, Value};
use std::collections::BTreeSet;

crate::constants! {
    /// Longest wait that is offered.
    LONGEST_WAIT = { "Longest wait between turns that is offered to save a night", 9.0, "h", (8.0, 12.0), Ourselves, "a night, and time to get up", Judged }
}

/// Steps of the time between turns that are offered, h: those of its slider.
const STEP_H: f64 = 0.5;

/// Fewer turns that can be taken over with one press.
#[derive(Clone, Debug, PartialEq)]
pub struct TurnsOffer {
    /// "Turn 4 times instead of 6, every 8 h: no alarm at night".
    pub words: String,
    /// How many turns.
    pub turn_count: u32,
    /// Hours between them.
    pub turn_gap_h: f64,
}

impl TurnsOffer {
    /// Returns the inputs that it sets.
    #[must_use]
    pub fn changes(&self) -> Vec<(&'static str, Value)> {
        vec![("turn_count", Value::Number(f64::from(self.turn_count))), ("turn_gap_h", Value::Number(self.turn_gap_h))]
    }
}

/// Returns the most turns with which, planned again, no alarm comes at night, where it does with those of the design.
///
/// The cheeses drain as long as before, to a quarter of an hour for each turn: the turns lie further apart. Nothing is offered once the turns have
/// begun, nor what would bring a serious warning that is not there yet.
///
/// # Arguments
/// * `week`: as the batch is planned now
/// * `now`: as for [`kitchen_week`]
///
/// # Example
/// ```
/// use jiff::{civil::date, tz::TimeZone};
/// use vatsketch::{batch::batch, design::{Design, Value, Wish}, plan::{Now, fewer_turns, kitchen_week}};
/// let now = Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC };
/// let mut design = Design::default();
/// design.set("turn_count", Value::Number(10.0))?;
/// design.set("turn_gap_h", Value::Number(3.0))?;
/// design.week.wish = Wish::StartAt(date(2031, 5, 9).at(9, 0, 0, 0));
/// let batch = batch(&design)?;
/// let week = kitchen_week(&batch, &now)?.ok_or("no wish")?;
/// assert!(week.wakes());
/// let offer = fewer_turns(&batch, &week, &now).ok_or("no offer")?;
/// assert!(offer.turn_count < 10 && offer.turn_gap_h > 3.0);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn fewer_turns(batch: &Batch, week: &KitchenWeek, now: &Now) -> Option<TurnsOffer> {
    let to_come = week.tasks.iter().any(|task| task.key == "turn_1" && !task.begun);
    if !to_come || !week.wakes() {
        return None;
    }
    let draining = &batch.design.draining;
    let salted = batch.salting.done().filter(|salting| salting.salt_g > 0.0).map_or(0, |_| batch.design.salting.salted_turns);
    let serious = serious(batch);
    (salted.max(1)..draining.turn_count).rev().map_while(|turns| offer(draining, turns)).find(|offer| {
        planned(batch, offer, now).is_some_and(|(after, week)| !week.wakes() && self::serious(&after).is_subset(&serious))
    })
}

/// Returns an offer of so many turns; none where they would lie too far apart, and fewer would even more so.
fn offer(draining: &DrainingDesign, turn_count: u32) -> Option<TurnsOffer> {
    let whole_h = f64::from(draining.turn_count + 1) * draining.turn_gap_h;
    let turn_gap_h = (whole_h / f64::from(turn_count + 1) / STEP_H).round() * STEP_H;
    (turn_gap_h <= LONGEST_WAIT.value).then(|| {
        let times = if turn_count == 1 { "once".to_owned() } else { format!("{turn_count} times") };
        let words = format!("Turn {times} instead of {}, every {turn_gap_h} h: no alarm at night", draining.turn_count);
        TurnsOffer { words, turn_count, turn_gap_h }
    })
}

/// Returns the batch with an offer taken over, and its week.
fn planned(batch: &Batch, offer: &TurnsOffer, now: &Now) -> Option<(Batch, KitchenWeek)> {
    let mut design = batch.design.clone();
    offer.changes().into_iter().try_for_each(|(key, value)| design.set(key, value)).ok()?;
    let (after, _) = batch_after(&design, Some(batch)).ok()?;
    let week = kitchen_week(&after, now).ok()??;
    Some((after, week))
}

fn serious(batch: &Batch) -> BTreeSet<&'static str> {
    cautions(batch).iter().filter(|caution| caution.severity == Severity::Stop).map(|caution| caution.key).collect()
}
