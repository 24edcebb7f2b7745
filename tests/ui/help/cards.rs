//! The words, what is new and the keys, from the menu of help.

use super::{SIZE, SIZES, focused, from_menu, press};
use crate::ui::{example, shown};
use egui::accesskit::Role;
use egui::{Key, Theme};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use vatsketch::ui::Window;
use vatsketch::words::{changes, terms};

fn first() -> Harness<'static, Window> {
    shown(example("warm-cabinet"), SIZE, Theme::Light)
}

#[test]
fn the_words_are_filtered_by_what_is_typed() {
    let mut harness = first();
    from_menu(&mut harness, "Words of the trade");
    harness.get_by_label_contains(&format!("{0} of {0} words", terms().len()));
    assert_eq!(focused(&harness), "Search", "the box has the focus");
    harness.get_by_role_and_label(Role::TextInput, "Search").type_text("rennet");
    harness.run();
    harness.get_by_label("Rennet");
    harness.get_by_label("Casein");
    assert!(harness.query_by_label("Tray").is_none());
    press(&mut harness, Key::Escape);
    assert!(harness.query_by_label("Rennet").is_none(), "Escape closes it");
}

#[test]
fn a_word_that_is_nowhere_says_so() {
    let mut harness = first();
    from_menu(&mut harness, "Words of the trade");
    harness.get_by_role_and_label(Role::TextInput, "Search").type_text("gooseberry");
    harness.run();
    harness.get_by_label("No word has these letters: try fewer.");
    harness.get_by_label("Close").click();
    harness.run();
    assert!(harness.query_by_label("Close").is_none());
}

#[test]
fn what_is_new_begins_with_the_newest() {
    let mut harness = first();
    from_menu(&mut harness, "What is new");
    let newest = &changes()[0];
    let heading = harness.get_by_role_and_label(Role::Heading, &newest.heading).rect();
    assert!(heading.top() > 0.0 && heading.bottom() < SIZE[1], "it is in sight: {heading:?}");
    harness.get_by_label(&newest.items[0]);
    assert_eq!(focused(&harness), "The changes", "the keys scroll it");
}

#[test]
fn the_keys_are_in_the_menu_of_help_and_still_under_f1() {
    let mut harness = first();
    from_menu(&mut harness, "Keyboard shortcuts");
    harness.get_by_role_and_label(Role::Heading, "Keyboard shortcuts");
    press(&mut harness, Key::F1);
    assert!(harness.query_by_role_and_label(Role::Heading, "Keyboard shortcuts").is_none());
}

#[test]
fn every_card_fits_into_the_window() {
    for size in SIZES {
        let mut harness = shown(example("warm-cabinet"), size, Theme::Light);
        for entry in ["Words of the trade", "What is new", "Keyboard shortcuts", "Welcome"] {
            from_menu(&mut harness, entry);
            crate::ui::settled(&mut harness);
            let heading = harness.get_by_role_and_label(Role::Heading, entry).rect();
            let close = harness.get_by_label("Close").rect();
            assert!(heading.top() > 0.0 && heading.left() > 0.0, "{size:?} {entry}: {heading:?}");
            assert!(close.bottom() < size[1] && close.right() < size[0], "{size:?} {entry}: {close:?}");
            press(&mut harness, Key::Escape);
        }
    }
}

/// The bar of 720 points has room for five menus, a title, and the pages at its right end.
#[test]
fn menus_title_and_pages_stand_next_to_each_other_in_the_bar() {
    for width in [1296.0, 1016.0, 736.0] {
        let mut harness = shown(example("warm-cabinet"), [width, 716.0], Theme::Light);
        harness.state_mut().session.apply(vatsketch::session::Command::SetTitle("A longer title than fits".into())).unwrap();
        harness.run();
        let menus = ["File", "Edit", "Compare", "View", "Help"].map(|name| harness.get_by_label(name).rect());
        let title = harness.get_by_role_and_label(Role::TextInput, "Title of the design").rect();
        let mark = harness.get_by_label("Unsaved changes").rect();
        let pages = ["Page Design", "Page Plan", "Page Log", "Page Sources"].map(|name| harness.get_by_label(name).rect());
        // In a narrow window the title has a row of its own below the bar.
        let in_bar = Some(title).filter(|title| title.top() < mark.bottom());
        assert_eq!(in_bar.is_some(), width > 780.0, "{width}: {title:?}");
        let all: Vec<egui::Rect> = menus.into_iter().chain(in_bar).chain([mark]).chain(pages).collect();
        assert!(all.windows(2).all(|pair| pair[0].right() <= pair[1].left() + 0.5), "{width}: {all:?}");
        assert!(all.iter().all(|rect| rect.right() <= width - 8.0), "{width}: {all:?}");
        assert!(title.width() >= 90.0, "{width}: {title:?}");
    }
}
