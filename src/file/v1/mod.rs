//! Format 1, frozen: what was once saved opens for ever. It ended with drying, and knew no pepper.

mod choices;
mod stages;

pub(super) use choices::{CalciumForm, CreamBy, DryingPlace, Heating, MilkKind, MilkTreatment, PhKnown, PotRest, RennetLabel};
pub(super) use stages::{Draining, Drying, Milk, Salting, Vat};

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
}
