//! What was really weighed, at the stations of the run.

use super::{MeasuredLine, MeasuredOn, MeasuredPoint};
use crate::batch::Batch;
use crate::design::Stage;
use crate::record::{BatchRecord, Entry, EntryKind};

/// Hours after the cheeses went to the air within which a weight is what they went there with.
const FRESH_H: f64 = 1.0;
/// Share of the drying after which a weight is what they came back with.
const DRIED_SHARE: f64 = 0.95;

/// Returns what goes on from some stations by what was written down, kg: milk and cream as they were poured, and the cheeses by the weight of
/// the marked one.
///
/// A weight tells how much heavier or lighter one cheese is than its plan, and all cheeses are taken to be like it.
///
/// # Arguments
/// * `batch`: of the design in the record
/// * `lines`: what was measured of it, of [`super::measured`]
///
/// # Example
/// ```
/// use jiff::civil::date;
/// use vatsketch::record::{EntryKind, EntryValue, Log};
/// use vatsketch::{batch::batch, curve::{measured, run, run_measured}, design::{Design, Stage}};
/// let (mut log, at, design) = (Log::default(), date(2031, 5, 9).at(8, 0, 0, 0), Design::default());
/// log.begin("", at, design.clone(), None);
/// log.enter(1, at, EntryKind::MilkPoured, EntryValue::Number(1.1 * design.milk.milk_l))?;
/// let batch = batch(&design).unwrap();
/// let weighed = run_measured(&batch, log.batch(1)?, &measured(&batch, log.batch(1)?, None));
/// assert_eq!(weighed[0].0, Stage::Milk);
/// assert!(weighed[0].1 > 1.05 * run(&batch).stations[0].goes_on_kg.unwrap());
/// # Ok::<(), vatsketch::record::RecordError>(())
/// ```
#[must_use]
pub fn run_measured(batch: &Batch, record: &BatchRecord, lines: &[MeasuredLine]) -> Vec<(Stage, f64)> {
    let goes_on_kg = |stage| Some(batch.balance.stages.iter().find(|(at, _)| *at == stage)?.1.goes_on.total_kg());
    let milk =
        poured_kg(batch, record).zip(goes_on_kg(Stage::Milk)).map(|(more_kg, planned_kg)| (Stage::Milk, planned_kg + more_kg));
    let weighed = lines.iter().find(|line| line.kind == EntryKind::CheeseWeight && line.on == MeasuredOn::Weight);
    let points = weighed.map(|line| &line.points[..]).unwrap_or_default();
    let drying_h = batch.design.drying.drying_h;
    let fresh = points.iter().rfind(|point| point.x <= FRESH_H);
    let dried = points.iter().rfind(|point| point.x >= DRIED_SHARE * drying_h && point.x > FRESH_H);
    let cheeses = |stage, point: Option<&MeasuredPoint>| {
        let point = point?;
        Some((stage, goes_on_kg(stage)? * point.measured / point.planned?))
    };
    milk.into_iter().chain(cheeses(Stage::Salting, fresh)).chain(cheeses(Stage::Drying, dried)).collect()
}

/// Returns by how much more was poured into the pot than planned, kg; none where neither milk nor cream was written down.
fn poured_kg(batch: &Batch, record: &BatchRecord) -> Option<f64> {
    let milk = batch.milk.done()?;
    let amount = |kind| record.latest(kind).and_then(Entry::amount);
    let (poured_l, cream_g) = (amount(EntryKind::MilkPoured), amount(EntryKind::CreamPoured));
    if poured_l.is_none() && cream_g.is_none() {
        return None;
    }
    let planned_l = batch.design.milk.milk_l;
    let more_milk_kg = poured_l.map_or(0.0, |litres| (litres - planned_l) * milk.bought_density_kg_l);
    Some(more_milk_kg + cream_g.map_or(0.0, |grams| (grams - milk.cream_g) / 1000.0))
}
