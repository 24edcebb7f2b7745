//! Two designs side by side as data: the choices that differ, every figure, the milk, the costs, the cautions, the curves.

use super::answers::answers;
use super::compared_row::{ComparedRow, figure_row, kitchen_row};
use super::{money, weight_price};
use crate::analysis::{ComparedCaution, Whose, compare, compare_cautions, differing_choices, standardisation};
use crate::batch::Batch;
use crate::caution::{Caution, Severity};
use crate::curve::{Curve, CurveKey, curve};
use crate::design::{Stage, Value};
use crate::plan::{Shopping, shop};
use crate::units::Units;

/// Two designs side by side.
#[derive(Clone, Debug, PartialEq)]
pub struct Comparison {
    /// The titles of A and B.
    pub titles: [String; 2],
    /// What is asked first: what to buy, what comes of it, when, and how it is in the hand; a heading with its rows each.
    pub answers: Vec<(&'static str, Vec<ComparedRow>)>,
    /// The choices that differ.
    pub choices: Vec<ComparedRow>,
    /// The figures of each stage.
    pub stages: Vec<(Stage, Vec<ComparedRow>)>,
    /// What it costs, where both designs name their supplies in one currency.
    pub costs: Vec<ComparedRow>,
    /// What is to be known of the costs, such as why there are none.
    pub cost_note: Option<String>,
    /// What differs in the milk, and what cream and dry milk can and cannot change, a sentence each.
    pub milk: Vec<String>,
    /// The serious warnings that both have.
    pub serious: Vec<ComparedCaution>,
    /// The cautions that only A has, and those that only B has.
    pub cautions: [Vec<Caution>; 2],
    /// Each curve of A and of B.
    pub curves: Vec<(Curve, Curve)>,
    /// The units that all of it is shown in.
    pub units: Units,
}

/// Returns two batches side by side.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, analysis::from_milk, design::{Design, MilkKind}, report::comparison, units::Units};
/// let cow = Design::default();
/// let sheep = from_milk(&cow, MilkKind::Sheep);
/// let both = comparison(&batch(&cow)?, &batch(&sheep)?, Units::METRIC);
/// assert!(both.choices.iter().any(|row| row.label == "Kind of milk" && row.b == "Sheep"));
/// assert!(!both.milk.is_empty());
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn comparison(a: &Batch, b: &Batch, units: Units) -> Comparison {
    let milk = standardisation(a, b);
    let cautions = compare_cautions(a, b);
    let is_shared = |compared: &&ComparedCaution| compared.whose == Whose::Both && compared.caution.severity == Severity::Stop;
    Comparison {
        titles: [title(a), title(b)],
        answers: answers(a, b, units),
        choices: choices(a, b, units),
        stages: stages(a, b, units),
        costs: both_costs(a, b).map(|costs| costs.rows(units)).unwrap_or_default(),
        cost_note: cost_note(a, b),
        milk: milk.map(|milk| milk.in_words(units)).unwrap_or_default(),
        serious: cautions.iter().filter(is_shared).cloned().collect(),
        cautions: [only(Whose::OnlyA, &cautions), only(Whose::OnlyB, &cautions)],
        curves: curves(a, b).into_iter().map(|(a, b)| (a.shown_in(units), b.shown_in(units))).collect(),
        units,
    }
}

fn title(batch: &Batch) -> String {
    let title = batch.design.title.trim();
    if title.is_empty() { "untitled".to_owned() } else { title.to_owned() }
}

fn choices(a: &Batch, b: &Batch, units: Units) -> Vec<ComparedRow> {
    let row = |choice: &crate::analysis::DifferingChoice| {
        let words = |value: Value| units.choice_text(choice.field, value);
        ComparedRow {
            label: choice.field.label.to_owned(),
            a: words(choice.a),
            b: words(choice.b),
            change: if choice.in_use { String::new() } else { "no effect in either".to_owned() },
            lead: choice.in_use,
            differs: true,
        }
    };
    let own = differing_choices(&a.design, &b.design);
    kitchen_row(&a.design, &b.design).into_iter().chain(own.iter().map(row)).collect()
}

fn stages(a: &Batch, b: &Batch, units: Units) -> Vec<(Stage, Vec<ComparedRow>)> {
    let all = compare(a, b);
    let of = |stage: Stage| {
        all.iter().filter(|figure| figure.stage == stage).map(|figure| figure_row(figure, units)).collect::<Vec<_>>()
    };
    Stage::ALL.into_iter().map(|stage| (stage, of(stage))).filter(|(_, rows)| !rows.is_empty()).collect()
}

/// What two designs buy, in one currency.
#[derive(Clone, Debug, PartialEq)]
pub struct BothCosts {
    /// The currency of both; may be empty.
    pub currency: String,
    /// What A buys.
    pub a: Shopping,
    /// What B buys.
    pub b: Shopping,
}

/// Returns what both cost, if packages can be chosen for everything that both need, in one currency.
#[must_use]
pub fn both_costs(a: &Batch, b: &Batch) -> Option<BothCosts> {
    let known = |shopping: &Shopping| !shopping.bought.is_empty() && shopping.without_supply.is_empty();
    let both = shop(a).ok().zip(shop(b).ok()).filter(|(one, other)| known(one) && known(other));
    let (currency, same) = (&a.design.supplies.currency, a.design.supplies.currency == b.design.supplies.currency);
    both.filter(|_| same).map(|(a, b)| BothCosts { currency: currency.clone(), a, b })
}

impl BothCosts {
    /// Returns the costs of both as rows.
    #[must_use]
    pub fn rows(&self, units: Units) -> Vec<ComparedRow> {
        let Self { currency, a: one, b: other } = self;
        let money = |price: f64| money(price, currency);
        let weight = |price: Option<f64>| price.map(|price| weight_price(price, units).0);
        let row = |label: &str, a: Option<f64>, b: Option<f64>| {
            let (a, b) = a.zip(b)?;
            let apart = (b - a).abs() >= 0.005;
            let sign = if b < a { '−' } else { '+' };
            Some(ComparedRow {
                label: label.to_owned(),
                a: money(a),
                b: money(b),
                change: if apart { format!("{sign}{}", money((b - a).abs())) } else { "same".to_owned() },
                lead: true,
                differs: apart,
            })
        };
        [
            row("What is bought", Some(one.price), Some(other.price)),
            row("Used in this vat", Some(one.used_price), Some(other.used_price)),
            row("Each cheese", one.each_price, other.each_price),
            row(
                &format!("A {} of dried cheese", weight_price(0.0, units).1),
                weight(one.kilogram_price),
                weight(other.kilogram_price),
            ),
        ]
        .into_iter()
        .flatten()
        .collect()
    }
}

/// Returns what is to be known of the costs: why they cannot be compared, or that unlike milk is reckoned at one price; nothing where no
/// supplies are named.
#[must_use]
pub fn cost_note(a: &Batch, b: &Batch) -> Option<String> {
    if a.design.supplies.goods.is_empty() && b.design.supplies.goods.is_empty() {
        return None;
    }
    let mut missing = Vec::new();
    for (name, batch) in [("A", a), ("B", b)] {
        match shop(batch) {
            Ok(shopping) => {
                missing.extend(shopping.missing_words().map(|goods| format!("{name} has no supply entered for {goods}")));
            }
            Err(error) => return Some(format!("No costs side by side: {name}: {error}.")),
        }
    }
    if !missing.is_empty() {
        return Some(format!("No costs side by side: {}. {WHERE_TO_ENTER}", missing.join("; ")));
    }
    if a.design.supplies.currency != b.design.supplies.currency {
        return Some("No costs side by side: the designs use different currencies.".to_owned());
    }
    None
}

/// Where a maker says where something comes from; the window shows the supplies of the first design alone.
const WHERE_TO_ENTER: &str = "Enter what a package costs on the page Plan, part Shopping; for B swap A and B first.";

/// Returns the cautions that one of the two alone has.
fn only(whose: Whose, cautions: &[ComparedCaution]) -> Vec<Caution> {
    cautions.iter().filter(|compared| compared.whose == whose).map(|compared| compared.caution.clone()).collect()
}

/// Returns the curves that say most, of both: warming, loss, and the pH where one of the two is soured.
fn curves(a: &Batch, b: &Batch) -> Vec<(Curve, Curve)> {
    let keys = [CurveKey::Warming, CurveKey::DryingLoss, CurveKey::Souring];
    let pairs = keys.map(|key| (curve(a, key), curve(b, key)));
    pairs.into_iter().filter(|(a, b)| a.empty_because.is_none() || b.empty_because.is_none()).collect()
}
