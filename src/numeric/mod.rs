//! Mathematics without trade words: roots, graded grids, tridiagonal lines, a disc of finite volumes, draws by chance.

mod disc;
mod draws;
mod fineness;
mod grading;
mod lines;
mod roots;
mod seek;
mod stepping;
mod table;

pub use disc::{DiscGrid, Half};
pub use draws::{Draws, latin_hypercube, quantile};
pub use fineness::Fineness;
pub use grading::{graded, graded_both};
pub use lines::LineSystem;
pub use roots::{Bracket, RootError, brent};
pub use seek::{Search, Sought, seek};
pub use stepping::{GAMMA, Stepping, Taken, TooShort};
pub use table::monotone;
