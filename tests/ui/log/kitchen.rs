//! The part of the log that learns a kitchen.

use super::{on_disk, saved, typed};
use crate::ui::{settled, shown, type_path};
use egui::Theme;
use egui::accesskit::Role;
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use vatsketch::session::{KitchenJob, Session};
use vatsketch::ui::{Page, Window};

/// Returns the page with the invented log, asked what it tells of its kitchen; its spreads have few draws.
pub fn kitchen_of_invented(size: [f32; 2], theme: Theme, draws: usize) -> Harness<'static, Window> {
    let session = Session::open(crate::example("first-vat"), None).unwrap();
    let mut harness = shown(session, size, theme);
    to_kitchen_of_invented(&mut harness, draws);
    harness
}

/// Goes to the kitchen of the invented log; its spreads have so many draws.
fn to_kitchen_of_invented(harness: &mut Harness<'_, Window>, draws: usize) {
    let wake = harness.ctx.clone();
    harness.state_mut().learn_with(KitchenJob::with_draws(draws, Box::new(move || wake.request_repaint())));
    pressed(harness, "Page Log");
    pressed(harness, "Look at an invented log");
    pressed(harness, "Your kitchen");
}

/// Shows what the invented log says of its kitchen: for the picture of the README.
pub fn learned_from_invented(harness: &mut Harness<'static, Window>) {
    to_kitchen_of_invented(harness, 200);
    pressed(harness, "Learn from 3 batches");
}

fn pressed(harness: &mut Harness<'_, Window>, label: &str) {
    harness.get_by_label(label).click_accesskit();
    settled(harness);
}

#[test]
fn a_kitchen_is_learned_used_saved_taken_back_and_used_from_its_file() {
    let folder = tempfile::tempdir().unwrap();
    let mut harness = kitchen_of_invented([1296.0, 816.0], Theme::Light, 6);
    harness.get_by_label("Learn from 3 batches");
    let heights = harness.query_all_by_role(Role::CheckBox).map(|ticked| ticked.rect().height());
    assert!(heights.fold(0.0, f32::max) < 60.0, "a batch to learn from wraps after a few letters");
    // One batch is worked out sooner.
    for older in [1, 2] {
        harness.query_all_by_role(Role::CheckBox).nth(older).unwrap().click_accesskit();
        settled(&mut harness);
    }
    pressed(&mut harness, "Learn from 1 batch");
    harness.get_by_label("What 1 batch shows");
    assert!(harness.query_all_by_label_contains(" h (").count() > 0);
    typed(&mut harness, "Name of your kitchen, if you like", "cellar");
    pressed(&mut harness, "Save your kitchen…");
    type_path(&mut harness, &folder.path().join("cellar"));
    settled(&mut harness);
    let file = folder.path().join("cellar.kitchen.ron");
    assert!(file.exists(), "{}", harness.state().session.last_change);
    pressed(&mut harness, "Calculate the design for your kitchen");
    let known = harness.state().session.design().kitchen.clone().unwrap();
    assert_eq!((known.name.as_str(), known.learned_from[0].number), ("cellar", 3));
    harness.get_by_label_contains("Calculated for the kitchen “cellar”");
    pressed(&mut harness, "Stop using your kitchen");
    assert!(harness.state().session.design().kitchen.is_none());
    pressed(&mut harness, "Use a kitchen from a file…");
    type_path(&mut harness, &file);
    settled(&mut harness);
    assert_eq!(harness.state().session.design().kitchen.as_ref(), Some(&known));
    // It is said where the choices are, and can be left there too.
    harness.state_mut().view.page = Page::Design;
    settled(&mut harness);
    harness.get_by_label_contains("Calculated for the kitchen “cellar”");
    pressed(&mut harness, "Stop using your kitchen");
    assert!(harness.state().session.design().kitchen.is_none());
}

#[test]
fn a_log_without_measurements_is_refused_in_words_and_a_wrong_file_too() {
    let folder = tempfile::tempdir().unwrap();
    let mut harness = saved(folder.path(), [1296.0, 816.0], Theme::Light);
    super::begin(&mut harness);
    assert_eq!(on_disk(folder.path()).batches().len(), 1);
    pressed(&mut harness, "Your kitchen");
    pressed(&mut harness, "Learn from 1 batch");
    harness.get_by_label_contains("write down temperatures");
    assert!(harness.query_by_label("Calculate the design for your kitchen").is_none());
    let wrong = folder.path().join("wrong.kitchen.ron");
    std::fs::write(&wrong, "(format: 1, kitchen: (estimates: [").unwrap();
    pressed(&mut harness, "Use a kitchen from a file…");
    type_path(&mut harness, &wrong);
    settled(&mut harness);
    harness.get_by_label_contains("The kitchen cannot be used");
    assert!(harness.state().session.design().kitchen.is_none());
}
