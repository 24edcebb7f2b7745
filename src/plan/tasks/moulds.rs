//! Ladling, turning, salting, unmoulding, peppering.

use super::meter::{IF_NOT_SOUR, MEASURE_PH, MeterTask};
use super::task::{Task, may_wait, shift_points};
use crate::batch::Batch;
use crate::design::Stage;
use crate::law::food_density::cheese_volume_ml;
use crate::plan::Gap;
use crate::plan::hands::{
    CLEAN_WAITS, LADLE_LITRE, LADLE_MOULD, LAY_CHEESE, METER, METER_MOVES, PEPPER_CHEESE, SALT_CHEESE, TURN_CHEESE, TURN_GIVES,
    UNMOULD_CHEESE, visit_min, whole,
};
use crate::process::{DrainingOutcome, VatOutcome};

/// What is done in the moulds before the unmoulding.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum InMoulds {
    Ladle,
    Turn(u32),
    Meter,
}

pub(super) fn tasks(batch: &Batch, vat: &VatOutcome, draining: &DrainingOutcome, meter: Option<&MeterTask>) -> Vec<Task> {
    let count = f64::from(draining.cheese_count);
    let curd_l = 0.001 * cheese_volume_ml(&vat.curd);
    // Times from the ladling on.
    let turns = draining.turns_h.iter().zip(1..).map(|(at_h, turn)| (*at_h, InMoulds::Turn(turn)));
    let mut done: Vec<(f64, InMoulds)> = std::iter::once((0.0, InMoulds::Ladle)).chain(turns).collect();
    let meter_h = meter.filter(|meter| meter.is_alone()).map(|meter| (meter.at_min - vat.to_ladle_min) / 60.0);
    // What is measured while the milk ripens is none of the moulds' business.
    done.extend(meter_h.filter(|at_h| *at_h > 0.0).map(|at_h| (at_h, InMoulds::Meter)));
    done.sort_by(|one, other| one.0.total_cmp(&other.0));
    let ends_h = done.iter().skip(1).map(|(at_h, _)| *at_h).chain([draining.draining_h]);
    let salted = batch.salting.done().filter(|salting| salting.salt_g > 0.0).map_or(0, |_| batch.design.salting.salted_turns);
    let mut all = Vec::new();
    for ((from_h, what), to_h) in done.iter().zip(ends_h) {
        let gap_min = whole(60.0 * to_h) - whole(60.0 * from_h);
        let gap = if meter_h == Some(to_h) { before_meter(gap_min) } else { turn_gap(gap_min) };
        let (key, stage, name, seconds) = match *what {
            InMoulds::Ladle => {
                let seconds = LADLE_LITRE.value * curd_l + LADLE_MOULD.value * count;
                ("ladle".to_owned(), Stage::Draining, "Ladle into the moulds".to_owned(), seconds)
            }
            InMoulds::Turn(turn) if turn <= salted => {
                let seconds = (TURN_CHEESE.value + SALT_CHEESE.value) * count;
                (format!("turn_{turn}"), Stage::Salting, format!("Turn {turn} and salt"), seconds)
            }
            InMoulds::Turn(turn) => (format!("turn_{turn}"), Stage::Draining, format!("Turn {turn}"), TURN_CHEESE.value * count),
            InMoulds::Meter => (MeterTask::ALONE.to_owned(), Stage::Draining, MEASURE_PH.to_owned(), METER.value),
        };
        let also = meter.is_some_and(|meter| !meter.is_alone() && meter.task == key);
        let (name, seconds) = if also { (format!("{name}, measure the pH"), seconds + METER.value) } else { (name, seconds) };
        let task = Task::new(key, stage, name, visit_min(seconds), gap);
        all.push(if also || *what == InMoulds::Meter { task.saying(IF_NOT_SOUR) } else { task });
    }
    all.push(unmould(batch, count));
    all
}

/// A turn may give in both directions, so that a night fits between two of them.
fn turn_gap(usual_min: i64) -> Gap {
    let gives_min = (TURN_GIVES.value * usual_min as f64) as i64;
    Gap::flexible(usual_min, gives_min, gives_min, shift_points())
}

/// The hour at which the culture is checked hardly gives: sooner it tells nothing, and later germs have had their time.
fn before_meter(usual_min: i64) -> Gap {
    let gives_min = whole(METER_MOVES.value).min(usual_min);
    Gap::flexible(usual_min, gives_min, gives_min, shift_points())
}

/// Unmoulding; the air, which knows its own gap, sets it when there is any drying.
fn unmould(batch: &Batch, count: f64) -> Task {
    let peppered = batch.design.salting.pepper_g_dm2 > 0.0;
    let dried = batch.drying.done().is_some() && batch.design.drying.drying_h > 0.0;
    let mut seconds = UNMOULD_CHEESE.value;
    let mut name = "Unmould".to_owned();
    if batch.milk.done().is_some_and(|milk| milk.soured.is_soured()) {
        seconds += METER.value;
        name.push_str(", measure the pH");
    }
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
