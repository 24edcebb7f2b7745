//! From the first start to a saved plan of a chosen example, by keys alone.

#![cfg(feature = "paper")]

use super::{SIZE, press, reach};
use crate::ui::{PATH, example, settled, shown_window, stopped};
use egui::accesskit::Role;
use egui::{Key, Modifiers, Theme};
use egui_kittest::kittest::Queryable;
use vatsketch::export::pdf;
use vatsketch::report::plan;
use vatsketch::session::EXAMPLES;
use vatsketch::ui::Window;

/// Actions at most: a control that is pressed, or a text that is typed.
const MOST: usize = 6;

#[test]
fn a_plan_of_an_example_is_saved_in_at_most_six_actions_from_the_first_start() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("plan.pdf");
    let wanted = EXAMPLES.iter().find(|example| example.name == "ewes-milk").unwrap();
    let mut window = Window::plain(example("first-vat"), stopped());
    window.greet(folder.path());
    let mut harness = shown_window(window, SIZE, Theme::Light);
    settled(&mut harness);
    let mut actions = 0;
    let mut press_enter = |harness: &mut egui_kittest::Harness<'_, Window>| {
        actions += 1;
        press(harness, Key::Enter);
    };
    reach(&mut harness, Key::Tab, &format!("Example: {}", wanted.shows));
    press_enter(&mut harness);
    assert_eq!(*harness.state().session.design(), wanted.design().unwrap());
    reach(&mut harness, Key::F10, "File");
    press_enter(&mut harness);
    reach(&mut harness, Key::ArrowDown, "Save plan as PDF…");
    press_enter(&mut harness);
    // The box has the focus; what stands there is typed over.
    harness.key_press_modifiers(Modifiers::COMMAND, Key::A);
    harness.run();
    harness.get_by_role_and_label(Role::TextInput, PATH).type_text(path.to_str().unwrap());
    harness.run();
    press_enter(&mut harness);
    let typed = 1;
    settled(&mut harness);
    assert!(actions + typed <= MOST, "{} actions", actions + typed);
    let state = harness.state();
    assert!(std::fs::read(&path).unwrap() == pdf(&plan(state.session.batch()), &state.view.sheets()).unwrap());
}
