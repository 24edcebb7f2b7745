//! What was measured, as dots in a curve.

use super::axes::round_up;
use super::{Curve, CurveKey, Dot, MeasuredLine, MeasuredOn};

/// Returns a curve with what was measured of a batch; its axes reach as far as the dots do.
///
/// # Arguments
/// * `measured`: what [`super::measured`] returns
///
/// # Example
/// ```
/// use jiff::civil::date;
/// use vatsketch::record::{EntryKind, EntryValue, Log};
/// use vatsketch::{batch::batch, curve::{CurveKey, curve, measured, with_measured}, design::Design};
/// let (mut log, day, batch) = (Log::default(), date(2031, 5, 9), batch(&Design::default()).unwrap());
/// log.begin("", day.at(8, 0, 0, 0), Design::default(), None);
/// log.enter(1, day.at(8, 0, 0, 0), EntryKind::WarmingBegan, EntryValue::Done)?;
/// log.enter(1, day.at(8, 20, 0, 0), EntryKind::MilkTemperature, EntryValue::Number(21.0))?;
/// let lines = measured(&batch, log.batch(1)?, None);
/// let warming = with_measured(CurveKey::Warming, curve(&batch, CurveKey::Warming), &lines);
/// assert_eq!(warming.dots[0].at, [20.0, 21.0]);
/// # Ok::<(), vatsketch::record::RecordError>(())
/// ```
#[must_use]
pub fn with_measured(key: CurveKey, mut curve: Curve, measured: &[MeasuredLine]) -> Curve {
    let on_it = measured.iter().filter(|line| line.on == MeasuredOn::Curve(key));
    curve.dots = on_it
        .flat_map(|line| line.points.iter().map(|point| Dot { line: line.line, at: [point.x, point.measured] }))
        .filter(|dot| dot.at[0] >= curve.x.least)
        .collect();
    for Dot { at: [x, y], .. } in &curve.dots {
        if *x > curve.x.most {
            curve.x.most = round_up(*x);
        }
        if *y > curve.y.most {
            curve.y.most = round_up(*y);
        }
        curve.y.least = curve.y.least.min(y.floor());
    }
    if !curve.dots.is_empty() {
        let decimals = if curve.y.unit.is_empty() { 2 } else { 1 };
        let (x_unit, y_unit) = (curve.x.unit, curve.y.unit);
        let said = curve.dots.iter().map(|Dot { line, at: [x, y] }| {
            let read = format!("{y:.decimals$} {y_unit}");
            format!("{line} {} after {x:.1} {x_unit}", read.trim_end())
        });
        let said: Vec<String> = said.collect();
        curve.in_words = format!("{} Measured: {}.", curve.in_words, said.join(", "));
    }
    curve
}
