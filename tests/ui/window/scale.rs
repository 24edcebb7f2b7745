//! Edit, Scale the design: asked, shown, done or given up.

use crate::ui::{example, settled, shown};
use egui::accesskit::Role;
use egui::{Key, Theme};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use vatsketch::ui::Window;
use vatsketch::units::Units;

const SIZE: [f32; 2] = [1296.0, 816.0];

fn asked() -> Harness<'static, Window> {
    let mut harness = shown(example("warm-cabinet"), SIZE, Theme::Light);
    ask(&mut harness);
    harness
}

fn ask(harness: &mut Harness<'_, Window>) {
    harness.get_by_label("Edit").click();
    harness.run();
    harness.get_by_label("Scale the design…").click();
    harness.run();
}

fn type_amount(harness: &mut Harness<'_, Window>, text: &str) {
    harness.get_by_role_and_label(Role::TextInput, "Scale to").focus();
    harness.run();
    harness.get_by_role_and_label(Role::TextInput, "Scale to").type_text(text);
    harness.run();
}

fn press(harness: &mut Harness<'_, Window>, label: &str) {
    harness.get_by_role_and_label(Role::Button, label).click_accesskit();
    settled(harness);
}

fn milk_l(harness: &Harness<'_, Window>) -> f64 {
    harness.state().session.design().milk.milk_l
}

#[test]
fn what_follows_is_shown_before_it_is_done_and_is_one_step() {
    let mut harness = asked();
    let before = harness.state().session.design().clone();
    type_amount(&mut harness, "8");
    harness.get_by_label("Scale to 8 L of milk");
    harness.get_by_role_and_label(Role::Table, "Choices that change");
    for cell in ["Number of moulds", "16", "10.7 L", "12"] {
        assert!(harness.query_all_by_label(cell).count() > 0, "{cell}");
    }
    assert_eq!(harness.state().session.design(), &before, "nothing is done yet");
    press(&mut harness, "Scale");
    assert_eq!((milk_l(&harness), harness.state().session.design().draining.mould_count), (8.0, 16));
    assert!(harness.query_by_label("Scale the design").is_none(), "the question is answered");
    assert_eq!(harness.state().session.history().undo_name(), Some("Scale to 8 L of milk"));
    harness.state_mut().session.undo().unwrap();
    assert_eq!(harness.state().session.design(), &before, "one step");
}

#[test]
fn cancel_and_escape_leave_everything_as_it_was() {
    for key in [false, true] {
        let mut harness = asked();
        let before = harness.state().session.design().clone();
        type_amount(&mut harness, "9");
        if key {
            // The first takes the focus from the box.
            for _ in 0..2 {
                harness.key_press(Key::Escape);
                harness.run();
            }
        } else {
            press(&mut harness, "Cancel");
        }
        assert!(harness.query_by_label("Scale the design").is_none());
        assert!(harness.state().session.design() == &before && harness.state().session.history().undo_name().is_none());
    }
}

#[test]
fn another_goal_is_chosen_and_entered_by_key() {
    let mut harness = asked();
    harness.get_by_role_and_label(Role::RadioButton, "Scale to: Number of moulds").click_accesskit();
    harness.run();
    type_amount(&mut harness, "24");
    harness.key_press(Key::Enter);
    settled(&mut harness);
    assert_eq!((milk_l(&harness), harness.state().session.design().draining.mould_count), (12.0, 24));
}

#[test]
fn what_cannot_be_done_says_why_and_scale_does_nothing() {
    let mut harness = asked();
    for (text, said) in [("900", "Milk (at “Milk”) would have to be 900 L"), ("much", "write a number")] {
        type_amount(&mut harness, text);
        assert!(harness.query_by_label_contains(said).is_some(), "{text}: {said}");
        assert!(harness.get_by_role_and_label(Role::Button, "Scale").accesskit_node().is_disabled());
        harness.key_press(Key::Enter);
        harness.run();
        assert_eq!(milk_l(&harness), 6.0);
        harness.get_by_role_and_label(Role::TextInput, "Scale to").focus();
        harness.run();
        harness.key_press_modifiers(egui::Modifiers::COMMAND, Key::A);
        harness.run();
    }
}

#[test]
fn a_bare_number_is_meant_in_the_units_that_are_shown() {
    let mut harness = shown(example("warm-cabinet"), SIZE, Theme::Light);
    harness.state_mut().view.units = Units::US;
    ask(&mut harness);
    type_amount(&mut harness, "10");
    harness.get_by_label("Scale to 10 qt of milk");
    press(&mut harness, "Scale");
    // NIST Handbook 44, appendix C: a liquid quart is 0.946 352 946 L.
    assert!((milk_l(&harness) - 9.463_529_46).abs() < 1e-6, "{}", milk_l(&harness));
}
