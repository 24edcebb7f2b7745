//! The keyboard: whatever gets the focus is in sight and has a role and a name, and the focus is never lost.
//!
//! WCAG 2.2: 2.1.1 keyboard, 2.1.2 no trap, 2.4.3 order, 2.4.7 and 2.4.11 the focus in sight, 4.1.2 name, role, value.

use crate::ui::{about_second, example, shown};
use egui::accesskit::Role;
use egui::{Key, Modifiers, Rect, Theme};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use std::collections::BTreeSet;
use vatsketch::design::{Stage, Value};
use vatsketch::session::Command;
use vatsketch::ui::{Page, PlanPart, Window};

const SIZE: [f32; 2] = [1296.0, 816.0];
/// Tab presses at most: enough to go round the smaller pages, and far down the long ones.
const MANY: usize = 80;

struct Focused {
    role: Role,
    name: String,
    rect: Rect,
}

fn focused(harness: &Harness<'_, Window>) -> Option<Focused> {
    let id = harness.ctx.memory(egui::Memory::focused)?;
    let rect = harness.ctx.read_response(id)?.rect;
    let node = harness.root().children_recursive().find(|node| node.accesskit_node().is_focused())?;
    let node = node.accesskit_node();
    let name = node.label().or_else(|| node.value()).unwrap_or_default();
    Some(Focused { role: node.role(), name, rect })
}

fn press(harness: &mut Harness<'_, Window>, modifiers: Modifiers, key: Key) {
    harness.key_press_modifiers(modifiers, key);
    // Scrolling into sight takes some drawings.
    harness.run();
}

/// Where the focus must be seen: between the top bar and the foot, or in one of them.
fn in_sight(harness: &Harness<'_, Window>, size: [f32; 2], rect: Rect) -> bool {
    let window = Rect::from_min_size(egui::Pos2::ZERO, egui::vec2(size[0], size[1]));
    let id = harness.ctx.memory(egui::Memory::focused).unwrap();
    let visible = harness.ctx.read_response(id).unwrap().interact_rect;
    // What is larger than its room shows as much as fits.
    window.contains_rect(visible) && visible.height() >= rect.height().min(24.0) - 1.0 && visible.width() > 8.0
}

fn page(page: Page, part: PlanPart, size: [f32; 2]) -> Harness<'static, Window> {
    let mut harness = shown(example("warm-cabinet"), size, Theme::Light);
    harness.state_mut().view.page = page;
    harness.state_mut().view.plan_part = part;
    crate::ui::settled(&mut harness);
    harness
}

#[test]
fn whatever_gets_the_focus_is_in_sight_and_has_a_role_and_a_name() {
    let pages = [
        (Page::Design, PlanPart::Week),
        (Page::Plan, PlanPart::Week),
        (Page::Plan, PlanPart::Shopping),
        (Page::Plan, PlanPart::Paper),
        (Page::Sources, PlanPart::Week),
    ];
    for (size, rounds) in [(SIZE, MANY), ([656.0, 496.0], 24)] {
        for (shown_page, part) in pages {
            let mut harness = page(shown_page, part, size);
            let mut names = BTreeSet::new();
            for round in 0..rounds {
                harness.key_press_modifiers(Modifiers::NONE, Key::Tab);
                // One drawing moves the focus, the next scrolls it into sight.
                harness.run_steps(3);
                // From the last control the focus leaves the window once, for those who come from another.
                let Some(now) = focused(&harness) else { continue };
                let what =
                    format!("{shown_page:?} {part:?} {size:?}, Tab {round}: {:?} “{}” at {:?}", now.role, now.name, now.rect);
                assert!(in_sight(&harness, size, now.rect), "not in sight: {what}");
                assert!(!now.name.is_empty(), "no name: {what}");
                assert!(!matches!(now.role, Role::Unknown | Role::GenericContainer), "no role: {what}");
                if !names.insert((now.name.clone(), now.rect.left() as i32)) && now.name == "File" && round > 3 {
                    break;
                }
            }
            assert!(names.len() > 4, "{shown_page:?} {part:?}: {names:?}");
        }
    }
}

#[test]
fn a_row_of_choices_is_one_stop_and_arrows_move_in_it() {
    let mut harness = page(Page::Design, PlanPart::Week, SIZE);
    harness.get_by_label("Kind of milk: Cow").focus();
    harness.run();
    press(&mut harness, Modifiers::NONE, Key::ArrowRight);
    let kind = harness.state().session.design().milk.milk_kind;
    assert_ne!(kind, vatsketch::design::MilkKind::Cow);
    let now = focused(&harness).unwrap();
    assert!(now.role == Role::RadioButton && now.name.starts_with("Kind of milk: "), "{}", now.name);
    press(&mut harness, Modifiers::NONE, Key::ArrowLeft);
    assert_eq!(harness.state().session.design().milk.milk_kind, vatsketch::design::MilkKind::Cow);
    press(&mut harness, Modifiers::NONE, Key::Tab);
    assert!(!focused(&harness).unwrap().name.starts_with("Kind of milk: "));
}

