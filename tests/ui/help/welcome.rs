//! The welcome: once, and again when it is asked for.

use super::{SIZE, SIZES, focused, from_menu, press, reach};
use crate::ui::{example, settled, shown_window, stopped};
use egui::accesskit::Role;
use egui::{Key, Rect, Theme, vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use std::path::Path;
use vatsketch::analysis::summary;
use vatsketch::batch::batch;
use vatsketch::design::{BEFORE_BUYING, Design, Stage};
use vatsketch::session::{Command, EXAMPLES, Recent, Recovery, Session};
use vatsketch::ui::{HelpCard, Window};
use vatsketch::words::{FROM_A_MODEL, START_EMPTY, START_FROM_MILK, tile_counts, tile_lines};

/// Returns the window as it is at a start with this folder of settings.
fn started(config: &Path, size: [f32; 2]) -> Harness<'static, Window> {
    let mut window = Window::plain(example("first-vat"), stopped());
    window.greet(config);
    let mut harness = shown_window(window, size, Theme::Light);
    settled(&mut harness);
    harness
}

fn is_welcome(harness: &Harness<'_, Window>) -> bool {
    harness.query_by_role_and_label(Role::Heading, "Welcome").is_some()
}

#[test]
fn it_comes_at_the_first_start_alone_and_again_from_the_menu() {
    let config = tempfile::tempdir().unwrap();
    let mut harness = started(config.path(), SIZE);
    assert!(is_welcome(&harness));
    harness.get_by_label(FROM_A_MODEL);
    press(&mut harness, Key::Escape);
    assert!(!is_welcome(&harness));
    let mut harness = started(config.path(), SIZE);
    assert!(!is_welcome(&harness), "a second start");
    from_menu(&mut harness, "Welcome");
    assert!(is_welcome(&harness));
}

#[test]
fn it_does_not_come_to_a_maker_who_knows_the_program() {
    let config = tempfile::tempdir().unwrap();
    Recent::in_folder(config.path()).note(&config.path().join("may.vat.ron"));
    let mut window = Window::with_folders(example("first-vat"), config.path(), &config.path().join("state"));
    window.greet(config.path());
    assert_eq!(window.view.help, None, "a file was saved before");
    let config = tempfile::tempdir().unwrap();
    let state = config.path().join("state");
    let mut unsaved = Session::open(Design::default(), None).unwrap();
    unsaved.apply(Command::SetTitle("Unsaved".into())).unwrap();
    Recovery::in_folder(&state).keep(unsaved.open_designs()).unwrap();
    let mut window = Window::with_folders(example("first-vat"), config.path(), &state);
    window.greet(config.path());
    assert_eq!(window.view.help, None, "its unsaved work is asked about");
    assert!(!config.path().join("welcomed.ron").exists(), "nothing was shown, so nothing is noted");
}

#[test]
fn every_example_is_told_as_it_is_when_it_is_opened() {
    let config = tempfile::tempdir().unwrap();
    let harness = started(config.path(), SIZE);
    for example in EXAMPLES {
        let summary = summary(&batch(&example.design().unwrap()).unwrap());
        let units = harness.state().view.units;
        let told = tile_lines(&summary, units).into_iter().chain(tile_counts(&summary).into_iter().map(|(_, words)| words));
        let told: Vec<String> = told.collect();
        harness.get_by_role_and_label(Role::Button, &format!("Example: {}: {}", example.shows, told.join("; ")));
    }
}

#[test]
fn an_example_is_opened_by_its_tile() {
    let config = tempfile::tempdir().unwrap();
    let mut harness = started(config.path(), SIZE);
    let wanted = EXAMPLES.iter().find(|example| example.name == "ewes-milk").unwrap();
    harness.get_by_label_contains(&format!("Example: {}", wanted.shows)).click();
    harness.run();
    assert_eq!(*harness.state().session.design(), wanted.design().unwrap());
    assert!(!is_welcome(&harness));
}

