//! The plan as data.

mod against;
mod amounts;
mod comparison;
mod heat_step;
mod kitchen;
mod log_fields;
mod plan;
pub mod sample;
mod scaling;
mod shopping;
mod week;
