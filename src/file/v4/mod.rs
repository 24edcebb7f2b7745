//! Format 4, frozen: format 3 with an id, and with a wish that the cheeses be finished, not ready.

mod choices;
mod stages;
mod supplies;
mod week;

use super::saved_id::{self, SavedId};
use super::v3;
pub(super) use choices::{
    BuyFor, CalciumForm, CreamBy, DryingPlace, Good, Habitual, Heating, JarLay, KeptIn, MilkKind, MilkTreatment, PhKnown, PotRest,
    RennetLabel, VinegarBy,
};
pub(super) use stages::{Draining, Drying, Keeping, Milk, Pickling, Salting, Vat};
pub(super) use supplies::{Package, Supplies, Supply};
pub(super) use week::{Busy, Day, Here, Taken, Week, Wish};

/// A design as it is in a file. What is left out has a value too, so that a short file can be written by hand.
#[derive(serde::Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Saved {
    #[serde(rename = "format")]
    pub(super) _format: u32,
    #[serde(default, with = "saved_id")]
    pub(super) id: Option<SavedId>,
    #[serde(default)]
    pub(super) title: String,
    #[serde(default)]
    pub(super) note: String,
    #[serde(default)]
    pub(super) milk: Milk,
    #[serde(default)]
    pub(super) vat: Vat,
    #[serde(default)]
    pub(super) draining: Draining,
    #[serde(default)]
    pub(super) salting: Salting,
    #[serde(default)]
    pub(super) drying: Drying,
    #[serde(default)]
    pub(super) pickling: Pickling,
    #[serde(default)]
    pub(super) keeping: Keeping,
    #[serde(default)]
    pub(super) week: Week,
    #[serde(default)]
    pub(super) supplies: Supplies,
}

impl From<v3::Saved> for Saved {
    /// Format 3 knew no id, so there is none until the design is saved.
    fn from(saved: v3::Saved) -> Self {
        let v3::Saved { _format: _, title, note, milk, vat, draining, salting, drying, pickling, keeping, week, supplies } = saved;
        Self {
            _format: 5,
            id: None,
            title,
            note,
            milk: milk.into(),
            vat: vat.into(),
            draining: draining.into(),
            salting: salting.into(),
            drying: drying.into(),
            pickling: pickling.into(),
            keeping: keeping.into(),
            week: week.into(),
            supplies: supplies.into(),
        }
    }
}
