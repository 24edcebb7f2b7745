//! The page of the plan, used by accessible label.

use crate::ui::{example, settled, shown};
use egui::accesskit::Role;
use egui::{OutputCommand, Theme};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use vatsketch::export::text;
use vatsketch::report::plan;
use vatsketch::ui::Window;

fn plan_page() -> Harness<'static, Window> {
    let mut harness = shown(example("warm-cabinet"), [1296.0, 816.0], Theme::Light);
    harness.get_by_label("Page Plan").click();
    settled(&mut harness);
    harness.get_by_label("Plan: Paper").click();
    settled(&mut harness);
    harness
}

#[test]
fn the_plan_is_copied_as_text() {
    let mut harness = plan_page();
    harness.get_by_label("Copy as text").click();
    harness.step();
    let commands = &harness.output().platform_output.commands;
    let wanted = text(&plan(harness.state().session.batch()));
    assert!(commands.iter().any(|command| matches!(command, OutputCommand::CopyText(copied) if *copied == wanted)), "{commands:?}");
    assert!(harness.state().session.last_change.contains("clipboard"));
}

#[test]
fn every_control_of_the_page_has_a_name_and_is_large_enough_to_hit() {
    let harness = plan_page();
    for label in ["Paper A4", "Paper Letter", "Save as PDF…", "Print…", "Copy as text"] {
        let place = harness.get_by_label(label).rect();
        // WCAG 2.2, 2.5.8: a target is at least 24 by 24 pixels.
        assert!(place.width() >= 24.0 && place.height() >= 24.0, "{label}: {place:?}");
    }
    for node in harness.root().children_recursive() {
        let node = node.accesskit_node();
        if matches!(node.role(), Role::Button | Role::RadioButton | Role::Image) {
            assert!(node.label().is_some_and(|label| !label.is_empty()), "a {:?} has no name", node.role());
        }
    }
}

#[cfg(not(feature = "paper"))]
#[test]
fn a_program_without_paper_says_so_and_still_copies_text() {
    let harness = plan_page();
    harness.get_by_label_contains("built without paper");
    assert!(harness.get_by_label("Print…").accesskit_node().is_disabled());
    assert!(!harness.get_by_label("Copy as text").accesskit_node().is_disabled());
}

#[cfg(feature = "paper")]
mod with_paper {
    use super::*;
    use vatsketch::export::{Paper, pages};

    /// Returns how many pages are on show.
    fn page_count(harness: &Harness<'_, Window>) -> usize {
        harness
            .query_all_by_role(Role::Image)
            .filter(|node| node.accesskit_node().label().is_some_and(|label| label.starts_with("Page ")))
            .count()
    }

    #[test]
    fn it_says_that_it_is_drawing_and_then_shows_every_page() {
        let mut harness = shown(example("warm-cabinet"), [1296.0, 816.0], Theme::Light);
        harness.get_by_label("Page Plan").click();
        harness.run();
        harness.get_by_label("Plan: Paper").click();
        harness.step();
        harness.step();
        harness.get_by_label_contains("Drawing the plan…");
        assert!(harness.state().is_busy());
        settled(&mut harness);
        assert!(harness.query_by_label_contains("Drawing the plan…").is_none());
        let wanted = pages(&plan(harness.state().session.batch()), &Paper::A4.into(), 1.0).unwrap().len();
        assert_eq!(page_count(&harness), wanted);
    }

    #[test]
    fn a_part_is_printed_behind_the_two_pages_once_it_is_asked_for() {
        let mut harness = plan_page();
        assert_eq!(page_count(&harness), 2);
        for (label, count) in [("Shopping list", 3), ("Jar labels", 4), ("Shopping list", 3)] {
            harness.get_by_label(&format!("Print with the plan: {label}")).click();
            settled(&mut harness);
            assert_eq!(page_count(&harness), count, "{label}");
        }
    }

