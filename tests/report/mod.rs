//! The plan as data.

pub mod sample;
