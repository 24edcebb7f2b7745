//! Tests of `src/ui/log`.

pub mod kitchen;
mod next;
mod page;
mod pictures;

use crate::ui::{settled, shown};
use egui::accesskit::Role;
use egui::{Key, Theme};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::date;
use jiff::tz::TimeZone;
use vatsketch::design::Wish;
use vatsketch::plan::Now;
use vatsketch::record::{EntryKind, EntryValue};
use vatsketch::session::{Logbook, Session};
use vatsketch::ui::{Page, Window};

/// Returns the page of the log of an example that is saved in a folder, with a batch begun.
pub fn begun(folder: &std::path::Path, size: [f32; 2], theme: Theme) -> Harness<'static, Window> {
    let mut harness = saved(folder, size, theme);
    begin(&mut harness);
    harness
}

/// Begins a batch.
pub fn begin(harness: &mut Harness<'_, Window>) {
    harness.get_by_label("Begin a batch").click_accesskit();
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

/// Returns the log of the vat in a folder as its file has it.
fn on_disk(folder: &std::path::Path) -> Logbook {
    Logbook::open(&folder.join("first.vat.ron")).unwrap()
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
        harness.state_mut().view.log.at = Some(date(2031, 5, 5).at(8, minute, 0, 0));
        typed(harness, label, text);
    }
    harness.state_mut().view.log.at = None;
    settled(harness);
}

/// Returns a vat whose rennet went in half an hour late, with its log beside it: all of it is invented.
pub fn late(folder: &std::path::Path) -> Session {
    let path = folder.join("first.vat.ron");
    let _ = std::fs::remove_file(Logbook::beside(&path));
    let at = |hour, minute| date(2031, 5, 5).at(hour, minute, 0, 0);
    let mut design = crate::example("first-vat");
    design.week.wish = Wish::StartAt(at(4, 10));
    let mut book = Logbook::open(&path).unwrap();
    book.begin("the late one", &Now { at: at(4, 15), zone: TimeZone::UTC }, &design, None).unwrap();
    for (hour, minute, kind, value) in [
        (4, 50, EntryKind::MilkPoured, EntryValue::Number(5.02)),
        (5, 10, EntryKind::WarmingBegan, EntryValue::Done),
        (5, 22, EntryKind::MilkTemperature, EntryValue::Number(18.5)),
        (5, 34, EntryKind::CultureAdded, EntryValue::Done),
        (7, 40, EntryKind::RennetAdded, EntryValue::Done),
    ] {
        book.enter(at(hour, minute), kind, &value).unwrap();
    }
    Session::open(design, Some(path)).unwrap()
}

/// Returns the page of the log of that vat.
pub fn under_way(folder: &std::path::Path, size: [f32; 2], theme: Theme) -> Harness<'static, Window> {
    let mut harness = shown(late(folder), size, theme);
    show(&mut harness);
    harness
}

/// Writes the invented table of a probe, one line of which cannot be read.
pub fn probe_table(folder: &std::path::Path) -> std::path::PathBuf {
    let path = folder.join("probe.csv");
    let lines = (0..40).map(|line| format!("05.05.2031 06:{line:02};{},{}\n", 8 + line / 2, line % 10));
    let table = format!("Time;Probe 1\n{}05.05.2031 06:45;no contact\n", lines.collect::<String>());
    std::fs::write(&path, table).unwrap();
    path
}

/// Returns all batches of the invented log.
pub fn invented(size: [f32; 2], theme: Theme) -> Harness<'static, Window> {
    let mut harness = shown(Session::open(crate::example("first-vat"), None).unwrap(), size, theme);
    show(&mut harness);
    harness.get_by_label("Look at an invented log").click_accesskit();
    settled(&mut harness);
    harness.get_by_label("All batches").click_accesskit();
    settled(&mut harness);
    harness
}
