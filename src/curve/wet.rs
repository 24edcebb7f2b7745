//! Curves of the wet end: warming and whey.

use super::axes::{highest, round_up};
use super::{Axis, Curve, CurveKey, Event, Role, Series, Tone};
use crate::batch::Batch;
use crate::design::Heating;
use crate::law::bath::{DEPOSITS_BEGIN, Scorching};
use crate::process::{DrainingOutcome, VatOutcome, WarmingEvent};

pub(super) fn warming(batch: &Batch, vat: &VatOutcome) -> Curve {
    let line =
        |of: fn(&crate::process::WarmingPoint) -> f64| vat.curve.iter().map(|point| [point.at_min, of(point)]).collect::<Vec<_>>();
    let outside = match batch.design.vat.heating {
        Heating::Bath => "bath",
        Heating::DoubleBoiler => "steam side",
        Heating::Hob => "hot spot",
    };
    let mut series = vec![
        Series { name: "milk", role: Role::Main, tone: Tone::Milk, points: line(|point| point.milk_c) },
        Series { name: outside, role: Role::Companion, tone: Tone::Around, points: line(|point| point.bath_c) },
    ];
    let most_min = round_up(vat.to_ladle_min);
    if crate::law::bath::scorching(vat.wall_most_c) > Scorching::Fine {
        series.push(Series {
            name: "deposits begin",
            role: Role::Limit,
            tone: Tone::Limit,
            points: vec![[0.0, DEPOSITS_BEGIN.value], [most_min, DEPOSITS_BEGIN.value]],
        });
    }
    let hottest = series.iter().map(|series| highest(&series.points)).fold(40.0, f64::max);
    Curve {
        handles: Vec::new(),
        dots: Vec::new(),
        cut: None,
        title: CurveKey::Warming.title(),
        x: Axis { label: "time from the start", unit: "min", least: 0.0, most: most_min },
        y: Axis { label: "temperature", unit: "°C", least: 0.0, most: round_up(hottest * 1.1) },
        series,
        bands: Vec::new(),
        events: vat
            .events
            .iter()
            .filter(|mark| mark.event != WarmingEvent::Start)
            .map(|mark| Event { name: mark.event.words(), at: mark.at_min })
            .collect(),
        empty_because: None,
        in_words: format!(
            "Warming: {}the milk is warm enough for the rennet after {:.0} min, clots {:.0} min later and is ladled {:.0} min after the start.",
            pasteurised_words(vat),
            vat.to_rennet_min,
            vat.clotting_min,
            vat.to_ladle_min
        ),
    }
}

/// Returns when raw milk is pasteurised, as the beginning of a sentence; nothing where it is not.
fn pasteurised_words(vat: &VatOutcome) -> String {
    vat.heat_step.map_or_else(String::new, |step| {
        format!(
            "the raw milk is hot enough after {:.0} min, is held until {:.0} min and has cooled at {:.0} min; ",
            step.to_hold_min, step.hold_ends_min, step.cooled_min
        )
    })
}

pub(super) fn whey_drip(drained: &DrainingOutcome) -> Curve {
    let whey: Vec<[f64; 2]> = drained.drip.iter().map(|(at_h, whey_g, _)| [*at_h, *whey_g]).collect();
    let rate: Vec<[f64; 2]> = drained.drip.iter().map(|(at_h, _, rate)| [*at_h, *rate]).collect();
    let most = highest(&whey).max(highest(&rate));
    let mut events: Vec<Event> = drained.turns_h.iter().map(|at_h| Event { name: "turn", at: *at_h }).collect();
    if drained.drip_has_stopped {
        events.push(Event { name: "drip stops", at: drained.drip_stops_h });
    }
    Curve {
        handles: Vec::new(),
        dots: Vec::new(),
        cut: None,
        title: CurveKey::WheyDrip.title(),
        x: Axis { label: "time from ladling", unit: "h", least: 0.0, most: round_up(drained.draining_h) },
        y: Axis { label: "whey, and whey per hour", unit: "g", least: 0.0, most: round_up(most * 1.15) },
        series: vec![
            Series { name: "whey so far", role: Role::Main, tone: Tone::Whey, points: whey },
            Series { name: "per hour", role: Role::Companion, tone: Tone::Around, points: rate },
        ],
        bands: Vec::new(),
        events,
        empty_because: None,
        in_words: format!(
            "Whey from the moulds: {:.2} kg in {:.0} h; the drip stops after about {:.0} h.",
            drained.whey.total_kg(),
            drained.draining_h,
            drained.drip_stops_h
        ),
    }
}