    #[test]
    fn another_paper_has_another_shape() {
        let mut harness = plan_page();
        let shape = |harness: &Harness<'_, Window>| {
            let place = harness.get_by_label_contains("Page 1 of").rect();
            place.height() / place.width()
        };
        // ISO 216: A4 is 297 by 210 mm. A pixel of rounding and the frame's line are 0.5 %.
        assert!((shape(&harness) - 297.0 / 210.0).abs() < 0.01, "{}", shape(&harness));
        harness.get_by_label("Paper Letter").click();
        settled(&mut harness);
        // ANSI/ASME Y14.1: Letter is 11 by 8.5 in.
        assert!((shape(&harness) - 11.0 / 8.5).abs() < 0.01, "{}", shape(&harness));
    }

    #[test]
    fn a_change_while_it_is_drawn_is_drawn_in_the_end() {
        let mut harness = plan_page();
        let before = harness.render().unwrap();
        for title in ["First thought", "Second thought"] {
            harness.state_mut().session.apply(vatsketch::session::Command::SetTitle(title.to_owned())).unwrap();
            harness.step();
        }
        harness.get_by_label_contains("Below is the plan before the change");
        settled(&mut harness);
        let twice = harness.render().unwrap();
        assert!(before != twice, "the title is another");
        // The same as if it had been drawn once, with the last title: no answer to an older question is shown.
        let mut once = shown(example("warm-cabinet"), [1296.0, 816.0], Theme::Light);
        once.state_mut().session.apply(vatsketch::session::Command::SetTitle("Second thought".to_owned())).unwrap();
        once.get_by_label("Page Plan").click();
        settled(&mut once);
        once.get_by_label("Plan: Paper").click();
        settled(&mut once);
        let page = |harness: &Harness<'_, Window>| {
            harness.get_by_label_contains("Page 1 of").rect().intersect(egui::Rect::from_x_y_ranges(0.0..=1296.0, 0.0..=720.0))
        };
        assert_eq!(page(&harness), page(&once));
        let cut = |picture: &image::RgbaImage, place: egui::Rect| {
            image::imageops::crop_imm(picture, place.left() as u32, place.top() as u32, place.width() as u32, place.height() as u32)
                .to_image()
        };
        let place = page(&once);
        assert!(cut(&twice, place) == cut(&once.render().unwrap(), place), "an older drawing is on show");
    }

    #[test]
    fn nothing_is_drawn_while_the_page_is_out_of_sight() {
        let mut harness = plan_page();
        harness.get_by_label("Page Design").click();
        harness.run();
        harness.get_by_role_and_label(Role::Slider, "Fat target").set_value_accesskit(5.0);
        harness.run();
        assert!(!harness.state().is_busy());
    }

    /// In a window of the tests no viewer is called, as on a system that has none.
    #[test]
    fn printing_without_a_viewer_says_where_the_plan_is() {
        let mut harness = plan_page();
        harness.get_by_label("Print…").click();
        settled(&mut harness);
        let notice = harness.get_by_label_contains("No PDF viewer could be started");
        let words = notice.accesskit_node().label().or_else(|| notice.accesskit_node().value()).unwrap();
        let path = words.split("The plan is in ").nth(1).unwrap().split(": open it from there").next().unwrap();
        assert!(std::fs::read(path).unwrap().starts_with(b"%PDF-"), "{path}");
        let folder = std::path::Path::new(path).parent().unwrap();
        #[cfg(unix)]
        {
            use std::os::unix::fs::PermissionsExt;
            let mode = std::fs::metadata(folder).unwrap().permissions().mode();
            assert_eq!(mode & 0o077, 0, "others may look into {}", folder.display());
        }
        std::fs::remove_dir_all(folder).unwrap();
    }

    /// Asks for the plan as PDF at a path that is typed.
    fn save_to(harness: &mut Harness<'_, Window>, path: &std::path::Path) {
        harness.get_by_label("Save as PDF…").click();
        harness.run();
        let label = crate::ui::PATH;
        harness.get_by_role_and_label(Role::TextInput, label).focus();
        harness.run();
        harness.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::A);
        harness.run();
        harness.get_by_role_and_label(Role::TextInput, label).type_text(path.to_str().unwrap());
        harness.run();
        harness.get_by_label("Save").click();
        harness.step();
    }

    #[test]
    fn a_plan_is_saved_in_the_background_and_the_window_says_when_it_is_done() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("vat.pdf");
        let mut harness = plan_page();
        save_to(&mut harness, &path);
        assert!(harness.state().is_busy(), "it is set on the window's own thread");
        settled(&mut harness);
        assert!(harness.state().session.last_change.contains("vat.pdf"), "{}", harness.state().session.last_change);
        let state = harness.state();
        let wanted = vatsketch::export::pdf(&plan(state.session.batch()), &state.view.sheets()).unwrap();
        assert!(std::fs::read(&path).unwrap() == wanted);
        assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 1, "nothing else is left beside it");
    }

    #[test]
    fn a_plan_that_cannot_be_saved_says_why_and_leaves_nothing_behind() {
        let folder = tempfile::tempdir().unwrap();
        let mut harness = plan_page();
        save_to(&mut harness, &folder.path().join("missing").join("vat.pdf"));
        settled(&mut harness);
        harness.get_by_label_contains("there is no folder");
        assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 0);
    }

    #[test]
    fn a_window_that_closes_while_a_plan_is_saved_still_saves_it() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("vat.pdf");
        let mut harness = plan_page();
        save_to(&mut harness, &path);
        drop(harness);
        assert!(std::fs::read(&path).unwrap().starts_with(b"%PDF-"));
    }
}

/// The picture is drawn in the background, and is there when it is said to be.
#[cfg(feature = "paper")]
#[test]
fn a_curve_is_copied_as_a_picture() {
    let mut harness = shown(example("warm-cabinet"), [1296.0, 816.0], Theme::Light);
    harness.get_by_label("Warming: copy as a picture").click_accesskit();
    harness.step();
    for _ in 0..6000 {
        let copied = harness.output().platform_output.commands.iter().find_map(|command| match command {
            OutputCommand::CopyImage(picture) => Some(picture.size),
            _ => None,
        });
        if let Some([wide, high]) = copied {
            assert!(wide > 2000 && high > 500, "{wide} × {high}");
            assert!(harness.state().session.last_change.contains("was copied as a picture"));
            return;
        }
        std::thread::sleep(std::time::Duration::from_millis(10));
        harness.step();
    }
    panic!("no picture came");
}
