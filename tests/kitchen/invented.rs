//! A kitchen that nobody has.

use jiff::civil::date;
use vatsketch::design::{Believed, Design, KitchenBatch, KitchenEstimate, KnownKitchen};
use vatsketch::kitchen::Unknown;

/// Returns a kitchen that knows some constants: key, least, most likely and greatest factor on the record that a design goes by.
pub(crate) fn kitchen(design: &Design, known: &[(&str, f64, f64, f64)]) -> KnownKitchen {
    let estimate = |(key, least, value, most): &(&str, f64, f64, f64)| {
        let unknown = Unknown::from_key(key).unwrap();
        let ((was, unit), (low, high)) = (unknown.value(design), unknown.ends(design));
        KitchenEstimate {
            key: (*key).to_owned(),
            unit: unit.to_owned(),
            now: Believed { value: value * was, least: least * was, most: most * was },
            before: Believed { value: was, least: low * was, most: high * was },
        }
    };
    KnownKitchen {
        name: "invented".to_owned(),
        learned_from: vec![KitchenBatch {
            number: 1,
            name: "first".to_owned(),
            begun: date(2031, 5, 5).at(9, 0, 0, 0),
            entries: 40,
        }],
        measurements: 31,
        estimates: known.iter().map(estimate).collect(),
    }
}
