//! Mathematics without trade words: roots, monotone tables, graded grids, tridiagonal lines, a disc of finite volumes.

mod disc;
mod grading;
mod lines;
mod monotone;
mod roots;

pub use disc::{DiscGrid, Half};
pub use grading::{graded, graded_both};
pub use lines::LineSystem;
pub use monotone::monotone;
pub use roots::{Bracket, RootError, brent};
