//! Laws that hold in any stage, each with its equation, units, range and source.

pub mod matter;

pub use matter::Matter;
