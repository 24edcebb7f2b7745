//! The labels of the jars, as the template is given them.

use crate::design::Unit;
use crate::report::{ALLERGEN, Amount, JarLabel, NOT_FOR, NOT_MEASURED};
use crate::units::Units;
use serde::Serialize;

/// What stands on every label.
#[derive(Debug, Serialize)]
pub(super) struct Label {
    title: String,
    jars: u32,
    made: Option<String>,
    in_vinegar: Option<String>,
    discard_after: Option<String>,
    days: String,
    ingredients: String,
    allergen: &'static str,
    keep_at: String,
    unmeasured: &'static str,
    not_for: &'static str,
}

impl Label {
    pub(super) fn of(label: &JarLabel, units: Units) -> Self {
        let days = Amount::new(label.days, Unit::Day, 0).shown_in(units);
        Self {
            title: label.title.clone(),
            jars: label.jars,
            made: label.made.clone(),
            in_vinegar: label.in_vinegar.clone(),
            discard_after: label.discard_after.clone(),
            days: days.to_string(),
            ingredients: label.ingredients.join(", "),
            allergen: ALLERGEN,
            keep_at: Amount::new(label.no_warmer_than_c, Unit::Celsius, 0).shown_in(units).to_string(),
            unmeasured: NOT_MEASURED,
            not_for: NOT_FOR,
        }
    }
}
