//! What would lift a caution: asked for below it, shown with what it costs, and done as one step.

use crate::ui::{example, settled, shown};
use egui::Theme;
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use vatsketch::design::Value;
use vatsketch::session::Command;
use vatsketch::ui::Window;

const SIZE: [f32; 2] = [1280.0, 1600.0];
/// More calcium than food laws allow (21 CFR 184.1193): one choice causes it, and it alone lifts it.
const TOO_MUCH: f64 = 0.03;

fn too_much_calcium() -> Harness<'static, Window> {
    let mut session = example("first-vat");
    session.apply(Command::SetInput { key: "calcium_dose_percent", value: Value::Number(TOO_MUCH) }).unwrap();
    shown(session, SIZE, Theme::Light)
}

fn dose(harness: &Harness<'_, Window>) -> f64 {
    harness.state().session.design().milk.calcium_dose_percent
}

fn ask(harness: &mut Harness<'_, Window>) {
    harness.get_by_label_contains("What would lift this? More calcium").click();
    harness.run();
    settled(harness);
}

#[test]
fn a_lift_is_shown_before_it_is_done_and_is_one_step() {
    let mut harness = too_much_calcium();
    ask(&mut harness);
    assert!((dose(&harness) - TOO_MUCH).abs() < 1e-12, "nothing moves before it is asked for");
    harness.get_by_label_contains("Make this change: Calcium chloride dose").click();
    settled(&mut harness);
    assert!((dose(&harness) - 0.02).abs() < 1e-12);
    assert!(harness.query_by_label_contains("What would lift this? More calcium").is_none());
    harness.state_mut().session.undo().unwrap();
    assert!((dose(&harness) - TOO_MUCH).abs() < 1e-12, "one step");
}

#[test]
fn a_pinned_choice_is_named_and_left_alone() {
    let mut harness = too_much_calcium();
    harness.state_mut().session.turn_pin("calcium_dose_percent").unwrap();
    ask(&mut harness);
    assert!(harness.query_by_label_contains("Make this change: Calcium").is_none());
    harness.get_by_label_contains("Pinned and left alone: calcium");
}

/// With a second design open the first is the one that changes, and the caution that only the second has leads nowhere.
#[test]
fn beside_a_second_design_the_first_is_the_one_that_is_lifted() {
    let mut session = example("first-vat");
    session.apply(Command::SetInput { key: "calcium_dose_percent", value: Value::Number(TOO_MUCH) }).unwrap();
    session.second_from_first().unwrap();
    let mut harness = shown(session, SIZE, Theme::Light);
    harness.get_by_label_contains("What would lift this in A? More calcium").click_accesskit();
    harness.run();
    settled(&mut harness);
    harness.get_by_label_contains("Make this change: Calcium chloride dose").click_accesskit();
    settled(&mut harness);
    assert!((dose(&harness) - 0.02).abs() < 1e-12);
    let second = harness.state().session.second().unwrap().design().milk.calcium_dose_percent;
    assert!((second - TOO_MUCH).abs() < 1e-12, "B stays as it was");
    assert!(harness.query_by_label_contains("What would lift this in A? More calcium").is_none(), "only B has it now");
}
