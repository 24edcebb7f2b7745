//! Tests of `src/figure`.

mod axes;
mod both;
mod ribbon;
mod spread;
mod tables;
