//! Any design at all, for properties.

use proptest::prelude::*;
use vatsketch::design::{Design, Field, Kind, Value, fields};

/// Returns the value of a field at a share of its range, its list of choices, or its two positions.
pub fn value_at(field: &Field, share: f64) -> Value {
    match field.kind {
        Kind::Number { least, most, whole, .. } => {
            let value = (least + share * (most - least)).clamp(least, most);
            Value::Number(if whole { value.round() } else { value })
        }
        Kind::Choice(choices) => Value::Choice(choices[((share * choices.len() as f64) as usize).min(choices.len() - 1)].key),
        Kind::Switch => Value::Switch(share > 0.5),
    }
}

/// Any design in which about so many of the inputs differ from their defaults; the others help it to come far.
pub fn any_design(changed: f64) -> impl Strategy<Value = Design> {
    let shares = prop::collection::vec(prop::option::weighted(changed, 0.0..=1.0_f64), fields().count());
    shares.prop_map(|shares| {
        let mut design = Design::default();
        for (field, share) in fields().zip(shares) {
            if let Some(share) = share {
                field.set(&mut design, value_at(field, share)).unwrap();
            }
        }
        design
    })
}

/// Any text, whatever the letters.
pub fn any_text(most: usize) -> impl Strategy<Value = String> {
    prop::collection::vec(any::<char>(), 0..most).prop_map(String::from_iter)
}
