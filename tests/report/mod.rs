//! The plan as data.

mod amounts;
mod plan;
pub mod sample;
