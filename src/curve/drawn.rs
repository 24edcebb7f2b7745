//! The curves that a batch gives.

use super::handle::{cut_hours, handles};
use super::{Axis, Curve, CurveKey, curd_souring, drying, germs, salt, soak, souring, wet};
use crate::batch::{Batch, Progress};

/// Returns one figure of a batch; where its stage was not calculated, an empty one that says why.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, curve::{curve, CurveKey}};
/// let warming = curve(&batch(&Design::default())?, CurveKey::Warming);
/// assert!(warming.series.iter().any(|series| series.name == "milk"));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn curve(batch: &Batch, key: CurveKey) -> Curve {
    Curve { handles: handles(batch, key), cut: cut_hours(batch, key), ..lines(batch, key) }
}

/// Returns the curve without what can be taken hold of in it.
fn lines(batch: &Batch, key: CurveKey) -> Curve {
    match key {
        CurveKey::Warming => drawn(key, &batch.vat, |vat| wet::warming(batch, vat)),
        CurveKey::WheyDrip => drawn(key, &batch.draining, wet::whey_drip),
        CurveKey::DryingLoss => drawn(key, &batch.drying, |dried| drying::loss(batch, dried)),
        CurveKey::Moisture => drawn(key, &batch.drying, |dried| drying::moisture(batch, dried)),
        CurveKey::WaterActivity => drawn(key, &batch.drying, |dried| drying::water_activity(batch, dried)),
        CurveKey::Salt => drawn(key, &batch.salting, |salted| salt::salt(batch, salted)),
        CurveKey::Souring => drawn(key, &batch.pickling, |pickled| souring::souring(batch, pickled)),
        CurveKey::SoakMoisture => drawn(key, &batch.pickling, |pickled| soak::moisture(batch, pickled)),
        CurveKey::SoakSalt => drawn(key, &batch.pickling, |pickled| soak::salt(batch, pickled)),
        CurveKey::CurdSouring => match batch.vat.done() {
            Some(vat) => drawn(key, &batch.draining, |drained| curd_souring::of_curd(batch, vat, drained)),
            None => empty(key, batch.vat.why_not().unwrap_or_default()),
        },
        CurveKey::Germs => match &batch.germs {
            Some(outcome) => germs::germs(outcome),
            None => empty(key, batch.vat.why_not().unwrap_or_default()),
        },
    }
}

fn drawn<T>(key: CurveKey, progress: &Progress<T>, draw: impl FnOnce(&T) -> Curve) -> Curve {
    match progress.done() {
        Some(outcome) => draw(outcome),
        None => empty(key, progress.why_not().unwrap_or_default()),
    }
}

fn empty(key: CurveKey, because: String) -> Curve {
    let axis = |label, unit| Axis { label, unit, least: 0.0, most: 1.0 };
    Curve {
        handles: Vec::new(),
        dots: Vec::new(),
        cut: None,
        title: key.title(),
        x: axis("time", "h"),
        y: axis("", ""),
        series: Vec::new(),
        bands: Vec::new(),
        events: Vec::new(),
        in_words: format!("{}: no curve: {because}", key.title()),
        empty_because: Some(because),
    }
}
