//! What the maker must be told, as facts: each caution with its numbers and the choice that causes it. The words are in [`crate::words`].

mod begins;
mod by_stage;
#[expect(clippy::module_inception, reason = "the main type of the folder is in a file of its name, which only the folder sees")]
mod caution;
mod draining;
mod drying;
mod end;
mod every;
mod facts;
mod forbids;
mod fresh;
mod germs;
mod guarded;
mod hours;
mod keeping;
mod milk;
mod pickling;
mod salting;
mod souring;
mod stopped;
mod vat;

pub use begins::caution_begins;
pub use by_stage::worst_by_stage;
pub use caution::{Caution, CautionKind};
pub use draining::DrainingCaution;
pub use drying::DryingCaution;
pub use end::{PlanEnd, plan_end};
pub use every::{cautions, serious_warnings, soak_cautions};
pub use facts::Severity;
pub use forbids::{FORBIDS, ForbiddenStep, forbidden_steps};
pub use fresh::{FRESH_PH, FreshCaution, hours_in_zone};
pub use germs::{GermCaution, GermDanger};
pub use hours::{HoursCaution, soak_days};
pub use keeping::{COLD_DAYS, KeepingCaution, OIL_DAYS};
pub use milk::{MilkCaution, RAW_MILK_AGEING};
pub use pickling::{EGG_HOURS, PicklingCaution, SourAfter, Souring};
pub use salting::{SALT_LITTLE, SALT_USUAL, SPICES_WITH_BACILLI, SPICES_WITH_CEREUS, SaltingCaution};
pub use souring::{CULTURE_DONE_PH, SouringCaution};
pub use stopped::StageFailed;
pub use vat::{VatCaution, sets_long};

/// The constants of the cautions, one list a file.
pub const CONSTANT_LISTS: [(&str, &[crate::source::Constant]); 9] = [
    ("fresh cheese", fresh::CONSTANTS),
    ("moulds", draining::CONSTANTS),
    ("raw and unlikely milk", milk::CONSTANTS),
    ("cultures that stop", souring::CONSTANTS),
    ("setting", vat::CONSTANTS),
    ("salt and pepper", salting::CONSTANTS),
    ("dryness", drying::CONSTANTS),
    ("eggs in vinegar", pickling::CONSTANTS),
    ("days in the cold and in oil", keeping::CONSTANTS),
];
