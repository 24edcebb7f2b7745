//! What the figures of drying are calculated from.

use super::link::{LINK, Link};
use crate::law::{air_transfer, brine, food_density, heat, moist_air, moisture_diffusion, sorption};
use crate::process::TRAY_CONSTANTS;
use crate::source::SourceId;

pub(super) const LINKS: &[Link] = &[
    Link {
        figures: &["air_humidity_percent"],
        inputs: &[
            "drying_place",
            "cabinet_temperature_c",
            "room_air_temperature_c",
            "room_humidity_percent",
            "day_humidity_percent",
        ],
        source: SourceId::AshraeFundamentals,
        locator: "saturation pressure after Hyland and Wexler",
        constants: &[moist_air::CONSTANTS],
        correlations: &[moist_air::CORRELATIONS],
        ..LINK
    },
    Link {
        figures: &["water_activity", "centre_water_activity"],
        rests_on: &["dried_moisture_percent", "dried_salt_in_moisture_percent"],
        source: SourceId::PitzerMayorga1973,
        locator: "osmotic coefficient of sodium chloride, times Oswin’s isotherm of the solids",
        constants: &[brine::CONSTANTS, sorption::CONSTANTS],
        correlations: &[brine::CORRELATIONS],
        ..LINK
    },
    Link {
        figures: &[
            "dried_cheese_g",
            "drying_loss_percent",
            "dried_moisture_percent",
            "centre_moisture_percent",
            "surface_moisture_percent",
            "dried_diameter_mm",
            "dried_thickness_mm",
            "dried_in_all_kg",
            "fastest_moisture_percent",
            "slowest_moisture_percent",
            "spread_unswapped_percent",
            "spread_swapped_percent",
        ],
        inputs: &[
            "drying_place",
            "drying_h",
            "day_temperature_c",
            "night_temperature_c",
            "night_humidity_percent",
            "day_h",
            "air_speed_m_s",
            "underside_open_percent",
            "tray_count",
            "tray_swap",
            "unmoulded_ph_from",
            "unmoulded_ph",
        ],
        rests_on: &["salted_cheese_g", "salted_thickness_mm", "salt_in_moisture_percent", "air_humidity_percent", "coat_s_m"],
        source: SourceId::Crank1975,
        locator: "diffusion in a finite cylinder with a boundary that moves; transfer to air along a flat plate",
        constants: &[
            moisture_diffusion::CONSTANTS,
            air_transfer::CONSTANTS,
            sorption::CONSTANTS,
            brine::CONSTANTS,
            moist_air::CONSTANTS,
            TRAY_CONSTANTS,
        ],
        correlations: &[air_transfer::CORRELATIONS, moist_air::CORRELATIONS, heat::CORRELATIONS, food_density::CORRELATIONS],
    },
    Link {
        figures: &["fat_free_moisture_percent", "firmness", "dried_fat_in_dry_matter_percent", "dried_salt_in_moisture_percent"],
        rests_on: &["dried_moisture_percent", "salt_kept_g"],
        source: SourceId::Codex283,
        locator: "section 7.1.1, by moisture on fat-free basis",
        ..LINK
    },
    Link {
        figures: &["dried_surface_salt_percent", "dried_centre_salt_percent"],
        rests_on: &["surface_salt_in_moisture_percent", "dried_moisture_percent"],
        source: SourceId::Floury2010,
        locator: "table II; diffusion after Crank",
        constants: &[crate::law::salt::CONSTANTS],
        ..LINK
    },
    Link {
        figures: &["tray_holds", "trays_wanted", "trays_fit"],
        inputs: &["tray_width_mm", "tray_depth_mm", "tray_clearance_mm", "tray_count"],
        rests_on: &["drained_diameter_mm", "salted_thickness_mm", "cheese_count"],
        locator: "rows, straight or staggered",
        constants: &[TRAY_CONSTANTS],
        ..LINK
    },
];
