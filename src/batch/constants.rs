//! Every constant and every correlation of the calculation, for the sources page, the paper and the tests.

use crate::law::{
    air_transfer, brine, calcium, composition, density, food_density, heat, moist_air, moisture_diffusion, rennet, salt, sorption,
    syneresis, yields,
};
use crate::process;
use crate::source::{Constant, Correlation};

/// Returns the lists of constants, one a module, in the order of the trade.
#[must_use]
pub fn constant_lists() -> Vec<(&'static str, &'static [Constant])> {
    vec![
        ("composition of milk", composition::CONSTANTS),
        ("density of milk", density::CONSTANTS),
        ("calcium", calcium::CONSTANTS),
        ("rennet", rennet::CONSTANTS),
        ("yield", yields::CONSTANTS),
        ("whey", syneresis::CONSTANTS),
        ("salt", salt::CONSTANTS),
        ("density of food", food_density::CONSTANTS),
        ("heat", heat::CONSTANTS),
        ("moist air", moist_air::CONSTANTS),
        ("brine", brine::CONSTANTS),
        ("sorption", sorption::CONSTANTS),
        ("transfer to air", air_transfer::CONSTANTS),
        ("diffusion of water", moisture_diffusion::CONSTANTS),
        ("trays", process::TRAY_CONSTANTS),
    ]
}

/// Returns the lists of correlations, one a module.
#[must_use]
pub fn correlation_lists() -> Vec<(&'static str, &'static [Correlation])> {
    vec![
        ("composition of milk", composition::CORRELATIONS),
        ("density of milk", density::CORRELATIONS),
        ("calcium", calcium::CORRELATIONS),
        ("rennet", rennet::CORRELATIONS),
        ("yield", yields::CORRELATIONS),
        ("density of food", food_density::CORRELATIONS),
        ("heat", heat::CORRELATIONS),
        ("moist air", moist_air::CORRELATIONS),
        ("brine", brine::CORRELATIONS),
        ("transfer to air", air_transfer::CORRELATIONS),
    ]
}

/// Returns every constant.
///
/// # Example
/// ```
/// assert!(vatsketch::batch::constants().iter().any(|record| record.name.contains("Diffusivity")));
/// ```
#[must_use]
pub fn constants() -> Vec<Constant> {
    constant_lists().into_iter().flat_map(|(_, list)| list.iter().copied()).collect()
}
