//! Curves of drying.

use super::axes::round_up;
use super::{Axis, Band, Curve, CurveKey, Event, Role, Series, Tone};
use crate::batch::Batch;
use crate::law::growth::{DRY, SHELF_STABLE};
use crate::process::{DryingOutcome, DryingPoint, TrayRun};

/// The band between the trays, which is no uncertainty but how far apart they are.
pub(super) const BETWEEN_TRAYS: &str = "between the trays";

/// The axis of the weight begins and ends at a multiple of this, g.
const WEIGHT_STEP_G: f64 = 5.0;

/// Points at which the band between the trays is drawn.
const BAND_POINTS: u32 = 60;

/// Gain in per cent from which on the axis reaches below zero; less does not show.
const LEAST_GAIN_SHOWN: f64 = 0.1;

fn line(run: &TrayRun, of: fn(&DryingPoint) -> f64) -> Vec<[f64; 2]> {
    run.points.iter().map(|point| [point.at_h, of(point)]).collect()
}

fn time_axis(batch: &Batch) -> Axis {
    Axis { label: "drying time", unit: "h", least: 0.0, most: round_up(batch.design.drying.drying_h) }
}

/// Returns the lower limit of the loss: below zero where a cold cheese gathers dew or damp air wets it.
fn gain_limit(run: &TrayRun) -> f64 {
    let most_gained = run.points.iter().map(|point| -point.loss_percent).fold(0.0, f64::max);
    if most_gained > LEAST_GAIN_SHOWN { -round_up(most_gained) } else { 0.0 }
}

/// Returns the upper limit of the loss, a little above the greatest: a dry film may take water up again before the end.
fn loss_limit(run: &TrayRun) -> f64 {
    let greatest = run.points.iter().map(|point| point.loss_percent).fold(0.0, f64::max);
    match greatest {
        little if little <= 55.0 => 60.0,
        more if more <= 78.0 => 80.0,
        _ => 100.0,
    }
}

fn swap(dried: &DryingOutcome) -> Vec<Event> {
    dried.swap_h.into_iter().map(|at| Event { name: "swap trays", at }).collect()
}

/// Returns a run's value at an hour, straight between its points.
fn at(run: &TrayRun, hour: f64, of: fn(&DryingPoint) -> f64) -> f64 {
    let after = run.points.partition_point(|point| point.at_h < hour);
    match (after.checked_sub(1).and_then(|before| run.points.get(before)), run.points.get(after)) {
        (Some(before), Some(next)) => {
            let share = (hour - before.at_h) / (next.at_h - before.at_h);
            of(before) + share * (of(next) - of(before))
        }
        (None, Some(only)) | (Some(only), None) => of(only),
        (None, None) => 0.0,
    }
}

/// Returns the bands of a curve: how far the trays dry apart, within how far the diffusivity may be wrong.
fn bands(dried: &DryingOutcome, end_h: f64, of: fn(&DryingPoint) -> f64) -> Vec<Band> {
    if end_h <= 0.0 {
        return Vec::new();
    }
    let between = |name, one: &TrayRun, other: &TrayRun| {
        let points = (0..=BAND_POINTS).map(|point| {
            let hour = end_h * f64::from(point) / f64::from(BAND_POINTS);
            let (one, other, middle) = (at(one, hour, of), at(other, hour, of), at(&dried.middle, hour, of));
            [hour, one.min(other).min(middle), one.max(other).max(middle)]
        });
        Band { name, points: points.collect() }
    };
    let mut bands = vec![between("if water moves half or twice as fast", &dried.if_slow, &dried.if_fast)];
    if dried.spread_unswapped_percent >= 0.05 {
        bands.push(between(BETWEEN_TRAYS, &dried.fastest, &dried.slowest));
    }
    bands
}

pub(super) fn loss(batch: &Batch, dried: &DryingOutcome) -> Curve {
    let end = &dried.end;
    Curve {
        handles: Vec::new(),
        dots: Vec::new(),
        cut: None,
        title: CurveKey::DryingLoss.title(),
        x: time_axis(batch),
        y: Axis { label: "weight lost", unit: "%", least: gain_limit(&dried.middle), most: loss_limit(&dried.middle) },
        series: vec![Series {
            name: "middle tray",
            role: Role::Main,
            tone: Tone::Whole,
            points: line(&dried.middle, |point| point.loss_percent),
        }],
        bands: bands(dried, batch.design.drying.drying_h, |point| point.loss_percent),
        events: swap(dried),
        empty_because: None,
        in_words: format!(
            "Drying loss: after {:.0} h a cheese has lost {:.0} % of its weight and weighs {:.0} g at {:.0} % moisture.",
            end.at_h, end.loss_percent, end.cheese_g, end.moisture_percent
        ),
    }
}

