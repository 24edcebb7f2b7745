//! The shopping, used by accessible label. Sizes and prices are invented.

use crate::ui::shown;
use egui::accesskit::Role;
use egui::{Key, Theme};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use vatsketch::design::{BuyFor, Design, Good, SuppliesDesign};
use vatsketch::plan::shop;
use vatsketch::session::Session;
use vatsketch::ui::Window;

fn page() -> Harness<'static, Window> {
    let mut harness = shown(Session::open(Design::default(), None).unwrap(), [1296.0, 1816.0], Theme::Light);
    harness.get_by_label("Page Plan").click();
    harness.run();
    harness.get_by_label("Plan: Shopping").click();
    harness.run();
    harness
}

fn type_into(harness: &mut Harness<'_, Window>, label: &str, text: &str) {
    harness.get_by_role_and_label(Role::TextInput, label).focus();
    harness.run();
    harness.get_by_role_and_label(Role::TextInput, label).type_text(text);
    harness.run();
    harness.key_press(Key::Enter);
    harness.run();
}

fn supplies<'a>(harness: &'a Harness<'_, Window>) -> &'a SuppliesDesign {
    &harness.state().session.design().supplies
}

/// Returns the page with milk in packages of 1.7 L.
fn with_milk() -> Harness<'static, Window> {
    let mut harness = page();
    type_into(&mut harness, "Milk: new package, size", "1.7 l");
    type_into(&mut harness, "Milk: new package, price", "2,10");
    harness
}

#[test]
fn without_supplies_everything_is_listed_and_costs_nothing() {
    let harness = page();
    harness.get_by_label("Needed, no supply entered");
    assert!(harness.query_all_by_label_contains("Rennet: ").any(|node| node.accesskit_node().role() == Role::Label));
}

#[test]
fn a_package_counts_once_size_and_price_are_given() {
    let mut harness = page();
    type_into(&mut harness, "Milk: new package, size", "1.7 l");
    assert!(supplies(&harness).goods.is_empty());
    type_into(&mut harness, "Milk: new package, price", "2,10");
    let offer = supplies(&harness).goods[&Good::Milk].offers[0];
    assert_eq!((offer.size, offer.price, offer.at_most), (1700.0, 2.1, None));
    harness.get_by_label_contains("Milk: 4 × 1.7\u{a0}L");
    // The foot says it as well, on every page, and that it is not all: rennet and salt have no price yet.
    harness.get_by_label("to pay");
    harness.get_by_label_contains("to pay more than 8.40");
}

#[test]
fn the_milk_that_will_be_there_is_used_in_one_step() {
    let mut harness = with_milk();
    harness.get_by_label("Use all 6.8 L").click();
    harness.run();
    assert_eq!(harness.state().session.design().milk.milk_l, 6.8);
    assert!(harness.query_by_label_contains("Use all").is_none(), "then there is nothing left to use");
    harness.key_press_modifiers(egui::Modifiers::COMMAND, Key::Z);
    harness.run();
    assert_eq!(harness.state().session.design().milk.milk_l, 6.0);
}

#[test]
fn a_wrong_number_says_why_beside_its_field_and_nothing_is_lost() {
    let mut harness = with_milk();
    let before = supplies(&harness).clone();
    for (label, text, why) in [
        ("Milk: package 1, size", "0", "give a number above 0"),
        ("Milk: package 1, price", "cheap", "write a number"),
        ("Milk: package 1, at most", "two", "is not a count"),
        ("Milk: at home", "-1", "give a number from 0"),
    ] {
        type_into(&mut harness, label, text);
        assert!(harness.query_all_by_label_contains(why).count() > 0, "{label}: {text}");
        assert_eq!(*supplies(&harness), before, "{label}: {text}");
    }
    // All four texts are still there to be corrected.
    assert_eq!(harness.state().view.typing.len(), 4);
}

#[test]
fn a_second_package_a_limit_and_what_is_at_home_change_what_is_bought() {
    let mut harness = with_milk();
    type_into(&mut harness, "Milk: new package, size", "500");
    type_into(&mut harness, "Milk: new package, price", "0.80");
    type_into(&mut harness, "Milk: package 1, at most", "3");
    type_into(&mut harness, "Milk: at home", "0.4 l");
    let shopping = shop(harness.state().session.batch()).unwrap();
    // 5.6 L are to be bought: three of 1.7 L and one of 0.5 L hold just that, and no cheaper three or four do.
    assert_eq!((shopping.bought[0].counts.as_slice(), shopping.bought[0].left_over), ([3, 1].as_slice(), 0.0));
    harness.get_by_label("Milk: package 1, remove").click();
    harness.run();
    assert_eq!(supplies(&harness).goods[&Good::Milk].offers.len(), 1);
}

#[test]
fn what_cannot_be_bought_is_said_beside_the_thing() {
    let mut harness = with_milk();
    type_into(&mut harness, "Milk: package 1, at most", "2");
    assert!(harness.query_all_by_label_contains("all packages together hold only").count() >= 1);
}

#[test]
fn what_counts_first_currency_and_the_price_on_waste_are_set() {
    let mut harness = with_milk();
    type_into(&mut harness, "Currency", "shells");
    type_into(&mut harness, "Price on what is left over", "0,5");
    assert_eq!((supplies(&harness).currency.as_str(), supplies(&harness).waste_price), ("shells", 0.5));
    harness.get_by_label("8.40\u{a0}shells to pay");
    harness.get_by_label("Buy for: Least waste").click();
    harness.run();
    assert_eq!(supplies(&harness).buy_for, BuyFor::LeastWaste);
    assert!(harness.query_by_role_and_label(Role::TextInput, "Price on what is left over").is_none());
}
