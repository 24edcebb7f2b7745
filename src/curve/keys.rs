//! The figures that a batch gives.

use super::{Axis, Curve, drying, salt, souring, wet};
use crate::batch::{Batch, Progress};

/// Which figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum CurveKey {
    /// Bath and milk against time.
    Warming,
    /// Loss of mass in drying against time.
    DryingLoss,
    /// Whey from the moulds against time.
    WheyDrip,
    /// Moisture of mean, centre and surface in drying.
    Moisture,
    /// Water activity of mean and centre in drying.
    WaterActivity,
    /// Salt in the moisture against time.
    Salt,
    /// pH in the vinegar against time.
    Souring,
}

impl CurveKey {
    /// Every figure.
    pub const ALL: [Self; 7] =
        [Self::Warming, Self::DryingLoss, Self::WheyDrip, Self::Moisture, Self::WaterActivity, Self::Salt, Self::Souring];

    /// Returns the word on the command line.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Warming => "warming",
            Self::DryingLoss => "drying_loss",
            Self::WheyDrip => "whey_drip",
            Self::Moisture => "moisture",
            Self::WaterActivity => "water_activity",
            Self::Salt => "salt",
            Self::Souring => "souring",
        }
    }

    /// Returns the figure with this key, if there is one.
    ///
    /// # Example
    /// ```
    /// use vatsketch::curve::CurveKey;
    /// assert_eq!(CurveKey::from_key("whey_drip"), Some(CurveKey::WheyDrip));
    /// ```
    #[must_use]
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|figure| figure.key() == key)
    }

    /// Returns the heading of the figure.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::Warming => "Warming",
            Self::DryingLoss => "Drying loss",
            Self::WheyDrip => "Whey from the moulds",
            Self::Moisture => "Moisture while drying",
            Self::WaterActivity => "Water activity while drying",
            Self::Salt => "Salt in moisture",
            Self::Souring => "pH in the vinegar",
        }
    }
}

/// Returns one figure of a batch; where its stage was not worked out, an empty one that says why.
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
    match key {
        CurveKey::Warming => drawn(key, &batch.vat, |vat| wet::warming(batch, vat)),
        CurveKey::WheyDrip => drawn(key, &batch.draining, wet::whey_drip),
        CurveKey::DryingLoss => drawn(key, &batch.drying, |dried| drying::loss(batch, dried)),
        CurveKey::Moisture => drawn(key, &batch.drying, |dried| drying::moisture(batch, dried)),
        CurveKey::WaterActivity => drawn(key, &batch.drying, |dried| drying::water_activity(batch, dried)),
        CurveKey::Salt => drawn(key, &batch.salting, |salted| salt::salt(batch, salted)),
        CurveKey::Souring => drawn(key, &batch.pickling, |pickled| souring::souring(batch, pickled)),
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
