//! Draining in the moulds, with its turns.

use super::draining_course::{DrainingCourse, LadledCurd, follow, hours_to_left};
use super::souring::{SourPoint, Sourness, turned};
use super::{Given, StageBalance, Stream, VatOutcome};
use crate::design::{DrainingDesign, PhFrom};
use crate::law::Matter;
use crate::law::density::WHEY_DENSITY;
use crate::law::food_density::cheese_volume_ml;
use crate::law::souring::drip_factor;
use crate::law::syneresis::DRIP_STOPPED;
use std::f64::consts::PI;

/// What the draining stage calculates.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct DrainingOutcome {
    /// The curd of all moulds at unmoulding.
    pub curd: Matter,
    /// Whey that dripped from the moulds.
    pub whey: Matter,
    /// Hours from ladling to unmoulding.
    pub draining_h: f64,
    /// Moisture at unmoulding.
    pub moisture_percent: f64,
    /// Hours from ladling until the drip has stopped: less than a fiftieth of all the moulds' whey is still to come.
    pub drip_stops_h: f64,
    /// Whether the drip has stopped by the time of unmoulding.
    pub drip_has_stopped: bool,
    /// (hours from ladling, whey so far in g, drip rate in g/h), all moulds together.
    pub drip: Vec<(f64, f64, f64)>,
    /// How the curd cools and sours in the moulds, hours from ladling.
    pub souring: Vec<SourPoint>,
    /// How sour the cheeses are at unmoulding.
    pub sourness: Sourness,
    /// Temperature of the cheeses then.
    pub temperature_c: f64,
    /// Hours of each turn, from ladling.
    pub turns_h: Vec<f64>,
    /// Cheeses.
    pub cheese_count: u32,
    /// Mass of a cheese at unmoulding.
    pub cheese_g: f64,
    /// Diameter of a cheese.
    pub diameter_mm: f64,
    /// Thickness of a cheese at unmoulding.
    pub thickness_mm: f64,
    /// Depth of ladled curd in a mould, if all of it went in at once.
    pub ladled_depth_mm: f64,
    /// Volume of a mould.
    pub mould_ml: f64,
    /// Ladled curd to each mould.
    pub ladled_ml: f64,
    /// Whether the ladled curd fits into the moulds at once.
    pub fits: bool,
    /// How many such moulds would take it at once.
    pub moulds_wanted: u32,
    /// What crossed the edge of the stage.
    pub balance: StageBalance,
}

/// Why the curd cannot be drained.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum DrainingError {
    /// The curd does not go into the moulds, not even topped up as it sinks.
    #[error(
        "the curd does not fit: each of {mould_count} moulds would have to hold {wanted_ml:.0} mL of drained curd, but holds {mould_ml:.0} mL; use at least {moulds_wanted} moulds of this size, or larger ones"
    )]
    TooMuchCurd {
        /// Moulds chosen.
        mould_count: u32,
        /// Drained curd for each.
        wanted_ml: f64,
        /// What one holds.
        mould_ml: f64,
        /// How many would do.
        moulds_wanted: u32,
    },
}

/// Returns the drained cheeses and how the whey left them.
///
/// Whey leaves the moulds first order, dw/dt = (W − w)/τ, always of one composition but for what sours; what is still to come stays in the
/// cheese. τ follows the curd's own temperature, which comes warm from the vat and cools, and its pH. The curd is in the moulds for one gap more
/// than there are turns.
///
/// # Errors
/// [`DrainingError::TooMuchCurd`] if not even drained curd fits the moulds.
pub fn draining(design: &DrainingDesign, vat: &VatOutcome) -> Result<DrainingOutcome, DrainingError> {
    draining_given(design, vat, &Given::default())
}

