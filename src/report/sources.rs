//! Which rows of the ledger a plan rests on.

use super::laws::LawRow;
use crate::analysis::{constant_lists, correlation_lists};
use crate::caution::Caution;
use crate::law::legal_measures;
use crate::source::{Constant, SourceId, ledger};
use crate::units::Units;
use std::collections::BTreeSet;

/// The lists of constants that are looked at only where something sours milk or curd.
const OF_SOURING: [&str; 7] = [
    "acids that sour milk",
    "glucono-delta-lactone",
    "acid for the milk",
    "cultures",
    "calcium of soured milk",
    "yield of soured milk",
    "taste of soured milk",
];

/// One source that the calculation uses.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct UsedSource {
    /// Author, title, place, year.
    pub title: String,
    /// How much of it was seen.
    pub seen: String,
}

/// Returns the sources of every constant and correlation that a batch uses, of its laws and its cautions, and of the measures that it is shown in, in
/// the ledger's order.
///
/// # Arguments
/// * `soured`: whether anything sours milk or curd; where nothing does, the laws of souring enter no number
pub(super) fn used(laws: &[LawRow], cautions: &[Caution], units: Units, soured: bool) -> Vec<UsedSource> {
    // Other measures enter no calculation: they are named where they are shown.
    let measured = |list: &[Constant]| !units.are_metric() || list != legal_measures::CONSTANTS;
    let lists = constant_lists().into_iter().filter(|(name, list)| measured(list) && (soured || !OF_SOURING.contains(name)));
    let mut ids: BTreeSet<SourceId> = lists.flat_map(|(_, list)| list.iter().map(|record| record.source)).collect();
    ids.extend(
        correlation_lists()
            .into_iter()
            .filter(|(name, _)| soured || !OF_SOURING.contains(name))
            .flat_map(|(_, list)| list.iter().map(|record| record.source)),
    );
    ids.extend(cautions.iter().map(|caution| caution.source));
    // The ledger is built in and a test reads it; a plan without its list of sources is still a plan.
    let rows = ledger().unwrap_or_default();
    rows.iter()
        .filter(|row| ids.contains(&row.id) || laws.iter().any(|law| law.source.starts_with(row.title.as_str())))
        .map(|row| UsedSource { title: row.title.clone(), seen: row.seen.clone() })
        .collect()
}
