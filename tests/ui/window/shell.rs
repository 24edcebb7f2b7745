//! The window, used by accessible label.

use crate::ui::{example, shown, type_path};
use egui::accesskit::Role;
use egui::{Key, Modifiers, Theme};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use vatsketch::design::{Design, Stage};
use vatsketch::session::Session;
use vatsketch::ui::Window;
use vatsketch::units::{Temperatures, Units};

const SIZE: [f32; 2] = [1296.0, 816.0];

fn first() -> Harness<'static, Window> {
    shown(example("warm-cabinet"), SIZE, Theme::Light)
}

fn cream_g(harness: &Harness<'_, Window>) -> f64 {
    harness.state().session.batch().milk.done().unwrap().cream_g
}

fn box_of<'a>(harness: &'a Harness<'_, Window>, label: &'a str) -> egui_kittest::Node<'a> {
    harness.get_by_role_and_label(Role::TextInput, label)
}

/// Types into the box of an input, in place of what stands there.
fn type_into(harness: &mut Harness<'_, Window>, label: &str, text: &str) {
    box_of(harness, label).focus();
    harness.run();
    box_of(harness, label).type_text(text);
    harness.run();
}

#[test]
fn moving_the_fat_target_changes_the_cream() {
    let mut harness = first();
    let before = cream_g(&harness);
    harness.get_by_role_and_label(Role::Slider, "Fat target").set_value_accesskit(5.0);
    harness.run();
    assert_eq!(harness.state().session.design().milk.fat_target_percent, 5.0);
    assert!(cream_g(&harness) > before + 50.0, "{before} → {}", cream_g(&harness));
    assert!(harness.state().session.last_change.contains("Fat target"), "{}", harness.state().session.last_change);
}

#[test]
fn an_arrow_key_moves_the_rail_by_one_step() {
    let mut harness = first();
    harness.get_by_role_and_label(Role::Slider, "Fat target").focus();
    harness.run();
    harness.key_press(Key::ArrowRight);
    harness.run();
    assert!((harness.state().session.design().milk.fat_target_percent - 4.3).abs() < 1e-12);
    harness.key_press(Key::Home);
    harness.run();
    assert_eq!(harness.state().session.design().milk.fat_target_percent, 0.5);
}

#[test]
fn a_number_is_typed_with_a_comma_a_fraction_or_another_unit() {
    let mut harness = first();
    for (text, litres) in [("7,5", 7.5), ("6½", 6.5), ("10 cups", 2.365_882_365)] {
        type_into(&mut harness, "Milk", text);
        harness.key_press(Key::Enter);
        harness.run();
        let milk_l = harness.state().session.design().milk.milk_l;
        assert!((milk_l - litres).abs() < 1e-9, "{text} became {milk_l}");
    }
}

#[test]
fn escape_keeps_the_old_value() {
    let mut harness = first();
    type_into(&mut harness, "Milk", "9");
    harness.key_press(Key::Escape);
    harness.run();
    assert_eq!(harness.state().session.design().milk.milk_l, 6.0);
    assert!(!harness.state().session.is_dirty());
}

#[test]
fn a_refused_number_says_why_beside_the_field_and_changes_nothing() {
    let mut harness = first();
    type_into(&mut harness, "Milk", "900");
    harness.key_press(Key::Enter);
    harness.run();
    assert_eq!(harness.state().session.design().milk.milk_l, 6.0);
    harness.get_by_label_contains("must be from 0.5 to 60 L");
}

#[test]
fn drawing_changes_nothing() {
    for one in vatsketch::session::EXAMPLES {
        let mut harness = shown(example(one.name), SIZE, Theme::Dark);
        let before = harness.state().session.design().clone();
        harness.run_steps(5);
        assert_eq!(*harness.state().session.design(), before);
        assert!(!harness.state().session.is_dirty());
    }
}

