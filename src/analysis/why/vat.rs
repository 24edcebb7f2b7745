//! What the figures of warming, setting and curd are calculated from.

use super::link::{LINK, Link};
use crate::law::{bath, pasteurising, rennet, souring, syneresis, yields};
use crate::process::WARMING_CONSTANTS;
use crate::source::SourceId;

pub(super) const LINKS: &[Link] = &[
    Link {
        figures: &["pasteurising_min"],
        inputs: &["milk_treatment", "pasteurised_in_vat", "pasteurising_temperature_c", "pasteurising_extra_min"],
        rests_on: &["fat_percent", "solids_percent"],
        source: SourceId::Cfr21,
        locator: "1240.61 (b); for milk rich in solids the Pasteurized Milk Ordinance; between the two points our own line",
        constants: &[pasteurising::CONSTANTS],
        ..LINK
    },
    Link {
        figures: &["to_pasteurising_min", "pasteurising_coldest_c"],
        inputs: &[
            "heating",
            "bath_l",
            "bath_start_temperature_c",
            "heater_power_w",
            "room_temperature_c",
            "pot_rest",
            "pot_depth_percent",
            "bath_lid",
            "pot_lid",
            "fridge_temperature_c",
            "pasteurising_bath_temperature_c",
        ],
        rests_on: &["vat_milk_l", "pasteurising_min"],
        source: SourceId::Cengel2008,
        locator: "lumped capacities, problems 11-17 and 11-18; coefficients of Perry’s table 11-7",
        constants: &[bath::GEOMETRY_CONSTANTS, bath::OTHER_CONSTANTS, WARMING_CONSTANTS],
        ..LINK
    },
    Link {
        figures: &["cooling_min"],
        inputs: &[
            "cooling_water_l",
            "cooling_water_temperature_c",
            "bath_lid",
            "room_temperature_c",
            "soured_by",
            "ripening_temperature_c",
            "rennet_temperature_c",
        ],
        rests_on: &["to_pasteurising_min"],
        source: SourceId::Cengel2008,
        locator: "the same two capacities in cold water",
        constants: &[bath::GEOMETRY_CONSTANTS, pasteurising::CONSTANTS],
        ..LINK
    },
    Link {
        figures: &["to_rennet_min", "to_calcium_min", "to_culture_min", "energy_kwh"],
        inputs: &[
            "heating",
            "bath_l",
            "bath_start_temperature_c",
            "bath_set_temperature_c",
            "heater_power_w",
            "room_temperature_c",
            "pot_rest",
            "pot_depth_percent",
            "bath_lid",
            "pot_lid",
            "calcium_temperature_c",
            "rennet_temperature_c",
            "fridge_temperature_c",
            "calcium_dose_percent",
            "soured_by",
            "ripening_temperature_c",
            "ripening_h",
        ],
        rests_on: &["vat_milk_l", "calcium_g", "pure_acid_g", "cooling_min"],
        source: SourceId::Cengel2008,
        locator: "lumped capacities, problems 11-17 and 11-18; coefficients of Perry’s table 11-7",
        constants: &[bath::GEOMETRY_CONSTANTS, bath::OTHER_CONSTANTS, bath::WALL_CONSTANTS, WARMING_CONSTANTS],
        ..LINK
    },
    Link {
        figures: &["wall_most_c", "bath_most_c"],
        inputs: &["heat_while_setting", "whey_rest_min"],
        rests_on: &["to_rennet_min", "cut_min"],
        source: SourceId::Perry,
        locator: "table 11-7, coefficients at the wall; the hottest moment until the ladling",
        constants: &[bath::WALL_CONSTANTS, bath::OTHER_CONSTANTS],
        ..LINK
    },
    Link {
        figures: &["setting_temperature_c"],
        inputs: &["heat_while_setting"],
        rests_on: &["to_rennet_min", "rennet_imcu_kg", "rennet_water_ml", "rennet_ph", "lactone_g", "calcium_percent"],
        source: SourceId::Cengel2008,
        locator: "the same two capacities after the rennet, over the time that it takes to clot",
        constants: &[bath::GEOMETRY_CONSTANTS, rennet::CONSTANTS],
        ..LINK
    },
    Link {
        figures: &["clotting_min", "clean_break_min", "cut_min", "tests"],
        inputs: &["firmness_multiple", "first_test_min", "heat_while_setting", "rennet_temperature_c"],
        rests_on: &["rennet_imcu_kg", "rennet_ph", "milk_ph", "lactone_g", "calcium_percent", "setting_temperature_c"],
        source: SourceId::GuelphNotes,
        locator: "clotting time, dose and temperature; activity against temperature after Fleischmann",
        constants: &[rennet::CONSTANTS, souring::GEL_CONSTANTS],
        correlations: &[rennet::CORRELATIONS],
    },
    Link {
        figures: &["ladled_curd_c"],
        inputs: &["heat_while_setting", "whey_rest_min"],
        rests_on: &["to_rennet_min", "cut_min", "rennet_water_ml"],
        source: SourceId::Cengel2008,
        locator: "the same two capacities, at the ladling",
        constants: &[bath::GEOMETRY_CONSTANTS],
        ..LINK
    },
    Link {
        figures: &["to_ladle_min"],
        inputs: &["whey_rest_min"],
        rests_on: &["to_rennet_min", "cut_min"],
        locator: "sum of the times",
        ..LINK
    },
    Link {
        figures: &["drained_curd_kg", "yield_percent", "curd_fat_percent", "curd_protein_percent"],
        inputs: &["milk_treatment", "drip_end_moisture_percent"],
        rests_on: &["vat_milk_kg", "fat_percent", "casein_percent", "rennet_ph", "phosphate_left_percent"],
        source: SourceId::VanSlyke1914,
        locator: "balance of casein, fat, serum and moisture; recoveries from the notes, yield ±8 %",
        constants: &[yields::CONSTANTS],
        ..LINK
    },
    Link {
        figures: &["van_slyke_yield_percent"],
        inputs: &["drip_end_moisture_percent"],
        rests_on: &["fat_percent", "casein_percent"],
        source: SourceId::VanSlyke1914,
        locator: "yield formula",
        constants: &[yields::CONSTANTS],
        ..LINK
    },
    Link {
        figures: &["curd_kg", "whey_l", "whey_in_all_l", "whey_fat_percent"],
        inputs: &["whey_rest_min", "curd_piece_mm"],
        rests_on: &["drained_curd_kg", "setting_temperature_c", "cut_min", "rennet_water_ml", "calcium_g"],
        source: SourceId::MarshallCastillo,
        locator: "first-order syneresis; shares are our own judgement",
        constants: &[syneresis::CONSTANTS],
        ..LINK
    },
];
