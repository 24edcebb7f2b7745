//! What the figures of vinegar, jar and keeping are calculated from.

use super::link::{LINK, Link};
use crate::law::{acidity, brine, buffering, growth, jar, nutrition, soaking, sorption};
use crate::source::SourceId;

const SOAK: &[&str] = &["pickled", "pickling_temperature_c", "pickling_h"];

pub(super) const LINKS: &[Link] = &[
    Link { figures: &["soured"], inputs: &["pickled"], locator: "as chosen", ..LINK },
    Link {
        figures: &["finished_h"],
        inputs: &["pickled", "pickling_h", "drying_h"],
        rests_on: &["to_ladle_min", "draining_h"],
        locator: "sum of the times",
        ..LINK
    },
    Link { figures: &["soak_h"], inputs: &["pickled", "pickling_h"], locator: "as chosen", ..LINK },
    Link {
        figures: &["jars", "cheeses_per_jar", "covering_ml_per_g", "pile"],
        inputs: &["pickled", "jar_width_mm", "jar_height_mm", "jar_lay", "vinegar_by", "vinegar_ml_per_g"],
        rests_on: &["dried_diameter_mm", "dried_thickness_mm", "dried_in_all_kg", "cheese_count"],
        source: SourceId::Textbook,
        locator: "known packings of circles in a circle",
        correlations: &[jar::CORRELATIONS],
        ..LINK
    },
    Link {
        figures: &["vinegar_ml", "vinegar_each_ml", "vinegar_for_each_g_ml"],
        inputs: &["pickled", "vinegar_by", "vinegar_ml_per_g"],
        rests_on: &["dried_in_all_kg", "covering_ml_per_g"],
        locator: "as chosen, or as the jar asks",
        ..LINK
    },
    Link {
        figures: &["vinegar_salt_g"],
        inputs: &["pickled", "vinegar_salt_g_per_100ml"],
        rests_on: &["vinegar_ml"],
        locator: "as chosen",
        ..LINK
    },
    Link {
        figures: &["even_vinegar_salt_g_per_100ml"],
        inputs: &["pickled"],
        rests_on: &["dried_salt_in_moisture_percent"],
        source: SourceId::MackieMeares1955,
        locator: "nothing moves by diffusion where it is as concentrated on either side",
        ..LINK
    },
    Link {
        figures: &["equilibrium_ph"],
        inputs: &["pickled", "cheese_ph_from", "cheese_ph", "acid_g_per_100ml", "pickling_temperature_c"],
        rests_on: &["vinegar_for_each_g_ml", "dried_cheese_g", "dried_moisture_percent", "dried_cheese_ph"],
        source: SourceId::Lucey1993,
        locator: "buffering on acidification; groups from the composition of casein",
        constants: &[acidity::CONSTANTS, buffering::CONSTANTS],
        correlations: &[acidity::CORRELATIONS, buffering::CORRELATIONS],
    },
    Link {
        figures: &[
            "centre_ph",
            "slurry_ph",
            "surface_ph",
            "vinegar_ph",
            "cheese_acid_percent",
            "centre_to_4_2_h",
            "centre_to_4_2_if_slow_h",
            "slow_centre_ph",
            "slurry_to_4_2_h",
            "centre_to_4_6_h",
            "slurry_to_4_6_h",
            "rest_ph",
        ],
        inputs: SOAK,
        rests_on: &["equilibrium_ph", "dried_thickness_mm", "dried_diameter_mm", "pile"],
        source: SourceId::Crank1975,
        locator: "diffusion from a limited bath, with a buffer that holds the acid",
        constants: &[acidity::CONSTANTS, buffering::CONSTANTS],
        correlations: &[acidity::CORRELATIONS, buffering::CORRELATIONS],
    },
    Link {
        figures: &[
            "soured_cheese_g",
            "soured_moisture_percent",
            "soured_fat_free_moisture_percent",
            "soured_firmness",
            "salt_left_percent",
            "soured_salt_in_moisture_percent",
            "soured_water_activity",
            "soak_softens",
            "rest_moisture",
            "rest_salt",
        ],
        inputs: &["pickled", "pickling_temperature_c", "pickling_h", "vinegar_salt_g_per_100ml"],
        rests_on: &["dried_cheese_g", "dried_salt_in_moisture_percent", "vinegar_for_each_g_ml", "centre_ph"],
        source: SourceId::MackieMeares1955,
        locator: "obstruction to diffusion; the moisture of a wetted face is our own judgement, what salt holds back of it is fitted",
        constants: &[soaking::CONSTANTS, brine::CONSTANTS, sorption::CONSTANTS],
        ..LINK
    },
    Link {
        figures: &[
            "zone_h",
            "vat_zone_h",
            "draining_zone_h",
            "drying_zone_h",
            "pickling_zone_h",
            "keeping_zone_h",
            "warm_h",
            "cool_h",
            "cold_zone_h",
            "cold_warm_h",
            "cold_centre_to_4_2_h",
        ],
        inputs: &["keeping_temperature_c", "keeping_days", "draining_temperature_c", "drying_h", "cheese_ph_from", "cheese_ph"],
        rests_on: &["to_ladle_min", "draining_h", "dried_moisture_percent", "centre_to_4_2_h", "soak_h", "cold_drip_4_h"],
        source: SourceId::FoodCode,
        locator: "time and temperature control, and hours without it",
        constants: &[growth::LIMIT_CONSTANTS],
        ..LINK
    },
    Link {
        figures: &["table_b", "acid_class", "growers", "highest_water_activity"],
        inputs: &["keeping_temperature_c"],
        rests_on: &["centre_ph", "slurry_ph", "centre_water_activity", "soured_water_activity"],
        source: SourceId::FoodCode,
        locator: "tables A and B; Title 21 part 114; published minima of growth",
        constants: &[growth::TABLE_CONSTANTS],
        correlations: &[growth::CORRELATIONS],
    },
    Link {
        figures: &["vinegar_left_ml", "oil_ml"],
        inputs: &["kept_in", "poured_off_percent", "jar_width_mm", "jar_lay"],
        rests_on: &["vinegar_ml", "jars", "soured_cheese_g"],
        locator: "volumes of jar, cheese and vinegar",
        ..LINK
    },
    Link {
        figures: &[
            "each_energy_kj",
            "each_fat_g",
            "each_protein_g",
            "each_carbohydrate_g",
            "each_salt_g",
            "energy_kj_in_100_g",
            "fat_g_in_100_g",
            "protein_g_in_100_g",
            "carbohydrate_g_in_100_g",
            "salt_g_in_100_g",
        ],
        rests_on: &["soured_cheese_g", "cheese_acid_percent", "dried_cheese_g"],
        source: SourceId::FoodInformation,
        locator: "annexes I and XIV",
        constants: &[nutrition::CONSTANTS],
        ..LINK
    },
];
