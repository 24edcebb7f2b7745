//! Tests of `src/law`.

mod bath;
mod blending;
mod calcium;
mod composition;
mod density;
mod heat;
mod kitchen;
mod rennet;
mod syneresis;
pub mod tables;
mod yields;
