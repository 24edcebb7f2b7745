//! Tests of `src/figure`.

mod axes;
mod ribbon;
mod spread;
mod tables;