#[test]
fn starting_from_the_milk_leads_to_the_first_choice_before_buying() {
    let config = tempfile::tempdir().unwrap();
    let mut harness = started(config.path(), SIZE);
    assert!(focused(&harness).starts_with(START_FROM_MILK.title), "{}", focused(&harness));
    press(&mut harness, Key::Enter);
    harness.run();
    harness.run();
    assert_eq!(*harness.state().session.design(), Design::default());
    assert_eq!(harness.state().view.station, Stage::Milk);
    let (key, label) = BEFORE_BUYING[0];
    assert_eq!(harness.state().view.marked, Some(key));
    let now = harness.root().children_recursive().find(|node| node.accesskit_node().is_focused()).unwrap();
    assert_eq!((now.accesskit_node().role(), now.accesskit_node().label().as_deref()), (Role::Slider, Some(label)));
}

#[test]
fn an_empty_design_has_every_choice_at_its_default() {
    let config = tempfile::tempdir().unwrap();
    let mut harness = started(config.path(), SIZE);
    harness.get_by_label_contains(START_EMPTY.title).click();
    harness.run();
    assert_eq!(*harness.state().session.design(), Design::default());
    assert!(!is_welcome(&harness));
}

#[test]
fn unsaved_changes_are_asked_about_before_another_design_is_begun() {
    let config = tempfile::tempdir().unwrap();
    let mut harness = started(config.path(), SIZE);
    press(&mut harness, Key::Escape);
    harness.state_mut().session.apply(Command::SetTitle("Mine".into())).unwrap();
    from_menu(&mut harness, "Welcome");
    harness.get_by_label_contains(START_FROM_MILK.title).click();
    harness.run();
    harness.get_by_label("Cancel").click();
    harness.run();
    assert_eq!(harness.state().session.design().title, "Mine");
}

#[test]
fn it_leads_into_the_guide() {
    let config = tempfile::tempdir().unwrap();
    let mut harness = started(config.path(), SIZE);
    reach(&mut harness, Key::Tab, "A short guide");
    press(&mut harness, Key::Enter);
    harness.run();
    assert_eq!((harness.state().view.guide, is_welcome(&harness)), (Some(0), false));
    assert_eq!(focused(&harness), "Next step of the guide");
}

/// WCAG 2.2, 2.4.7 and 2.4.11: whatever the Tab key reaches comes into sight, also where the welcome scrolls.
#[test]
fn every_tile_is_reached_by_the_tab_key_and_comes_into_sight() {
    for size in SIZES {
        let config = tempfile::tempdir().unwrap();
        let mut harness = started(config.path(), size);
        assert_eq!(harness.state().view.help, Some(HelpCard::Welcome));
        let mut seen = std::collections::BTreeSet::new();
        for _ in 0..14 {
            let id = harness.ctx.memory(egui::Memory::focused).unwrap();
            let response = harness.ctx.read_response(id).unwrap();
            let window = Rect::from_min_size(egui::Pos2::ZERO, vec2(size[0], size[1]));
            let (visible, whole) = (response.interact_rect, response.rect);
            let name = focused(&harness);
            assert!(window.contains_rect(visible), "{size:?} {name}: {visible:?}");
            assert!(visible.height() >= whole.height().min(100.0) - 1.0, "{size:?} {name}: {visible:?} of {whole:?}");
            seen.insert(name);
            press(&mut harness, Key::Tab);
        }
        assert_eq!(seen.iter().filter(|name| name.starts_with("Example: ")).count(), EXAMPLES.len(), "{size:?} {seen:?}");
        assert!(seen.contains("Close"), "{size:?} {seen:?}");
    }
}

/// Only when it is first shown, and never again for each drawing.
#[test]
fn the_examples_are_not_calculated_before_it_is_shown() {
    let mut harness = shown_window(Window::plain(example("first-vat"), stopped()), SIZE, Theme::Light);
    harness.run();
    assert!(!harness.state().is_busy());
    harness.state_mut().view.help = Some(HelpCard::Welcome);
    harness.step();
    assert!(harness.state().is_busy());
    settled(&mut harness);
    press(&mut harness, Key::Escape);
    from_menu(&mut harness, "Welcome");
    assert!(!harness.state().is_busy());
    assert!(harness.query_all_by_label_contains("cheeses of").count() >= EXAMPLES.len());
}
