//! The curve of pH from the milk to the dried cheese.

use super::axes::round_up;
use super::{Axis, Curve, CurveKey, Event, Role, Series, Tone};
use crate::batch::Batch;
use crate::law::growth::SOURED_IN_TIME_H;
use crate::process::{DrainingOutcome, SourPoint, VatOutcome, souring_on_the_way};

pub(super) fn of_curd(batch: &Batch, vat: &VatOutcome, drained: &DrainingOutcome) -> Curve {
    let dried = batch.drying.done();
    let way = souring_on_the_way(vat, Some(drained), dried);
    let end = way.last().copied().unwrap_or_default();
    let most_h = round_up(end.at_h);
    let lowest = way.iter().map(|point| point.ph).fold(7.0, f64::min);
    let ladled_h = vat.to_ladle_min / 60.0;
    let unmoulded_h = ladled_h + drained.draining_h;
    let mut events = Vec::new();
    if vat.sourness.culture.is_some() {
        let culture_h = vat.to_culture_min / 60.0;
        events.push(Event { name: "culture", at: culture_h });
        events.push(Event { name: "measure the pH", at: culture_h + SOURED_IN_TIME_H.value });
    }
    events.push(Event { name: "rennet", at: vat.to_rennet_min / 60.0 });
    events.push(Event { name: "draining begins", at: ladled_h });
    events.push(Event { name: "unmoulded", at: unmoulded_h });
    events.retain(|event| event.at <= end.at_h);
    events.sort_by(|one, other| one.at.total_cmp(&other.at));
    Curve {
        handles: Vec::new(),
        dots: Vec::new(),
        cut: None,
        title: CurveKey::CurdSouring.title(),
        x: Axis { label: "time from the start", unit: "h", least: 0.0, most: most_h },
        // Much lactone or a thermophilic culture comes below 4.
        y: Axis { label: "pH", unit: "", least: if lowest < 4.0 { 3.0 } else { 4.0 }, most: 7.0 },
        series: vec![Series { name: "pH", role: Role::Main, tone: Tone::Whole, points: ascending(&way) }],
        bands: Vec::new(),
        events,
        empty_because: None,
        in_words: in_words(&way, vat, drained, &end),
    }
}

/// Returns the points of the line; where one stage follows another, rounding may put the later one a hair before the earlier.
fn ascending(way: &[SourPoint]) -> Vec<[f64; 2]> {
    let mut last_h = 0.0_f64;
    way.iter()
        .map(|point| {
            last_h = last_h.max(point.at_h);
            [last_h, point.ph]
        })
        .collect()
}

fn in_words(way: &[SourPoint], vat: &VatOutcome, drained: &DrainingOutcome, end: &SourPoint) -> String {
    let first = way.first().copied().unwrap_or_default();
    let unmoulded = drained.souring.last().copied().unwrap_or_default();
    format!(
        "pH of milk and curd, a model: {:.2} in the cold milk, {:.2} at the rennet, {:.2} when the cheeses leave the moulds and {:.2} in the end, with {:.1} % of lactose left.",
        first.ph, vat.rennet_ph, unmoulded.ph, end.ph, end.lactose_percent
    )
}
