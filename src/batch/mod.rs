//! Everything that follows from a design: the stages in order, the mass balance, the figures and the cautions.

mod balance;
mod caution;
mod compare;
mod compare_cautions;
mod compare_milk;
mod constants;
mod counterpart;
mod ends;
mod matters;
mod mending;
mod moved;
mod readout;
mod reuse;
mod run;
mod solve;
mod spread;
mod summary;
mod why;

pub use balance::MassBalance;
pub use caution::{Caution, Severity, caution_begins, cautions, hours_in_zone};
pub use compare::{Difference, DifferingChoice, Likeness, compare, differing_choices};
pub use compare_cautions::{ComparedCaution, Whose, compare_cautions};
pub use compare_milk::{MilkComparison, compare_milk};
pub use constants::{constant_lists, constants, correlation_lists};
pub use counterpart::{from_milk, other_milk, other_milks, same_vat_from};
pub use ends::{StageEnd, stage_ends};
pub use matters::{Cause, Mover, matters};
pub use mending::{MilkMending, mending};
pub use moved::{FigureError, numeric_choices};
pub use readout::{Reading, Readout, Weight, readouts, salting_readouts};
pub use run::{Batch, Progress, batch, batch_after, batch_given};
pub use solve::{Answer, Goal, SolveError, Solved, offered, offered_pairs, solve};
pub use spread::{DRAWS, DrawnFigures, LIKELY_SHARES, LikelyFigure, drawn_batch, draws, likely_figures};
pub use summary::{Summary, dried_min, hours_in_words, soaked_min, summary};
pub use why::{Link, Why, inputs_of, link, links, why};