#[test]
fn a_drag_is_one_step_and_ctrl_z_takes_it_back() {
    let mut harness = first();
    let rail = harness.get_by_role_and_label(Role::Slider, "Milk").rect();
    harness.drag_at(rail.center());
    harness.run();
    for share in [0.6, 0.65, 0.7] {
        harness.hover_at(egui::pos2(rail.left() + share * rail.width(), rail.center().y));
        harness.run();
    }
    harness.drop_at(egui::pos2(rail.left() + 0.75 * rail.width(), rail.center().y));
    harness.run();
    assert!(harness.state().session.design().milk.milk_l > 7.0);
    harness.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    harness.run();
    assert_eq!(harness.state().session.design().milk.milk_l, 6.0, "one step takes the whole drag back");
    assert!(harness.state().session.history().undo_name().is_none());
    harness.key_press_modifiers(Modifiers::COMMAND | Modifiers::SHIFT, Key::Z);
    harness.run();
    assert!(harness.state().session.design().milk.milk_l > 7.0);
}

#[test]
fn a_choice_brings_its_own_inputs() {
    let mut harness = first();
    assert!(harness.query_by_role_and_label(Role::Slider, "Fat on the carton").is_none());
    harness.get_by_label("Kind of milk: As on my carton").click();
    harness.run();
    harness.get_by_role_and_label(Role::Slider, "Fat on the carton");
}

#[test]
fn a_station_brings_its_controls_and_its_curve() {
    let mut harness = first();
    harness.get_by_label_contains("Drying: 0.84 kg").click();
    harness.run();
    assert_eq!(harness.state().view.station, Stage::Drying);
    harness.get_by_label("Moisture while drying");
    let rail = harness.get_by_role_and_label(Role::Slider, "Drying time").rect();
    assert!((150.0..720.0).contains(&rail.top()), "the controls of drying came into sight: {rail:?}");
}

#[test]
fn a_stage_that_fails_says_why_and_the_rest_stays() {
    let mut design = Design::default();
    design.draining.mould_count = 1;
    let harness = shown(Session::open(design, None).unwrap(), SIZE, Theme::Light);
    assert!(harness.query_all_by_label_contains("the curd does not fit").count() > 0);
    harness.get_by_label_contains("Warming: the milk is warm enough");
    harness.get_by_label_contains("No curve: waits for");
}

#[test]
fn both_main_curves_are_named_whatever_the_station() {
    for stage in Stage::ALL {
        let mut harness = first();
        harness.state_mut().view.station = stage;
        harness.run();
        harness.get_by_label_contains("Warming: the milk is warm enough");
        harness.get_by_label_contains("Drying loss: after 34 h");
    }
}

#[test]
fn a_curve_has_a_table() {
    let mut harness = first();
    harness.get_by_label("Drying loss: show as a table").click();
    harness.run();
    harness.get_by_label("drying time, h");
    harness.get_by_label("middle tray, %");
}

#[test]
fn a_caution_leads_to_the_input_that_causes_it() {
    let mut harness = first();
    // More than one caution may lead there; the first of them is the gravest.
    harness.query_all_by_label("Go to “Draining temperature”").next().unwrap().click_accesskit();
    harness.run();
    assert_eq!(harness.state().view.marked, Some("draining_temperature_c"));
    let rail = harness.get_by_role_and_label(Role::Slider, "Draining temperature").rect();
    assert!((160.0..720.0).contains(&rail.center().y), "it came into sight: {rail:?}");
}

#[test]
fn without_a_file_dialog_a_path_is_typed_and_the_design_is_saved() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("kitchen.vat.ron");
    let mut harness = first();
    harness.get_by_role_and_label(Role::Slider, "Fat target").set_value_accesskit(4.5);
    harness.run();
    harness.key_press_modifiers(Modifiers::COMMAND, Key::S);
    harness.run();
    type_path(&mut harness, &path);
    assert!(!harness.state().session.is_dirty());
    let saved = vatsketch::file::read(&path).unwrap();
    assert_eq!(saved.milk.fat_target_percent, 4.5);
}

/// Files of format 3 have no id.
#[test]
fn the_first_id_of_a_design_is_told_once_when_it_is_saved() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("old.vat.ron");
    std::fs::write(&path, "(format: 3)").unwrap();
    let mut harness = shown(Session::open_file(&path).unwrap(), SIZE, Theme::Light);
    let told = "events of its calendar go by it";
    harness.key_press_modifiers(Modifiers::COMMAND, Key::S);
    harness.run();
    harness.get_by_label_contains(told);
    assert!(harness.state().session.id().is_some());
    harness.key_press_modifiers(Modifiers::COMMAND, Key::S);
    harness.run();
    assert!(harness.query_by_label_contains(told).is_none());
}

