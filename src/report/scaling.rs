//! A design before and after it is scaled, as data: the choices that follow, what to buy, what comes of it, the cautions that come and go.

use super::answers::{answers, figures_named};
use super::compared_row::ComparedRow;
use super::comparison::both_costs;
use super::facts::Facts;
use super::shopping::list;
use crate::analysis::{Scaled, Whose, compare_cautions};
use crate::batch::Batch;
use crate::caution::Caution;
use crate::design::Value;
use crate::plan::shop;
use crate::units::Units;
use crate::words::{scale_name, scale_remarks};

/// What scaling does, shown before it is done.
#[derive(Clone, Debug, PartialEq)]
pub struct ScalePreview {
    /// What it is called: "Scale to 8 L of milk".
    pub name: String,
    /// The choices that follow.
    pub choices: Vec<ComparedRow>,
    /// What is to be known of it, such as what was rounded up; a sentence each.
    pub remarks: Vec<String>,
    /// What follows from them, a heading with its rows each.
    pub follows: Vec<(&'static str, Vec<ComparedRow>)>,
    /// The cautions that go.
    pub gone: Vec<Caution>,
    /// The cautions that come.
    pub new: Vec<Caution>,
    /// The units that all of it is shown in.
    pub units: Units,
}

/// The figures of the vat that grow with it.
const IN_THE_VAT: [&str; 6] = ["vat_milk_l", "curd_kg", "whey_in_all_l", "energy_kwh", "salt_g", "ladled_depth_mm"];

/// Returns what scaling does; of each row `a` is what was before and `b` what is after.
///
/// # Arguments
/// * `before`, `after`: the batches of the design and of the scaled one
///
/// # Example
/// ```
/// use vatsketch::analysis::{ScaleGoal, ScaleTo, scale};
/// use vatsketch::{batch::batch, design::Design, report::scale_preview, units::Units};
/// let before = batch(&Design::default())?;
/// let scaled = scale(&before, ScaleGoal { to: ScaleTo::Moulds, amount: 6.0 })?;
/// let preview = scale_preview(&before, &batch(&scaled.design)?, &scaled, Units::METRIC);
/// assert_eq!(preview.name, "Scale to 6 moulds");
/// assert_eq!((preview.choices[0].label.as_str(), preview.choices[0].b.as_str()), ("Milk", "3 L"));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn scale_preview(before: &Batch, after: &Batch, scaled: &Scaled, units: Units) -> ScalePreview {
    let cautions = compare_cautions(before, after);
    let only = |whose: Whose| {
        cautions.iter().filter(|compared| compared.whose == whose).map(|compared| compared.caution.clone()).collect::<Vec<_>>()
    };
    let packages = ("Packages", packages(before, after, units));
    let costs = ("Costs", both_costs(before, after).map(|costs| costs.rows(units)).unwrap_or_default());
    let vat = ("In the vat", figures_named(before, after, &IN_THE_VAT, units));
    let mut follows = answers(before, after, units);
    // Behind what to buy, in which packages and for how much.
    let place = follows.len().min(1);
    follows.splice(place..place, [packages, costs, vat].into_iter().filter(|(_, rows)| !rows.is_empty()));
    ScalePreview {
        name: scale_name(scaled.goal, units),
        choices: choices(scaled, units),
        remarks: scale_remarks(scaled, (before, after), units).into_iter().chain(no_costs(after, units)).collect(),
        follows,
        gone: only(Whose::OnlyA),
        new: only(Whose::OnlyB),
        units,
    }
}

/// Returns the choices that follow, as rows.
fn choices(scaled: &Scaled, units: Units) -> Vec<ComparedRow> {
    let row = |choice: &crate::analysis::ScaledChoice| {
        let words = |number: f64| units.choice_text(choice.field, Value::Number(number));
        ComparedRow {
            label: choice.field.label.to_owned(),
            a: words(choice.from),
            b: words(choice.to),
            change: String::new(),
            lead: true,
            differs: true,
        }
    };
    scaled.choices.iter().map(row).collect()
}

/// Returns what is put into the basket before and after, where supplies are given.
fn packages(before: &Batch, after: &Batch, units: Units) -> Vec<ComparedRow> {
    let of = |batch: &Batch| -> Vec<(&'static str, String)> {
        let rows = list(batch, &Facts::of(batch)).rows.into_iter().map(|row| row.shown_in(units));
        rows.filter_map(|row| Some((row.what, row.buy?.words()))).collect()
    };
    let (was, is) = (of(before), of(after));
    let named = |rows: &[(&'static str, String)], what: &str| {
        rows.iter().find(|(named, _)| *named == what).map_or_else(|| "none".to_owned(), |(_, words)| words.clone())
    };
    let row = |what: &'static str| {
        let (a, b) = (named(&was, what), named(&is, what));
        let differs = a != b;
        let change = if differs { String::new() } else { "same".to_owned() };
        ComparedRow { label: what.to_owned(), a, b, change, lead: true, differs }
    };
    let only_after = is.iter().filter(|(what, _)| was.iter().all(|(known, _)| known != what));
    was.iter().chain(only_after).map(|(what, _)| row(what)).collect()
}

/// Returns why the scaled design has no costs, where supplies are given.
fn no_costs(after: &Batch, units: Units) -> Option<String> {
    if after.design.supplies.goods.is_empty() {
        return None;
    }
    match shop(after) {
        Err(error) => Some(format!("No costs: {}.", units.told(&error.to_string()))),
        Ok(shopping) => shopping
            .missing_words()
            .map(|goods| format!("No costs: enter a package and its price for {goods} on the page Plan, part Shopping.")),
    }
}
