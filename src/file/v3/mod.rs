//! Format 3, frozen: format 2 with the maker's week and the supplies.

mod supplies;
mod week;

use super::texts::{MOST_NOTE, MOST_TITLE};
use super::v1::{Draining, Drying, Milk, Vat};
use super::v2::{Keeping, Pickling, Salting};
use crate::design::{Design, DesignError};
use serde::{Deserialize, Serialize};
use supplies::Supplies;
use week::Week;

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
    #[serde(default)]
    week: Week,
    #[serde(default)]
    supplies: Supplies,
}

impl Saved {
    /// Returns the working design.
    ///
    /// # Errors
    /// [`DesignError`] for a text that is no time, or a supply that stands twice.
    pub(super) fn into_design(self) -> Result<Design, DesignError> {
        Ok(Design {
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
        })
    }
}

/// Returns a design as the text of a file, in the newest format.
///
/// Title and note are cut to what a file keeps, so that the text can always be read again; ask [`super::check_texts`] first where nothing may be lost.
#[must_use]
pub fn to_text(design: &Design) -> String {
    let saved = Saved {
        format: 3,
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
    };
    let pretty = ron::ser::PrettyConfig::new().struct_names(false).separate_tuple_members(true);
    // Plain numbers, words and switches always have a RON form, so an error here cannot happen; an empty text would be refused when read.
    let body = ron::ser::to_string_pretty(&saved, pretty).unwrap_or_default();
    format!("// A Vatsketch design. Units stand in the names; unknown names are refused.\n{body}\n")
}
