//! Tests of `src/figure`.

mod axes;
mod both;
mod run;
mod spread;
mod tables;
