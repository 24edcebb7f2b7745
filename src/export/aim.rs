//! A target, as the template is given it.

use crate::design::Unit;
use crate::report::Target;
use serde::Serialize;

/// A target in words.
#[derive(Debug, Serialize)]
pub(super) struct Aim {
    label: String,
    amount: String,
    tolerance: Option<String>,
    kitchen: Option<String>,
    /// Temperatures are printed large, as the times of the clock are.
    large: bool,
}

impl Aim {
    pub(super) fn of(target: &Target) -> Self {
        Self {
            label: target.label.clone(),
            amount: target.amount.to_string(),
            tolerance: target.tolerance(),
            kitchen: target.kitchen.clone(),
            large: target.amount.unit == Unit::Celsius,
        }
    }
}
