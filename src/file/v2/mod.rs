//! Format 2, frozen: format 1 with pepper, vinegar and jar.

mod choices;

use super::frozen::saved_stage;
use super::v1::{Draining, Drying, Milk, Vat};
use crate::design::{Design, KeepingDesign, PicklingDesign, SaltingDesign};
use choices::{JarLay, KeptIn, VinegarBy};
use serde::Deserialize;

/// A design as it stands in a file. Members that are missing have the value of a new design, so that a short file can be written by hand.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Saved {
    #[serde(rename = "format")]
    _format: u32,
    #[serde(default)]
    title: String,
    #[serde(default)]
    note: String,
    #[serde(default)]
    milk: Milk,
    #[serde(default)]
    vat: Vat,
    #[serde(default)]
    draining: Draining,
    #[serde(default)]
    salting: Salting,
    #[serde(default)]
    drying: Drying,
    #[serde(default)]
    pickling: Pickling,
    #[serde(default)]
    keeping: Keeping,
}

saved_stage!(
    Salting,
    SaltingDesign { salt_percent: f64, salted_turns: u32, salt_run_off_percent: f64, pepper_g_dm2: f64, pepper_treated: bool }
);

saved_stage!(
    Pickling,
    PicklingDesign {
        pickled: bool,
        cheese_ph: f64,
        acid_g_per_100ml: f64,
        vinegar_by: VinegarBy,
        vinegar_ml_per_g: f64,
        pickling_temperature_c: f64,
        pickling_h: f64,
        jar_width_mm: f64,
        jar_height_mm: f64,
        jar_lay: JarLay,
    }
);

saved_stage!(Keeping, KeepingDesign { kept_in: KeptIn, poured_off_percent: f64, keeping_temperature_c: f64, keeping_days: f64 });

impl Saved {
    /// Returns the working design.
    pub(super) fn into_design(self) -> Design {
        Design {
            title: self.title,
            note: self.note,
            milk: self.milk.into(),
            vat: self.vat.into(),
            draining: self.draining.into(),
            salting: self.salting.into(),
            drying: self.drying.into(),
            pickling: self.pickling.into(),
            keeping: self.keeping.into(),
            // Format 2 knew neither hours nor supplies.
            ..Design::default()
        }
    }
}
