//! What the figures of the milk are calculated from.

use super::link::{LINK, Link};
use crate::law::{calcium, composition, density, kitchen, rennet};
use crate::process::MILK_CONSTANTS;
use crate::source::SourceId;

/// Drops of a bottle.
const COUNTED: Link = Link {
    locator: "your own count of the drops in a millilitre",
    constants: &[&[kitchen::MOST_DROPS, kitchen::SPOON_SPREAD]],
    ..LINK
};
const CARTON: &[&str] = &["milk_kind", "label_fat_percent", "label_protein_percent"];

pub(super) const LINKS: &[Link] = &[
    Link {
        figures: &["bought_density_kg_l", "bought_fat_percent"],
        inputs: &["milk_kind", "label_fat_percent", "label_protein_percent", "fridge_temperature_c"],
        source: SourceId::GuelphNotes,
        locator: "density table, 32 points, refitted",
        constants: &[density::CONSTANTS, composition::CONSTANTS],
        correlations: &[density::CORRELATIONS, composition::CORRELATIONS],
        ..LINK
    },
    Link {
        figures: &["bought_kg"],
        inputs: &["milk_l"],
        rests_on: &["bought_density_kg_l"],
        locator: "volume times density",
        ..LINK
    },
    Link {
        figures: &["cream_g", "skim_kg", "least_fat_percent", "most_fat_percent"],
        inputs: &[
            "cream_by",
            "fat_target_percent",
            "cream_on_hand_ml",
            "cream_strength_percent",
            "milk_kind",
            "fridge_temperature_c",
        ],
        rests_on: &["bought_kg", "bought_fat_percent"],
        source: SourceId::GuelphNotes,
        locator: "standardising by the Pearson square, by mass",
        constants: &[MILK_CONSTANTS],
        ..LINK
    },
    Link {
        figures: &["cream_ml", "skim_l", "vat_milk_density_kg_l", "vat_milk_l"],
        inputs: CARTON,
        rests_on: &["cream_g", "bought_density_kg_l"],
        source: SourceId::GuelphNotes,
        locator: "density table, 32 points, refitted",
        constants: &[density::CONSTANTS],
        correlations: &[density::CORRELATIONS],
    },
    Link {
        figures: &[
            "vat_milk_kg",
            "fat_percent",
            "protein_percent",
            "casein_percent",
            "solids_not_fat_percent",
            "solids_percent",
            "casein_to_fat",
        ],
        inputs: CARTON,
        rests_on: &["cream_g", "bought_kg"],
        source: SourceId::UsdaStandardReference,
        locator: "rows of milk; casein shares by the Guelph notes and others",
        constants: &[composition::CONSTANTS],
        correlations: &[composition::CORRELATIONS],
    },
    Link {
        figures: &["milk_ph"],
        inputs: &["milk_kind", "ph_known", "milk_ph"],
        locator: "usual for the kind of milk, or as measured",
        constants: &[composition::CONSTANTS],
        ..LINK
    },
    Link {
        figures: &[
            "calcium_g",
            "calcium_ml",
            "calcium_anhydrous_g",
            "calcium_dihydrate_g",
            "calcium_as_solution_ml",
            "calcium_percent",
        ],
        inputs: &["calcium_form", "calcium_dose_percent", "calcium_solution_percent"],
        rests_on: &["vat_milk_kg"],
        source: SourceId::CrcHandbook,
        locator: "concentrative properties of calcium chloride; limit in 21 CFR 133",
        constants: &[calcium::CONSTANTS],
        correlations: &[calcium::CORRELATIONS],
    },
    Link {
        figures: &["rennet_ml", "rennet_g", "rennet_water_ml", "rennet_strength_imcu_ml", "rennet_imcu_kg"],
        inputs: &["rennet_label", "rennet_strength_imcu_ml", "rennet_ratio_parts", "rennet_dose_imcu_kg", "rennet_dilution_times"],
        rests_on: &["vat_milk_kg"],
        source: SourceId::Iso11815,
        locator: "units of milk-clotting activity",
        constants: &[&[rennet::LIQUID_DENSITY, rennet::SOXHLET_PER_IMCU]],
        ..LINK
    },
    Link {
        figures: &["calcium_drops"],
        inputs: &["calcium_drops_counted", "calcium_drops_in_ml"],
        rests_on: &["calcium_ml"],
        ..COUNTED
    },
    Link {
        figures: &["rennet_drops"],
        inputs: &["rennet_drops_counted", "rennet_drops_in_ml"],
        rests_on: &["rennet_ml"],
        ..COUNTED
    },
];
