//! One figure in full, in the place of the results: how to reach a target, why it is what it is, and what changes it most.

use crate::analysis::DRAWS;
use crate::figure::is_of_germs;
use crate::report::{WhyWords, why_words};
use crate::ui::figure_card::aim_form::aim_ui;
use crate::ui::figure_card::known::{Card, Known};
use crate::ui::figure_card::sensitivity::sensitivity_ui;
use crate::ui::results::one::potential_ui;
use crate::ui::state::ask::Ask;
use crate::ui::state::card::CardView;
use crate::ui::widget::record::record_ui;
use crate::ui::widget::room::Room;
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::theme::{BODY, CAPTION, FIGURE, Palette, bold, plain};
use crate::units::Units;
use egui::{Button, RichText, Ui, vec2};

/// Share of a line that a value may take.
const MOST_OF_LINE: f32 = 0.6;

/// Draws a card in the place of the results, that scrolls by itself.
pub(in crate::ui) fn results_card_ui(ui: &mut Ui, units: Units, view: &mut CardView, known: Known<'_>, room: Room) -> Vec<Ask> {
    let mut asks = Vec::new();
    room.scrolled(ui, ("card", view.figure), |ui| asks = card_ui(ui, units, view, known));
    asks
}

/// Draws a card and returns what is asked for.
fn card_ui(ui: &mut Ui, units: Units, view: &mut CardView, known: Known<'_>) -> Vec<Ask> {
    let palette = Palette::of(ui);
    let mut asks = Vec::new();
    let back = ui.add(Button::new("All figures").min_size(vec2(0.0, 32.0)));
    if back.clicked()
        || (view.told.is_none() && ui.input(|input| input.key_pressed(egui::Key::Escape)) && !ui.ctx().egui_wants_keyboard_input())
    {
        asks.push(Ask::Figure(None));
    }
    let Some(card) = known.card else {
        ui.label("This design has no such figure: an earlier stage could not be calculated, or the figure does not apply.");
        return asks;
    };
    ui.add_space(6.0);
    let words = why_words(&card.why, units);
    heading_ui(ui, &card.figure.label_in(units));
    ui.label(RichText::new(card.figure.text_in(units)).font(bold(FIGURE)));
    ui.label(RichText::new(&words.spread).size(CAPTION).color(palette.soft));
    if is_of_germs(card.figure.key) {
        potential_ui(ui);
    }
    // First, so that the answer is in sight where it is asked for.
    heading(ui, "Reach a target");
    asks.extend(aim_ui(ui, units, view, card, known.ways));
    // What is calculated later stands below the form, so that it does not push the form away from the hand.
    ui.add_space(8.0);
    if let Some(likely) = known.likely {
        ui.label(RichText::new(format!("{}; {DRAWS} trial runs in all", likely.in_words(units))).size(CAPTION).color(palette.soft));
    }
    if known.spread_failed {
        let words = "How far this figure may be wrong could not be calculated: the program has a fault here.";
        ui.label(RichText::new(words).size(CAPTION).color(palette.caution_text));
    }
    heading(ui, "Why");
    asks.extend(why_ui(ui, units, card, &words));
    heading(ui, "Sensitivity: what changes it most");
    asks.extend(sensitivity_ui(ui, units, &card.figure, known.effects));
    asks
}

fn heading(ui: &mut Ui, words: &str) {
    ui.add_space(12.0);
    ui.label(RichText::new(words).font(bold(BODY)));
    ui.add_space(2.0);
}

/// Draws the chain: choices and figures that enter, the law, its source, its constants.
fn why_ui(ui: &mut Ui, units: Units, card: &Card, words: &WhyWords) -> Vec<Ask> {
    let soft = Palette::of(ui).soft;
    let mut asks = Vec::new();
    ui.label(RichText::new(format!("Law: {}", words.law)).size(CAPTION));
    ui.label(RichText::new(format!("Source: {}", words.source)).size(CAPTION).color(soft));
    for (field, value) in &card.why.inputs {
        let value = units.choice_text(field, *value);
        if line_ui(ui, field.label, &value, &format!("{}: {value}; go to this choice", field.label)) {
            asks.push(Ask::ToInput(field.key));
        }
    }
    for figure in &card.why.rests_on {
        let (label, value) = (figure.label_in(units), figure.text_in(units));
        if line_ui(ui, &label, &value, &format!("{label}: {value}; why")) {
            asks.push(Ask::Figure(Some(figure.key)));
        }
    }
    let further = &card.why.further_inputs;
    if !further.is_empty() {
        folded(ui, ("further", card.figure.key), &format!("Choices of earlier stages ({})", further.len()), |ui| {
            for (field, value) in further {
                let value = units.choice_text(field, *value);
                if line_ui(ui, field.label, &value, &format!("{}: {value}; go to this choice", field.label)) {
                    asks.push(Ask::ToInput(field.key));
                }
            }
        });
    }
    let records = &words.records;
    if !records.is_empty() {
        folded(ui, ("records", card.figure.key), &format!("Constants and formulae ({})", records.len()), |ui| {
            for record in records {
                record_ui(ui, record);
            }
        });
    }
    asks
}

fn folded(ui: &mut Ui, id: (&str, &str), words: &str, draw: impl FnOnce(&mut Ui)) {
    egui::CollapsingHeader::new(RichText::new(words).size(CAPTION)).id_salt(id).show(ui, draw);
}

/// Draws one line of a chain as a button over the whole width: name at the left, on as many lines as it takes, value at the right.
fn line_ui(ui: &mut Ui, name: &str, value: &str, whole: &str) -> bool {
    let palette = Palette::of(ui);
    let room = ui.available_width();
    let value = ui.painter().layout(value.to_owned(), bold(CAPTION), palette.text, MOST_OF_LINE * room);
    let name = ui.painter().layout(name.to_owned(), plain(CAPTION), palette.link, room - value.size().x - 8.0);
    let height = name.size().y.max(value.size().y) + 6.0;
    let (rect, response) = ui.allocate_exact_size(vec2(room, height.max(26.0)), egui::Sense::click());
    if response.hovered() {
        ui.painter().rect_filled(rect, 4, palette.panel);
    }
    let top = |size: egui::Vec2| rect.center().y - 0.5 * size.y;
    let (of_value, of_name) = (value.size(), name.size());
    ui.painter().galley(egui::pos2(rect.right() - of_value.x, top(of_value)), value, palette.text);
    ui.painter().galley(egui::pos2(rect.left(), top(of_name)), name, palette.link);
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, true, whole));
    response.clicked()
}
