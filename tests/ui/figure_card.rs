//! The card of a figure, by accessible label.

use crate::ui::{example, settled, shown, shown_window, stopped};
use egui::accesskit::Role;
use egui::{Key, Theme};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use std::sync::Arc;
use vatsketch::design::Stage;
use vatsketch::figure::{Reading, figures};
use vatsketch::session::{SensitivityJob, Work, spread};
use vatsketch::ui::{CardView, Window};
use vatsketch::units::Units;

const SIZE: [f32; 2] = [1296.0, 816.0];

fn with_card(figure: &'static str) -> Harness<'static, Window> {
    let mut harness = shown(example("warm-cabinet"), SIZE, Theme::Light);
    harness.state_mut().view.card = Some(CardView::of(figure));
    settled(&mut harness);
    harness
}

fn click(harness: &mut Harness<'_, Window>, label: &str) {
    harness.get_by_label(label).click_accesskit();
    harness.run();
}

fn number(harness: &Harness<'_, Window>, key: &str) -> f64 {
    let figure = figures(harness.state().session.batch()).into_iter().find(|figure| figure.key == key).unwrap();
    let Reading::Number(number) = figure.reading else { panic!("{key} is no number") };
    number
}

fn type_wanted(harness: &mut Harness<'_, Window>, text: &str) {
    harness.get_by_role_and_label(Role::TextInput, "I want").focus();
    harness.run();
    harness.get_by_role_and_label(Role::TextInput, "I want").type_text(text);
    harness.run();
}

#[test]
fn the_name_of_a_figure_opens_its_card_and_a_button_closes_it() {
    let mut harness = shown(example("warm-cabinet"), SIZE, Theme::Light);
    harness.state_mut().view.station = Stage::Drying;
    harness.run();
    click(&mut harness, "Weight of a dried cheese: why");
    assert_eq!(harness.state().view.card.as_ref().unwrap().figure, "dried_cheese_g");
    click(&mut harness, "All figures");
    assert!(harness.state().view.card.is_none());
    harness.get_by_label("Weight of a dried cheese: why");
}

#[test]
fn a_card_leads_to_the_choices_and_to_the_figures_that_enter() {
    let mut harness = with_card("dried_cheese_g");
    click(&mut harness, "Drying time: 34 h; go to this choice");
    assert_eq!(harness.state().view.marked, Some("drying_h"));
    click(&mut harness, "Weight of a cheese after salting: 98 g; why");
    assert_eq!(harness.state().view.card.as_ref().unwrap().figure, "salted_cheese_g");
}

#[test]
fn what_matters_is_drawn_strongest_first() {
    let harness = with_card("dried_cheese_g");
    let effects = vatsketch::analysis::sensitivity(harness.state().session.batch(), "dried_cheese_g").unwrap();
    let figure = figures(harness.state().session.batch()).into_iter().find(|figure| figure.key == "dried_cheese_g").unwrap();
    let tops: Vec<f32> = effects
        .iter()
        .take(3)
        .map(|effect| {
            let said = format!(
                "{}: {} / {}",
                effect.cause.label(),
                figure.change_text(effect.down, Units::METRIC),
                figure.change_text(effect.up, Units::METRIC)
            );
            harness.get_by_label_contains(&said).rect().top()
        })
        .collect();
    assert!(tops.windows(2).all(|pair| pair[0] < pair[1]), "{tops:?}");
}

#[test]
fn a_figure_is_brought_to_what_is_typed_as_one_step() {
    let mut harness = with_card("dried_cheese_g");
    type_wanted(&mut harness, "60");
    click(&mut harness, "Find it");
    settled(&mut harness);
    assert!((number(&harness, "dried_cheese_g") - 60.0).abs() <= 0.5);
    assert!(harness.query_by_label_contains("gives: Weight of a dried cheese 60 g").is_some());
    assert!(harness.state().session.history().undo_name().unwrap().starts_with("Milk 6 → "));
}

#[test]
fn the_ways_to_a_target_are_compared_before_anything_moves() {
    let mut harness = with_card("dried_cheese_g");
    type_wanted(&mut harness, "60");
    harness.key_press(Key::Enter);
    settled(&mut harness);
    assert!(!harness.state().session.is_dirty(), "nothing has moved");
    let offered = |harness: &Harness<'_, Window>, choice: &str| {
        harness.query_all_by_label_contains(&format!("Make this change: {choice}: ")).count()
    };
    for choice in ["Milk", "Number of moulds", "Drying time"] {
        assert_eq!(offered(&harness, choice), 1, "{choice}");
    }
    harness.get_by_label_contains("Make this change: Drying time: ").click_accesskit();
    settled(&mut harness);
    assert!((number(&harness, "dried_cheese_g") - 60.0).abs() <= 0.5);
    assert!(harness.state().session.history().undo_name().unwrap().starts_with("Drying time "));
}

#[test]
fn what_is_out_of_reach_is_told_and_changes_nothing() {
    let mut harness = with_card("drying_loss_percent");
    type_wanted(&mut harness, "95");
    click(&mut harness, "Find it");
    assert!(!harness.state().session.is_dirty());
    assert!(harness.query_by_label_contains("is not reachable with this choice alone; nearest is").is_some());
    let mut words = with_card("firmness");
    words.run();
    assert!(words.query_by_label_contains("No single choice can set this figure").is_some());
}

#[test]
fn a_pin_beside_a_choice_keeps_it_from_being_moved() {
    let mut harness = with_card("dried_cheese_g");
    click(&mut harness, "Milk: pin");
    assert!(harness.state().session.pins().contains("milk_l") && !harness.state().session.is_dirty());
    harness.run();
    assert!(harness.query_by_label("Milk: pinned").is_some(), "the card says it too");
    click(&mut harness, "By changing: Drying time");
    type_wanted(&mut harness, "60");
    click(&mut harness, "Find it");
    settled(&mut harness);
    assert!((number(&harness, "dried_cheese_g") - 60.0).abs() <= 0.5, "another choice moves");
    assert!((harness.state().session.design().milk.milk_l - 6.0).abs() < 1e-12);
}

#[test]
fn a_spread_is_shown_as_a_band_and_in_words_until_the_design_changes() {
    let mut harness = with_card("dried_cheese_g");
    let design = harness.state().session.design().clone();
    let answer = spread(&design, &Work { draws: 10, threads: 2, goes_on: &|| true }).unwrap().unwrap();
    let said = answer.figure("dried_cheese_g").unwrap().in_words(Units::METRIC);
    harness.state_mut().show_spread(Arc::new(answer));
    harness.run();
    assert!(harness.query_by_label_contains(&format!("{said}; 200 trial runs in all")).is_some());
    assert!(harness.query_all_by_label_contains("8 of 10 trial runs").count() >= 1, "beside the curve");
    type_wanted(&mut harness, "60");
    click(&mut harness, "Find it");
    assert!(harness.query_by_label_contains("of all uncertain constants at once").is_none());
}

#[test]
fn a_card_says_when_its_background_work_broke_down() {
    let mut window = Window::plain(example("warm-cabinet"), stopped());
    window.find_sensitivity_with(SensitivityJob::with_work(|_, _| panic!("an invented fault"), Box::new(|| ())));
    window.view.card = Some(CardView::of("dried_cheese_g"));
    let mut harness = shown_window(window, SIZE, Theme::Light);
    settled(&mut harness);
    assert!(harness.query_by_label_contains("This could not be calculated").is_some());
    assert!(harness.query_by_label_contains("Calculating").is_none());
}
