//! The curve of pH in the vinegar.

use super::axes::round_up;
use super::{Axis, Band, Curve, CurveKey, Event, Role, Series, Tone};
use crate::batch::Batch;
use crate::process::{PH_TARGETS, PicklePoint, PicklingOutcome};

/// Names of the limits, in the order of [`PH_TARGETS`].
const LIMIT_NAMES: [&str; 2] = ["4.6", "4.2"];
/// Points at which the band is drawn.
const BAND_POINTS: u32 = 60;

/// Returns a curve's pH at the centre at an hour, straight between its points.
fn centre_at(points: &[PicklePoint], hour: f64) -> Option<f64> {
    let after = points.partition_point(|point| point.at_h < hour);
    let next = points.get(after).or_else(|| points.last())?;
    let before = points.get(after.saturating_sub(1))?;
    let gap_h = next.at_h - before.at_h;
    let share = if gap_h > 0.0 { ((hour - before.at_h) / gap_h).clamp(0.0, 1.0) } else { 0.0 };
    Some(before.centre_ph + share * (next.centre_ph - before.centre_ph))
}

/// Returns the band of the centre between the slow and the fast cheese.
fn band(pickled: &PicklingOutcome, end_h: f64) -> Option<Band> {
    let points: Vec<[f64; 3]> = (0..=BAND_POINTS)
        .filter_map(|point| {
            let hour = end_h * f64::from(point) / f64::from(BAND_POINTS);
            let middle = centre_at(&pickled.curve, hour)?;
            let (slow, fast) = (centre_at(&pickled.if_slow, hour)?, centre_at(&pickled.if_fast, hour)?);
            Some([hour, fast.min(slow).min(middle), slow.max(fast).max(middle)])
        })
        .collect();
    let name = "likely range of the centre";
    (!points.is_empty()).then_some(Band { name, points })
}

pub(super) fn souring(batch: &Batch, pickled: &PicklingOutcome) -> Curve {
    let end_h = if pickled.pickled { batch.design.pickling.pickling_h } else { 0.0 };
    let most_h = round_up(end_h.max(1.0));
    let line = |of: fn(&PicklePoint) -> f64| pickled.curve.iter().map(|point| [point.at_h, of(point)]).collect::<Vec<_>>();
    let empty_because = (!pickled.pickled).then(|| "the cheeses do not go into vinegar".to_owned());
    let mut series = Vec::new();
    if pickled.pickled {
        series.extend([
            Series { name: "centre", role: Role::Main, tone: Tone::Centre, points: line(|point| point.centre_ph) },
            Series { name: "blended", role: Role::Companion, tone: Tone::Whole, points: line(|point| point.slurry_ph) },
            Series { name: "face", role: Role::Companion, tone: Tone::Face, points: line(|point| point.surface_ph) },
        ]);
        series.extend(PH_TARGETS.into_iter().zip(LIMIT_NAMES).map(|(ph, name)| Series {
            name,
            role: Role::Limit,
            tone: Tone::Limit,
            points: vec![[0.0, ph], [most_h, ph]],
        }));
    }
    let lowest = pickled.curve.iter().map(|point| point.surface_ph.min(point.slurry_ph)).fold(7.0, f64::min);
    let reached = pickled.targets.iter().zip(["centre at 4.6", "centre at 4.2"]);
    let events = reached
        .filter_map(|(target, name)| Some(Event { name, at: target.centre_h.filter(|at| *at > 0.0 && *at <= end_h)? }))
        .collect();
    Curve {
        handles: Vec::new(),
        dots: Vec::new(),
        cut: None,
        title: CurveKey::Souring.title(),
        x: Axis { label: "time in the vinegar", unit: "h", least: 0.0, most: most_h },
        // Strong vinegar on a cheese that takes up little brings the face below 3.
        y: Axis { label: "pH", unit: "", least: if lowest < 3.0 { 2.0 } else { 3.0 }, most: 7.0 },
        series,
        bands: if pickled.pickled { band(pickled, end_h).into_iter().collect() } else { Vec::new() },
        events,
        in_words: empty_because.as_ref().map_or_else(|| in_words(pickled), |why| format!("pH in the vinegar: no curve: {why}")),
        empty_because,
    }
}

fn in_words(pickled: &PicklingOutcome) -> String {
    let end = &pickled.end;
    let when =
        |hours: Option<f64>| hours.map_or_else(|| "not in the time calculated".to_owned(), |hours| format!("after {hours:.0} h"));
    let [first, second] = &pickled.targets;
    format!(
        "pH in the vinegar, a model: after {:.0} h {:.1} at the centre and {:.1} blended; the centre comes to {} {} and to {} {}.",
        end.at_h,
        end.centre_ph,
        end.slurry_ph,
        first.ph,
        when(first.centre_h),
        second.ph,
        when(second.centre_h)
    )
}
