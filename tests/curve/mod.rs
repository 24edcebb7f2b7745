//! Tests of `src/figure`.

mod axes;
mod both;
mod curd_souring;
mod run;
mod spread;
mod tables;
