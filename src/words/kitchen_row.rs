//! What is known of a kitchen, in words, a row for each of its values.

use super::kitchen::three_figures;
use crate::design::{Believed, KitchenEstimate, KnownKitchen, Unit};
use crate::kitchen::Unknown;
use crate::process::{Distribution, LIKELY_SHARES};
use crate::units::Units;

/// One value of a kitchen, beside that of any kitchen.
#[derive(Clone, Debug, PartialEq)]
pub struct KitchenRow {
    /// What it is, in a maker's words.
    pub what: String,
    /// The most likely value with its unit.
    pub value: String,
    /// Between what it lies in eight cases of ten, in words: "0.82–1.1".
    pub now: String,
    /// The same of any kitchen.
    pub before: String,
    /// Both as numbers, and what it lies between at all, for a picture.
    pub ranges: [(f64, f64); 3],
}

/// Units that a kitchen has; a number in any other is said over what is usual.
const KITCHEN_UNITS: [&str; 8] = ["%", "h", "min", "°C", "g", "kg", "L", "mL"];
/// The unit of a temperature, of which a log tells how far it is from what was chosen.
const KELVIN: &str = "K";

/// Returns what is known of a kitchen, row by row.
#[must_use]
pub fn kitchen_rows(kitchen: &KnownKitchen, units: Units) -> Vec<KitchenRow> {
    kitchen.estimates.iter().map(|estimate| row(estimate, units)).collect()
}

fn row(estimate: &KitchenEstimate, units: Units) -> KitchenRow {
    let KitchenEstimate { key, unit, now, before } = estimate;
    let ends = (before.least, before.most);
    // A newer program may know more of them.
    let what = Unknown::from_key(key).map_or_else(|| key.clone(), |unknown| unknown.words().to_owned());
    let ranges = [likely(*now, *before), likely(*before, *before), ends];
    if unit == KELVIN {
        // Of a difference the zero point does not matter.
        let scale = units.scale(Unit::Celsius, before.value);
        let apart = |kelvin: f64| format!("{:+.1}", scale.apart(kelvin - before.value)).replace('-', "−");
        let range = |(least, most): (f64, f64)| format!("{} to {}", apart(least), apart(most));
        let [own, any, _] = ranges;
        let value = format!("{} {} from what was chosen", apart(now.value), scale.symbol);
        return KitchenRow { what, value, now: range(own), before: range(any), ranges };
    }
    let usual = !KITCHEN_UNITS.contains(&unit.as_str());
    // Two figures of what is usual are as much as any log tells.
    let said = |number: f64| if usual { two_figures(number / before.value) } else { number };
    let range = |(least, most): (f64, f64)| format!("{}–{}", three_figures(said(least)), three_figures(said(most)));
    let [own, any, _] = ranges;
    let unit = if usual { "times the usual" } else { unit };
    KitchenRow { what, value: format!("{} {unit}", three_figures(said(now.value))), now: range(own), before: range(any), ranges }
}

/// Returns between what lie eight of ten draws from a range, drawn as that before it is.
fn likely(of: Believed, before: Believed) -> (f64, f64) {
    let Believed { value, least, most } = of;
    let drawn = Distribution::between(before.least / before.value, before.most / before.value);
    let at = |share: f64| value * drawn.at_share(least / value, most / value, share);
    (at(LIKELY_SHARES.0), at(LIKELY_SHARES.1))
}

fn two_figures(number: f64) -> f64 {
    // By its text, so that no rounding of a power of ten shows.
    format!("{number:.1e}").parse().unwrap_or(number)
}
