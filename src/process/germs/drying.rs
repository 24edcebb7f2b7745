//! The cheese in the air, which dries from outside in: every place has a water activity of its own.

use super::airless::AirlessHours;
use super::places::{Moment, Places, Sourness};
use super::water::WaterTable;
use crate::design::Stage;
use crate::law::Matter;
use crate::law::growth::{Sour, mould_mm_per_day};
use crate::law::sorption::Sorption;
use crate::process::{DryingOutcome, DryingPoint, SourPoint};

/// Moments lie no further apart than this, h: days and nights are followed, and where it stays as warm only the cheese changes.
const APART_H: f64 = 2.0;
const APART_IF_STEADY_H: f64 = 4.0;
/// What stays within this, °C, stays as warm.
const STEADY_C: f64 = 1.0;
/// Change of the salt at the centre, as a share, after which the table of water activities is made again. There is less of it before than after, so
/// that the older table errs to the cautious side.
const SAME_SALT: f64 = 0.02;

/// The cheese as it comes to the air.
#[derive(Clone, Copy, Debug)]
pub(super) struct InAir<'a> {
    pub(super) dried: &'a DryingOutcome,
    /// All cheeses as they came.
    pub(super) cheese: &'a Matter,
    /// Hours from ladling to the air.
    pub(super) unmoulded_h: f64,
    /// How much more water the solids hold than judged.
    pub(super) solids_hold: f64,
}

/// Grows through the drying; returns the radius of a colony of blue mould on the top face, mm.
pub(super) fn through_drying(places: &mut Places, air: &InAir<'_>, airless: &mut AirlessHours) -> f64 {
    let InAir { dried, .. } = *air;
    let (began_h, field) = (places.at_h(), &dried.moisture);
    places.cut_up(None, field, 1);
    let (centre, _) = super::section::centre_and_rim(field);
    let top = field.heights_mm.len().saturating_sub(1);
    let mut look = Look { air, table: None, activities: Vec::new() };
    let mut mould_mm = 0.0;
    let mut before: Option<&crate::process::DiscFrame> = None;
    for frame in &field.frames {
        let Some(earlier) = before else {
            look.at(frame.at_h, &frame.values, &frame.values, 0.0);
            let (moment, sour) = look.moment(began_h, frame.at_h);
            places.begin(&moment, Sourness::Even(sour), &look.activities);
            places.keep_map(frame.at_h, frame.shrunk);
            before = Some(frame);
            continue;
        };
        let gap_h = frame.at_h - earlier.at_h;
        let apart_h = if look.is_steady(earlier.at_h, frame.at_h) { APART_IF_STEADY_H } else { APART_H };
        let steps = (gap_h / apart_h).ceil().max(1.0);
        for step in 1..=steps as u32 {
            let share = f64::from(step) / steps;
            let at_h = earlier.at_h + share * gap_h;
            look.at(at_h, &earlier.values, &frame.values, share);
            let (moment, sour) = look.moment(began_h, at_h);
            let hours = moment.at_h - places.at_h();
            let activity = |place: usize| look.activities.get(place).copied().unwrap_or_default();
            airless.count(hours, moment.temperature_c, sour.ph, activity(centre));
            mould_mm += hours / 24.0 * mould_mm_per_day(moment.temperature_c, activity(top));
            places.go_on(&moment, Sourness::Even(sour), &look.activities);
        }
        places.keep_map(frame.at_h, frame.shrunk);
        before = Some(frame);
    }
    places.end(Stage::Drying);
    mould_mm
}

/// The water activities at a moment.
struct Look<'a> {
    air: &'a InAir<'a>,
    table: Option<(f64, WaterTable)>,
    activities: Vec<f64>,
}

