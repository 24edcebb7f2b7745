//! Tests of `src/numeric`.

mod disc;
mod draws;
mod grading;
mod lines;
mod roots;
mod seek;
mod stepping;
mod table;
