//! Drying, with a swap of the trays half way.

use super::task::{Task, may_wait, shift_points};
use crate::design::{Design, DryingDesign, Stage};
use crate::plan::Gap;
use crate::plan::hands::{CLEAN_WAITS, LEG_GIVES, LOSS_GIVES, SWAP_TRAY, VISIT, visit_min, whole};
use crate::process::{DryingOutcome, DryingPoint};

pub(super) fn tasks(design: &Design, drying: &DryingOutcome) -> Vec<Task> {
    let mut all = Vec::new();
    if design.drying.drying_h <= 0.0 {
        return all;
    }
    if let Some(swap_h) = drying.swap_h {
        let trays = drying.trays_wanted.max(1).min(design.drying.tray_count);
        let left = leg(design.drying.drying_h - swap_h, drying, 2.0);
        all.push(Task::new("swap", Stage::Drying, "Swap the trays", visit_min(SWAP_TRAY.value * f64::from(trays)), left));
    }
    let hands_min = visit_min(VISIT.value);
    let then = may_wait(hands_min, whole(CLEAN_WAITS.value));
    all.push(Task::new("weigh", Stage::Drying, "Weigh, chill", hands_min, then));
    all
}

/// Returns the time from the first air to the swap, or to the end where there is none.
pub(super) fn first_gap(design: &DryingDesign, drying: &DryingOutcome) -> Gap {
    match drying.swap_h {
        Some(swap_h) => leg(swap_h, drying, 2.0),
        None => leg(design.drying_h, drying, 1.0),
    }
}

/// Returns a leg of the drying: it gives by the hours in which the cheese at its end loses little, shared among the legs.
fn leg(hours: f64, drying: &DryingOutcome, legs: f64) -> Gap {
    let gives_h = (hours_for_loss(&drying.middle.points) / legs).min(LEG_GIVES.value * hours);
    let gives_min = (60.0 * gives_h) as i64;
    Gap::flexible(whole(60.0 * hours), gives_min, gives_min, shift_points())
}

/// Returns the hours in which, at the end of its curve, a cheese loses [`LOSS_GIVES`].
fn hours_for_loss(points: &[DryingPoint]) -> f64 {
    let Some(end) = points.last() else { return 0.0 };
    let before = points.iter().rev().find(|point| (end.loss_percent - point.loss_percent).abs() >= LOSS_GIVES.value);
    before.map_or(end.at_h, |before| end.at_h - before.at_h)
}
