//! How milk, curd and cheese sour from the start of warming to the last air, and the moment at which a culture is checked.

use super::Batch;
use crate::design::{PhFrom, Stage};
use crate::law::growth::{SOURED_IN_TIME_H, SOURED_IN_TIME_PH};
use crate::process::SourPoint;

/// One moment of souring in a batch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SourMoment {
    /// Minutes from the start of warming.
    pub at_min: f64,
    /// The stage: the milk of the vat, the curd in the moulds, or the cheese in the air.
    pub stage: Stage,
    /// How sour it is then; its own hours count from the start of the stage.
    pub point: SourPoint,
}

/// The moment at which a meter tells whether the culture works.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CultureCheck {
    /// Minutes from the start of warming.
    pub at_min: f64,
    /// Hours after the culture went in ([`SOURED_IN_TIME_H`]).
    pub after_h: f64,
    /// Where the milk or the curd is then.
    pub stage: Stage,
    /// pH that the calculation foresees then.
    pub ph: f64,
    /// pH that it should have come down to ([`SOURED_IN_TIME_PH`]).
    pub in_time_ph: f64,
}

/// Returns whether anything sours milk or curd on purpose, or a meter has said how sour the curd is.
#[must_use]
pub fn is_soured(batch: &Batch) -> bool {
    let measured = |from: PhFrom| from == PhFrom::Measured;
    batch.milk.done().is_some_and(|milk| milk.soured.is_soured())
        || measured(batch.design.draining.ladled_ph_from)
        || measured(batch.design.drying.unmoulded_ph_from)
}

/// Returns how it sours in vat, moulds and air, one after another, as far as the batch came. Where the milk turns into curd, and where a meter
/// corrects the calculation, two moments stand at the same minute.
///
/// # Example
/// ```
/// use vatsketch::{batch::{batch, souring_course}, design::{Design, SouredBy}};
/// let mut design = Design::default();
/// design.milk.soured_by = SouredBy::Culture;
/// let course = souring_course(&batch(&design)?);
/// let (first, last) = (course.first().unwrap(), course.last().unwrap());
/// assert!(first.at_min == 0.0 && last.point.ph < first.point.ph);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn souring_course(batch: &Batch) -> Vec<SourMoment> {
    let mut course = Vec::new();
    let mut add = |from_min: f64, stage: Stage, points: &[SourPoint]| {
        course.extend(points.iter().map(|point| SourMoment { at_min: from_min + 60.0 * point.at_h, stage, point: *point }));
    };
    let Some(vat) = batch.vat.done() else { return course };
    add(0.0, Stage::Vat, &vat.souring);
    let Some(draining) = batch.draining.done() else { return course };
    add(vat.to_ladle_min, Stage::Draining, &draining.souring);
    if let Some(drying) = batch.drying.done() {
        add(vat.to_ladle_min + 60.0 * draining.draining_h, Stage::Drying, &drying.souring);
    }
    course
}

/// Returns the moment at which the culture is checked with a meter; none without a culture, or if the batch did not come so far.
///
/// # Source
/// [`SOURED_IN_TIME_H`], [`SOURED_IN_TIME_PH`].
///
/// # Example
/// ```
/// use vatsketch::{batch::{batch, culture_check}, design::{Design, SouredBy}};
/// let mut design = Design::default();
/// assert!(culture_check(&batch(&design)?).is_none());
/// design.milk.soured_by = SouredBy::Culture;
/// let check = culture_check(&batch(&design)?).unwrap();
/// assert_eq!(check.after_h, 6.0);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn culture_check(batch: &Batch) -> Option<CultureCheck> {
    batch.milk.done()?.soured.sourness.culture?;
    let after_h = SOURED_IN_TIME_H.value;
    let at_min = batch.vat.done()?.to_culture_min + 60.0 * after_h;
    let (stage, ph) = ph_at(&souring_course(batch), at_min)?;
    Some(CultureCheck { at_min, after_h, stage, ph, in_time_ph: SOURED_IN_TIME_PH.value })
}

/// Returns stage and pH at a minute, straight between two moments; none outside the course.
fn ph_at(course: &[SourMoment], at_min: f64) -> Option<(Stage, f64)> {
    let after = course.partition_point(|moment| moment.at_min <= at_min);
    let before = course.get(after.checked_sub(1)?)?;
    if before.at_min.to_bits() == at_min.to_bits() {
        return Some((before.stage, before.point.ph));
    }
    let later = course.get(after)?;
    let share = (at_min - before.at_min) / (later.at_min - before.at_min);
    Some((before.stage, before.point.ph + share * (later.point.ph - before.point.ph)))
}