#[test]
fn a_station_takes_the_focus_to_its_first_choice() {
    for (key, stage) in [Key::Num1, Key::Num2, Key::Num3, Key::Num4, Key::Num5, Key::Num6, Key::Num7].into_iter().zip(Stage::ALL) {
        let mut harness = page(Page::Plan, PlanPart::Week, SIZE);
        press(&mut harness, Modifiers::COMMAND, key);
        harness.run();
        assert_eq!((harness.state().view.page, harness.state().view.station), (Page::Design, stage));
        let first = vatsketch::design::fields()
            .filter(|field| !vatsketch::design::BEFORE_BUYING.iter().any(|(key, _)| *key == field.key))
            .find(|field| field.stage == stage && (field.used)(harness.state().session.design()))
            .unwrap();
        let now = focused(&harness).unwrap_or_else(|| panic!("{stage:?}: nothing has the focus"));
        assert!(now.name.contains(first.label), "{stage:?}: {} instead of {}", now.name, first.label);
        assert!(in_sight(&harness, SIZE, now.rect), "{stage:?}");
    }
}

#[test]
fn f6_goes_through_the_parts_of_the_window_and_back() {
    let mut harness = page(Page::Design, PlanPart::Week, SIZE);
    press(&mut harness, Modifiers::NONE, Key::F10);
    assert_eq!(focused(&harness).unwrap().name, "File");
    let mut lefts = Vec::new();
    for _ in 0..6 {
        press(&mut harness, Modifiers::NONE, Key::F6);
        lefts.push(focused(&harness).unwrap().name);
    }
    assert_eq!(lefts[5], "File", "round: {lefts:?}");
    press(&mut harness, Modifiers::SHIFT, Key::F6);
    assert_eq!(focused(&harness).unwrap().name, lefts[4]);
}

#[test]
fn what_comes_in_front_gets_the_focus_and_gives_it_back() {
    let mut harness = page(Page::Design, PlanPart::Week, SIZE);
    about_second(&mut harness, "The same vat from sheep's milk");
    harness.get_by_role_and_label(Role::Slider, "Milk").focus();
    harness.run();
    press(&mut harness, Modifiers::NONE, Key::F1);
    assert_eq!(focused(&harness).unwrap().name, "The keys");
    press(&mut harness, Modifiers::NONE, Key::Escape);
    harness.run();
    assert_eq!(focused(&harness).unwrap().name, "Milk");
    press(&mut harness, Modifiers::COMMAND, Key::N);
    assert_eq!(focused(&harness).unwrap().name, "Save");
    press(&mut harness, Modifiers::NONE, Key::Escape);
    harness.run();
    assert_eq!(focused(&harness).unwrap().name, "Milk");
}

#[test]
fn enter_and_escape_leave_the_focus_in_the_box() {
    let mut harness = page(Page::Design, PlanPart::Week, SIZE);
    for key in [Key::Enter, Key::Escape] {
        harness.get_by_role_and_label(Role::TextInput, "Milk").focus();
        harness.run();
        press(&mut harness, Modifiers::COMMAND, Key::A);
        harness.get_by_role_and_label(Role::TextInput, "Milk").type_text("7");
        harness.run();
        press(&mut harness, Modifiers::NONE, key);
        harness.run();
        let now = focused(&harness).unwrap_or_else(|| panic!("lost by {key:?}"));
        assert_eq!((now.role, now.name.as_str()), (Role::TextInput, "Milk"));
    }
    assert_eq!(harness.state().session.design().milk.milk_l, 7.0, "Enter took it, Escape did not take it back");
}

#[test]
fn keys_of_a_slider_pin_it_and_take_it_back_to_the_default() {
    let mut harness = page(Page::Design, PlanPart::Week, SIZE);
    harness.get_by_role_and_label(Role::Slider, "Milk").focus();
    harness.run();
    press(&mut harness, Modifiers::NONE, Key::P);
    assert!(harness.state().session.pins().contains("milk_l"));
    press(&mut harness, Modifiers::NONE, Key::ArrowRight);
    assert_ne!(harness.state().session.design().milk.milk_l, 6.0);
    press(&mut harness, Modifiers::NONE, Key::Delete);
    assert_eq!(harness.state().session.design().milk.milk_l, 6.0);
}

#[test]
fn arrows_go_through_a_menu_and_from_one_to_the_next() {
    let mut harness = page(Page::Design, PlanPart::Week, SIZE);
    press(&mut harness, Modifiers::NONE, Key::F10);
    press(&mut harness, Modifiers::NONE, Key::Enter);
    harness.run();
    harness.get_by_label_contains("Open an example");
    press(&mut harness, Modifiers::NONE, Key::ArrowDown);
    harness.run();
    assert_eq!(focused(&harness).unwrap().role, Role::MenuItem);
    press(&mut harness, Modifiers::NONE, Key::ArrowRight);
    harness.run();
    assert!(harness.query_all_by_label_contains("Nothing to undo").count() > 0, "the menu Edit");
    press(&mut harness, Modifiers::NONE, Key::Escape);
    harness.run();
    assert_eq!(focused(&harness).unwrap().name, "Edit");
}