#[test]
fn a_new_design_asks_about_unsaved_changes_first() {
    let mut harness = first();
    harness.get_by_role_and_label(Role::Slider, "Fat target").set_value_accesskit(4.5);
    harness.run();
    harness.key_press_modifiers(Modifiers::COMMAND, Key::N);
    harness.run();
    harness.get_by_label("Cancel").click();
    harness.run();
    assert_eq!(harness.state().session.design().milk.fat_target_percent, 4.5);
    harness.key_press_modifiers(Modifiers::COMMAND, Key::N);
    harness.run();
    harness.get_by_label("Discard").click();
    harness.run();
    assert_eq!(*harness.state().session.design(), Design::default());
}

#[test]
fn a_broken_file_is_refused_with_its_line_and_nothing_is_lost() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("broken.vat.ron");
    std::fs::write(&path, "(format: 1,\n milk: (milk_l: six))").unwrap();
    let mut harness = first();
    harness.key_press_modifiers(Modifiers::COMMAND, Key::O);
    harness.run();
    type_path(&mut harness, &path);
    harness.get_by_label_contains("line 2");
    assert_eq!(harness.state().session.design().milk.milk_l, 6.0);
}

#[test]
fn the_sources_are_searched() {
    let mut harness = first();
    harness.get_by_label("Page Sources").click();
    harness.run();
    harness.state_mut().view.search = "activation energy of the drip".to_owned();
    harness.run();
    harness.get_by_label("Activation energy of the drip");
    assert!(harness.query_by_label("Teaspoon, United States").is_none());
}

#[test]
fn every_control_has_a_name_and_the_tab_key_reaches_many() {
    let mut harness = first();
    for node in harness.root().children_recursive() {
        let node = node.accesskit_node();
        if matches!(node.role(), Role::Slider | Role::Button | Role::RadioButton | Role::CheckBox | Role::TextInput) {
            let named = node.label().is_some_and(|label| !label.is_empty());
            assert!(named, "a {:?} has no name (value {:?})", node.role(), node.value());
        }
    }
    let mut reached = std::collections::BTreeSet::new();
    for _ in 0..40 {
        harness.key_press(Key::Tab);
        harness.run();
        let focused = harness.root().children_recursive().find(egui_kittest::Node::is_focused);
        reached.extend(focused.and_then(|node| node.accesskit_node().label()));
    }
    assert!(reached.len() > 25, "{reached:?}");
}

#[test]
fn the_narrow_window_stands_in_one_column() {
    let harness = shown(example("warm-cabinet"), [720.0, 900.0], Theme::Light);
    let slider = harness.get_by_role_and_label(Role::Slider, "Milk").rect();
    assert!(slider.width() > 300.0, "as wide as the window leaves it: {slider:?}");
}

/// A letter that no font has fails the harness.
#[test]
fn every_menu_opens_and_has_all_its_letters() {
    for (menu, entry) in [("File", "Save as…"), ("Edit", "Nothing to undo"), ("View", "Units"), ("Help", "Words of the trade")] {
        let mut harness = first();
        harness.get_by_label(menu).click();
        harness.run();
        assert!(harness.query_all_by_label_contains(entry).count() > 0, "{menu} lacks {entry}");
    }
}

#[test]
fn the_keys_are_listed_and_closed_again() {
    let mut harness = first();
    harness.key_press(Key::F1);
    harness.run();
    harness.get_by_label("Save plan as PDF");
    harness.get_by_label("Close").click();
    harness.run();
    assert!(harness.query_by_label("Save plan as PDF").is_none());
}

#[test]
fn colours_and_units_are_chosen_in_the_menu() {
    let mut harness = first();
    harness.get_by_label("View").click();
    harness.run();
    for label in ["Units", "Temperatures", "Temperatures in °F"] {
        harness.get_by_label_contains(label).click();
        harness.run();
    }
    assert_eq!(harness.state().view.units, Units { temperatures: Temperatures::Fahrenheit, ..Units::METRIC });
    assert!(!harness.state().session.is_dirty());
}
