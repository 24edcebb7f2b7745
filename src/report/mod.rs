//! The plan as data: what to buy, the steps, the curves, the cautions and the sources; no layout and no file.

mod agenda;
mod amount;
mod comparison;
mod facts;
mod laws;
mod plan;
mod purchase;
mod record;
mod shelf;
mod shopping;
mod shopping_row;
mod shown;
mod sources;
mod sourer;
mod steps;
mod timing;
mod when;
mod why;

pub use agenda::{Day, Line, agenda};
pub use amount::{Amount, Target, duration, elapsed};
pub use comparison::{BothCosts, ComparedRow, Comparison, both_costs, comparison, cost_note};
pub use laws::{LawRow, laws};
pub use plan::{Plan, Stopped, plan, plan_at, week_plan};
pub use purchase::{Cost, Purchase, weight_price};
pub use record::{RecordRow, constant_row, correlation_row, source_title};
pub use shelf::{kitchen_amount, money, printed_size, shelf_size};
pub use shopping_row::ShoppingRow;
pub use sources::UsedSource;
pub use steps::Step;
pub use timing::Timing;
pub use when::{StepTime, short_day, short_moment};
pub use why::{WhyWords, why_words};