/// Headings, named parts, a table with rows and cells, words that are said by themselves.
#[test]
fn a_reader_of_the_screen_finds_parts_headings_tables_and_news() {
    use egui::accesskit::Live;
    let mut harness = page(Page::Design, PlanPart::Week, SIZE);
    harness.get_by_label("Drying loss: show as a table").click_accesskit();
    harness.run();
    let mut seen = BTreeSet::new();
    let mut live = 0;
    for node in harness.root().children_recursive() {
        let node = node.accesskit_node();
        seen.insert(format!("{:?}", node.role()));
        live += usize::from(node.live() == Live::Polite);
    }
    for role in
        ["MenuBar", "MenuItem", "Navigation", "Region", "Heading", "RadioGroup", "Table", "Row", "Cell", "ColumnHeader", "Slider"]
    {
        assert!(seen.contains(role), "no {role} among {seen:?}");
    }
    assert!(live >= 2, "the last change and the cautions");
    let slider = harness.get_by_role_and_label(Role::Slider, "Milk");
    assert_eq!(slider.accesskit_node().value().as_deref(), Some("6 L"));
}

/// WCAG 2.2, 2.5.8: what is pressed is at least 24 by 24 points.
#[test]
fn what_is_pressed_is_large_enough() {
    for (shown_page, part) in [
        (Page::Design, PlanPart::Week),
        (Page::Plan, PlanPart::Week),
        (Page::Plan, PlanPart::Shopping),
        (Page::Plan, PlanPart::Paper),
    ] {
        let mut harness = page(shown_page, part, SIZE);
        if shown_page == Page::Design {
            about_second(&mut harness, "The same vat from sheep's milk");
            harness.state_mut().session.apply(vatsketch::session::Command::SetTitle("B".into())).unwrap();
            harness.run();
        }
        for node in harness.root().children_recursive() {
            let node = node.accesskit_node();
            let Some(bounds) = node.raw_bounds() else { continue };
            let pressed = matches!(
                node.role(),
                Role::Button | Role::RadioButton | Role::CheckBox | Role::MenuItem | Role::Slider | Role::TextInput
            );
            if pressed && !node.is_disabled() {
                let name = node.label().unwrap_or_default();
                assert!(bounds.width() >= 23.9 && bounds.height() >= 23.9, "{shown_page:?} {part:?}: “{name}” is {bounds:?}");
            }
        }
    }
}

/// Twice as large, and in a window that is low: no menu leads out of the window.
#[test]
fn every_entry_of_every_menu_can_be_reached_at_two_hundred_per_cent() {
    for menu in ["File", "Edit", "Compare", "View", "Help"] {
        let size = [656.0, 416.0];
        let mut harness = page(Page::Design, PlanPart::Week, size);
        harness.state_mut().session.apply(vatsketch::session::Command::SetTitle("May".into())).unwrap();
        harness.run();
        harness.get_by_label(menu).click();
        harness.run();
        let mut seen = BTreeSet::new();
        for _ in 0..30 {
            press(&mut harness, Modifiers::NONE, Key::ArrowDown);
            harness.run();
            let Some(now) = focused(&harness) else { continue };
            if now.name == menu {
                continue;
            }
            assert!(in_sight(&harness, size, now.rect), "{menu}: “{}” is at {:?}", now.name, now.rect);
            seen.insert(now.name);
        }
        assert!(!seen.is_empty(), "{menu}");
    }
}

/// WCAG 2.2, 1.3.2: a row of a number is read in the order in which it is seen.
#[test]
fn a_number_row_is_read_from_left_to_right() {
    let mut session = example("warm-cabinet");
    session.apply(Command::SetInput { key: "milk_l", value: Value::Number(7.0) }).unwrap();
    let mut harness = shown(session, SIZE, Theme::Light);
    harness.run();
    let parts: Vec<(String, f64)> = harness
        .root()
        .children_recursive()
        .map(|node| node.accesskit_node())
        .filter(|node| matches!(node.role(), Role::Button | Role::CheckBox | Role::TextInput))
        .filter_map(|node| {
            let name = node.label().or_else(|| node.labelled_by().find_map(|label| label.value())).unwrap_or_default();
            let place = node.raw_bounds().map_or(f64::NAN, |bounds| bounds.x0);
            (name == "Milk" || name.starts_with("Milk: back to") || name.starts_with("Milk: pin")).then_some((name, place))
        })
        .collect();
    assert_eq!(parts.len(), 3, "{parts:?}");
    assert!(parts.is_sorted_by(|before, after| before.1 < after.1), "{parts:?}");
}
