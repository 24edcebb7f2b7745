//! What was learned, as a design keeps it.

use super::{Belief, Learned, LearnedKitchen, Unknown};
use crate::design::{Believed, Kind, KitchenBatch, KitchenEstimate, KnownKitchen, Value, field};
use crate::process::Distribution;
use crate::record::BatchRecord;

/// How far below the middle the tenth of ten draws lies in a triangle, as a share of the way to its end: 1 − √(2 · 0.1).
const TENTH_LIES_AT: f64 = 0.552_786_404_500_042;

impl LearnedKitchen {
    /// Returns what designs may use of it: of each constant that is told the estimate and the range, those of all others stay as they are.
    ///
    /// # Arguments
    /// * `name`: what the maker calls the kitchen
    /// * `records`: those that it was learned from
    #[must_use]
    pub fn known(&self, name: &str, records: &[&BatchRecord]) -> KnownKitchen {
        let batch = |record: &&BatchRecord| KitchenBatch {
            number: record.number,
            name: record.name.clone(),
            begun: record.begun,
            entries: u32::try_from(record.entries.len()).unwrap_or(u32::MAX),
        };
        KnownKitchen {
            name: name.to_owned(),
            learned_from: records.iter().map(batch).collect(),
            measurements: u32::try_from(self.measurements).unwrap_or(u32::MAX),
            estimates: self.told().map(|learned| self.estimate(learned)).collect(),
        }
    }

    fn estimate(&self, learned: &Learned) -> KitchenEstimate {
        let Learned { unknown, belief } = *learned;
        let (was, unit) = unknown.value(&self.design);
        let (least, most) = unknown.ends(&self.design);
        let before = Believed { value: was, least: least * was, most: most * was };
        let Belief { factor, likely: (low, high), .. } = belief;
        // The triangle whose tenths lie where those of the belief lie.
        let end = |tenth: f64| match Distribution::between(least, most) {
            Distribution::Straight => factor + (tenth - factor) / TENTH_LIES_AT,
            Distribution::InLogarithm => factor * ((tenth / factor).ln() / TENTH_LIES_AT).exp(),
        };
        let value = chosen(unknown, factor * was);
        let now = Believed { value, least: (end(low).max(least) * was).min(value), most: (end(high).min(most) * was).max(value) };
        KitchenEstimate { key: unknown.key().to_owned(), unit: unit.to_owned(), now, before }
    }
}

/// Returns a value as its choice can say it, to a tenth; that of a constant as it is.
fn chosen(unknown: Unknown, value: f64) -> f64 {
    let Ok(field) = field(unknown.key()) else { return value };
    let Kind::Number { least, most, .. } = field.kind else { return value };
    let tenths = (10.0 * value).round() / 10.0;
    match field.check(Value::Number(tenths)) {
        Ok(Value::Number(taken)) => taken,
        _ => value.clamp(least, most),
    }
}
