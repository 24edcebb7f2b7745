//! What the maker must be told, each caution with the choice that causes it.

mod begins;
mod caution;
mod drying;
mod every;
mod keeping;
mod milk;
mod pickling;
mod salting;
mod stopped;
mod time;
mod vat;

pub use begins::caution_begins;
pub use caution::{Caution, Severity};
pub use every::cautions;
pub use time::hours_in_zone;

/// The constants of the cautions, one list a file.
pub const CONSTANT_LISTS: [(&str, &[crate::source::Constant]); 6] = [
    ("moulds", time::CONSTANTS),
    ("milk and salt", milk::CONSTANTS),
    ("setting", vat::CONSTANTS),
    ("pepper", salting::CONSTANTS),
    ("dryness", drying::CONSTANTS),
    ("oil", keeping::CONSTANTS),
];
