//! Format 7, the newest: format 6 with the size of the curd pieces, with counted drops, and with hours that are impossible.
//!
//! It alone knows the working design. When a format 8 comes, this one is frozen as it is, and the ways to and from the design move there.

mod choices;
mod kitchen;
mod stages;
mod supplies;
mod week;

use super::design_file::DesignFile;
use super::saved_id::{self, SavedId};
use super::texts::{MOST_NOTE, MOST_TITLE};
use super::v6;
use crate::design::{Design, DesignError};
use kitchen::Kitchen;
use serde::{Deserialize, Serialize};
use stages::{Draining, Drying, Keeping, Milk, Pickling, Salting, Vat};
use supplies::Supplies;
use week::Week;

/// The number of this format.
const FORMAT: u32 = 7;

/// A design as it is in a file. What is left out has a value too, so that a short file can be written by hand.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Saved {
    format: u32,
    #[serde(default, with = "saved_id", skip_serializing_if = "Option::is_none")]
    id: Option<SavedId>,
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
    #[serde(default)]
    week: Week,
    #[serde(default)]
    supplies: Supplies,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    kitchen: Option<Kitchen>,
}

impl From<v6::Saved> for Saved {
    fn from(saved: v6::Saved) -> Self {
        let v6::Saved { _format: _, id, title, note, milk, vat, draining, salting, drying, pickling, keeping, week, supplies } =
            saved;
        Self {
            format: FORMAT,
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
            supplies: supplies.into(),
            kitchen: None,
        }
    }
}

impl Saved {
    /// Returns the working design and its id.
    ///
    /// # Errors
    /// [`DesignError`] for a text that is no time, or a supply that is there twice.
    pub(super) fn into_design(self) -> Result<DesignFile, DesignError> {
        let design = Design {
            title: self.title,
            note: self.note,
            milk: self.milk.into(),
            vat: self.vat.into(),
            draining: self.draining.into(),
            salting: self.salting.into(),
            drying: self.drying.into(),
            pickling: self.pickling.into(),
            keeping: self.keeping.into(),
            week: self.week.try_into()?,
            supplies: self.supplies.try_into()?,
            kitchen: self.kitchen.map(TryInto::try_into).transpose()?,
        };
        Ok(DesignFile { id: self.id, design })
    }
}

/// Returns a design as a file has it.
fn saved(id: Option<SavedId>, design: &Design) -> Saved {
    Saved {
        format: FORMAT,
        id,
        title: design.title.chars().take(MOST_TITLE).collect(),
        note: design.note.chars().take(MOST_NOTE).collect(),
        milk: design.milk.into(),
        vat: design.vat.into(),
        draining: design.draining.into(),
        salting: design.salting.into(),
        drying: design.drying.into(),
        pickling: design.pickling.into(),
        keeping: design.keeping.into(),
        week: (&design.week).into(),
        supplies: (&design.supplies).into(),
        kitchen: design.kitchen.as_ref().map(Into::into),
    }
}

/// Returns a design on one line.
pub(super) fn to_line(id: Option<SavedId>, design: &Design) -> String {
    // As for the text of a file.
    ron::to_string(&saved(id, design)).unwrap_or_default()
}

/// Returns a design as the text of a file.
pub(super) fn to_text(id: Option<SavedId>, design: &Design) -> String {
    let pretty = ron::ser::PrettyConfig::new().struct_names(false).separate_tuple_members(true);
    // Plain numbers, words and switches always have a RON form, so an error here cannot happen; an empty text would be refused when read.
    let body = ron::ser::to_string_pretty(&saved(id, design), pretty).unwrap_or_default();
    format!("// A Vatsketch design. Units stand in the names; unknown names are refused.\n{body}\n")
}
