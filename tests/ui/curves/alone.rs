//! Tests of a curve that fills the page.

use crate::ui::{example, settled, shown};
use egui::accesskit::Role;
use egui::{Key, Theme};
use egui_kittest::kittest::Queryable;
use vatsketch::design::Stage;

#[test]
fn a_key_fills_the_page_with_one_curve_and_escape_brings_the_rest_back() {
    let mut harness = shown(example("warm-cabinet"), [1296.0, 816.0], Theme::Light);
    harness.state_mut().view.station = Stage::Drying;
    settled(&mut harness);
    let choices = |harness: &egui_kittest::Harness<'_, vatsketch::ui::Window>| {
        harness.query_by_role_and_label(Role::Slider, "Fat target").is_some()
    };
    let width = |harness: &egui_kittest::Harness<'_, vatsketch::ui::Window>| {
        harness.get_by_label_contains("% at the centre after ").rect().width()
    };
    let before = width(&harness);
    assert!(choices(&harness));
    harness.key_press(Key::F9);
    settled(&mut harness);
    assert!(!choices(&harness) && width(&harness) > 1.8 * before, "{} after {before}", width(&harness));
    assert!(harness.query_by_label_contains("Warming: the milk").is_none(), "no small curve beside it");
    harness.key_press(Key::Escape);
    settled(&mut harness);
    assert!(choices(&harness) && (width(&harness) - before).abs() < 1.0);
}
