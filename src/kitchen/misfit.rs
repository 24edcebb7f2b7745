//! How far records are from what the model says of them.

use super::{KitchenConstants, LearnError};
use crate::batch::{Batch, batch_until};
use crate::curve::{MeasuredOn, measured};
use crate::design::Stage;
use crate::process::{Given, Runs};
use crate::record::{
    Anchor, BatchRecord, CLOCK_SPREAD, EntryKind, MARKED_CHEESE_DEVIATION, READING_DEVIATION, SHARED_DEVIATION,
    WHEY_CAUGHT_DEVIATION,
};

/// One measurement beside the model.
#[derive(Clone, Copy, Debug)]
pub(super) struct Misfit {
    /// What was measured.
    pub(super) kind: EntryKind,
    /// How far the model is from it, in standard deviations of one reading; none where the model says nothing there.
    pub(super) off: Option<f64>,
    /// How far it moves by one standard deviation of what all readings of its kind in the batch are off together.
    pub(super) together: f64,
    /// How many times as far as a reading scatters it may be off, since something near it is done by hand and not to the minute.
    pub(super) blurred: f64,
}

/// A record beside its batch.
pub(super) struct Laid {
    pub(super) batch: Batch,
    pub(super) misfits: Vec<Misfit>,
}

impl Laid {
    /// Returns how far each measurement of a record lies from the model in a kitchen.
    ///
    /// Lines of curves count, and the minutes to the clean break; other times follow from them or from the hands of the cook.
    ///
    /// `before`: the batch under other constants, from which stages are taken over
    pub(super) fn of(record: &BatchRecord, constants: &KitchenConstants, before: Option<&Batch>) -> Result<Self, LearnError> {
        let given = Given { parameters: constants.parameters, runs: Runs::MiddleOnly, ..Given::default() };
        // Nothing that is kept in a jar is measured.
        let (batch, _) = batch_until(&constants.made(&record.design), &given, before, Stage::Pickling)?;
        let lines = measured(&batch, record, None);
        // The loss that the window draws is the weight once more.
        let lines = lines.iter().filter(|line| line.kind != EntryKind::CheeseWeight || line.on == MeasuredOn::Weight);
        let of_lines = lines.flat_map(|line| {
            let one = READING_DEVIATION.value * line.reads_to;
            line.points.iter().map(move |point| Misfit {
                kind: line.kind,
                off: point.residual().map(|residual| -residual / one),
                together: together(line.kind, line.reads_to, point.planned.unwrap_or_default()) / one,
                blurred: 1.0 + (point.bends / one).powi(2),
            })
        });
        let clean_break_min = batch.vat.done().map(|vat| vat.clean_break_min);
        let of_breaks = record.of_kind(EntryKind::CleanBreak).into_iter().filter_map(|entry| {
            let off_min = clean_break_min? - 60.0 * record.hours_since(Anchor::Rennet, entry.at)?;
            let off = Some(off_min / (READING_DEVIATION.value * CLOCK_SPREAD.value));
            Some(Misfit { kind: EntryKind::CleanBreak, off, together: 0.0, blurred: 1.0 })
        });
        let misfits = of_lines.chain(of_breaks).collect();
        Ok(Self { batch, misfits })
    }
}

/// Returns what all readings of a kind in a batch are off together, in the unit of the line: the instrument, or the cheese that was marked.
fn together(kind: EntryKind, reads_to: f64, planned: f64) -> f64 {
    match kind {
        EntryKind::CheeseWeight => MARKED_CHEESE_DEVIATION.value * planned,
        EntryKind::TurnWhey => WHEY_CAUGHT_DEVIATION.value * planned,
        _ => SHARED_DEVIATION.value * reads_to,
    }
}
