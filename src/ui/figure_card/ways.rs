//! Every way to a target, side by side: what each choice would become and bring, before anything moves.

use crate::export::printable;
use crate::report::price_change_words;
use crate::session::{FoundWays, PricedWay};
use crate::ui::results::lift::FAILED;
use crate::ui::state::ask::Ask;
use crate::ui::widget::spoken::say_changes;
use crate::ui::widget::theme::{CAPTION, Palette, bold};
use crate::units::Units;
use crate::words::{way_lines, way_words};
use egui::{Button, Label, RichText, Role, Ui, WidgetInfo};

/// What is known of the ways to the target that was asked for.
#[derive(Clone, Copy)]
pub(in crate::ui) enum WaysKnown<'a> {
    /// Nobody has asked.
    NotAsked,
    /// They are being looked for.
    Sought,
    /// They could not be looked for.
    Failed,
    /// They were found.
    Found(&'a FoundWays),
}

impl<'a> WaysKnown<'a> {
    /// Returns what is known of the ways to a target.
    ///
    /// * `asked`: whether anybody wants to know
    pub(in crate::ui) const fn of(asked: bool, found: Option<&'a FoundWays>, failed: bool) -> Self {
        match (asked, found) {
            (false, _) => Self::NotAsked,
            (true, Some(found)) => Self::Found(found),
            (true, None) if failed => Self::Failed,
            (true, None) => Self::Sought,
        }
    }
}

/// Draws the ways and returns what is asked for.
pub(super) fn ways_ui(ui: &mut Ui, units: Units, known: WaysKnown<'_>) -> Option<Ask> {
    match known {
        WaysKnown::NotAsked => None,
        WaysKnown::Sought => said_ui(ui, "Looking for ways…"),
        WaysKnown::Failed => said_ui(ui, FAILED),
        WaysKnown::Found(found) => match &found.ways {
            Err(why) => said_ui(ui, why),
            Ok(ways) if ways.is_empty() => {
                said_ui(ui, "No choice that is free to move changes this figure. Unpin one and try again.")
            }
            Ok(ways) => ways.iter().filter_map(|way| way_ui(ui, units, found, way)).last(),
        },
    }
}

fn said_ui(ui: &mut Ui, words: &str) -> Option<Ask> {
    say_changes(&ui.add(Label::new(RichText::new(words).size(CAPTION)).wrap()));
    None
}

/// Draws one way, also one that comes near alone: whole moulds hardly ever meet a weight.
fn way_ui(ui: &mut Ui, units: Units, found: &FoundWays, priced: &PricedWay) -> Option<Ask> {
    let palette = Palette::of(ui);
    let words = way_words(&priced.way, units);
    let currency = printable(&found.design.supplies.currency);
    let price = priced.price.as_ref().map(|change| price_change_words(change, &currency));
    let lines = way_lines(&priced.way, price.as_deref(), units);
    ui.add_space(6.0);
    let colour = if priced.way.reached { palette.text } else { palette.soft };
    ui.add(Label::new(RichText::new(&words).font(bold(CAPTION)).color(colour)).wrap());
    for line in lines {
        ui.add(Label::new(RichText::new(line).size(CAPTION).color(palette.soft)).wrap());
    }
    let response = ui.add(Button::new(RichText::new("Make this change").size(CAPTION)));
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, format!("Make this change: {words}")));
    response.on_hover_text("One step: undo takes it back.").clicked().then(|| Ask::Do(priced.command()))
}
