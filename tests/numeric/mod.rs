//! Tests of `src/numeric`.

mod disc;
mod draws;
mod grading;
mod lanes;
mod lines;
mod quick;
mod roots;
mod seek;
mod stepping;
mod table;
