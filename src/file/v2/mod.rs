//! Format 2, frozen: format 1 with pepper, vinegar and jar.

mod choices;
mod stages;

use super::v1;
pub(super) use choices::{
    CalciumForm, CreamBy, DryingPlace, Heating, JarLay, KeptIn, MilkKind, MilkTreatment, PhKnown, PotRest, RennetLabel, VinegarBy,
};
pub(super) use stages::{Draining, Drying, Keeping, Milk, Pickling, Salting, Vat};

/// A design as it is in a file. What is left out has a value too, so that a short file can be written by hand.
#[derive(serde::Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Saved {
    #[serde(rename = "format")]
    pub(super) _format: u32,
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
}

impl From<v1::Saved> for Saved {
    /// A plan of format 1 ended with drying, so it still does: no vinegar, no jar.
    fn from(saved: v1::Saved) -> Self {
        let v1::Saved { _format: _, title, note, milk, vat, draining, salting, drying } = saved;
        Self {
            _format: 2,
            title,
            note,
            milk: milk.into(),
            vat: vat.into(),
            draining: draining.into(),
            salting: salting.into(),
            drying: drying.into(),
            pickling: Pickling { pickled: false, ..Pickling::default() },
            keeping: Keeping { kept_in: KeptIn::Bare, ..Keeping::default() },
        }
    }
}
