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

/// Returns the milks of an animal that a milk can be set against, the one that it is first set against first.
///
/// # Example
/// ```
/// use vatsketch::{analysis::other_milks, design::MilkKind};
/// assert_eq!(other_milks(MilkKind::Cow), [MilkKind::Sheep, MilkKind::Goat, MilkKind::Buffalo]);
/// ```
#[must_use]
pub fn other_milks(kind: MilkKind) -> Vec<MilkKind> {
    let first = other_milk(kind);
    let animals = [MilkKind::Cow, MilkKind::Sheep, MilkKind::Goat, MilkKind::Buffalo];
    std::iter::once(first).chain(animals.into_iter().filter(|other| *other != kind && *other != first)).collect()
}

/// Returns what the same vat from another milk is called: "The same vat from sheep's milk".
///
/// # Example
/// ```
/// use vatsketch::{analysis::same_vat_from, design::MilkKind};
/// assert_eq!(same_vat_from(MilkKind::Sheep), "The same vat from sheep's milk");
/// ```
#[must_use]
pub fn same_vat_from(kind: MilkKind) -> String {
    match kind {
        MilkKind::Label => "The same vat from the milk on my carton".to_owned(),
        MilkKind::Cow | MilkKind::Sheep | MilkKind::Goat | MilkKind::Buffalo => {
            format!("The same vat from {}'s milk", kind.label().to_lowercase())
        }
    }
}

/// Returns the same vat from another milk: everything else is kept, the fat target and a measured pH too.
///
/// # Example
/// ```
/// use vatsketch::{analysis::from_milk, design::{Design, MilkKind}};
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
