//! What the figures of souring are calculated from.

use super::link::{LINK, Link};
use crate::law::{kitchen, souring};
use crate::process::{MILK_ACID_CONSTANTS, SOURING_CONSTANTS};
use crate::source::SourceId;

pub(super) const LINKS: &[Link] = &[
    Link {
        figures: &["citric_acid_g", "milk_vinegar_ml", "lactic_acid_ml", "pure_acid_g", "cold_milk_ph"],
        inputs: &[
            "soured_by",
            "milk_acid",
            "acid_by",
            "soured_milk_ph",
            "milk_acid_g_l",
            "milk_vinegar_g_per_100ml",
            "lactic_acid_percent",
        ],
        rests_on: &["vat_milk_l", "vat_milk_kg", "protein_percent", "milk_ph"],
        source: SourceId::Lucey1993,
        locator: "buffering of milk on acidification; groups from the composition of casein",
        constants: &[souring::ACID_CONSTANTS, souring::SOURABLE_CONSTANTS, MILK_ACID_CONSTANTS, &[kitchen::CITRIC_TEASPOON]],
        correlations: &[souring::ACID_CORRELATIONS],
    },
    Link {
        figures: &["lactone_g"],
        inputs: &["soured_by", "lactone_g_l"],
        rests_on: &["vat_milk_l"],
        locator: "dose times milk",
        ..LINK
    },
    Link {
        figures: &["bulk_starter_g"],
        inputs: &["soured_by", "culture_by", "culture_bulk_percent"],
        rests_on: &["vat_milk_kg"],
        locator: "share times milk",
        ..LINK
    },
    Link {
        figures: &["cells_in_milk_million_g"],
        inputs: &[
            "soured_by",
            "culture_by",
            "culture_packet_l",
            "culture_packets",
            "culture_bulk_percent",
            "culture_cells_million_g",
        ],
        rests_on: &["vat_milk_l"],
        locator: "cells of a packet for the milk that it is for, or of a bulk starter; or as chosen",
        constants: &[&[souring::PACKET_CELLS, souring::BULK_STARTER_CELLS]],
        ..LINK
    },
    Link {
        figures: &["rennet_ph"],
        inputs: &["culture_kind"],
        rests_on: &["cells_in_milk_million_g", "cold_milk_ph", "to_rennet_min"],
        locator: "cells, lactose and lactic acid from step to step; our fit to published times",
        constants: &[souring::CULTURE_CONSTANTS, souring::SOURABLE_CONSTANTS, SOURING_CONSTANTS],
        correlations: &[souring::CULTURE_CORRELATIONS],
        ..LINK
    },
    Link {
        figures: &["whey_ph"],
        inputs: &["whey_rest_min"],
        rests_on: &["rennet_ph", "lactone_g", "cut_min", "ladled_curd_c"],
        locator: "the same, until the ladling",
        constants: &[souring::CULTURE_CONSTANTS, souring::SOURABLE_CONSTANTS, souring::LACTONE_CONSTANTS],
        correlations: &[souring::CULTURE_CORRELATIONS],
        ..LINK
    },
    Link {
        figures: &["phosphate_left_percent", "curd_calcium_percent"],
        rests_on: &["whey_ph", "milk_ph"],
        source: SourceId::FoxMcSweeney,
        locator: "that all is dissolved below about pH 4.9; the rest from memory",
        constants: &[souring::CALCIUM_CONSTANTS],
        correlations: &[souring::CALCIUM_CORRELATIONS],
        ..LINK
    },
    Link {
        figures: &["ladled_curd_ph"],
        inputs: &["ladled_ph_from", "ladled_ph"],
        rests_on: &["whey_ph", "curd_kg", "phosphate_left_percent"],
        locator: "the curd’s own buffers with the acid that came with it, or as measured",
        constants: &[SOURING_CONSTANTS, souring::SOURABLE_CONSTANTS],
        ..LINK
    },
    Link {
        figures: &["culture_check_ph", "unmoulded_cheese_ph", "unmoulded_lactose_percent", "unmoulded_lactic_percent"],
        rests_on: &["ladled_curd_ph", "to_culture_min", "unmoulded_cheese_c", "drip_stops_h", "draining_h"],
        locator: "cells, lactose and lactic acid from step to step along the curd’s own temperature",
        constants: &[souring::CULTURE_CONSTANTS, souring::SOURABLE_CONSTANTS, souring::LACTONE_CONSTANTS, SOURING_CONSTANTS],
        correlations: &[souring::CULTURE_CORRELATIONS],
        ..LINK
    },
    Link {
        figures: &["dried_cheese_ph", "dried_lactic_percent"],
        inputs: &["unmoulded_ph_from", "unmoulded_ph"],
        rests_on: &["unmoulded_cheese_ph", "dried_moisture_percent"],
        locator: "the same along temperature and water of the drying cheese, or from the pH that was measured",
        constants: &[souring::CULTURE_CONSTANTS, souring::SOURABLE_CONSTANTS],
        correlations: &[souring::CULTURE_CORRELATIONS],
        ..LINK
    },
    Link {
        figures: &["dried_taste"],
        rests_on: &["dried_cheese_ph"],
        source: SourceId::CommonPractice,
        locator: "words for a pH, from memory",
        correlations: &[souring::TASTE_CORRELATIONS],
        ..LINK
    },
];
