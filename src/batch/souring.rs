//! Whether a batch is soured, and the moment at which its culture is checked.

use super::Batch;
use crate::design::{PhFrom, Stage};
use crate::law::growth::{SOURED_IN_TIME_H, SOURED_IN_TIME_PH};
use crate::process::{ph_at, souring_on_the_way};

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
    let vat = batch.vat.done()?;
    let at_min = vat.to_culture_min + 60.0 * after_h;
    let way = souring_on_the_way(vat, batch.draining.done(), batch.drying.done());
    let ph = ph_at(&way, at_min / 60.0)?;
    let unmoulded_min = vat.to_ladle_min + batch.draining.done().map_or(0.0, |draining| 60.0 * draining.draining_h);
    let stage = match at_min {
        in_vat if in_vat < vat.to_ladle_min => Stage::Vat,
        in_moulds if in_moulds < unmoulded_min => Stage::Draining,
        _ => Stage::Drying,
    };
    Some(CultureCheck { at_min, after_h, stage, ph, in_time_ph: SOURED_IN_TIME_PH.value })
}
