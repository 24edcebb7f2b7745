//! Files in the window: what is asked before something would be lost.

use crate::ui::{about_second, example, shown, shown_window, type_path};
use egui::{Key, Modifiers, Theme};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use std::path::Path;
use vatsketch::design::{Design, Value};
use vatsketch::file;
use vatsketch::session::{Command, Recovery, Session};
use vatsketch::ui::Window;

const SIZE: [f32; 2] = [1296.0, 816.0];

fn milk(litres: f64) -> Command {
    Command::SetInput { key: "milk_l", value: Value::Number(litres) }
}

fn click(harness: &mut Harness<'_, Window>, label: &str) {
    harness.get_by_label(label).click_accesskit();
    harness.run();
}

fn save_as(harness: &mut Harness<'_, Window>, path: &Path) {
    harness.key_press_modifiers(Modifiers::COMMAND | Modifiers::SHIFT, Key::S);
    harness.run();
    type_path(harness, path);
}

#[test]
fn a_file_that_is_there_is_written_over_only_when_that_is_said() {
    let folder = tempfile::tempdir().unwrap();
    let (taken, free) = (folder.path().join("taken.vat.ron"), folder.path().join("free.vat.ron"));
    std::fs::write(&taken, "(format: 1, title: \"of somebody else\")").unwrap();
    let mut harness = shown(example("warm-cabinet"), SIZE, Theme::Light);
    // The ending is put after it, and there it is.
    save_as(&mut harness, &folder.path().join("taken"));
    harness.get_by_label("Overwrite the file?");
    click(&mut harness, "Cancel");
    assert_eq!(file::read(&taken).unwrap().title, "of somebody else");
    save_as(&mut harness, &taken);
    click(&mut harness, "Choose another name");
    click(&mut harness, "Cancel");
    save_as(&mut harness, &free);
    assert!(free.exists() && harness.query_by_label("Overwrite").is_none());
    save_as(&mut harness, &taken);
    click(&mut harness, "Overwrite");
    assert_eq!(&file::read(&taken).unwrap(), harness.state().session.design());
    assert_eq!(file::read(&folder.path().join("taken.vat.ron.bak")).unwrap().title, "of somebody else");
    save_as(&mut harness, &taken);
    assert!(harness.query_by_label("Overwrite").is_none(), "its own file");
    assert!(harness.state().session.last_change.starts_with("Nothing to save: "), "{}", harness.state().session.last_change);
}

/// Opens a file, changes the design, and has somebody else write the file; the window then comes to the front.
fn with_changed_file(path: &Path) -> Harness<'static, Window> {
    std::fs::write(path, file::to_text(&Design::default())).unwrap();
    let mut harness = shown(Session::open_file(path).unwrap(), SIZE, Theme::Light);
    harness.state_mut().session.apply(milk(7.0)).unwrap();
    std::fs::write(path, "(format: 1, title: \"by another hand\")").unwrap();
    harness.event(egui::Event::WindowFocused(true));
    harness.run();
    harness
}

#[test]
fn a_file_that_somebody_else_changed_gets_a_bar_as_soon_as_the_window_comes_to_the_front() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    let mut harness = with_changed_file(&path);
    harness.get_by_label_contains("has changed since you opened it");
    click(&mut harness, "Reload");
    assert_eq!(harness.state().session.design().title, "by another hand");
    assert!(harness.query_by_label("Reload").is_none());
    harness.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    harness.run();
    assert_eq!(harness.state().session.design().milk.milk_l, 7.0);
    let mut harness = with_changed_file(&path);
    click(&mut harness, "Overwrite");
    assert_eq!(file::read(&path).unwrap().milk.milk_l, 7.0);
    assert!(harness.query_by_label("Overwrite").is_none());
}

/// The window was in front all the time: it is noticed when the design is to be saved.
#[test]
fn a_file_that_somebody_else_changed_is_noticed_before_it_is_saved() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    std::fs::write(&path, file::to_text(&Design::default())).unwrap();
    let mut harness = shown(Session::open_file(&path).unwrap(), SIZE, Theme::Light);
    harness.state_mut().session.apply(milk(7.0)).unwrap();
    std::fs::remove_file(&path).unwrap();
    harness.key_press_modifiers(Modifiers::COMMAND, Key::S);
    harness.run();
    harness.get_by_label_contains("cannot be found now");
    assert!(!path.exists() && harness.query_by_label("Reload").is_none());
    click(&mut harness, "Save there again");
    assert_eq!(file::read(&path).unwrap().milk.milk_l, 7.0);
}

#[test]
fn new_and_open_and_quit_ask_for_each_design_that_is_not_saved() {
    for key in [Key::N, Key::O, Key::Q] {
        let mut harness = shown(example("warm-cabinet"), SIZE, Theme::Light);
        about_second(&mut harness, "The same vat from sheep's milk");
        harness.state_mut().session.apply(milk(9.0)).unwrap();
        harness.key_press_modifiers(Modifiers::COMMAND, key);
        harness.run();
        harness.get_by_label("Save your changes first?");
        click(&mut harness, "Discard");
        harness.get_by_label("Save B first?");
        click(&mut harness, "Cancel");
        assert!(harness.state().session.is_dirty() && harness.state().session.second().is_some());
    }
    let mut harness = shown(example("warm-cabinet"), SIZE, Theme::Light);
    about_second(&mut harness, "The same vat from sheep's milk");
    harness.key_press_modifiers(Modifiers::COMMAND, Key::N);
    harness.run();
    click(&mut harness, "Discard");
    assert!(harness.state().session.second().is_none() && harness.state().session.design() == &Design::default());
}

fn crashed(folder: &Path, title: &str) {
    let mut session = Session::open(Design { title: title.into(), ..Design::default() }, None).unwrap();
    session.apply(milk(9.0)).unwrap();
    Recovery::in_folder(folder).keep(session.open_designs()).unwrap();
}

#[test]
fn unsaved_work_is_listed_recovered_discarded_or_left_for_later() {
    let folder = tempfile::tempdir().unwrap();
    crashed(folder.path(), "Early");
    crashed(folder.path(), "Late");
    let window = Window::with_folders(example("warm-cabinet"), folder.path(), folder.path());
    let mut harness = shown_window(window, SIZE, Theme::Light);
    harness.get_by_label_contains("“Early”, changed last on ");
    harness.get_by_label_contains("“Late”, changed last on ");
    click(&mut harness, "Not now");
    harness.get_by_label("File").click();
    harness.run();
    harness.get_by_label_contains("Recover unsaved work…").click();
    harness.run();
    harness.get_all_by_label("Discard").next().unwrap().click_accesskit();
    harness.run();
    assert_eq!(harness.get_all_by_label("Recover").count(), 1, "the other is still asked about");
    click(&mut harness, "Recover");
    let session = &harness.state().session;
    assert!(session.is_dirty() && session.design().milk.milk_l == 9.0);
    assert!(harness.query_by_label("Recover").is_none());
    // Only what this window itself keeps is there now.
    drop(harness);
    assert_eq!(Recovery::in_folder(folder.path()).left_behind().len(), 1);
}
