//! Tests of `src/figure`.

mod axes;
mod both;
mod curd_souring;
mod dotted;
mod handle;
mod measured;
mod run;
mod run_measured;
mod section_growth;
mod spread;
mod tables;
mod telling;
mod vessel;
