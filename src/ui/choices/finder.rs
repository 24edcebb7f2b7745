//! The box that finds a choice or a figure by a word of it.

use crate::analysis::search;
use crate::design::Design;
use crate::figure::Figure;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::spoken::say_changes;
use crate::ui::widget::text_undo::remember_text;
use crate::ui::widget::theme::{CAPTION, Palette, bold};
use egui::{Button, Key, Label, RichText, Role, TextEdit, TextWrapMode, Ui, WidgetInfo, vec2};

/// Most of each that are listed.
const MOST: usize = 12;

/// Draws the box, and below it what was found; returns what is asked for. Escape empties it.
pub(super) fn finder_ui(ui: &mut Ui, view: &mut View, design: &Design, figures: &[Figure]) -> Vec<Ask> {
    let mut asks = Vec::new();
    let edit = TextEdit::singleline(&mut view.sought)
        .hint_text("Search choices and figures")
        .desired_width(ui.available_width() - 16.0)
        .margin(vec2(8.0, 3.0));
    let response = ui.add(edit);
    ui.ctx().accesskit_node_builder(response.id, |node| node.set_label("Search choices and figures"));
    remember_text(ui, &response, &view.sought);
    if response.lost_focus() && ui.input(|input| input.key_pressed(Key::Escape)) {
        view.sought.clear();
    }
    if view.sought.trim().is_empty() {
        return asks;
    }
    let found = search(design, figures, &view.sought);
    let soft = Palette::of(ui).soft;
    let listed = found.choices.len().min(MOST) + found.figures.len().min(MOST);
    let said = match found.choices.len() + found.figures.len() {
        0 => "Nothing found: try another word.".to_owned(),
        many if many > listed => format!("{many} found, of which {listed} are listed: add a letter or two."),
        many => format!("{many} found."),
    };
    say_changes(&ui.add(Label::new(RichText::new(said).size(CAPTION).color(soft))));
    for field in found.choices.into_iter().take(MOST) {
        if hit_ui(ui, field.label, field.stage.title()) {
            asks.push(Ask::ToInput(field.key));
        }
    }
    for figure in found.figures.into_iter().take(MOST) {
        if hit_ui(ui, &format!("{}: {}", figure.label_in(view.units), figure.text_in(view.units)), figure.stage.title()) {
            asks.push(Ask::Figure(Some(figure.key)));
        }
    }
    if !asks.is_empty() {
        view.sought.clear();
    }
    asks
}

/// Draws one that was found; returns whether it was chosen.
fn hit_ui(ui: &mut Ui, what: &str, stage: &str) -> bool {
    let words = RichText::new(what).font(bold(CAPTION)).color(Palette::of(ui).link);
    let button = Button::new(words).frame(false).min_size(vec2(0.0, 24.0)).wrap_mode(TextWrapMode::Wrap);
    let response = ui.add(button);
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, format!("Go to {what} ({stage})")));
    response.on_hover_text(stage).clicked()
}