/// Returns the weight of one cheese on the scale while it dries, with its pepper; nothing where nothing is dried.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, curve::drying_weight, design::Design};
/// let done = batch(&Design::default())?;
/// let dried = done.drying.done().unwrap();
/// let pepper_g = done.salting.done().unwrap().pepper_each_g;
/// let weight = drying_weight(&done).unwrap();
/// assert!((weight.series[0].points.last().unwrap()[1] - dried.end.cheese_g - pepper_g).abs() < 1e-9);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn drying_weight(batch: &Batch) -> Option<Curve> {
    let dried = batch.drying.done().filter(|_| batch.design.drying.drying_h > 0.0)?;
    let pepper_g = batch.salting.done().map_or(0.0, |salting| salting.pepper_each_g);
    let mut bands = bands(dried, batch.design.drying.drying_h, |point| point.cheese_g);
    bands.truncate(1);
    for point in bands.iter_mut().flat_map(|band| &mut band.points) {
        *point = [point[0], point[1] + pepper_g, point[2] + pepper_g];
    }
    let mut points = line(&dried.middle, |point| point.cheese_g);
    for point in &mut points {
        point[1] += pepper_g;
    }
    let all =
        bands.iter().flat_map(|band| &band.points).flat_map(|point| [point[1], point[2]]).chain(points.iter().map(|at| at[1]));
    let (least, most) = all.fold((f64::INFINITY, 0.0_f64), |(least, most), grams| (least.min(grams), most.max(grams)));
    Some(Curve {
        handles: Vec::new(),
        dots: Vec::new(),
        cut: None,
        title: "Weight of one cheese while it dries",
        x: time_axis(batch),
        y: Axis {
            label: "weight",
            unit: "g",
            least: WEIGHT_STEP_G * (least / WEIGHT_STEP_G).floor(),
            most: WEIGHT_STEP_G * (most / WEIGHT_STEP_G).ceil(),
        },
        series: vec![Series { name: "plan", role: Role::Main, tone: Tone::Whole, points }],
        bands,
        events: Vec::new(),
        empty_because: None,
        in_words: format!(
            "A cheese with its pepper weighs {:.0} g after {:.0} h of drying.",
            dried.end.cheese_g + pepper_g,
            dried.end.at_h
        ),
    })
}

pub(super) fn moisture(batch: &Batch, dried: &DryingOutcome) -> Curve {
    let end = &dried.end;
    // Undrained curd, or a face that dew has wetted.
    let wettest = dried.middle.points.iter().map(|point| point.centre_moisture_percent.max(point.surface_moisture_percent));
    let wettest = wettest.fold(0.0, f64::max);
    Curve {
        handles: Vec::new(),
        dots: Vec::new(),
        cut: None,
        title: CurveKey::Moisture.title(),
        x: time_axis(batch),
        y: Axis { label: "moisture", unit: "%", least: 0.0, most: if wettest > 80.0 { 100.0 } else { 80.0 } },
        series: vec![
            Series {
                name: "centre",
                role: Role::Companion,
                tone: Tone::Centre,
                points: line(&dried.middle, |point| point.centre_moisture_percent),
            },
            Series {
                name: "mean",
                role: Role::Main,
                tone: Tone::Whole,
                points: line(&dried.middle, |point| point.moisture_percent),
            },
            Series {
                name: "top",
                role: Role::Companion,
                tone: Tone::Face,
                points: line(&dried.middle, |point| point.surface_moisture_percent),
            },
        ],
        bands: bands(dried, batch.design.drying.drying_h, |point| point.moisture_percent),
        events: swap(dried),
        empty_because: None,
        in_words: format!(
            "Moisture: {:.0} % on average and {:.0} % at the centre after {:.0} h.",
            end.moisture_percent, end.centre_moisture_percent, end.at_h
        ),
    }
}

pub(super) fn water_activity(batch: &Batch, dried: &DryingOutcome) -> Curve {
    let end = &dried.end;
    // The centre may be the drier one where damp air wets the cheese again, and the driest moment need not be the last.
    let driest = dried.middle.points.iter().map(|point| point.water_activity.min(point.centre_water_activity)).fold(1.0, f64::min);
    let x = time_axis(batch);
    let limits = [("0.92", DRY.value), ("0.85", SHELF_STABLE.value)].map(|(name, limit)| Series {
        name,
        role: Role::Limit,
        tone: Tone::Limit,
        points: vec![[0.0, limit], [x.most, limit]],
    });
    let mut series = vec![
        Series {
            name: "centre",
            role: Role::Companion,
            tone: Tone::Centre,
            points: line(&dried.middle, |point| point.centre_water_activity),
        },
        Series { name: "mean", role: Role::Main, tone: Tone::Whole, points: line(&dried.middle, |point| point.water_activity) },
    ];
    series.extend(limits);
    Curve {
        handles: Vec::new(),
        dots: Vec::new(),
        cut: None,
        title: CurveKey::WaterActivity.title(),
        x,
        y: Axis { label: "water activity", unit: "", least: if driest < 0.72 { 0.0 } else { 0.7 }, most: 1.0 },
        series,
        bands: Vec::new(),
        events: swap(dried),
        empty_because: None,
        in_words: format!(
            "Water activity, estimated: {:.2} on average and {:.2} at the centre after {:.0} h. At {} or less food is counted as dried.",
            end.water_activity, end.centre_water_activity, end.at_h, SHELF_STABLE.value
        ),
    }
}
