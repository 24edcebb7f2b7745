//! Tests of `src/ui/curves/handles.rs` and `crosshair.rs`.

use crate::ui::{example, settled, shown};
use egui::accesskit::Role;
use egui::{Key, Modifiers, PointerButton, Pos2, Theme, vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use vatsketch::curve::{CurveKey, SectionKey};
use vatsketch::design::Stage;
use vatsketch::ui::Window;

const SIZE: [f32; 2] = [1296.0, 816.0];

fn at(stage: Stage) -> Harness<'static, Window> {
    let mut harness = shown(example("warm-cabinet"), SIZE, Theme::Light);
    harness.state_mut().view.station = stage;
    settled(&mut harness);
    harness
}

fn drying_h(harness: &Harness<'_, Window>) -> f64 {
    harness.state().session.design().drying.drying_h
}

fn grip(harness: &Harness<'_, Window>, label: &str) -> Pos2 {
    harness.get_by_role_and_label(Role::Slider, &format!("{label}, in the chart")).rect().center()
}

fn button(harness: &mut Harness<'_, Window>, pos: Pos2, pressed: bool) {
    harness.event(egui::Event::PointerButton { pos, button: PointerButton::Primary, pressed, modifiers: Modifiers::NONE });
    harness.run();
}

fn drag(harness: &mut Harness<'_, Window>, from: Pos2, way: [(f32, f32); 3]) {
    harness.hover_at(from);
    harness.run();
    button(harness, from, true);
    for (x, y) in way {
        harness.hover_at(from + vec2(x, y));
        harness.run();
    }
    let [.., (x, y)] = way;
    button(harness, from + vec2(x, y), false);
    settled(harness);
}

#[test]
fn the_end_of_drying_is_dragged_in_the_chart_as_one_step() {
    let mut harness = at(Stage::Drying);
    let (before, from) = (drying_h(&harness), grip(&harness, "Drying time"));
    drag(&mut harness, from, [(-20.0, 0.0), (-40.0, 0.0), (-60.0, 0.0)]);
    let after = drying_h(&harness);
    assert!(after < before - 5.0, "{before} h, then {after} h");
    harness.get_by_label_contains("Undo “").click();
    settled(&mut harness);
    assert!((drying_h(&harness) - before).abs() < 1e-9, "one step back: {} h", drying_h(&harness));
}

#[test]
fn a_quick_hand_that_has_left_the_handle_still_holds_it() {
    let mut harness = at(Stage::Drying);
    let (before, from) = (drying_h(&harness), grip(&harness, "Drying time"));
    let cut = harness.state().view.cut;
    // Press and way come within one drawing.
    let press =
        |pos, pressed| egui::Event::PointerButton { pos, button: PointerButton::Primary, pressed, modifiers: Modifiers::NONE };
    let away = from - vec2(50.0, -30.0);
    for event in [egui::Event::PointerMoved(from), press(from, true), egui::Event::PointerMoved(away)] {
        harness.event(event);
    }
    harness.run();
    button(&mut harness, away, false);
    settled(&mut harness);
    assert!(drying_h(&harness) < before - 5.0, "{before} h, then {} h", drying_h(&harness));
    assert_eq!(harness.state().view.cut, cut, "the hour of the cut stays");
}

#[test]
fn a_press_alone_moves_nothing() {
    let mut harness = at(Stage::Drying);
    harness.get_by_role_and_label(Role::Slider, "Drying time, in the chart").set_value_accesskit(61.4);
    settled(&mut harness);
    let from = grip(&harness, "Drying time");
    harness.hover_at(from);
    harness.run();
    button(&mut harness, from, true);
    button(&mut harness, from, false);
    settled(&mut harness);
    assert!((drying_h(&harness) - 61.4).abs() < 1e-9 && !harness.state().session.is_dragging(), "{} h", drying_h(&harness));
}

#[test]
fn a_handle_is_moved_by_keys() {
    let mut harness = at(Stage::Drying);
    let before = drying_h(&harness);
    harness.get_by_role_and_label(Role::Slider, "Drying time, in the chart").focus();
    harness.run();
    harness.key_press(Key::ArrowRight);
    settled(&mut harness);
    assert!(drying_h(&harness) > before);
}

#[test]
fn bath_and_rennet_are_pulled_up_and_down() {
    let mut harness = at(Stage::Vat);
    harness.state_mut().view.curve = Some(CurveKey::Warming);
    settled(&mut harness);
    let vat = |harness: &Harness<'_, Window>| harness.state().session.design().vat;
    let before = vat(&harness);
    let from = grip(&harness, "Bath held at");
    drag(&mut harness, from, [(0.0, -8.0), (0.0, -16.0), (0.0, -24.0)]);
    assert!(vat(&harness).bath_set_temperature_c > before.bath_set_temperature_c);
    let from = grip(&harness, "Add rennet at");
    drag(&mut harness, from, [(0.0, 4.0), (0.0, 8.0), (0.0, 12.0)]);
    assert!(vat(&harness).rennet_temperature_c < before.rennet_temperature_c);
}

#[test]
fn the_axis_does_not_shrink_below_the_pointer() {
    let mut harness = at(Stage::Drying);
    let from = grip(&harness, "Drying time");
    harness.hover_at(from);
    harness.run();
    button(&mut harness, from, true);
    for x in [-40.0, -80.0, -120.0, -160.0] {
        harness.hover_at(from + vec2(x, 0.0));
        harness.run();
        harness.run();
        let knob = grip(&harness, "Drying time").x;
        assert!((knob - from.x - x).abs() < 6.0, "the pointer at {x}, the handle at {}", knob - from.x);
    }
    button(&mut harness, from + vec2(-160.0, 0.0), false);
}

#[test]
fn a_press_in_the_chart_sets_the_hour_of_the_cut() {
    let mut harness = at(Stage::Drying);
    assert_eq!(harness.state().view.cut.key, SectionKey::Moisture);
    let knob = grip(&harness, "Drying time");
    let place = knob - vec2(90.0, 0.0);
    harness.hover_at(place);
    harness.run();
    button(&mut harness, place, true);
    button(&mut harness, place, false);
    settled(&mut harness);
    let share = harness.state().view.cut.share.unwrap();
    assert!(share > 0.3 && share < 0.9, "{share}");
}
