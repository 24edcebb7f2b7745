//! The plan as data.

mod amounts;
mod comparison;
mod plan;
pub mod sample;
mod shopping;
mod week;
