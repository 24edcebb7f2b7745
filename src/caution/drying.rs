//! Cautions about drying.

use super::facts::{Facts, Severity};
use super::fresh::{hours_in_zone, is_soured_in_moulds};
use super::pickling::is_sour_if_slow;
use crate::batch::Batch;
use crate::design::DryingPlace;
use crate::law::brine::{SALT_MOLAR_MASS, SALT_SATURATION};
use crate::law::growth::{SERVICE_HOURS, SERVICE_WARM, SHELF_STABLE};
use crate::process::{DryingOutcome, drying_hours};
use crate::source::SourceId;

crate::constants! {
    /// Centre much wetter than the mean.
    UNEVEN = { "Difference of moisture between centre and mean that shows", 8.0, "%", (5.0, 12.0), Ourselves, "by feel", Judged }
}

/// A caution about drying.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum DryingCaution {
    /// Not dry enough to be kept by dryness.
    NotKeptByDryness {
        /// Mean water activity.
        water_activity: f64,
        /// That of the centre.
        centre_water_activity: f64,
        /// Whether the vinegar sours even a slow cheese to its centre.
        sour_if_slow: bool,
    },
    /// Dry enough by the model alone.
    DrynessIsEstimated {
        /// Mean water activity.
        water_activity: f64,
        /// That of the centre.
        centre_water_activity: f64,
    },
    /// Warm for hours.
    WarmDrying {
        /// How long between cold and hot keeping.
        hours: f64,
        /// In air of which temperature.
        temperature_c: f64,
        /// Hours of the whole batch.
        zone_h: f64,
        /// The input that says how warm.
        caused_by: &'static str,
    },
    /// The air wets the cheeses.
    DampAir {
        /// The input that says how damp.
        caused_by: &'static str,
    },
    /// The cabinet is to be cooler than the room.
    CabinetBelowRoom {
        /// What it is set to.
        cabinet_c: f64,
        /// The air that it draws in.
        room_c: f64,
    },
    /// A tray is smaller than one cheese.
    TrayTooSmall,
    /// Too few trays.
    TooFewTrays {
        /// Cheeses.
        cheeses: u32,
        /// Trays that they need.
        needed: u32,
        /// Trays that there are.
        there: u32,
    },
    /// The trays are too close.
    TraysTooClose {
        /// Height between trays.
        clearance_mm: f64,
    },
    /// More salt than the water dissolves.
    SaltCrystals {
        /// Salt in the moisture.
        salt_percent: f64,
        /// What the water dissolves.
        dissolves_percent: f64,
    },
    /// The centre is much wetter than the mean.
    WetCentre {
        /// Moisture of the centre.
        centre_percent: f64,
        /// Mean moisture.
        mean_percent: f64,
    },
    /// The drying times are uncertain.
    ModelUncertainty,
}

impl DryingCaution {
    pub(super) const fn facts(&self) -> Facts {
        use Severity::{Caution, Note, Stop};
        const TRAYS: &str = "trays_do_not_fit";
        match self {
            Self::NotKeptByDryness { sour_if_slow, .. } => {
                let severity = if *sour_if_slow { Note } else { Stop };
                Facts::caused("not_kept_by_dryness", severity, "drying_h", SourceId::FoodCode)
            }
            Self::DrynessIsEstimated { .. } => Facts::caused("dryness_is_estimated", Stop, "drying_h", SourceId::Cfr21),
            Self::WarmDrying { caused_by, .. } => Facts::caused("warm_drying", Stop, caused_by, SourceId::FoodCode),
            Self::DampAir { caused_by } => Facts::caused("damp_air", Caution, caused_by, SourceId::Ourselves),
            Self::CabinetBelowRoom { .. } => {
                Facts::caused("cabinet_below_room", Caution, "cabinet_temperature_c", SourceId::Ourselves)
            }
            Self::TrayTooSmall => Facts::caused(TRAYS, Caution, "tray_width_mm", SourceId::Ourselves),
            Self::TooFewTrays { .. } => Facts::caused(TRAYS, Caution, "tray_count", SourceId::Ourselves),
            Self::TraysTooClose { .. } => Facts::caused(TRAYS, Caution, "tray_clearance_mm", SourceId::Ourselves),
            Self::SaltCrystals { .. } => Facts::caused("salt_crystals", Note, "salt_percent", SourceId::Textbook),
            Self::WetCentre { .. } => Facts::caused("wet_centre", Note, "drying_h", SourceId::Ourselves),
            Self::ModelUncertainty => Facts::always("model_uncertainty", Note, None, SourceId::Ourselves),
        }
    }
}

