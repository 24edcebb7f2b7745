//! Tests of `src/law`.

mod acid_table;
mod acidity;
mod air_transfer;
mod bath;
mod blending;
mod brine;
mod buffering;
mod calcium;
mod coat;
mod composition;
mod density;
mod growth;
mod heat;
mod jar;
mod kitchen;
mod moist_air;
mod moisture_diffusion;
mod nutrition;
pub mod outside;
mod pasteurising;
mod rennet;
mod salt;
mod soaking;
mod sorption;
mod souring;
mod standardisation;
mod syneresis;
pub mod tables;
mod yields;

use vatsketch::law::Matter;

/// Returns the rows of a table below `tests/reference`, its comments left out.
pub fn rows<T: serde::de::DeserializeOwned>(name: &str) -> Vec<T> {
    let path = format!("{}/tests/reference/{name}", env!("CARGO_MANIFEST_DIR"));
    csv::ReaderBuilder::new().comment(Some(b'#')).from_path(path).unwrap().deserialize().map(Result::unwrap).collect()
}

/// Returns the independent computation of sorption and diffusion.
fn cheese_laws() -> serde_json::Value {
    let path = format!("{}/tests/reference/cheese_laws.json", env!("CARGO_MANIFEST_DIR"));
    serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap()
}

/// Returns the cheese of the tables: 60 % moisture, 19 % fat, 16 % protein, 2 % salt.
fn default_cheese() -> Matter {
    Matter {
        water_kg: 0.60,
        fat_kg: 0.19,
        casein_kg: 0.16,
        carbohydrate_kg: 0.015,
        ash_kg: 0.015,
        salt_kg: 0.02,
        ..Matter::default()
    }
}
