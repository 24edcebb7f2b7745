//! Which choices are moved to lift which caution: those that cause it, each the way that a maker would move it. What was measured, and what the
//! milk or the kitchen is like, is no choice and is not among them.

use crate::caution::{Caution, CautionKind};
use crate::design::Stage;

/// Toward which end of its range a number is moved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Toward {
    /// The least.
    Less,
    /// The greatest.
    More,
}

/// One choice, and how it is moved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Way {
    /// A number is made less.
    Less(&'static str),
    /// A time is made shorter, though not so short that it is another cheese.
    Shorter(&'static str),
    /// A number is made greater.
    More(&'static str),
    /// Another value is taken of a list, or a switch is turned.
    Other(&'static str),
}

impl Way {
    /// Returns the key of the choice.
    pub(super) const fn key(self) -> &'static str {
        let (Self::Less(key) | Self::Shorter(key) | Self::More(key) | Self::Other(key)) = self;
        key
    }
}

use Way::{Less, More, Other, Shorter};

const RIPEN: Way = More("ripening_h");
const PACKETS: Way = More("culture_packets");
const BULK: Way = More("culture_bulk_percent");
const CELLS: Way = More("culture_cells_million_g");
const CABINET: Way = Less("cabinet_temperature_c");
const DAY: Way = Less("day_temperature_c");
const NIGHT: Way = Less("night_temperature_c");

/// Returns how choices are moved to lift a caution, those first that are moved most often; each is looked at only if the design uses it. Of a
/// caution that has no row here, the choice that causes it is moved either way.
pub(super) fn ways(caution: &Caution) -> Vec<Way> {
    let known = known_ways(caution);
    match caution.caused_by {
        Some(cause) if known.is_empty() => vec![Less(cause), More(cause), Other(cause)],
        _ => known.to_vec(),
    }
}

fn known_ways(caution: &Caution) -> &'static [Way] {
    if let CautionKind::Germs(germs) = &caution.kind {
        return against_germs(germs.stage);
    }
    match caution.key {
        "stage_failed" => repairs(caution.caused_by),
        "no_acid" => &[Other("soured_by")],
        "acid_is_foreseen" => &[
            RIPEN,
            PACKETS,
            BULK,
            CELLS,
            More("draining_temperature_c"),
            More("turn_gap_h"),
            More("lactone_g_l"),
            Other("soured_by"),
        ],
        "warm_draining" => &[Less("draining_temperature_c"), Shorter("turn_gap_h"), Less("turn_count"), Other("soured_by")],
        "warm_in_all" => &[CABINET, DAY, NIGHT, Less("draining_temperature_c"), Shorter("drying_h"), Other("soured_by")],
        "cool_for_days" => &[Less("draining_temperature_c"), CABINET, DAY, NIGHT, Shorter("turn_gap_h"), Other("soured_by")],
        "drip_goes_on" => &[More("turn_gap_h"), More("turn_count"), More("draining_temperature_c")],
        "raw_milk" => &[Other("milk_treatment"), Other("pasteurised_in_vat")],
        "pasteurised_in_vat" | "ultra_heated_milk" => &[Other("milk_treatment")],
        "calcium_above_limit" => &[Less("calcium_dose_percent")],
        "untreated_pepper" => &[Other("pepper_treated"), Less("pepper_g_dm2")],
        "not_sour_in_time" => {
            &[PACKETS, BULK, CELLS, More("draining_temperature_c"), Less("rennet_temperature_c"), Other("culture_kind")]
        }
        "warm_before_sour" => {
            &[RIPEN, PACKETS, BULK, CELLS, More("draining_temperature_c"), More("turn_gap_h"), CABINET, DAY, NIGHT]
        }
        "culture_stops" => &[Less("rennet_temperature_c"), RIPEN, Other("culture_kind"), PACKETS, BULK, CELLS, CABINET, DAY, NIGHT],
        "acid_into_warm_milk" => &[Less("fridge_temperature_c")],
        _ => later_ways(caution),
    }
}

/// Returns how choices are moved so that a stage can be calculated, where more than the one that makes it fail may help.
fn repairs(cause: Option<&'static str>) -> &'static [Way] {
    match cause {
        Some("fat_target_percent") => &[Less("fat_target_percent"), More("cream_strength_percent")],
        Some("mould_count") => &[More("mould_count"), More("mould_height_mm"), Less("milk_l")],
        Some("salted_turns") => &[Less("salted_turns"), More("salted_turns"), More("turn_count")],
        Some("jar_width_mm") => &[More("jar_width_mm"), More("jar_height_mm"), Less("milk_l")],
        _ => &[],
    }
}

/// Returns the same for the cautions of the later stages.
fn later_ways(caution: &Caution) -> &'static [Way] {
    match caution.key {
        "hot_wall" => &[
            Less("bath_set_temperature_c"),
            Less("bath_start_temperature_c"),
            Less("heater_power_w"),
            Less("pasteurising_bath_temperature_c"),
            Other("heating"),
        ],
        "calcium_after_rennet" => &[Less("calcium_temperature_c"), More("rennet_temperature_c")],
        "late_break" => {
            &[More("rennet_dose_imcu_kg"), Less("firmness_multiple"), More("rennet_temperature_c"), More("calcium_dose_percent")]
        }
        "drifts_while_setting" => &[
            Other("heat_while_setting"),
            Less("bath_set_temperature_c"),
            More("bath_set_temperature_c"),
            More("bath_l"),
            Less("heater_power_w"),
            Other("pot_lid"),
        ],
        "warm_drying" => &[CABINET, DAY, NIGHT, Shorter("drying_h"), Other("soured_by")],
        "damp_air" => &[
            More("cabinet_temperature_c"),
            Less("room_humidity_percent"),
            Less("day_humidity_percent"),
            Less("night_humidity_percent"),
        ],
        "cabinet_below_room" => &[More("cabinet_temperature_c"), Less("room_air_temperature_c")],
        "trays_do_not_fit" => {
            &[More("tray_count"), More("tray_clearance_mm"), More("tray_width_mm"), More("tray_depth_mm"), Less("milk_l")]
        }
        "not_kept_by_dryness" => &[
            More("pickling_h"),
            More("vinegar_ml_per_g"),
            More("acid_g_per_100ml"),
            Other("vinegar_by"),
            Other("pickled"),
            More("drying_h"),
        ],
        "dryness_is_estimated" => &[Less("drying_h")],
        "never_sour" | "may_never_sour" | "little_vinegar" => {
            &[More("vinegar_ml_per_g"), More("acid_g_per_100ml"), Other("vinegar_by")]
        }
        "weak_vinegar" => &[More("acid_g_per_100ml")],
        "centre_not_sour" | "centre_may_not_be_sour" => &[
            More("pickling_h"),
            More("vinegar_ml_per_g"),
            More("acid_g_per_100ml"),
            Other("vinegar_by"),
            Other("jar_lay"),
            More("mould_count"),
        ],
        "warm_pickling" => &[Less("pickling_temperature_c")],
        "not_submerged" => &[More("vinegar_ml_per_g"), Other("vinegar_by"), Other("jar_lay")],
        "cheeses_touch" => &[Other("jar_lay")],
        "salt_leaves" => &[More("vinegar_salt_g_per_100ml")],
        "oil_is_untested" | "oil_before_acid" => &[Other("kept_in")],
        "long_in_oil" => &[Less("keeping_days"), Other("kept_in")],
        "no_vinegar_to_keep_in" => &[Other("pickled"), Other("kept_in")],
        "warm_keeping" => &[Less("keeping_temperature_c")],
        "kept_long" => &[Less("keeping_days"), More("pickling_h"), Less("pickling_h")],
        "needs_cold" => {
            &[More("pickling_h"), More("vinegar_ml_per_g"), More("acid_g_per_100ml"), Other("vinegar_by"), Other("pickled")]
        }
        _ => &[],
    }
}

/// Returns how choices are moved so that germs grow less in a stage.
const fn against_germs(stage: Stage) -> &'static [Way] {
    match stage {
        Stage::Milk | Stage::Vat => &[
            Less("ripening_h"),
            PACKETS,
            BULK,
            CELLS,
            Less("whey_rest_min"),
            Less("first_test_min"),
            More("rennet_dose_imcu_kg"),
            Other("soured_by"),
        ],
        Stage::Draining | Stage::Salting => &[
            Less("draining_temperature_c"),
            RIPEN,
            PACKETS,
            BULK,
            CELLS,
            Shorter("turn_gap_h"),
            Other("soured_by"),
            Less("turn_count"),
        ],
        Stage::Drying => {
            &[CABINET, DAY, NIGHT, RIPEN, PACKETS, BULK, CELLS, Shorter("drying_h"), More("air_speed_m_s"), Other("soured_by")]
        }
        Stage::Pickling => &[Less("pickling_temperature_c"), More("vinegar_ml_per_g"), More("acid_g_per_100ml"), RIPEN, PACKETS],
        Stage::Keeping => {
            &[Less("keeping_temperature_c"), Less("keeping_days"), More("pickling_h"), Other("pickled"), RIPEN, PACKETS]
        }
    }
}
