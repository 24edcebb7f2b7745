//! Format 2, frozen: format 1 with pepper, vinegar and jar.

mod choices;

use super::FileError;
use super::frozen::saved_stage;
use super::v1::{Draining, Drying, Milk, Vat};
use crate::design::{Design, KeepingDesign, PicklingDesign, SaltingDesign};
use choices::{JarLay, KeptIn, VinegarBy};
use serde::{Deserialize, Serialize};

/// Greatest length of a title and of a note, letters.
const MOST_TITLE: usize = 120;
const MOST_NOTE: usize = 20_000;

/// A design as it stands in a file. Members that are missing have the value of a new design, so that a short file can be written by hand.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Saved {
    format: u32,
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
        }
    }
}

/// Checks that title and note are no longer than a file keeps.
///
/// # Errors
/// [`FileError::TextTooLong`] with the length and the cap.
///
/// # Example
/// ```
/// use vatsketch::{design::Design, file::check_texts};
/// assert!(check_texts(&Design { title: "x".repeat(120), ..Design::default() }).is_ok());
/// assert!(check_texts(&Design { title: "x".repeat(121), ..Design::default() }).is_err());
/// ```
pub fn check_texts(design: &Design) -> Result<(), FileError> {
    for (what, text, most) in [("title", &design.title, MOST_TITLE), ("note", &design.note, MOST_NOTE)] {
        let letters = text.chars().count();
        if letters > most {
            return Err(FileError::TextTooLong { what, letters, most });
        }
    }
    Ok(())
}

/// Returns a design as the text of a file, in the newest format.
///
/// Title and note are cut to what a file keeps, so that the text can always be read again; ask [`check_texts`] first where nothing may be lost.
#[must_use]
pub fn to_text(design: &Design) -> String {
    let saved = Saved {
        format: 2,
        title: design.title.chars().take(MOST_TITLE).collect(),
        note: design.note.chars().take(MOST_NOTE).collect(),
        milk: design.milk.into(),
        vat: design.vat.into(),
        draining: design.draining.into(),
        salting: design.salting.into(),
        drying: design.drying.into(),
        pickling: design.pickling.into(),
        keeping: design.keeping.into(),
    };
    let pretty = ron::ser::PrettyConfig::new().struct_names(false).separate_tuple_members(true);
    // Plain numbers, words and switches always have a RON form, so an error here cannot happen; an empty text would be refused when read.
    let body = ron::ser::to_string_pretty(&saved, pretty).unwrap_or_default();
    format!("// A Vatsketch design. Units stand in the names; unknown names are refused.\n{body}\n")
}
