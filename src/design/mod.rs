//! What the maker chooses: plain data, one struct a stage, and for each member one row that says its label, unit, range and help.
//!
//! Form, command line, undo, file and paper all follow from the rows that [`fields`] lists; a new input is a new row.

mod choices;
mod described;
mod described_pickling;
#[expect(clippy::module_inception, reason = "the main type of the folder is in a file of its name, which only the folder sees")]
mod design;
mod draining;
mod drying;
mod error;
mod field;
mod id;
mod in_kitchen;
mod keeping;
mod kitchen;
mod milk;
mod pickling;
mod salting;
mod spelling;
mod stage;
mod supplies;
mod unit;
mod value;
mod vat;
mod week;
mod wording;

pub use choices::{
    AcidBy, BuyFor, CalciumForm, CreamBy, CultureBy, CultureKind, DryingPlace, Good, Habitual, Heating, JarLay, KeptIn, MilkAcid,
    MilkKind, MilkTreatment, PhFrom, PhKnown, PotRest, RennetLabel, SouredBy, VinegarBy,
};
pub use described::{DESCRIBED_CHEESE_FIELDS, DescribedCheese};
pub use described_pickling::{DESCRIBED_PICKLING_FIELDS, DescribedPickling};
pub use design::{BEFORE_BUYING, Design, Field, field, fields};
pub use draining::DrainingDesign;
pub use drying::DryingDesign;
pub use error::DesignError;
pub use field::{Choice, Kind};
pub use id::DesignId;
pub use keeping::KeepingDesign;
pub use kitchen::{Believed, KitchenBatch, KitchenEstimate, KnownKitchen};
pub use milk::MilkDesign;
pub use pickling::PicklingDesign;
pub use salting::SaltingDesign;
pub use spelling::{did_you_mean, nearest};
pub use stage::Stage;
pub(crate) use supplies::MOST_GIVEN;
pub use supplies::{Offer, SuppliesDesign, Supply};
pub use unit::Unit;
pub use value::Value;
pub use vat::VatDesign;
pub use week::{BusyOnce, Reached, TakenHours, WeekDesign, Wish, hour, moment, read_hour, read_moment};
pub use wording::{hours_in_words, lower_first, upper_first};
