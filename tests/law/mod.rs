//! Tests of `src/law`.

mod blending;
mod calcium;
mod composition;
mod density;
mod kitchen;
mod rennet;
mod syneresis;
mod tables;
mod yields;
