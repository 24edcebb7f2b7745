//! The figures of a batch, each with its key, unit, rounding and spread; window, paper and command line read the same list.

mod draining;
mod drying;
mod every;
#[expect(clippy::module_inception, reason = "the main type of the folder is in a file of its name, which only the folder sees")]
mod figure;
mod finished;
mod germ_table;
mod germs;
mod keeping;
mod milk;
mod old_keys;
mod pickling;
mod salting;
mod souring;
mod vat;

pub use every::{figures, rests_on_runs_beside, salting_figures};
pub use figure::{Figure, Reading, Weight};
pub use germ_table::{GermRow, GermTable, germ_table};
pub use germs::is_of_germs;
pub use old_keys::{current_key, every_key};
