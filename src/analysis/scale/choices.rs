//! What becomes of each choice when the whole design is scaled: it grows with the milk, or it stays and why.

crate::constants! {
    /// How full a pot may be.
    POT_FILLED = { "Share of a pot that the milk may fill", 0.85, "1", (0.75, 0.92), Ourselves, "room to stir, for the rennet in its water, and for carrying it; common practice, no source", Judged }
    /// How finely scaled amounts are given.
    SCALED_DIGITS = { "Digits to which scaled amounts are rounded", 3.0, "1", (2.0, 4.0), Ourselves, "a jug is read to about a hundredth", Judged }
}

/// What becomes of a choice when the whole design is scaled.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scaling {
    /// It is an amount in all, and grows with the milk.
    Amount,
    /// It is counted, grows with the milk and is rounded up.
    Count,
    /// It stays as it is.
    Kept(Kept),
}

/// Why a choice stays as it is when the whole design is scaled.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kept {
    /// It says what a thing is or how something is done, not how much there is.
    Kind,
    /// A share, a strength, or so much for each litre, gram or square decimetre: more milk brings more of it by itself.
    ForEach,
    /// A temperature, a pH or a humidity.
    State,
    /// A time, or how often something is done.
    Time,
    /// The size of one thing, of which more are used.
    Size,
    /// It belongs to the kitchen and grows with no vat.
    Kitchen,
}

/// Every input of a design, in groups. An input that is in none of them, or in two, is found by a test.
const GROUPS: [(Scaling, &[&str]); 8] = [
    (Scaling::Amount, &["milk_l", "cream_on_hand_ml", "cooling_water_l", "culture_packets", "bath_l"]),
    (Scaling::Count, &["mould_count", "tray_count"]),
    (
        Scaling::Kept(Kept::Kind),
        &[
            "milk_kind",
            "milk_treatment",
            "pasteurised_in_vat",
            "cream_by",
            "calcium_form",
            "calcium_drops_counted",
            "rennet_label",
            "rennet_drops_counted",
            "ph_known",
            "soured_by",
            "culture_kind",
            "culture_by",
            "milk_acid",
            "acid_by",
            "heating",
            "pot_rest",
            "bath_lid",
            "pot_lid",
            "heat_while_setting",
            "ladled_ph_from",
            "pepper_treated",
            "drying_place",
            "unmoulded_ph_from",
            "tray_swap",
            "pickled",
            "cheese_ph_from",
            "vinegar_by",
            "jar_lay",
            "kept_in",
        ],
    ),
    (
        Scaling::Kept(Kept::ForEach),
        &[
            "label_fat_percent",
            "label_protein_percent",
            "fat_target_percent",
            "cream_strength_percent",
            "calcium_solution_percent",
            "calcium_drops_in_ml",
            "calcium_dose_percent",
            "rennet_strength_imcu_ml",
            "rennet_ratio_parts",
            "rennet_dose_imcu_kg",
            "rennet_dilution_times",
            "rennet_drops_in_ml",
            // What is printed on a packet, not how much of it is used.
            "culture_packet_l",
            "culture_bulk_percent",
            "culture_cells_million_g",
            "milk_acid_g_l",
            "milk_vinegar_g_per_100ml",
            "lactic_acid_percent",
            "lactone_g_l",
            "pot_depth_percent",
            "firmness_multiple",
            "drip_end_moisture_percent",
            "salt_percent",
            "salt_run_off_percent",
            "pepper_g_dm2",
            "underside_open_percent",
            "acid_g_per_100ml",
            "vinegar_ml_per_g",
            "vinegar_salt_g_per_100ml",
            "poured_off_percent",
        ],
    ),
    (
        Scaling::Kept(Kept::State),
        &[
            "pasteurising_temperature_c",
            "pasteurising_bath_temperature_c",
            "cooling_water_temperature_c",
            "fridge_temperature_c",
            "milk_ph",
            "ripening_temperature_c",
            "soured_milk_ph",
            "bath_start_temperature_c",
            "bath_set_temperature_c",
            "calcium_temperature_c",
            "rennet_temperature_c",
            "draining_temperature_c",
            "ladled_ph",
            "unmoulded_ph",
            "cabinet_temperature_c",
            "day_temperature_c",
            "day_humidity_percent",
            "night_temperature_c",
            "night_humidity_percent",
            "air_speed_m_s",
            "cheese_ph",
            "pickling_temperature_c",
            "keeping_temperature_c",
        ],
    ),
    (
        Scaling::Kept(Kept::Time),
        &[
            "pasteurising_extra_min",
            "ripening_h",
            "first_test_min",
            "whey_rest_min",
            "turn_count",
            "turn_gap_h",
            "salted_turns",
            "drying_h",
            "day_h",
            "pickling_h",
            "keeping_days",
        ],
    ),
    (
        Scaling::Kept(Kept::Size),
        &[
            "curd_piece_mm",
            "mould_diameter_mm",
            "mould_height_mm",
            "tray_width_mm",
            "tray_depth_mm",
            "tray_clearance_mm",
            "jar_width_mm",
            "jar_height_mm",
        ],
    ),
    // A larger vat on the same hob warms more slowly, which the figures say.
    (Scaling::Kept(Kept::Kitchen), &["heater_power_w", "room_temperature_c", "room_air_temperature_c", "room_humidity_percent"]),
];

/// Returns what becomes of a choice when the whole design is scaled; nothing for a key that is none.
///
/// # Example
/// ```
/// use vatsketch::analysis::{Kept, Scaling, scaling_of};
/// assert_eq!(scaling_of("bath_l"), Some(Scaling::Amount));
/// assert_eq!(scaling_of("mould_count"), Some(Scaling::Count));
/// assert_eq!(scaling_of("vinegar_ml_per_g"), Some(Scaling::Kept(Kept::ForEach)));
/// assert_eq!(scaling_of("no_such_choice"), None);
/// ```
#[must_use]
pub fn scaling_of(key: &str) -> Option<Scaling> {
    GROUPS.iter().find(|(_, keys)| keys.contains(&key)).map(|(scaling, _)| *scaling)
}
