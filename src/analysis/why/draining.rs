//! What the figures of moulds, draining, salt and pepper are calculated from.

use super::link::{LINK, Link};
use crate::law::{brine, coat, food_density, kitchen, salt, syneresis};
use crate::process::COOLING_CONSTANTS;
use crate::source::SourceId;

pub(super) const LINKS: &[Link] = &[
    Link { figures: &["cheese_count"], inputs: &["mould_count"], locator: "one from each mould", ..LINK },
    Link { figures: &["draining_h"], inputs: &["turn_count", "turn_gap_h"], locator: "one gap more than there are turns", ..LINK },
    Link {
        figures: &["drip_stops_h", "cold_drip_10_h", "cold_drip_4_h"],
        inputs: &["draining_temperature_c", "mould_diameter_mm", "mould_height_mm", "mould_count", "turn_count", "turn_gap_h"],
        rests_on: &["curd_kg", "drained_curd_kg", "ladled_curd_c", "ladled_curd_ph"],
        source: SourceId::MarshallCastillo,
        locator: "first order with an activation energy; below 20 °C extrapolated",
        constants: &[syneresis::CONSTANTS],
        ..LINK
    },
    Link {
        figures: &["unmoulded_cheese_c"],
        inputs: &["draining_temperature_c", "mould_diameter_mm", "mould_height_mm", "ladled_ph_from"],
        rests_on: &["ladled_curd_c", "curd_kg", "cheese_count", "draining_h"],
        locator: "heat of the curd over what its surface gives to the room",
        constants: &[COOLING_CONSTANTS],
        ..LINK
    },
    Link {
        figures: &["drained_cheese_g", "drained_moisture_percent", "drip_kg", "drip_has_stopped"],
        rests_on: &["drained_curd_kg", "curd_kg", "cheese_count", "draining_h", "drip_stops_h"],
        source: SourceId::MarshallCastillo,
        locator: "first-order syneresis",
        constants: &[syneresis::CONSTANTS],
        ..LINK
    },
    Link {
        figures: &[
            "drained_thickness_mm",
            "drained_diameter_mm",
            "mould_ml",
            "ladled_ml",
            "ladled_depth_mm",
            "moulds_fit",
            "moulds_wanted",
        ],
        inputs: &["mould_diameter_mm", "mould_height_mm"],
        rests_on: &["drained_cheese_g", "curd_kg"],
        source: SourceId::AshraeRefrigeration,
        locator: "densities of the components, after Choi and Okos",
        constants: &[food_density::CONSTANTS],
        correlations: &[food_density::CORRELATIONS],
    },
    Link {
        figures: &["salt_g", "salt_each_g", "salt_turn_g", "salt_each_turn_g", "salt_kept_g"],
        inputs: &["salt_percent", "salted_turns", "salt_run_off_percent", "turn_count"],
        rests_on: &["drained_cheese_g", "cheese_count"],
        constants: &[&[kitchen::SALT_TEASPOON]],
        ..LINK
    },
    Link {
        figures: &["salted_cheese_g", "cheese_salt_percent", "salt_in_moisture_percent", "salted_thickness_mm"],
        rests_on: &["salt_kept_g", "drained_cheese_g", "drained_thickness_mm"],
        ..LINK
    },
    Link {
        figures: &["salt_even_days", "surface_salt_in_moisture_percent", "centre_salt_in_moisture_percent", "salt_lies_on_faces"],
        inputs: &["salted_turns", "turn_count", "turn_gap_h", "draining_temperature_c"],
        rests_on: &["salted_thickness_mm", "salt_kept_g", "drained_moisture_percent"],
        source: SourceId::Floury2010,
        locator: "table II; diffusion after Crank",
        constants: &[salt::CONSTANTS, brine::CONSTANTS],
        ..LINK
    },
    Link {
        figures: &["pepper_g", "pepper_each_g", "coat_mm", "coat_s_m"],
        inputs: &["pepper_g_dm2"],
        rests_on: &["salted_thickness_mm", "cheese_count"],
        locator: "surface times pepper; resistance of a layer of grains",
        constants: &[coat::CONSTANTS],
        ..LINK
    },
];
