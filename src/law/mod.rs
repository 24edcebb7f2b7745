//! Laws that hold in any stage, each with its equation, units, range and source.

pub mod acid_table;
pub mod acidity;
pub mod air_transfer;
pub mod bath;
pub mod blending;
pub mod brine;
pub mod buffering;
pub mod calcium;
pub mod coat;
pub mod composition;
pub mod density;
pub mod firmness;
pub mod food_density;
pub mod growth;
pub mod heat;
pub mod jar;
pub mod kitchen;
pub mod legal_measures;
pub mod matter;
pub mod measured_yields;
pub mod moist_air;
pub mod moisture_diffusion;
pub mod nutrition;
pub mod pasteurising;
pub mod rennet;
pub mod salt;
pub mod soaking;
pub mod sorption;
pub mod souring;
pub mod standardisation;
pub mod syneresis;
pub mod yields;

pub use matter::Matter;
