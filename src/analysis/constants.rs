//! Every constant and every correlation of the calculation, for the sources page, the paper and the tests.

use crate::law::{
    acidity, air_transfer, bath, brine, buffering, calcium, coat, composition, density, food_density, growth, heat, jar, kitchen,
    legal_measures, measured_yields, moist_air, moisture_diffusion, nutrition, pasteurising, rennet, salt, soaking, sorption,
    souring, standardisation, syneresis, yields,
};
use crate::process;
use crate::record;
use crate::source::{AnyCorrelation, Constant};

/// Returns the lists of constants, one a module, in the order of the trade.
#[must_use]
pub fn constant_lists() -> Vec<(&'static str, &'static [Constant])> {
    let mut lists: Vec<(&'static str, &'static [Constant])> = vec![
        ("milk", composition::CONSTANTS),
        ("cream and skimmed milk", process::MILK_CONSTANTS),
        ("cream and dry milk", standardisation::CONSTANTS),
        ("density of milk", density::CONSTANTS),
        ("calcium chloride", calcium::CONSTANTS),
        ("rennet", rennet::CONSTANTS),
        ("bath", bath::GEOMETRY_CONSTANTS),
        ("other ways to warm", bath::OTHER_CONSTANTS),
        ("wall of the pot", bath::WALL_CONSTANTS),
        ("warming", process::WARMING_CONSTANTS),
        ("pasteurising", pasteurising::CONSTANTS),
        ("places in a kitchen", process::PLACE_CONSTANTS),
        ("yield", yields::CONSTANTS),
        ("yield as it was measured", measured_yields::CONSTANTS),
        ("drip", syneresis::CONSTANTS),
        ("salt in cheese", salt::CONSTANTS),
        ("coat of pepper", coat::CONSTANTS),
        ("kitchen measures", kitchen::CONSTANTS),
        ("what a kitchen reads", record::CONSTANTS),
        ("US and imperial measures", legal_measures::CONSTANTS),
        ("density of food", food_density::CONSTANTS),
        ("heat", heat::CONSTANTS),
        ("moist air", moist_air::CONSTANTS),
        ("brine", brine::CONSTANTS),
        ("sorption", sorption::CONSTANTS),
        ("transfer to air", air_transfer::CONSTANTS),
        ("diffusion of water", moisture_diffusion::CONSTANTS),
        ("trays", process::TRAY_CONSTANTS),
        ("vinegar", acidity::CONSTANTS),
        ("buffer of cheese", buffering::CONSTANTS),
        ("acids that sour milk", souring::ACID_CONSTANTS),
        ("buffer of milk and curd", souring::SOURABLE_CONSTANTS),
        ("glucono-delta-lactone", souring::LACTONE_CONSTANTS),
        ("acid for the milk", process::MILK_ACID_CONSTANTS),
        ("cultures", souring::CULTURE_CONSTANTS),
        ("souring from milk to curd", process::SOURING_CONSTANTS),
        ("curd in the moulds", process::COOLING_CONSTANTS),
        ("gel of soured milk", souring::GEL_CONSTANTS),
        ("calcium of soured milk", souring::CALCIUM_CONSTANTS),
        ("salt and water in vinegar", soaking::CONSTANTS),
        ("slow and fast soaks", process::LIKELY_SOAK_CONSTANTS),
        ("limits of time and temperature", growth::LIMIT_CONSTANTS),
        ("limits of acid and dryness", growth::TABLE_CONSTANTS),
        ("growth rates", growth::BEST_RATE_CONSTANTS),
        ("inhibiting amounts of acid", growth::INHIBITING_CONSTANTS),
        ("lag and density of germs", growth::GERM_CONSTANTS),
        ("water activity of milk", process::GERM_WATER_CONSTANTS),
        ("yeast and mould", growth::SPOILAGE_CONSTANTS),
        ("rules about growth", growth::RULE_CONSTANTS),
        ("nutrition", nutrition::CONSTANTS),
        ("draws", process::PARAMETER_CONSTANTS),
    ];
    lists.extend(crate::caution::CONSTANT_LISTS);
    lists.push(("choices that lift a warning", super::lift::LIFT_CONSTANTS));
    lists.push(("a design that is scaled", super::scale::SCALE_CONSTANTS));
    lists
}

/// Returns the lists of correlations, one a module.
#[must_use]
pub fn correlation_lists() -> Vec<(&'static str, &'static [AnyCorrelation])> {
    vec![
        ("milk", composition::CORRELATIONS),
        ("density of milk", density::CORRELATIONS),
        ("calcium chloride", calcium::CORRELATIONS),
        ("rennet", rennet::CORRELATIONS),
        ("yield of soured milk", yields::CORRELATIONS),
        ("density of food", food_density::CORRELATIONS),
        ("heat", heat::CORRELATIONS),
        ("moist air", moist_air::CORRELATIONS),
        ("brine", brine::CORRELATIONS),
        ("transfer to air", air_transfer::CORRELATIONS),
        ("vinegar", acidity::CORRELATIONS),
        ("buffer of cheese", buffering::CORRELATIONS),
        ("acids that sour milk", souring::ACID_CORRELATIONS),
        ("cultures", souring::CULTURE_CORRELATIONS),
        ("calcium of soured milk", souring::CALCIUM_CORRELATIONS),
        ("taste of soured cheese", souring::TASTE_CORRELATIONS),
        ("jar", jar::CORRELATIONS),
        ("growth minima", growth::CORRELATIONS),
        ("conditions of growth", growth::CARDINAL_CORRELATIONS),
        ("limits of toxin and spores", growth::GERM_CORRELATIONS),
        ("growth in chilled food", growth::CHILLED_CORRELATIONS),
        ("yeast and mould", growth::SPOILAGE_CORRELATIONS),
    ]
}

/// Returns every constant.
///
/// # Example
/// ```
/// assert!(vatsketch::analysis::constants().iter().any(|record| record.name.contains("Diffusivity")));
/// ```
#[must_use]
pub fn constants() -> Vec<Constant> {
    constant_lists().into_iter().flat_map(|(_, list)| list.iter().copied()).collect()
}
