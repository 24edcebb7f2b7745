//! Aiming at a figure: what it is to be, which choice may move, and what came of it.

use crate::analysis::Goal;
use crate::figure::{Figure, Reading};
use crate::session::TargetChoice;
use crate::ui::figure_card::known::Card;
use crate::ui::figure_card::ways::{WaysKnown, ways_ui as found_ui};
use crate::ui::state::ask::Ask;
use crate::ui::state::card::{CardView, Told};
use crate::ui::widget::number_text::read_number;
use crate::ui::widget::pill::{pill_ui, pills_ui};
use crate::ui::widget::text_undo::remember_text;
use crate::ui::widget::theme::{CAPTION, Palette};
use crate::units::{Scale, Units};
use egui::{Button, Key, RichText, TextEdit, Ui, vec2};

/// Draws the form and returns what is asked for.
pub(in crate::ui) fn aim_ui(ui: &mut Ui, units: Units, view: &mut CardView, card: &Card, ways: WaysKnown<'_>) -> Vec<Ask> {
    let palette = Palette::of(ui);
    let mut asks = Vec::new();
    if !matches!(card.figure.reading, Reading::Number(_)) || card.ways.is_empty() {
        ui.label(RichText::new("No single choice can set this figure.").size(CAPTION).color(palette.soft));
        return asks;
    }
    let scale = scale_of(&card.figure, units);
    let entered = ui
        .horizontal(|ui| {
            let label = ui.label("I want");
            let edit = TextEdit::singleline(&mut view.wanted).desired_width(96.0).margin(vec2(8.0, 4.0));
            let response = ui.add(edit).labelled_by(label.id);
            remember_text(ui, &response, &view.wanted);
            ui.label(scale.symbol);
            if response.changed() {
                (view.told, view.goal) = (None, None);
            }
            response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter))
        })
        .inner;
    let goal = read_number(&view.wanted, card.figure.unit, units).map(|goal| {
        // A bare number is meant as the figure is shown.
        let wanted = if goal.bare { scale.kept(goal.value) } else { goal.value };
        Goal { figure: card.figure.key.to_owned(), wanted }
    });
    let compare = ui.add_enabled(goal.is_ok(), Button::new("Compare ways to reach it").min_size(vec2(96.0, 32.0)));
    if let Ok(goal) = goal.as_ref()
        && (compare.clicked() || entered)
    {
        asks.push(Ask::Ways(goal.clone()));
    }
    asks.extend(found_ui(ui, units, ways));
    ui.add_space(6.0);
    ui.label("Or change one choice:");
    let (usual, others): (Vec<&TargetChoice>, Vec<&TargetChoice>) = card.ways.iter().partition(|way| way.usual);
    let first = if usual.is_empty() { &others } else { &usual };
    let chosen = view.choice.or_else(|| first.iter().find(|way| !way.pinned).map(|way| way.field.key));
    asks.extend(ways_ui(ui, view, &usual, chosen));
    if usual.is_empty() {
        asks.extend(ways_ui(ui, view, &others, chosen));
    } else if !others.is_empty() {
        egui::CollapsingHeader::new(RichText::new(format!("Other choices ({})", others.len())).size(CAPTION))
            .id_salt(("other ways", card.figure.key))
            .show(ui, |ui| asks.extend(ways_ui(ui, view, &others, chosen)));
    }
    ui.add_space(4.0);
    let ready = goal.is_ok() && chosen.is_some();
    let go = ui.add_enabled(ready, Button::new("Find it").min_size(vec2(96.0, 32.0)));
    match (goal, chosen) {
        (Ok(goal), Some(choice)) if go.clicked() => asks.push(Ask::Aim(goal, choice)),
        (Err(why), _) if !view.wanted.trim().is_empty() => told_ui(ui, &Told::Not(why.to_string())),
        _ => {}
    }
    if let Some(told) = &view.told {
        told_ui(ui, told);
    }
    asks
}

/// Returns the unit in which a figure is wanted: that in which it is shown now.
fn scale_of(figure: &Figure, units: Units) -> Scale {
    let size = if let Reading::Number(value) = figure.reading { value } else { 0.0 };
    units.scale(figure.unit, size)
}

fn ways_ui(ui: &mut Ui, view: &mut CardView, ways: &[&TargetChoice], chosen: Option<&'static str>) -> Vec<Ask> {
    let mut asks = Vec::new();
    let any = ways.iter().any(|way| chosen == Some(way.field.key));
    pills_ui(ui, "By changing", |ui| {
        for way in ways {
            let field = way.field;
            if way.pinned {
                let response =
                    ui.add(Button::new(RichText::new(format!("{}: pinned", field.label)).size(CAPTION)).min_size(vec2(0.0, 26.0)));
                if response.on_hover_text("Unpin, so that a target may change it").clicked() {
                    asks.push(Ask::Pin(field.key));
                }
            } else if pill_ui(
                ui,
                field.label,
                &format!("By changing: {}", field.label),
                field.help,
                (chosen == Some(field.key), !any || chosen == Some(field.key)),
            ) {
                view.choice = Some(field.key);
                view.told = None;
            }
        }
    });
    asks
}

fn told_ui(ui: &mut Ui, told: &Told) {
    let palette = Palette::of(ui);
    let (words, text, fill) = match told {
        Told::Reached(words) => (words, palette.text, palette.changed),
        Told::Not(words) => (words, palette.caution_text, palette.caution_fill),
    };
    egui::Frame::new().fill(fill).corner_radius(4).inner_margin(6).show(ui, |ui| {
        ui.label(RichText::new(words).size(CAPTION).color(text));
    });
}
