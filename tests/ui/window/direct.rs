//! What the window lets one press, find and keep in sight.

use crate::ui::{example, settled, shown};
use egui::accesskit::Role;
use egui::{Rect, Theme, pos2};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use vatsketch::analysis::summary;
use vatsketch::caution::{Severity, cautions};
use vatsketch::design::{BEFORE_BUYING, Stage, field, fields};
use vatsketch::figure::{Weight, figures};
use vatsketch::ui::{Page, Window};
use vatsketch::words::{counted, counted_words, to_buy};

/// The sizes of a window that count, with the frame of the test around them.
const SIZES: [[f32; 2]; 4] = [[1296.0, 816.0], [1382.0, 784.0], [1936.0, 1096.0], [736.0, 1016.0]];

fn first() -> Harness<'static, Window> {
    shown(example("warm-cabinet"), SIZES[0], Theme::Light)
}

#[test]
fn what_is_decided_before_buying_is_in_sight_at_every_station_and_size() {
    for size in SIZES {
        let window = Rect::from_min_max(pos2(0.0, 0.0), pos2(size[0], size[1]));
        let mut harness = shown(example("warm-cabinet"), size, Theme::Light);
        for stage in Stage::ALL {
            harness.state_mut().view.station = stage;
            harness.state_mut().view.scroll_to = Some(stage);
            settled(&mut harness);
            for (key, _) in BEFORE_BUYING {
                let choice = field(key).unwrap();
                if !(choice.used)(harness.state().session.design()) {
                    continue;
                }
                let slider = harness.get_by_role_and_label(Role::Slider, choice.label).rect();
                assert!(window.contains_rect(slider) && slider.height() >= 24.0, "{key} at {stage:?} in {size:?}: {slider:?}");
                assert!(slider.width() >= 60.0, "{key} at {stage:?} in {size:?}: {slider:?}");
            }
        }
    }
}

#[test]
fn what_to_buy_stands_beside_it_and_follows() {
    let mut harness = first();
    let said = |harness: &Harness<'_, Window>| to_buy(harness.state().session.batch(), harness.state().view.units);
    let before = said(&harness);
    assert!(harness.query_by_label(&before).is_some(), "{before}");
    harness.get_by_role_and_label(Role::Slider, "Fat target").set_value_accesskit(6.0);
    settled(&mut harness);
    let after = said(&harness);
    assert!(before != after && harness.query_by_label(&after).is_some(), "{before}, then {after}");
}

#[test]
fn a_number_that_is_pressed_opens_its_card() {
    let mut harness = first();
    harness.state_mut().view.station = Stage::Drying;
    settled(&mut harness);
    let all = figures(harness.state().session.batch());
    let figure = all.iter().find(|figure| figure.stage == Stage::Drying && figure.weight == Weight::Lead).unwrap();
    let units = harness.state().view.units;
    harness.get_by_label(&format!("{}: {}", figure.label_in(units), figure.text_in(units))).click();
    settled(&mut harness);
    assert_eq!(harness.state().view.card.as_ref().map(|card| card.figure), Some(figure.key));
}

#[test]
fn the_warnings_in_the_foot_lead_to_them() {
    let mut harness = first();
    harness.state_mut().view.page = Page::Plan;
    settled(&mut harness);
    let serious = summary(harness.state().session.batch()).cautions[0];
    harness.get_by_role_and_label(Role::Button, &counted(Severity::Stop, serious)).click();
    settled(&mut harness);
    assert_eq!(harness.state().view.page, Page::Design);
    let heading = counted_words(&cautions(harness.state().session.batch()));
    assert!(harness.query_by_role_and_label(Role::Heading, &heading).is_some(), "{heading}");
}

#[test]
fn a_search_finds_rennet_and_leads_to_it() {
    let mut harness = first();
    harness.state_mut().view.sought = "rennet".to_owned();
    settled(&mut harness);
    let hit = field("rennet_temperature_c").unwrap();
    harness.get_by_label(&format!("Go to {} ({})", hit.label, hit.stage.title())).click_accesskit();
    settled(&mut harness);
    let view = &harness.state().view;
    assert_eq!((view.station, view.marked, view.sought.as_str()), (hit.stage, Some(hit.key), ""));
    assert!(harness.query_by_role_and_label(Role::Slider, hit.label).is_some());
}

#[test]
fn a_mark_goes_with_the_next_change() {
    let mut harness = first();
    harness.state_mut().view.marked = Some("drying_h");
    harness.get_by_role_and_label(Role::Slider, "Fat target").set_value_accesskit(4.5);
    settled(&mut harness);
    assert_eq!(harness.state().view.marked, None);
}

#[test]
fn a_step_is_taken_back_and_done_again_in_the_bar() {
    let mut harness = first();
    harness.get_by_role_and_label(Role::Slider, "Fat target").set_value_accesskit(4.5);
    settled(&mut harness);
    let fat = |harness: &Harness<'_, Window>| harness.state().session.design().milk.fat_target_percent;
    assert!((fat(&harness) - 4.5).abs() < 1e-9);
    harness.get_by_label_contains("Undo “").click();
    settled(&mut harness);
    assert!((fat(&harness) - 4.5).abs() > 0.05);
    harness.get_by_label_contains("Redo “").click();
    settled(&mut harness);
    assert!((fat(&harness) - 4.5).abs() < 1e-9);
}

#[test]
fn a_choice_that_is_folded_away_opens_when_it_is_asked_for() {
    let mut harness = first();
    harness.state_mut().view.station = Stage::Drying;
    settled(&mut harness);
    let folded =
        fields().filter(|field| field.stage == Stage::Drying && (field.used)(harness.state().session.design())).last().unwrap();
    assert!(harness.query_by_label(folded.label).is_none(), "{} is folded away", folded.label);
    harness.state_mut().view.marked = Some(folded.key);
    harness.state_mut().view.mark_scrolls = true;
    settled(&mut harness);
    assert!(harness.query_all_by_label_contains(folded.label).count() > 0, "{}", folded.label);
}
