//! The plan as data: what to buy, the steps, the curves, the cautions and the sources; no layout and no file.

mod amount;
mod comparison;
mod facts;
mod plan;
mod record;
mod shopping;
mod sources;
mod steps;
mod why;

pub use amount::{Amount, Target, duration, elapsed};
pub use comparison::{ComparedRow, Comparison, comparison};
pub use plan::{Plan, Stopped, plan};
pub use record::{RecordRow, constant_row, correlation_row, source_title};
pub use shopping::ShoppingRow;
pub use sources::UsedSource;
pub use steps::Step;
pub use why::{WhyWords, why_words};
