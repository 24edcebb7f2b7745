//! The guide goes to the place that it speaks of, and can be left at any time.

use super::{SIZE, SIZES, focused, from_menu, press};
use crate::ui::{example, settled, shown};
use egui::accesskit::Role;
use egui::{Key, Theme};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use vatsketch::design::Stage;
use vatsketch::ui::{Page, Window};
use vatsketch::words::{GUIDE, GuidePlace, step_words};

fn begun(size: [f32; 2]) -> Harness<'static, Window> {
    let mut harness = shown(example("warm-cabinet"), size, Theme::Light);
    from_menu(&mut harness, "A short guide");
    harness
}

fn heading(number: usize) -> String {
    format!("{} of {}: {}", number + 1, GUIDE.len(), GUIDE[number].title)
}

/// Where the window is while the guide speaks of a place.
fn expected(place: GuidePlace) -> Page {
    match place {
        GuidePlace::Plan => Page::Plan,
        GuidePlace::Log => Page::Log,
        GuidePlace::Sources => Page::Sources,
        _ => Page::Design,
    }
}

#[test]
fn each_step_brings_its_place_into_sight_and_enter_goes_on() {
    let mut harness = begun(SIZE);
    for (number, step) in GUIDE.iter().enumerate() {
        settled(&mut harness);
        harness.get_by_role_and_label(Role::Heading, &heading(number));
        harness.get_by_label(&step_words(step));
        assert_eq!(harness.state().view.page, expected(step.place), "{}", step.title);
        let station = harness.state().view.station;
        match step.place {
            GuidePlace::BeforeBuying => assert_eq!(station, Stage::Milk),
            GuidePlace::Curve | GuidePlace::Results => assert_eq!(station, Stage::Drying),
            _ => {}
        }
        assert_eq!(focused(&harness), if number + 1 == GUIDE.len() { "Finish the guide" } else { "Next step of the guide" });
        press(&mut harness, Key::Enter);
    }
    assert_eq!(harness.state().view.guide, None);
    assert!(harness.query_by_label("Leave the guide").is_none());
}

#[test]
fn it_goes_back_and_is_left_by_escape_or_by_its_button() {
    let mut harness = begun(SIZE);
    harness.get_by_label("Next step of the guide").click();
    harness.run();
    harness.get_by_role_and_label(Role::Heading, &heading(1));
    harness.get_by_label("Step back in the guide").click();
    harness.run();
    harness.get_by_role_and_label(Role::Heading, &heading(0));
    press(&mut harness, Key::Escape);
    assert!(harness.query_by_role_and_label(Role::Heading, &heading(0)).is_none());
    from_menu(&mut harness, "A short guide");
    harness.get_by_label("Leave the guide").click();
    harness.run();
    assert_eq!(harness.state().view.guide, None);
}

#[test]
fn the_window_can_be_used_while_it_is_on() {
    let mut harness = begun(SIZE);
    harness.get_by_role_and_label(Role::Slider, "Fat target").set_value_accesskit(5.0);
    harness.run();
    assert_eq!(harness.state().session.design().milk.fat_target_percent, 5.0);
    harness.get_by_label("Page Plan").click();
    settled(&mut harness);
    assert_eq!((harness.state().view.page, harness.state().view.guide), (Page::Plan, Some(0)));
    // The card of a figure is in front of it: Escape closes that first.
    harness.get_by_label("Page Design").click();
    harness.run();
    harness.state_mut().view.card = Some(vatsketch::ui::CardView::of("drying_loss_percent"));
    harness.run();
    press(&mut harness, Key::Escape);
    assert_eq!((harness.state().view.card.is_none(), harness.state().view.guide), (true, Some(0)));
    press(&mut harness, Key::Escape);
    assert_eq!(harness.state().view.guide, None);
}

#[test]
fn it_goes_on_where_another_design_is_opened() {
    let mut harness = begun(SIZE);
    harness.get_by_label("Next step of the guide").click();
    harness.run();
    harness.key_press_modifiers(egui::Modifiers::COMMAND, Key::N);
    harness.run();
    if harness.query_by_label("Discard").is_some() {
        harness.get_by_label("Discard").click();
        harness.run();
    }
    assert_eq!(harness.state().view.guide, Some(1));
}

/// In one column the curve comes into sight too, and the choices that are not always there.
#[test]
fn in_one_column_it_scrolls_to_what_it_speaks_of() {
    let mut harness = begun([736.0, 916.0]);
    for step in GUIDE.iter().take_while(|step| expected(step.place) == Page::Design) {
        settled(&mut harness);
        let seen = match step.place {
            GuidePlace::BeforeBuying => harness.get_by_role_and_label(Role::Slider, "Milk").rect(),
            GuidePlace::Curve => harness.get_by_label("Moisture while drying: show as a table").rect(),
            GuidePlace::Results => harness.query_all_by_label_contains("What would lift this?").next().unwrap().rect(),
            _ => {
                press(&mut harness, Key::Enter);
                continue;
            }
        };
        let strip = harness.get_by_label("Leave the guide").rect();
        assert!(seen.top() > 48.0 && seen.bottom() < strip.top(), "{}: {seen:?} above {strip:?}", step.title);
        press(&mut harness, Key::Enter);
    }
}

/// It stands in a strip of its own, so that it hides nothing.
#[test]
fn its_words_and_buttons_fit_in_every_size() {
    for size in SIZES {
        let mut harness = begun(size);
        for (number, step) in GUIDE.iter().enumerate() {
            settled(&mut harness);
            let title = harness.get_by_role_and_label(Role::Heading, &heading(number)).rect();
            let words = harness.get_by_label(&step_words(step)).rect();
            let leave = harness.get_by_label("Leave the guide").rect();
            let foot = harness.get_by_label_contains("Last change: ").rect();
            assert!(title.right() <= leave.left(), "{size:?} {}: {title:?} and {leave:?}", step.title);
            assert!(title.bottom() <= words.top() + 4.0, "{size:?} {}: {title:?} and {words:?}", step.title);
            assert!(words.bottom() <= foot.top(), "{size:?} {}: {words:?} and {foot:?}", step.title);
            press(&mut harness, Key::Enter);
        }
    }
}
