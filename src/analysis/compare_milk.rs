//! Two batches of different milk: the figures that tell them apart, and what would bring one to the other.

use super::compare::{Difference, compare};
use super::standardisation::{MilkStandardisation, standardisation};
use crate::batch::Batch;

/// The figures that unlike milk moves first: what it holds, what it gives, how it sets, how firm the cheese becomes.
const MOVED_FIRST: [&str; 10] = [
    "bought_fat_percent",
    "fat_percent",
    "casein_percent",
    "solids_percent",
    "casein_to_fat",
    "yield_percent",
    "drained_curd_kg",
    "clotting_min",
    "clean_break_min",
    "firmness",
];

/// Two batches of different milk.
#[derive(Clone, Debug, PartialEq)]
pub struct MilkComparison {
    /// The figures that unlike milk moves first, in the order of milk, vat and cheese.
    pub figures: Vec<Difference>,
    /// What would bring the milk of the first to the fat and casein of the second's vat.
    pub standardisation: MilkStandardisation,
}

/// Returns what tells two batches of different milk apart; nothing where the milk is alike, or one has none.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, analysis::{compare_milk, from_milk}, design::{Design, MilkKind}};
/// let cow = Design::default();
/// let sheep = from_milk(&cow, MilkKind::Sheep);
/// let compared = compare_milk(&batch(&cow)?, &batch(&sheep)?).unwrap();
/// let casein = compared.figures.iter().find(|figure| figure.key == "casein_percent").unwrap();
/// assert!(casein.change.unwrap() > 1.5);
/// assert!(compare_milk(&batch(&cow)?, &batch(&cow)?).is_none());
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn compare_milk(a: &Batch, b: &Batch) -> Option<MilkComparison> {
    let standardisation = standardisation(a, b)?;
    let all = compare(a, b);
    let figures = MOVED_FIRST.iter().filter_map(|key| all.iter().find(|figure| figure.key == *key).cloned()).collect();
    Some(MilkComparison { figures, standardisation })
}
