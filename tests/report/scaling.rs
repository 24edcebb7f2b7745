//! A design before and after it is scaled.

use vatsketch::analysis::{ScaleGoal, ScaleTo, scale};
use vatsketch::batch::batch;
use vatsketch::caution::{Caution, cautions};
use vatsketch::design::Design;
use vatsketch::figure::figures;
use vatsketch::report::{ScalePreview, scale_preview};
use vatsketch::units::Units;
use vatsketch::words::counted_words;

fn preview(design: &Design, to: ScaleTo, amount: f64, units: Units) -> ScalePreview {
    let before = batch(design).unwrap();
    let scaled = scale(&before, ScaleGoal { to, amount }).unwrap();
    scale_preview(&before, &batch(&scaled.design).unwrap(), &scaled, units)
}

fn row<'a>(preview: &'a ScalePreview, heading: &str, label: &str) -> &'a vatsketch::report::ComparedRow {
    let (_, rows) = preview.follows.iter().find(|(name, _)| *name == heading).unwrap_or_else(|| panic!("{heading} is missing"));
    rows.iter().find(|row| row.label == label).unwrap_or_else(|| panic!("{label} is missing in {rows:#?}"))
}

/// Both sides are what each batch by itself says.
#[test]
fn what_follows_is_shown_before_and_after_from_the_figures_of_both() {
    let design = crate::example("warm-cabinet");
    let scaled = scale(&batch(&design).unwrap(), ScaleGoal { to: ScaleTo::Milk, amount: 9.0 }).unwrap().design;
    let shown = preview(&design, ScaleTo::Milk, 9.0, Units::METRIC);
    let of = |design: &Design, key: &str| {
        let found = figures(&batch(design).unwrap()).into_iter().find(|figure| figure.key == key).unwrap();
        (found.label_in(Units::METRIC), found.text())
    };
    for (heading, key) in
        [("What you get", "dried_cheese_g"), ("What you get", "jars"), ("When", "to_rennet_min"), ("In the vat", "salt_g")]
    {
        let (label, before) = of(&design, key);
        let row = row(&shown, heading, &label);
        assert_eq!((&row.a, &row.b), (&before, &of(&scaled, key).1), "{key}");
    }
    assert_eq!(row(&shown, "To buy", "Milk").b.replace('\u{a0}', " "), "9.00 L");
    assert!(row(&shown, "Packages", "Milk").b.contains("1.25"), "{:?}", row(&shown, "Packages", "Milk"));
    assert_ne!(row(&shown, "Costs", "What is bought").change, "same");
}

/// A plate that just warms six litres is too weak for eight times as much.
#[test]
fn the_cautions_that_come_and_go_are_those_that_only_one_of_the_two_has() {
    let mut design = crate::example("warm-cabinet");
    design.vat.heater_power_w = 200.0;
    let scaled = scale(&batch(&design).unwrap(), ScaleGoal { to: ScaleTo::Milk, amount: 48.0 }).unwrap().design;
    let shown = preview(&design, ScaleTo::Milk, 48.0, Units::METRIC);
    let keys = |all: &[Caution]| all.iter().map(|caution| caution.key).collect::<Vec<_>>();
    let (was, is) = (keys(&cautions(&batch(&design).unwrap())), keys(&cautions(&batch(&scaled).unwrap())));
    let (gone, new) = (keys(&shown.gone), keys(&shown.new));
    assert!(gone.iter().all(|key| was.contains(key)) && new.iter().all(|key| is.contains(key)));
    assert_eq!(was.len() - gone.len(), is.len() - new.len(), "the others are in both");
    assert!(!new.is_empty() || !gone.is_empty(), "eight times the milk on the same plate");
}

#[test]
fn rounding_the_pot_and_the_jars_are_explained() {
    let design = crate::example("warm-cabinet");
    let said = |to, amount, units| preview(&design, to, amount, units).remarks.join("\n");
    let milk = said(ScaleTo::Milk, 6.2, Units::METRIC);
    assert!(milk.contains("Number of moulds: 12 would be 12.4, rounded up to 13, so each gets 5 % less curd."), "{milk}");
    assert!(milk.contains("Number of trays: 3 would be 3.1, rounded up to 4."), "{milk}");
    let pot = said(ScaleTo::Pot, 10.0, Units::METRIC);
    assert!(pot.contains("The pot takes 8.5 L of milk with its cream: 85 % of it"), "{pot}");
    assert!(said(ScaleTo::Pot, 10.0, Units::US).contains("The pot takes 9 qt of milk"), "{}", said(ScaleTo::Pot, 10.0, Units::US));
    assert!(said(ScaleTo::Jars, 2.0, Units::METRIC).contains("A full jar takes "));
    // A vat that is doubled has nothing to round; it warms more slowly, and its warnings are counted before and after.
    let doubled = said(ScaleTo::Moulds, 24.0, Units::METRIC);
    let warned = counted_words(&cautions(&batch(&design).unwrap()));
    assert!(!doubled.contains("rounded up") && doubled.contains("warms and cools more slowly"), "{doubled}");
    assert!(doubled.contains(&format!("Warnings now: {warned}; after scaling: ")), "{doubled}");
    assert!(!said(ScaleTo::Moulds, 6.0, Units::METRIC).contains("more slowly"), "half of it warms faster");
}

#[test]
fn a_need_without_a_supply_is_said_and_costs_are_not_made_up() {
    let mut design = crate::example("warm-cabinet");
    design.supplies.goods.remove(&vatsketch::design::Good::Pepper);
    let shown = preview(&design, ScaleTo::Milk, 9.0, Units::METRIC);
    assert!(shown.follows.iter().all(|(name, _)| *name != "Costs"));
    assert_eq!(
        shown.remarks.last().map(String::as_str),
        Some("No costs: enter a package and its price for pepper on the page Plan, part Shopping.")
    );
}

#[test]
fn packages_that_are_too_few_are_said() {
    let mut design = crate::example("warm-cabinet");
    let milk = design.supplies.goods.get_mut(&vatsketch::design::Good::Milk).unwrap();
    milk.offers.iter_mut().for_each(|offer| offer.at_most = Some(3));
    let shown = preview(&design, ScaleTo::Milk, 30.0, Units::METRIC);
    assert!(shown.remarks.iter().any(|remark| remark.starts_with("No costs: milk: ")), "{:?}", shown.remarks);
}
