//! One line of two designs.

use crate::analysis::{Difference, Likeness};
use crate::design::{Design, KnownKitchen};
use crate::figure::Weight;
use crate::units::Units;

/// One line of two designs.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ComparedRow {
    /// What it is.
    pub label: String,
    /// It in A.
    pub a: String,
    /// It in B.
    pub b: String,
    /// B less A; empty where that says nothing.
    pub change: String,
    /// Whether it is one of the few that count most.
    pub lead: bool,
    /// Whether the model can tell the two apart.
    pub differs: bool,
}

/// Returns a figure of two designs as a row.
pub(super) fn figure_row(figure: &Difference, units: Units) -> ComparedRow {
    ComparedRow {
        label: units.told(figure.label),
        a: figure.a_text(units),
        b: figure.b_text(units),
        change: figure.change_text(units),
        lead: figure.weight == Weight::Lead,
        differs: figure.likeness == Likeness::Differs,
    }
}

/// Returns the kitchens that two designs are calculated for, where those differ.
pub(super) fn kitchen_row(a: &Design, b: &Design) -> Option<ComparedRow> {
    let words = |kitchen: Option<&KnownKitchen>| match kitchen {
        None => "any kitchen".to_owned(),
        Some(own) if own.name.is_empty() => "your kitchen".to_owned(),
        Some(own) => own.name.clone(),
    };
    (a.kitchen != b.kitchen).then(|| {
        let [a, b] = [a, b].map(|design| words(design.kitchen.as_ref()));
        let change = if a == b { "learned at another time".to_owned() } else { String::new() };
        ComparedRow { label: "Calculated for".to_owned(), a, b, change, lead: true, differs: true }
    })
}