/// Returns the same as [`draining()`] under other parameters.
///
/// # Errors
/// As for [`draining()`].
pub fn draining_given(design: &DrainingDesign, vat: &VatOutcome, given: &Given) -> Result<DrainingOutcome, DrainingError> {
    let (sourness, ladled) = match design.ladled_ph_from {
        PhFrom::Calculated => (vat.sourness, vat.curd),
        PhFrom::Measured => vat.sourness.measured(&vat.curd, design.ladled_ph),
    };
    let found = ladled - vat.curd;
    // What a meter finds turned, has turned in the whey that is still to come as in the rest.
    let turned_share = -found.carbohydrate_kg / vat.curd.carbohydrate_kg;
    let count = f64::from(design.mould_count.max(1));
    let area_mm2 = PI * (0.5 * design.mould_diameter_mm).powi(2);
    let mould_ml = 0.001 * area_mm2 * design.mould_height_mm;
    let to_come = vat.curd - vat.drained_curd;
    let to_come = to_come + turned(turned_share * to_come.carbohydrate_kg);
    let drained_ml = cheese_volume_ml(&vat.drained_curd) / count;
    let ladled_ml = drained_ml + to_come.total_kg() / WHEY_DENSITY.value * 1000.0 / count;
    let moulds_for = |each_ml: f64| (each_ml * count / mould_ml).ceil() as u32;
    if drained_ml > mould_ml {
        let (mould_count, wanted_ml) = (design.mould_count, drained_ml);
        return Err(DrainingError::TooMuchCurd { mould_count, wanted_ml, mould_ml, moulds_wanted: moulds_for(drained_ml) });
    }
    let turns_h: Vec<f64> = (1..=design.turn_count).map(|turn| f64::from(turn) * design.turn_gap_h).collect();
    let draining_h = f64::from(design.turn_count + 1) * design.turn_gap_h;
    // Not more than the mould's own depth is open to the room.
    let depth_m = 0.001 * (1000.0 * ladled_ml / area_mm2).min(design.mould_height_mm);
    let area_m2 = PI * 0.001 * design.mould_diameter_mm * depth_m + 2e-6 * area_mm2;
    let unsoured_ph = vat.sourness.own_ph;
    let temperature_c = vat.ladle_temperature_c;
    let in_moulds = LadledCurd { curd: ladled, to_come, temperature_c, sourness, unsoured_ph, area_m2, moulds: count };
    let course = follow(&in_moulds, design, draining_h, given);
    let (curd, whey) = (course.curd, course.whey);
    let drip_stops_h = drip_stops_h(&in_moulds, &course, design, draining_h, given);
    let end = course.souring.last().copied().unwrap_or_default();
    Ok(DrainingOutcome {
        curd,
        whey,
        draining_h,
        moisture_percent: curd.moisture_percent(),
        drip_stops_h,
        drip_has_stopped: drip_stops_h <= draining_h,
        drip: course.drip,
        souring: course.souring,
        sourness: course.sourness,
        temperature_c: end.temperature_c,
        turns_h,
        cheese_count: design.mould_count,
        cheese_g: 1000.0 * curd.total_kg() / count,
        diameter_mm: design.mould_diameter_mm,
        thickness_mm: 1000.0 * cheese_volume_ml(&curd) / count / area_mm2,
        ladled_depth_mm: 1000.0 * ladled_ml / area_mm2,
        mould_ml,
        ladled_ml,
        fits: ladled_ml <= mould_ml,
        moulds_wanted: moulds_for(ladled_ml),
        balance: StageBalance {
            came: vat.curd,
            added: made(&(found + turned(course.turned_kg))),
            left: vec![Stream { name: "drip", matter: whey }],
            goes_on: curd,
        },
    })
}

/// Returns the hours from ladling until less than [`DRIP_STOPPED`] of the moulds' whey is still to come; after the draining at the rate of its end.
fn drip_stops_h(in_moulds: &LadledCurd, course: &DrainingCourse, design: &DrainingDesign, draining_h: f64, given: &Given) -> f64 {
    let whey_g = 1000.0 * in_moulds.to_come.total_kg();
    let share = 1.0 - DRIP_STOPPED.value;
    hours_to_left(&course.drip, whey_g, share).unwrap_or_else(|| {
        let end = course.souring.last().copied().unwrap_or_default();
        let slowed = drip_factor(end.ph) / drip_factor(in_moulds.unsoured_ph);
        let time_h = given.parameters.drip().in_moulds_h(design.draining_temperature_c) * slowed;
        draining_h + time_h * (-DRIP_STOPPED.value.ln() - course.constants)
    })
}

/// Returns the stream of what lactose has turned into, if any.
pub(super) fn made(turned: &Matter) -> Vec<Stream> {
    let there = turned.parts_kg().iter().any(|part| *part != 0.0);
    there.then_some(Stream { name: "lactic acid, made of lactose and water", matter: *turned }).into_iter().collect()
}
