//! Sliders under a quick hand.

use crate::ui::{example, shown};
use egui::accesskit::Role;
use egui::{Pos2, Theme, pos2, vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use vatsketch::design::Value;
use vatsketch::session::Command;
use vatsketch::ui::Window;

fn first() -> Harness<'static, Window> {
    shown(example("warm-cabinet"), [1296.0, 816.0], Theme::Light)
}

fn milk_l(harness: &Harness<'_, Window>) -> f64 {
    harness.state().session.design().milk.milk_l
}

/// Returns where the pointer is at a share of the slider of the milk.
fn at(harness: &Harness<'_, Window>, share: f32) -> Pos2 {
    let rail = harness.get_by_role_and_label(Role::Slider, "Milk").rect();
    pos2(rail.left() + share * rail.width(), rail.center().y)
}

/// Returns the width on which the handle of the milk moves: half a handle is left on each side.
fn rail_width(harness: &Harness<'_, Window>) -> f32 {
    harness.get_by_role_and_label(Role::Slider, "Milk").rect().width() - 16.0
}

/// A drag with Shift is ten times finer.
#[test]
fn shift_makes_a_drag_finer() {
    let moved = |modifiers: egui::Modifiers| {
        let mut harness = first();
        let from = at(&harness, 0.5);
        harness.drag_at(from);
        harness.run();
        harness.drop_at(from);
        harness.run();
        let before = milk_l(&harness).ln();
        harness.drag_at(from);
        harness.run();
        harness.event(egui::Event::ModifiersChanged(modifiers));
        harness.hover_at(from + vec2(20.0, 0.0));
        harness.run();
        harness.drop_at(from + vec2(20.0, 0.0));
        harness.run();
        milk_l(&harness).ln() - before
    };
    let (coarse, fine) = (moved(egui::Modifiers::NONE), moved(egui::Modifiers::SHIFT));
    // A step is 0.1 L, which is two parts in a hundred here.
    assert!(coarse > 0.0 && (fine - 0.1 * coarse).abs() < 0.03, "{fine} and {coarse}");
}

#[test]
fn a_slider_that_is_let_go_and_pressed_again_at_once_stays_where_it_is() {
    let mut harness = first();
    let (from, to) = (at(&harness, 0.5), at(&harness, 0.7));
    harness.drag_at(from);
    harness.run();
    for part in [0.3, 0.7, 1.0] {
        harness.hover_at(from + part * (to - from));
        harness.run();
    }
    let dragged = milk_l(&harness);
    assert!(dragged > 6.0);
    // Let go and pressed again with nothing between, a few points beside the middle of the handle.
    harness.drop_at(to);
    let again = to + vec2(5.0, 0.0);
    harness.drag_at(again);
    harness.run();
    let held = milk_l(&harness);
    harness.run_steps(3);
    assert_eq!(milk_l(&harness), held, "a pointer that holds still moves nothing");
    // It goes on from there, by as much as the pointer goes.
    harness.hover_at(again + vec2(2.0, 0.0));
    harness.run();
    let moved = milk_l(&harness);
    harness.drop_at(again + vec2(2.0, 0.0));
    harness.run();
    // The slider spans 0.5 to 60 L by ratios, and a step of it is 0.1 L.
    let two_points = (2.0 * 120.0_f64.ln() / f64::from(rail_width(&harness))).exp();
    assert!(moved >= held && moved <= two_points * held + 0.1, "{held} L became {moved} L");
    assert!((held - dragged).abs() <= 0.1 + 1e-9, "let go at {dragged} L, pressed again at {held} L");
}

#[test]
fn a_press_on_the_handle_keeps_a_value_that_was_typed() {
    let mut harness = first();
    harness.state_mut().session.apply(Command::SetInput { key: "milk_l", value: Value::Number(6.037) }).unwrap();
    harness.run();
    let rail = harness.get_by_role_and_label(Role::Slider, "Milk").rect();
    // By ratios from 0.5 to 60 L, the rail eight points shorter than the slider at each end.
    let share = (6.037_f32 / 0.5).ln() / (60.0_f32 / 0.5).ln();
    let handle = pos2(rail.left() + 8.0 + share * (rail.width() - 16.0), rail.center().y);
    for beside in [-6.0, 0.0, 6.0] {
        harness.drag_at(handle + vec2(beside, 0.0));
        harness.run();
        harness.drop_at(handle + vec2(beside, 0.0));
        harness.run();
        assert_eq!(milk_l(&harness), 6.037, "{beside} points beside the middle");
    }
}

#[test]
fn a_press_beside_the_handle_still_brings_it_there() {
    let mut harness = first();
    let place = at(&harness, 0.9);
    harness.drag_at(place);
    harness.run();
    harness.drop_at(place);
    harness.run();
    assert!(milk_l(&harness) > 30.0, "{}", milk_l(&harness));
}
