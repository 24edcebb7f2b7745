//! The same vat from another milk.

use crate::design::{Design, MilkKind};

/// Returns the milk that a milk is first set against: sheep's for any other, cow's for sheep's.
#[must_use]
pub const fn other_milk(kind: MilkKind) -> MilkKind {
    match kind {
        MilkKind::Sheep => MilkKind::Cow,
        MilkKind::Cow | MilkKind::Goat | MilkKind::Buffalo | MilkKind::Label => MilkKind::Sheep,
    }
}

/// Returns the same vat from another milk: everything else is kept, the fat target and a measured pH too.
///
/// # Example
/// ```
/// use vatsketch::{batch::from_milk, design::{Design, MilkKind}};
/// let ewes = from_milk(&Design::default(), MilkKind::Sheep);
/// assert_eq!(ewes.milk.milk_kind, MilkKind::Sheep);
/// assert_eq!(ewes.vat, Design::default().vat);
/// ```
#[must_use]
pub fn from_milk(design: &Design, kind: MilkKind) -> Design {
    let mut other = design.clone();
    other.milk.milk_kind = kind;
    let from = format!("{} milk", kind.label());
    other.title = if design.title.is_empty() { from } else { format!("{}: {}", design.title, from.to_lowercase()) };
    other
}