pub(super) fn cautions(batch: &Batch) -> Vec<DryingCaution> {
    let Some(dried) = batch.drying.done() else { return Vec::new() };
    let mut all = vec![dryness(batch, dried)];
    all.extend(warmth(batch, dried));
    all.extend(air(batch, dried));
    // Of trays and hours nothing is said where nothing is dried.
    let dries = batch.design.drying.drying_h > 0.0;
    all.extend(trays(batch, dried).filter(|_| dries));
    let salt_percent = dried.cheese.salt_in_moisture_percent();
    let dissolves_percent = 100.0 * SALT_SATURATION.value * SALT_MOLAR_MASS.value;
    if salt_percent > dissolves_percent {
        all.push(DryingCaution::SaltCrystals { salt_percent, dissolves_percent });
    }
    let (centre_percent, mean_percent) = (dried.end.centre_moisture_percent, dried.end.moisture_percent);
    if centre_percent - mean_percent > UNEVEN.value {
        all.push(DryingCaution::WetCentre { centre_percent, mean_percent });
    }
    all.extend(dries.then_some(DryingCaution::ModelUncertainty));
    all
}

/// Returns what dryness does and does not do.
fn dryness(batch: &Batch, dried: &DryingOutcome) -> DryingCaution {
    let (water_activity, centre_water_activity) = (dried.end.water_activity, dried.end.centre_water_activity);
    if centre_water_activity > SHELF_STABLE.value {
        DryingCaution::NotKeptByDryness { water_activity, centre_water_activity, sour_if_slow: is_sour_if_slow(batch) }
    } else {
        DryingCaution::DrynessIsEstimated { water_activity, centre_water_activity }
    }
}

/// Returns the input that says how warm the air is, and how warm it is at most.
pub(super) fn warmest_air(batch: &Batch) -> (&'static str, f64) {
    let design = &batch.design.drying;
    match design.drying_place {
        DryingPlace::Cabinet => ("cabinet_temperature_c", design.cabinet_temperature_c),
        DryingPlace::OpenAir if design.night_temperature_c > design.day_temperature_c => {
            ("night_temperature_c", design.night_temperature_c)
        }
        DryingPlace::OpenAir => ("day_temperature_c", design.day_temperature_c),
    }
}

/// Returns the caution about hours in warm air.
fn warmth(batch: &Batch, dried: &DryingOutcome) -> Option<DryingCaution> {
    let (caused_by, temperature_c) = warmest_air(batch);
    let hours = drying_hours(dried).zone_h;
    let is_warm = !is_soured_in_moulds(batch) && hours > SERVICE_HOURS.value && temperature_c > SERVICE_WARM.value;
    is_warm.then(|| DryingCaution::WarmDrying { hours, temperature_c, zone_h: hours_in_zone(batch).unwrap_or(hours), caused_by })
}

/// Returns the caution about trays that are too few or too small.
fn trays(batch: &Batch, dried: &DryingOutcome) -> Option<DryingCaution> {
    let design = &batch.design.drying;
    if dried.trays_fit {
        return None;
    }
    Some(if dried.tray_holds == 0 {
        DryingCaution::TrayTooSmall
    } else if dried.trays_wanted > design.tray_count {
        DryingCaution::TooFewTrays { cheeses: dried.cheese_count, needed: dried.trays_wanted, there: design.tray_count }
    } else {
        DryingCaution::TraysTooClose { clearance_mm: design.tray_clearance_mm }
    })
}

/// Gain of weight that is more than the rounding of the arithmetic.
const LEAST_GAIN_PERCENT: f64 = 0.01;

/// Returns the cautions about air that cannot dry.
fn air(batch: &Batch, dried: &DryingOutcome) -> Vec<DryingCaution> {
    let design = &batch.design.drying;
    let cabinet = design.drying_place == DryingPlace::Cabinet;
    let mut all = Vec::new();
    if dried.end.loss_percent < -LEAST_GAIN_PERCENT {
        let caused_by = if cabinet { "room_humidity_percent" } else { "day_humidity_percent" };
        all.push(DryingCaution::DampAir { caused_by });
    }
    let (cabinet_c, room_c) = (design.cabinet_temperature_c, design.room_air_temperature_c);
    if cabinet && cabinet_c < room_c {
        all.push(DryingCaution::CabinetBelowRoom { cabinet_c, room_c });
    }
    all
}
