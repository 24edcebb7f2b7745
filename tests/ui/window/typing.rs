//! What is being typed: its own undo, and that nothing of it is lost.

use crate::ui::{example, shown};
use egui::accesskit::Role;
use egui::{Key, Modifiers, Theme};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use vatsketch::file;
use vatsketch::session::Session;
use vatsketch::ui::{Page, PlanPart, Window};

const SIZE: [f32; 2] = [1296.0, 816.0];
const TITLE: &str = "Title of the design";
const NOTE: &str = "Note, printed under the title";

fn press(harness: &mut Harness<'_, Window>, modifiers: Modifiers, key: Key) {
    harness.key_press_modifiers(modifiers, key);
    harness.run();
}

fn focus(harness: &mut Harness<'_, Window>, label: &str) {
    harness.get_by_label(label).focus();
    harness.run();
}

fn type_text(harness: &mut Harness<'_, Window>, label: &str, text: &str) {
    focus(harness, label);
    press(harness, Modifiers::COMMAND, Key::A);
    harness.get_by_label(label).type_text(text);
    harness.run();
}

fn text_of(harness: &Harness<'_, Window>, label: &str) -> String {
    harness.get_by_label(label).accesskit_node().value().unwrap_or_default()
}

#[test]
fn ctrl_z_takes_back_what_is_typed_before_it_takes_back_a_step() {
    let mut harness = shown(example("warm-cabinet"), SIZE, Theme::Light);
    let title = harness.state().session.design().title.clone();
    type_text(&mut harness, TITLE, "Another");
    assert_eq!(text_of(&harness, TITLE), "Another");
    press(&mut harness, Modifiers::COMMAND, Key::Z);
    assert_eq!((text_of(&harness, TITLE), harness.state().session.design().title.clone()), (title.clone(), title));
    press(&mut harness, Modifiers::COMMAND | Modifiers::SHIFT, Key::Z);
    assert_eq!(text_of(&harness, TITLE), "Another");
    press(&mut harness, Modifiers::NONE, Key::Enter);
    assert_eq!(harness.state().session.design().title, "Another");
    // The box has nothing of its own to take back now: the step goes.
    focus(&mut harness, TITLE);
    press(&mut harness, Modifiers::COMMAND, Key::Z);
    assert_ne!(harness.state().session.design().title, "Another");
}

#[test]
fn what_is_being_typed_is_saved_too() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    let mut session = example("warm-cabinet");
    session.save(&path).unwrap();
    let mut harness = shown(Session::open_file(&path).unwrap(), SIZE, Theme::Light);
    type_text(&mut harness, TITLE, "Typed and not left");
    press(&mut harness, Modifiers::COMMAND, Key::S);
    assert_eq!(file::read(&path).unwrap().title, "Typed and not left");
}

#[test]
fn a_new_design_asks_about_what_is_only_being_typed() {
    let mut harness = shown(example("warm-cabinet"), SIZE, Theme::Light);
    type_text(&mut harness, TITLE, "Typed and not left");
    press(&mut harness, Modifiers::COMMAND, Key::N);
    harness.get_by_label("Save your changes first?");
    harness.get_by_label("Cancel").click();
    harness.run();
    assert_eq!(harness.state().session.design().title, "Typed and not left");
}

#[test]
fn the_note_is_edited_where_the_plan_is_seen() {
    let mut harness = shown(example("warm-cabinet"), SIZE, Theme::Light);
    harness.state_mut().view.page = Page::Plan;
    harness.state_mut().view.plan_part = PlanPart::Paper;
    harness.run();
    let note = harness.state().session.design().note.clone();
    assert_eq!(text_of(&harness, NOTE), note);
    type_text(&mut harness, NOTE, "For the garden table");
    focus(&mut harness, "Copy as text");
    assert_eq!(harness.state().session.design().note, "For the garden table");
    assert_eq!(harness.state().session.history().undo_name(), Some("Note"));
    type_text(&mut harness, NOTE, "no");
    press(&mut harness, Modifiers::NONE, Key::Escape);
    assert_eq!(text_of(&harness, NOTE), "For the garden table");
    assert_eq!(harness.get_by_label(NOTE).accesskit_node().role(), Role::MultilineTextInput);
}

/// The box is reached by a key of the window, not by Tab: what is typed takes the place of what it shows all the same.
#[test]
fn what_is_typed_into_a_station_takes_the_place_of_its_first_number() {
    let mut harness = shown(example("warm-cabinet"), SIZE, Theme::Light);
    press(&mut harness, Modifiers::COMMAND, Key::Num3);
    harness.event(egui::Event::Text("75".to_owned()));
    harness.run();
    press(&mut harness, Modifiers::NONE, Key::Enter);
    assert_eq!(harness.state().session.design().draining.mould_diameter_mm, 75.0);
    // Enter leaves the focus there, and the next number takes the place of this one.
    harness.event(egui::Event::Text("80".to_owned()));
    harness.run();
    press(&mut harness, Modifiers::NONE, Key::Enter);
    assert_eq!(harness.state().session.design().draining.mould_diameter_mm, 80.0);
}
