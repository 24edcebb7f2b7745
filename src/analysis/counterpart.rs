//! The same vat from another milk.

use crate::batch::{Batch, batch};
use crate::design::{CreamBy, Design, DesignError, Kind, MilkKind, field};

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

/// What stays the same where a vat is made from another milk: milks differ in fat and in the curd that they give.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Alike {
    /// The litres, with nothing added: the milk keeps its own fat.
    Milk,
    /// The fat: cream or skimmed milk brings it there.
    Fat,
    /// The drained curd, by other litres.
    Curd,
    /// The weight of a cheese when it is unmoulded, by another number of moulds.
    Size,
}

impl Alike {
    /// Every one, in the order in which they are offered.
    pub const ALL: [Self; 4] = [Self::Milk, Self::Fat, Self::Curd, Self::Size];

    /// Returns the word on the command line.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Milk => "milk",
            Self::Fat => "fat",
            Self::Curd => "curd",
            Self::Size => "size",
        }
    }

    /// Returns what stays the same and how, in words that follow "the same".
    #[must_use]
    pub const fn label(self) -> &'static str {
        match self {
            Self::Milk => "litres of milk: no cream or skimmed milk is added",
            Self::Fat => "fat in the milk: cream or skimmed milk is added",
            Self::Curd => "weight of curd: the litres change",
            Self::Size => "size of a cheese: the number of moulds changes",
        }
    }
}

/// Passes in which litres are brought to the curd that is wanted: curd is all but proportional to milk, so the third changes nothing that shows.
const PASSES: usize = 3;

/// Returns the same vat from another milk, like in one respect; what else is chosen is kept.
///
/// Of curd and size nothing is added to the milk but what the fat target asks for. Litres and moulds stay in their range and on their step, so a large
/// difference may not be met.
///
/// # Errors
/// [`DesignError`], which a checked design never gives.
///
/// # Example
/// ```
/// use vatsketch::{analysis::{Alike, alike_from}, batch::batch, design::{Design, MilkKind}};
/// let cow = batch(&Design::default())?;
/// let curd = |batch: &vatsketch::batch::Batch| batch.draining.done().unwrap().curd.total_kg();
/// let sheep = batch(&alike_from(&cow, MilkKind::Sheep, Alike::Curd)?)?;
/// assert!((curd(&sheep) / curd(&cow) - 1.0).abs() < 0.02);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
pub fn alike_from(of: &Batch, kind: MilkKind, alike: Alike) -> Result<Design, DesignError> {
    let mut other = from_milk(&of.design, kind);
    let curd_kg = |batch: &Batch| batch.draining.done().map(|drained| drained.curd.total_kg());
    match alike {
        Alike::Fat => {}
        Alike::Milk => (other.milk.cream_by, other.milk.cream_on_hand_ml) = (CreamBy::CreamAmount, 0.0),
        Alike::Curd => {
            for _ in 0..PASSES {
                let Some((wanted, given)) = curd_kg(of).zip(curd_kg(&batch(&other)?)) else { break };
                other.milk.milk_l = on_step("milk_l", other.milk.milk_l * wanted / given);
            }
        }
        Alike::Size => {
            if let Some((wanted, given)) = curd_kg(of).zip(curd_kg(&batch(&other)?)) {
                let count = f64::from(of.design.draining.mould_count) * given / wanted;
                other.draining.mould_count = on_step("mould_count", count) as u32;
            }
        }
    }
    Ok(other)
}

/// Returns a value in the range of an input and on its step.
fn on_step(key: &str, value: f64) -> f64 {
    match field(key).map(|field| field.kind) {
        Ok(Kind::Number { least, most, step, .. }) => ((value / step).round() * step).clamp(least, most),
        Ok(Kind::Choice(_) | Kind::Switch) | Err(_) => value,
    }
}
