//! Laws that hold in any stage, each with its equation, units, range and source.

pub mod air_transfer;
pub mod brine;
pub mod firmness;
pub mod food_density;
pub mod heat;
pub mod matter;
pub mod moist_air;
pub mod moisture_diffusion;
pub mod sorption;

pub use matter::Matter;
