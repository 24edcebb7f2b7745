//! The cautions of two batches side by side.

use crate::batch::Batch;
use crate::caution::{Caution, Severity, cautions};

/// In which of two batches something stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Whose {
    /// In both.
    Both,
    /// In the first alone.
    OnlyA,
    /// In the second alone.
    OnlyB,
}

impl Whose {
    /// Returns that in words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Both => "in A and B",
            Self::OnlyA => "only in A",
            Self::OnlyB => "only in B",
        }
    }
}

/// One caution of two batches.
#[derive(Clone, Debug, PartialEq)]
pub struct ComparedCaution {
    /// The caution, as the first batch that has it; of two severities the graver.
    pub caution: Caution,
    /// Whose it is.
    pub whose: Whose,
    /// The caution of the first batch, where it has it.
    pub of_a: Option<Caution>,
    /// The caution of the second batch, where both have it: its numbers may differ.
    pub of_b: Option<Caution>,
}

/// Returns the cautions of two batches: the gravest first, and of one severity those that only one has first.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, analysis::{compare_cautions, Whose}, design::{Design, Value}};
/// let one = Design::default();
/// let mut other = one.clone();
/// other.set("drying_h", Value::Number(1.0))?;
/// let apart = compare_cautions(&batch(&one)?, &batch(&other)?);
/// assert!(apart.iter().any(|caution| caution.whose != Whose::Both));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn compare_cautions(a: &Batch, b: &Batch) -> Vec<ComparedCaution> {
    let (of_a, of_b) = (cautions(a), cautions(b));
    let mut left: Vec<&Caution> = of_b.iter().collect();
    let mut all: Vec<ComparedCaution> = Vec::new();
    for caution in &of_a {
        let same = |other: &&Caution| other.key == caution.key && other.caused_by == caution.caused_by;
        let other = left.iter().position(same).map(|place| left.remove(place));
        let severity: Severity = other.map_or(caution.severity, |other| other.severity.max(caution.severity));
        all.push(ComparedCaution {
            caution: Caution { severity, ..caution.clone() },
            whose: if other.is_some() { Whose::Both } else { Whose::OnlyA },
            of_a: Some(caution.clone()),
            of_b: other.cloned(),
        });
    }
    let only_b =
        left.into_iter().map(|caution| ComparedCaution { caution: caution.clone(), whose: Whose::OnlyB, of_a: None, of_b: None });
    all.extend(only_b);
    all.sort_by_key(|compared| (std::cmp::Reverse(compared.caution.severity), compared.whose == Whose::Both));
    all
}
