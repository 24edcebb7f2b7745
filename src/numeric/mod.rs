//! Mathematics without trade words: roots, graded grids, tridiagonal lines, a disc of finite volumes, draws by chance, many numbers
//! at a time.

mod disc;
mod draws;
mod fineness;
mod grading;
mod lanes;
mod lines;
mod normal;
mod quick;
mod roots;
mod seek;
mod stepping;
mod table;

pub use disc::{DiscGrid, Half};
pub use draws::{Draws, latin_hypercube, quantile};
pub use fineness::Fineness;
pub use grading::{graded, graded_both};
pub use lanes::{LANES, dot_in_lanes, in_lanes, turn_lanes};
pub use lines::LineSystem;
pub use normal::normal_share;
pub use quick::{quick_exp, quick_ln};
pub use roots::{Bracket, RootError, brent};
pub use seek::{Search, Sought, seek};
pub use stepping::{GAMMA, Stepping, Taken, TooShort};
pub use table::monotone;
