//! Format 6, frozen: format 5 with cheeses that touch in the jar, with salt in the vinegar, and with what sours the milk among what is bought.

mod choices;
mod stages;
mod supplies;
mod week;

use super::saved_id::{self, SavedId};
use super::v5;
pub(super) use choices::{
    AcidBy, BuyFor, CalciumForm, CreamBy, CultureBy, CultureKind, DryingPlace, Good, Habitual, Heating, JarLay, KeptIn, MilkAcid,
    MilkKind, MilkTreatment, PhFrom, PhKnown, PotRest, RennetLabel, SouredBy, VinegarBy,
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

impl From<v5::Saved> for Saved {
    /// Format 5 had one price of milk, which was that of the milk of the vat.
    fn from(saved: v5::Saved) -> Self {
        let animal = saved.animal();
        let v5::Saved { _format: _, id, title, note, milk, vat, draining, salting, drying, pickling, keeping, week, supplies } =
            saved;
        let supplies = Supplies::from(supplies).with_milk_of(animal.into());
        Self {
            _format: 6,
            id,
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
            supplies,
        }
    }
}
