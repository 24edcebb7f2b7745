//! Tests of `src/ui/log`.

mod page;
mod pictures;

use crate::ui::{settled, shown};
use egui::accesskit::Role;
use egui::{Key, Theme};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::date;
use vatsketch::session::Session;
use vatsketch::ui::{Page, Window};

/// Returns the page of the log of an example that is saved in a folder, with a batch begun.
pub fn begun(folder: &std::path::Path, size: [f32; 2], theme: Theme) -> Harness<'static, Window> {
    let mut harness = saved(folder, size, theme);
    begin(&mut harness);
    harness
}

/// Begins a batch.
pub fn begin(harness: &mut Harness<'_, Window>) {
    harness.get_by_label("Begin a batch").click();
    settled(harness);
}

/// Returns the page of the log of an example that is saved in a folder.
fn saved(folder: &std::path::Path, size: [f32; 2], theme: Theme) -> Harness<'static, Window> {
    let mut harness = shown(session(folder), size, theme);
    show(&mut harness);
    harness
}

/// Returns an example that is saved in a folder.
pub fn session(folder: &std::path::Path) -> Session {
    Session::open(crate::example("first-vat"), Some(folder.join("first.vat.ron"))).unwrap()
}

/// Goes to the page of the log.
pub fn show(harness: &mut Harness<'_, Window>) {
    harness.get_by_label("Page Log").click();
    settled(harness);
    assert_eq!(harness.state().view.page, Page::Log);
}

/// Types into a box and presses Enter.
pub fn typed(harness: &mut Harness<'_, Window>, label: &str, text: &str) {
    harness.get_by_role_and_label(Role::TextInput, label).focus();
    settled(harness);
    harness.get_by_role_and_label(Role::TextInput, label).type_text(text);
    settled(harness);
    harness.key_press(Key::Enter);
    settled(harness);
}

/// Writes down an invented morning, some of it off.
pub fn morning(harness: &mut Harness<'_, Window>) {
    for (minute, label, text) in [
        (40, "Note, and what I would change", "The bath was too hot at first; begin with less hot water."),
        (0, "Milk into the pot", "4.2"),
        (12, "Temperature of the milk", "18.5"),
        (30, "Temperature of the milk", "39"),
    ] {
        harness.state_mut().view.log_at = Some(date(2031, 5, 5).at(8, minute, 0, 0));
        typed(harness, label, text);
    }
    harness.state_mut().view.log_at = None;
    settled(harness);
}
