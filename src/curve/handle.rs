//! What can be taken hold of in a chart: a choice that is a place on one of its axes, and the hours that the cut beside it knows.

use super::section::hours_known;
use super::{CurveKey, SectionKey};
use crate::batch::Batch;
use crate::design::{Heating, Value, field};

/// Along which axis something is moved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Along {
    /// To and fro in time.
    Time,
    /// Up and down.
    Height,
}

/// A choice that can be moved in the chart itself.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Handle {
    /// The choice.
    pub key: &'static str,
    /// Along which axis it is moved.
    pub along: Along,
    /// Where it is, in what the axes show; a handle in time reaches through the whole height and has no height of its own.
    pub at: [f64; 2],
    /// What is chosen, in the unit of the choice.
    pub chosen: f64,
    /// By how much the choice grows where the handle is moved by one on its axis.
    pub for_one: f64,
}

impl Handle {
    /// Returns what is chosen where the handle is moved by so much on its axis.
    ///
    /// # Arguments
    /// * `by`: in what the axis shows, either way
    ///
    /// # Example
    /// ```
    /// use vatsketch::{batch::batch, curve::{curve, CurveKey}, design::Design};
    /// let loss = curve(&batch(&Design::default())?, CurveKey::DryingLoss);
    /// let handle = loss.handles.iter().find(|handle| handle.key == "drying_h").unwrap();
    /// assert_eq!(handle.moved(6.0), Design::default().drying.drying_h + 6.0);
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    #[must_use]
    pub fn moved(&self, by: f64) -> f64 {
        self.chosen + self.for_one * by
    }
}

/// The hours that a cut through a cheese knows, on the axis of a curve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CutHours {
    /// What the cut shows.
    pub key: SectionKey,
    /// Its first moment, in what the axis shows.
    pub from: f64,
    /// Its last.
    pub to: f64,
}

/// Returns the handles of a curve in the units of its own axes: choices that the design uses and that are a place on an axis.
pub(super) fn handles(batch: &Batch, key: CurveKey) -> Vec<Handle> {
    let design = &batch.design;
    let at = |key: &'static str, along: Along, place: &dyn Fn(f64) -> [f64; 2]| {
        let choice = field(key).ok().filter(|choice| (choice.used)(design))?;
        let Value::Number(chosen) = choice.get(design) else { return None };
        Some(Handle { key, along, at: place(chosen), chosen, for_one: 1.0 })
    };
    let ends = |key| at(key, Along::Time, &|hours| [hours, 0.0]);
    let found = match key {
        CurveKey::Warming => {
            let Some(vat) = batch.vat.done() else { return Vec::new() };
            // The bath is where it is set while the milk sets; the milk is warm enough when the rennet goes in.
            let setting_min = 0.5 * (vat.to_rennet_min + vat.to_ladle_min);
            let bath = at("bath_set_temperature_c", Along::Height, &|set_c| [setting_min, set_c]);
            let rennet = at("rennet_temperature_c", Along::Height, &|rennet_c| [vat.to_rennet_min, rennet_c]);
            vec![bath.filter(|_| design.vat.heating == Heating::Bath), rennet]
        }
        CurveKey::DryingLoss | CurveKey::Moisture | CurveKey::WaterActivity => {
            vec![batch.drying.done().and_then(|_| ends("drying_h"))]
        }
        CurveKey::Souring | CurveKey::SoakMoisture | CurveKey::SoakSalt => {
            vec![batch.pickling.done().filter(|pickled| pickled.pickled).and_then(|_| ends("pickling_h"))]
        }
        CurveKey::WheyDrip | CurveKey::Salt | CurveKey::CurdSouring | CurveKey::Germs => Vec::new(),
    };
    found.into_iter().flatten().collect()
}

/// Returns the hours that the cut of what a curve is about knows, in the hours of the curve; none where the two have nothing to do with each other.
pub(super) fn cut_hours(batch: &Batch, curve: CurveKey) -> Option<CutHours> {
    let unmoulded_h = || Some(batch.vat.done()?.to_ladle_min / 60.0 + batch.draining.done()?.draining_h);
    let (key, from) = match curve {
        CurveKey::DryingLoss | CurveKey::Moisture | CurveKey::WaterActivity => (SectionKey::Moisture, 0.0),
        CurveKey::Salt => (SectionKey::Salt, 0.0),
        CurveKey::Souring => (SectionKey::Ph, 0.0),
        CurveKey::SoakMoisture => (SectionKey::SoakMoisture, 0.0),
        CurveKey::SoakSalt => (SectionKey::SoakSalt, 0.0),
        CurveKey::Germs => (SectionKey::Germs, unmoulded_h()?),
        CurveKey::Warming | CurveKey::WheyDrip | CurveKey::CurdSouring => return None,
    };
    Some(CutHours { key, from, to: from + hours_known(batch, key)? })
}
