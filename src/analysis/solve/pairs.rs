//! Which choice is moved for which figure in the trade.

use crate::analysis::moved::numeric_choices;
use crate::batch::Batch;
use crate::design::Field;
use crate::figure::{Figure, Reading, figures};

/// A choice, and the figures that a maker moves it for.
const PAIRS: &[(&str, &[&str])] = &[
    ("milk_l", &["drained_curd_kg", "drained_cheese_g", "dried_cheese_g", "dried_in_all_kg", "whey_in_all_l", "to_rennet_min"]),
    ("fat_target_percent", &["cream_g", "skim_l", "casein_to_fat", "yield_percent", "dried_fat_in_dry_matter_percent"]),
    ("cream_on_hand_ml", &["fat_percent", "casein_to_fat"]),
    ("cream_strength_percent", &["cream_g"]),
    ("calcium_dose_percent", &["calcium_g", "clotting_min"]),
    ("rennet_dose_imcu_kg", &["clotting_min", "clean_break_min", "rennet_ml"]),
    ("bath_l", &["to_rennet_min"]),
    ("bath_start_temperature_c", &["to_rennet_min"]),
    ("bath_set_temperature_c", &["to_rennet_min", "setting_temperature_c"]),
    ("heater_power_w", &["to_rennet_min", "energy_kwh"]),
    ("rennet_temperature_c", &["clotting_min", "to_rennet_min"]),
    ("firmness_multiple", &["clean_break_min"]),
    ("mould_count", &["cheese_count", "drained_cheese_g", "drained_thickness_mm", "dried_cheese_g"]),
    ("mould_diameter_mm", &["drained_thickness_mm", "drying_loss_percent"]),
    ("drip_end_moisture_percent", &["yield_percent", "drained_curd_kg"]),
    ("turn_gap_h", &["draining_h", "drained_moisture_percent", "finished_h"]),
    ("turn_count", &["draining_h", "drained_moisture_percent"]),
    ("draining_temperature_c", &["drip_stops_h"]),
    ("salt_percent", &["salt_g", "cheese_salt_percent", "salt_in_moisture_percent", "dried_salt_in_moisture_percent"]),
    (
        "drying_h",
        &[
            "drying_loss_percent",
            "dried_cheese_g",
            "dried_moisture_percent",
            "centre_moisture_percent",
            "fat_free_moisture_percent",
            "dried_thickness_mm",
            "finished_h",
        ],
    ),
    ("cabinet_temperature_c", &["drying_loss_percent", "dried_moisture_percent", "air_humidity_percent"]),
    ("room_humidity_percent", &["air_humidity_percent", "drying_loss_percent"]),
    ("day_temperature_c", &["drying_loss_percent"]),
    ("air_speed_m_s", &["drying_loss_percent"]),
    ("tray_width_mm", &["tray_holds"]),
    ("vinegar_ml_per_g", &["equilibrium_ph", "slurry_ph", "vinegar_ml", "centre_to_4_2_h"]),
    ("acid_g_per_100ml", &["equilibrium_ph", "centre_to_4_2_h"]),
    ("vinegar_salt_g_per_100ml", &["salt_left_percent", "soured_salt_in_moisture_percent"]),
    ("pickling_h", &["centre_ph", "slurry_ph", "cheese_acid_percent", "salt_left_percent", "finished_h"]),
    ("pickling_temperature_c", &["centre_to_4_2_h"]),
];

/// Returns the pairs of a choice and a figure that make sense in the trade, whether or not this design has them.
pub fn offered_pairs() -> impl Iterator<Item = (&'static str, &'static str)> {
    PAIRS.iter().flat_map(|(choice, figures)| figures.iter().map(|figure| (*choice, *figure)))
}

/// Returns the pairs that a batch has: choices that have an effect in it, and figures that are there and are numbers.
#[must_use]
pub fn offered(batch: &Batch) -> Vec<(&'static Field, Figure)> {
    let figures = figures(batch);
    offered_pairs()
        .filter_map(|(choice, figure)| {
            let choice = numeric_choices(&batch.design).find(|field| field.key == choice)?;
            let figure = figures.iter().find(|readout| readout.key == figure)?;
            matches!(figure.reading, Reading::Number(_)).then(|| (choice, figure.clone()))
        })
        .collect()
}
