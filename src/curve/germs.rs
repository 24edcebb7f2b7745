//! The curve of potential growth of germs.

use super::axes::round_up;
use super::{Axis, Band, Curve, CurveKey, Event, Role, Series, Tone};
use crate::design::Stage;
use crate::process::{GermCourse, GermLine, GermsOutcome};
use std::f64::consts::LN_10;

/// The germs that are drawn; their short names stand at the ends of the lines.
const DRAWN: [GermLine; 6] = [
    GermLine::Listeria,
    GermLine::Staphylococcus,
    GermLine::StaphylococcusWithoutLactic,
    GermLine::Salmonella,
    GermLine::Coli,
    GermLine::Cereus,
];
/// What is left of the way is left out where so little grows on it, log₁₀.
const LITTLE_LOG10: f64 = 0.05;
/// Top of the plot.
const MOST_LOG10: f64 = 9.0;

/// Returns the increase at every moment, log₁₀, up to the greatest density, with `times` the rate.
fn line(course: &GermCourse, end_h: f64, times: f64) -> Vec<[f64; 2]> {
    let most = course.line.germ().most_log();
    let shown = course.points.iter().take_while(|point| point.at_h <= end_h + 1e-9);
    shown.map(|point| [point.at_h, (times * point.worst / LN_10).min(most)]).collect()
}

pub(super) fn germs(germs: &GermsOutcome) -> Curve {
    let end_h = shown_to_h(germs);
    let worst = germs
        .courses
        .iter()
        .filter(|course| course.line != GermLine::StaphylococcusWithoutLactic && !course.line.wants_no_air())
        .max_by(|one, other| one.dose().total_cmp(&other.dose()));
    let series = (0..).zip(DRAWN).filter_map(|(place, which)| {
        let course = germs.of(which)?;
        let role = if worst.is_some_and(|worst| worst.line == which) { Role::Main } else { Role::Companion };
        Some(Series { name: which.short_name(), role, tone: Tone::Germ(place), points: line(course, end_h, 1.0) })
    });
    let band = worst.map(|course| {
        let (slow, fast) = course.likely_log10();
        let reached = (course.dose() / LN_10).max(f64::MIN_POSITIVE);
        let slower = line(course, end_h, if course.reaches_most() { 1.0 } else { slow / reached });
        let faster = line(course, end_h, if course.reaches_most() { 1.0 } else { fast / reached });
        let points = slower
            .iter()
            .zip(&faster)
            .map(|(low, high)| {
                let ([at_h, low], [_, high]) = (low, high);
                [*at_h, *low, *high]
            })
            .collect();
        Band { name: "likely range, worst germ", points }
    });
    let events =
        germs.spans.iter().filter(|span| span.begins_h < end_h).map(|span| Event { name: event(span.stage), at: span.begins_h });
    Curve {
        handles: Vec::new(),
        dots: Vec::new(),
        cut: None,
        title: CurveKey::Germs.title(),
        x: Axis { label: "time from the start of warming", unit: "h", least: 0.0, most: round_up(end_h.max(1.0)) },
        y: Axis { label: "potential growth", unit: "tenfold steps", least: 0.0, most: MOST_LOG10 },
        series: series.collect(),
        bands: band.into_iter().collect(),
        events: events.collect(),
        in_words: in_words(germs),
        empty_because: None,
    }
}

/// Returns the hours to which the curve goes: to the end, or to where only the jar is left and hardly anything grows in it.
fn shown_to_h(germs: &GermsOutcome) -> f64 {
    let end_h = germs.spans.last().map_or(0.0, |span| span.ends_h);
    let in_jar = |stage: Stage| germs.courses.iter().any(|course| course.in_stage_log10(stage) > LITTLE_LOG10);
    if in_jar(Stage::Pickling) || in_jar(Stage::Keeping) {
        return end_h;
    }
    let dried = germs.spans.iter().find(|span| span.stage == Stage::Drying);
    dried.map_or(end_h, |span| span.ends_h)
}

const fn event(stage: Stage) -> &'static str {
    match stage {
        Stage::Milk | Stage::Vat => "vat",
        Stage::Draining | Stage::Salting => "moulds",
        Stage::Drying => "air",
        Stage::Pickling => "vinegar",
        Stage::Keeping => "jar",
    }
}

fn in_words(germs: &GermsOutcome) -> String {
    let each = germs.courses.iter().map(|course| format!("{} {:.1}", course.line.name(), course.increase_log10()));
    format!(
        "Potential growth at the worst place by the end of the keeping, in tenfold steps, for germs that grow at once, a model: {}. No growth foreseen by this model is no proof.",
        each.collect::<Vec<_>>().join("; ")
    )
}
