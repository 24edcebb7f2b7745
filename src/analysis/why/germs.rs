//! Links behind the figures of germs: the whole way of the cheese.

use super::link::{LINK, Link};
use crate::law::growth;
use crate::process::GERM_WATER_CONSTANTS;
use crate::source::SourceId;

/// What they go through: warmth, water and acid of every stage.
const WAY: &[&str] =
    &["to_ladle_min", "draining_h", "dried_moisture_percent", "centre_water_activity", "centre_ph", "soured_water_activity"];
/// What makes that warm or sour beside what those figures rest on.
const WARMTH: &[&str] =
    &["draining_temperature_c", "pickling_temperature_c", "keeping_temperature_c", "keeping_days", "pickling_h"];

pub(super) const LINKS: &[Link] = &[
    Link {
        figures: &[
            "listeria_log10",
            "listeria_with_lag_log10",
            "listeria_mean_log10",
            "staphylococcus_log10",
            "staphylococcus_with_lag_log10",
            "staphylococcus_mean_log10",
            "staphylococcus_without_lactic_log10",
            "staphylococcus_without_lactic_with_lag_log10",
            "staphylococcus_without_lactic_mean_log10",
            "salmonella_log10",
            "salmonella_with_lag_log10",
            "salmonella_mean_log10",
            "coli_log10",
            "coli_with_lag_log10",
            "coli_mean_log10",
            "cereus_log10",
            "cereus_with_lag_log10",
            "cereus_mean_log10",
            "cold_botulinum_log10",
            "cold_botulinum_with_lag_log10",
            "cold_botulinum_mean_log10",
        ],
        inputs: WARMTH,
        rests_on: WAY,
        source: SourceId::GroPin,
        locator: "cardinal models and inhibiting amounts of acid, each with its own source",
        constants: &[growth::BEST_RATE_CONSTANTS, growth::GERM_CONSTANTS, growth::INHIBITING_CONSTANTS, GERM_WATER_CONSTANTS],
        correlations: &[growth::CARDINAL_CORRELATIONS],
    },
    Link {
        figures: &["airless_h", "cold_airless_h"],
        inputs: WARMTH,
        rests_on: WAY,
        source: SourceId::BadBugBook,
        locator: "least temperature, pH and water activity of growth",
        correlations: &[growth::GERM_CORRELATIONS],
        ..LINK
    },
    Link {
        figures: &["yeast_log10", "mould_mm"],
        inputs: &["pickling_temperature_c", "keeping_temperature_c", "keeping_days", "kept_in", "drying_h"],
        rests_on: &["surface_moisture_percent", "centre_ph", "soured_water_activity"],
        source: SourceId::GroPin,
        locator: "models 1040 and 170",
        constants: &[growth::SPOILAGE_CONSTANTS],
        correlations: &[growth::SPOILAGE_CORRELATIONS],
    },
];
