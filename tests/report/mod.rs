//! The plan as data.

mod against;
mod amounts;
mod batches;
mod comparison;
mod heat_step;
mod kitchen;
mod log_fields;
mod narrowed;
mod next;
mod plan;
pub mod sample;
mod scaling;
mod shopping;
mod week;