impl Look<'_> {
    /// Fills the water activities of all places, between two frames of the moisture.
    fn at(&mut self, at_h: f64, earlier: &[f32], later: &[f32], share: f64) {
        let salt = self.salt_at_centre(at_h);
        if self.table.as_ref().is_none_or(|(made_for, _)| (made_for - salt).abs() > SAME_SALT) {
            let sorption = Sorption::of(self.air.cheese).holding(self.air.solids_hold);
            let sorption = Sorption { salt_share: salt * sorption.salt_share, ..sorption };
            let first = self.air.dried.middle.points.first().map_or(60.0, |point| point.moisture_percent);
            self.table = Some((salt, WaterTable::of(&sorption, 1e-3, 1.05 * water(first))));
        }
        let Some((_, table)) = &self.table else { return };
        self.activities.clear();
        self.activities.extend(earlier.iter().zip(later).map(|(earlier, later)| {
            let (earlier, later) = (f64::from(*earlier), f64::from(*later));
            table.at(water(earlier + share * (later - earlier)))
        }));
    }

    /// Returns whether the cheese stays as warm from one hour to another.
    fn is_steady(&self, from_h: f64, to_h: f64) -> bool {
        let between = self.air.dried.middle.points.iter().filter(|point| (from_h..=to_h).contains(&point.at_h));
        let (coldest, warmest) = between
            .map(|point| point.temperature_c)
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), warm| (low.min(warm), high.max(warm)));
        warmest - coldest <= STEADY_C
    }

    /// Returns the salt in the moisture of the centre over the mean, at most 1: the inside, where it is still lacking, decides.
    fn salt_at_centre(&self, at_h: f64) -> f64 {
        let from_ladling_h = self.air.unmoulded_h + at_h;
        let points = &self.air.dried.salt.points;
        let after = points.partition_point(|point| point.at_h <= from_ladling_h).min(points.len().saturating_sub(1));
        points.get(after).map_or(1.0, |point| {
            if point.mean_percent > 0.0 { (point.centre_percent / point.mean_percent).clamp(0.0, 1.0) } else { 1.0 }
        })
    }

    /// Returns what all places have in common.
    fn moment(&self, began_h: f64, at_h: f64) -> (Moment, Sour) {
        let dried = self.air.dried;
        let temperature_c = straight(&dried.middle.points, at_h, |point: &DryingPoint| (point.at_h, point.temperature_c));
        let sours = &dried.souring;
        let of = |value: fn(&SourPoint) -> f64| straight(sours, at_h, |point: &SourPoint| (point.at_h, value(point)));
        // Acid goes with the water to dry: where the cheese is wettest there is least of it for each kg of water.
        let centre = straight(&dried.middle.points, at_h, |point: &DryingPoint| (point.at_h, point.centre_moisture_percent));
        let mean = straight(&dried.middle.points, at_h, |point: &DryingPoint| (point.at_h, point.moisture_percent));
        let thinner = (water(mean) / water(centre)).min(1.0);
        let sour = Sour::of(of(|point| point.ph), thinner * of(|point| point.lactic_mm), thinner * of(|point| point.acetic_mm));
        (Moment { at_h: began_h + at_h, temperature_c, crowd: of(|point| point.crowd), air: false }, sour)
    }
}

/// Returns the water, kg per kg of dry solids, from the moisture.
fn water(percent: f64) -> f64 {
    percent / (100.0 - percent)
}

/// Returns a value between points, straight; the ends beyond.
fn straight<P>(points: &[P], at_h: f64, of: impl Fn(&P) -> (f64, f64)) -> f64 {
    let after = points.partition_point(|point| of(point).0 <= at_h).min(points.len().saturating_sub(1));
    match (points.get(after.saturating_sub(1)).map(&of), points.get(after).map(&of)) {
        (Some((from_h, low)), Some((to_h, high))) if to_h > from_h => {
            low + (high - low) * ((at_h - from_h) / (to_h - from_h)).clamp(0.0, 1.0)
        }
        (_, Some((_, value))) => value,
        _ => 0.0,
    }
}
