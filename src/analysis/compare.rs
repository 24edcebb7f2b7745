//! Two batches side by side: every figure, and whether the model can tell the two apart.

use super::moved::number;
use crate::batch::Batch;
use crate::design::{Design, Field, Stage, Value, fields};
use crate::figure::{Figure, Weight, figures};
use crate::units::Units;

/// How much alike a figure of two batches is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Likeness {
    /// The same.
    Same,
    /// Apart by less than the model's own spread, or than the rounding: not to be told apart.
    WithinSpread,
    /// Apart, or there in one of the two only.
    Differs,
}

/// One figure of two batches.
#[derive(Clone, Debug, PartialEq)]
pub struct Difference {
    /// The stage that it belongs to.
    pub stage: Stage,
    /// Its key.
    pub key: &'static str,
    /// Its name in words, as the first batch says it.
    pub label: &'static str,
    /// How it is to be shown.
    pub weight: Weight,
    /// It in the first batch, if that has it.
    pub a: Option<Figure>,
    /// It in the second batch, if that has it.
    pub b: Option<Figure>,
    /// Second less first, of numbers that both have, in the figure's unit.
    pub change: Option<f64>,
    /// How far apart two numbers must be to be told apart: half the likely range where it is known (of the two the narrower: both share the
    /// model's errors, and a long time with its wide range must not hide that it is long), at least half of the last digit shown.
    pub spread: Option<f64>,
    /// How much alike they are.
    pub likeness: Likeness,
}

impl Difference {
    /// Returns the figure of the first batch as it is shown; a dash where it has none.
    #[must_use]
    pub fn a_text(&self, units: Units) -> String {
        self.a.as_ref().map_or_else(|| "–".to_owned(), |figure| figure.text_in(units))
    }

    /// Returns the figure of the second batch as it is shown; a dash where it has none.
    #[must_use]
    pub fn b_text(&self, units: Units) -> String {
        self.b.as_ref().map_or_else(|| "–".to_owned(), |figure| figure.text_in(units))
    }

    /// Returns second less first as it is shown: "same", "≈ same", "+1.2 kg", "−3 min", or in words.
    #[must_use]
    pub fn change_text(&self, units: Units) -> String {
        match (self.likeness, &self.a, &self.b, self.change) {
            (Likeness::Same, ..) => "same".to_owned(),
            (Likeness::WithinSpread, ..) => "≈ same".to_owned(),
            (Likeness::Differs, Some(figure), Some(_), Some(change)) => figure.apart_text(change, units),
            (Likeness::Differs, Some(_), Some(_), None) => "differs".to_owned(),
            (Likeness::Differs, Some(_), None, _) => "only in A".to_owned(),
            (Likeness::Differs, None, ..) => "only in B".to_owned(),
        }
    }
}

/// Returns every figure of two batches with second less first, in the order of the stages.
///
/// The two share the model's errors, so a difference below the spread need not be none; the model only cannot vouch for it.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, analysis::{compare, Likeness}, design::{Design, Value}};
/// let one = Design::default();
/// let mut other = one.clone();
/// other.set("milk_l", Value::Number(9.0))?;
/// let differences = compare(&batch(&one)?, &batch(&other)?);
/// let milk = differences.iter().find(|figure| figure.key == "bought_kg").unwrap();
/// assert_eq!(milk.likeness, Likeness::Differs);
/// assert!(milk.change.unwrap() > 3.0);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn compare(a: &Batch, b: &Batch) -> Vec<Difference> {
    let (of_a, of_b) = (figures(a), figures(b));
    let named = |list: &[Figure], key: &str| list.iter().find(|figure| figure.key == key).cloned();
    let mut all: Vec<Difference> =
        of_a.iter().filter_map(|figure| difference(Some(figure.clone()), named(&of_b, figure.key))).collect();
    let only_b = of_b.iter().filter(|figure| named(&of_a, figure.key).is_none());
    all.extend(only_b.filter_map(|figure| difference(None, Some(figure.clone()))));
    // Stable: within a stage first what the first batch has, then what only the second has.
    all.sort_by_key(|difference| difference.stage);
    all
}

fn difference(a: Option<Figure>, b: Option<Figure>) -> Option<Difference> {
    let shown = a.as_ref().or(b.as_ref())?;
    let (stage, key, label, weight) = (shown.stage, shown.key, shown.label, shown.weight);
    let numbers = a.as_ref().and_then(number).zip(b.as_ref().and_then(number));
    let change = numbers.map(|(one, other)| other - one);
    let spread = a.as_ref().zip(b.as_ref()).filter(|_| change.is_some()).map(|(one, other)| spread(one, other));
    let likeness = match (&a, &b) {
        (Some(one), Some(other)) => likeness(one, other, change, spread),
        _ => Likeness::Differs,
    };
    Some(Difference { stage, key, label, weight, a, b, change, spread, likeness })
}

fn spread(one: &Figure, other: &Figure) -> f64 {
    let half = |figure: &Figure| figure.likely.map(|(least, most)| 0.5 * (most - least));
    let known = match (half(one), half(other)) {
        (Some(one), Some(other)) => one.min(other),
        (one, other) => one.or(other).unwrap_or(0.0),
    };
    known.max(one.rounding()).max(other.rounding())
}

fn likeness(one: &Figure, other: &Figure, change: Option<f64>, spread: Option<f64>) -> Likeness {
    if one.reading == other.reading {
        return Likeness::Same;
    }
    match (change, spread) {
        // Two numbers on either side of a rounding look apart and are not; two that look alike are not said to differ.
        (Some(change), Some(spread)) if change.abs() <= spread || one.text() == other.text() => Likeness::WithinSpread,
        _ => Likeness::Differs,
    }
}

/// An input that differs between two designs.
#[derive(Clone, Copy, Debug)]
pub struct DifferingChoice {
    /// The input.
    pub field: &'static Field,
    /// Its value in the first design.
    pub a: Value,
    /// Its value in the second design.
    pub b: Value,
    /// Whether it has any effect in one of the two.
    pub in_use: bool,
}

/// Returns the inputs that differ between two designs, in the order of the form; title and note are none.
///
/// # Example
/// ```
/// use vatsketch::{analysis::differing_choices, design::{Design, Value}};
/// let one = Design::default();
/// let mut other = one.clone();
/// other.set("milk_l", Value::Number(9.0))?;
/// let keys: Vec<_> = differing_choices(&one, &other).iter().map(|choice| choice.field.key).collect();
/// assert_eq!(keys, ["milk_l"]);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn differing_choices(a: &Design, b: &Design) -> Vec<DifferingChoice> {
    fields()
        .map(|field| DifferingChoice { field, a: field.get(a), b: field.get(b), in_use: (field.used)(a) || (field.used)(b) })
        .filter(|choice| choice.a != choice.b)
        .collect()
}
