//! Tests of `src/ui/choices/whose.rs`: the choices of the second design are changed in their own place.

use crate::ui::{about_second, example, settled, shown};
use egui::Theme;
use egui::accesskit::Role;
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use vatsketch::design::Stage;
use vatsketch::ui::Window;

fn two() -> Harness<'static, Window> {
    let mut harness = shown(example("warm-cabinet"), [1296.0, 816.0], Theme::Light);
    about_second(&mut harness, "Compare with a copy of A");
    settled(&mut harness);
    harness
}

fn fat(harness: &Harness<'_, Window>) -> (f64, f64) {
    let session = &harness.state().session;
    (session.design().milk.fat_target_percent, session.second().unwrap().design().milk.fat_target_percent)
}

#[test]
fn what_is_moved_is_the_choice_of_the_design_that_is_shown() {
    let mut harness = two();
    let (a, b) = fat(&harness);
    harness.get_by_label("Choices of B").click();
    settled(&mut harness);
    harness.get_by_role_and_label(Role::Slider, "Fat target").set_value_accesskit(b + 1.0);
    settled(&mut harness);
    assert!((fat(&harness).0 - a).abs() < 1e-9 && (fat(&harness).1 - b - 1.0).abs() < 1e-9, "{:?}", fat(&harness));
    // The other one is named beside it, and gives its choice.
    harness.get_by_label_contains("use A's").click();
    settled(&mut harness);
    assert!((fat(&harness).1 - a).abs() < 1e-9, "{:?}", fat(&harness));
    harness.get_by_label("Choices of A").click();
    settled(&mut harness);
    harness.get_by_role_and_label(Role::Slider, "Fat target").set_value_accesskit(a + 0.5);
    settled(&mut harness);
    assert!((fat(&harness).0 - a - 0.5).abs() < 1e-9 && (fat(&harness).1 - a).abs() < 1e-9, "{:?}", fat(&harness));
}

#[test]
fn the_chart_moves_the_same_design() {
    let mut harness = two();
    harness.state_mut().view.station = Stage::Drying;
    harness.get_by_label("Choices of B").click();
    settled(&mut harness);
    let hours = |harness: &Harness<'_, Window>| {
        let session = &harness.state().session;
        (session.design().drying.drying_h, session.second().unwrap().design().drying.drying_h)
    };
    let (a, b) = hours(&harness);
    harness.get_by_role_and_label(Role::Slider, "Drying time, in the chart").set_value_accesskit(b - 6.0);
    settled(&mut harness);
    assert!((hours(&harness).0 - a).abs() < 1e-9 && (hours(&harness).1 - b + 6.0).abs() < 1e-9, "{:?}", hours(&harness));
}

#[test]
fn once_the_second_is_closed_the_first_is_changed() {
    let mut harness = two();
    harness.get_by_label("Choices of B").click();
    settled(&mut harness);
    about_second(&mut harness, "Close B");
    settled(&mut harness);
    if harness.query_by_label("Discard").is_some() {
        harness.get_by_label("Discard").click();
        settled(&mut harness);
    }
    assert!(harness.state().session.second().is_none() && harness.query_by_label("Choices of A").is_none());
    harness.get_by_role_and_label(Role::Slider, "Fat target").set_value_accesskit(4.6);
    settled(&mut harness);
    assert!((harness.state().session.design().milk.fat_target_percent - 4.6).abs() < 1e-9);
}
