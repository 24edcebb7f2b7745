//! Ladling, turning, salting, unmoulding, peppering.

use super::task::{Task, may_wait, shift_points};
use crate::batch::Batch;
use crate::design::Stage;
use crate::law::food_density::cheese_volume_ml;
use crate::plan::Gap;
use crate::plan::hands::{
    CLEAN_WAITS, LADLE_LITRE, LADLE_MOULD, LAY_CHEESE, PEPPER_CHEESE, SALT_CHEESE, TURN_CHEESE, TURN_GIVES, UNMOULD_CHEESE,
    visit_min, whole,
};
use crate::process::{DrainingOutcome, VatOutcome};

pub(super) fn tasks(batch: &Batch, vat: &VatOutcome, draining: &DrainingOutcome) -> Vec<Task> {
    let count = f64::from(draining.cheese_count);
    let curd_l = 0.001 * cheese_volume_ml(&vat.curd);
    let ladle_min = visit_min(LADLE_LITRE.value * curd_l + LADLE_MOULD.value * count);
    // Times from the ladling on; the last one is the unmoulding.
    let mut at_h: Vec<f64> = std::iter::once(0.0).chain(draining.turns_h.iter().copied()).collect();
    at_h.push(draining.draining_h);
    let mut gaps = at_h.windows(2).map(|pair| match pair {
        [from_h, to_h] => turn_gap(whole(60.0 * to_h) - whole(60.0 * from_h)),
        _ => Gap::default(),
    });
    let mut all = vec![Task::new("ladle", Stage::Draining, "Ladle into the moulds", ladle_min, gaps.next().unwrap_or_default())];
    let salted = batch.salting.done().filter(|salting| salting.salt_g > 0.0).map_or(0, |_| batch.design.salting.salted_turns);
    for (turn, gap) in (1..).zip(gaps) {
        let with_salt = turn <= salted;
        let (stage, name, seconds) = if with_salt {
            (Stage::Salting, format!("Turn {turn} and salt"), TURN_CHEESE.value + SALT_CHEESE.value)
        } else {
            (Stage::Draining, format!("Turn {turn}"), TURN_CHEESE.value)
        };
        all.push(Task::new(format!("turn_{turn}"), stage, name, visit_min(seconds * count), gap));
    }
    all.push(unmould(batch, count));
    all
}

/// A turn may give in both directions, so that a night fits between two of them.
fn turn_gap(usual_min: i64) -> Gap {
    let gives_min = (TURN_GIVES.value * usual_min as f64) as i64;
    Gap::flexible(usual_min, gives_min, gives_min, shift_points())
}

/// Unmoulding; the air, which knows its own gap, sets it when there is any drying.
fn unmould(batch: &Batch, count: f64) -> Task {
    let peppered = batch.design.salting.pepper_g_dm2 > 0.0;
    let dried = batch.drying.done().is_some() && batch.design.drying.drying_h > 0.0;
    let mut seconds = UNMOULD_CHEESE.value;
    let mut name = "Unmould".to_owned();
    if peppered {
        seconds += PEPPER_CHEESE.value;
        name.push_str(", pepper");
    }
    if dried {
        seconds += LAY_CHEESE.value;
        name.push_str(", lay on trays");
    }
    let hands_min = visit_min(seconds * count);
    let gap = match batch.drying.done() {
        Some(drying) if dried => super::air::first_gap(&batch.design.drying, drying),
        Some(_) | None => may_wait(hands_min, whole(CLEAN_WAITS.value)),
    };
    Task::new("unmould", Stage::Draining, name, hands_min, gap)
}
