//! The curves of moisture and salt in the vinegar.

use super::axes::{highest, round_up};
use super::{Axis, Curve, CurveKey, Role, Series, Tone};
use crate::batch::Batch;
use crate::process::{Inside, InsidePoint, PicklingOutcome};

/// What is shown.
struct Shown<'a> {
    key: CurveKey,
    inside: &'a Inside,
    axis: (&'static str, &'static str),
    mean: Tone,
    least_top: f64,
    decimals: usize,
}

pub(super) fn moisture(batch: &Batch, pickled: &PicklingOutcome) -> Curve {
    let axis = ("moisture", "%");
    let key = CurveKey::SoakMoisture;
    drawn(batch, pickled, &Shown { key, inside: &pickled.moisture, axis, mean: Tone::Whole, least_top: 60.0, decimals: 0 })
}

pub(super) fn salt(batch: &Batch, pickled: &PicklingOutcome) -> Curve {
    let axis = ("salt in moisture", "g/100 g");
    let key = CurveKey::SoakSalt;
    drawn(batch, pickled, &Shown { key, inside: &pickled.salt, axis, mean: Tone::Salt, least_top: 4.0, decimals: 1 })
}

fn drawn(batch: &Batch, pickled: &PicklingOutcome, shown: &Shown<'_>) -> Curve {
    let title = shown.key.title();
    let end_h = if pickled.pickled { batch.design.pickling.pickling_h } else { 0.0 };
    let points = &shown.inside.points;
    let line = |of: fn(&InsidePoint) -> f64| points.iter().map(|point| [point.at_h, of(point)]).collect::<Vec<_>>();
    let empty_because = (!pickled.pickled).then(|| "the cheeses do not go into vinegar".to_owned());
    let series = if pickled.pickled {
        vec![
            Series { name: "face", role: Role::Companion, tone: Tone::Face, points: line(|point| point.face) },
            Series { name: "mean", role: Role::Main, tone: shown.mean, points: line(|point| point.mean) },
            Series { name: "centre", role: Role::Companion, tone: Tone::Centre, points: line(|point| point.centre) },
        ]
    } else {
        Vec::new()
    };
    let most = series.iter().map(|series| highest(&series.points)).fold(shown.least_top, f64::max);
    let (label, unit) = shown.axis;
    Curve {
        handles: Vec::new(),
        dots: Vec::new(),
        cut: None,
        title,
        x: Axis { label: "time in the vinegar", unit: "h", least: 0.0, most: round_up(end_h.max(1.0)) },
        y: Axis { label, unit, least: 0.0, most: round_up(most * 1.1) },
        series,
        bands: Vec::new(),
        events: Vec::new(),
        in_words: empty_because.as_ref().map_or_else(|| in_words(shown), |why| format!("{title}: no curve: {why}")),
        empty_because,
    }
}

fn in_words(shown: &Shown<'_>) -> String {
    let (begins, ends) = (shown.inside.points.first(), shown.inside.points.last());
    let (begins, ends) = (begins.copied().unwrap_or_default(), ends.copied().unwrap_or_default());
    let unit = if shown.axis.1 == "%" { "%" } else { "g in 100 g of water" };
    let places = shown.decimals;
    format!(
        "{}, a model: {:.places$} {unit} on average when the cheese goes in; after {:.0} h {:.places$} on average, {:.places$} at the face and {:.places$} at the centre.",
        shown.key.title(),
        begins.mean,
        ends.at_h,
        ends.mean,
        ends.face,
        ends.centre
    )
}
