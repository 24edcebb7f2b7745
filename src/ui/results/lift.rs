//! What would lift a caution, below it: asked for, looked for, and each way with what it costs.

use crate::caution::Caution;
use crate::export::printable;
use crate::report::price_change_words;
use crate::session::{FoundLifts, PricedLift};
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::spoken::say_changes;
use crate::ui::widget::theme::{CAPTION, Palette, bold};
use crate::units::Units;
use crate::words::{caution_words, changes_words, short_lift_lines, why_not_words};
use egui::{Button, Label, RichText, Role, Ui, WidgetInfo};

/// What is said where work in the background ended without an answer.
pub(in crate::ui) const FAILED: &str = "This could not be calculated: the program has a fault here. Change a choice to try again.";

/// What is known of the ways to lift a caution.
#[derive(Clone, Copy)]
pub(in crate::ui) enum LiftsKnown<'a> {
    /// Nobody has asked.
    NotAsked,
    /// They are being looked for.
    Sought,
    /// They could not be looked for.
    Failed,
    /// They were found, or that there are none.
    Found(&'a FoundLifts),
}

impl<'a> LiftsKnown<'a> {
    /// Returns what is known of ways that were asked for.
    pub(in crate::ui) fn of(found: Option<&'a FoundLifts>, failed: bool) -> Self {
        match found {
            Some(found) => Self::Found(found),
            None if failed => Self::Failed,
            None => Self::Sought,
        }
    }
}

/// A caution of the open design, and what is known of the ways to lift it.
#[derive(Clone, Copy)]
pub(in crate::ui) struct Way<'a> {
    pub(in crate::ui) caution: &'a Caution,
    known: LiftsKnown<'a>,
}

impl<'a> Way<'a> {
    /// `lifts`: what is known of the ways to lift the caution that was asked about
    pub(in crate::ui) fn of(view: &View, caution: &'a Caution, lifts: LiftsKnown<'a>) -> Self {
        Self { caution, known: if view.lifting.as_ref() == Some(caution) { lifts } else { LiftsKnown::NotAsked } }
    }
}

/// Draws what would lift a caution, and returns what is asked for.
///
/// `words`: the words of the button that asks
pub(in crate::ui) fn lifts_ui(ui: &mut Ui, units: Units, words: &str, Way { caution, known }: Way<'_>) -> Option<Ask> {
    match known {
        LiftsKnown::NotAsked => {
            let button =
                Button::new(RichText::new(words).size(CAPTION).color(Palette::of(ui).link)).fill(Palette::of(ui).background);
            let response = ui.add(button);
            let about = format!("{words} {}", caution_words(caution, units).short);
            response.widget_info(|| WidgetInfo::labeled(Role::Button, true, &about));
            response.clicked().then(|| Ask::Lifts(Box::new(caution.clone())))
        }
        LiftsKnown::Sought => said_ui(ui, "Looking for choices that lift this…"),
        LiftsKnown::Failed => said_ui(ui, FAILED),
        LiftsKnown::Found(found) => {
            let asked = found.lifts.iter().filter_map(|lift| lift_ui(ui, units, found, lift)).last();
            let why_not = why_not_words(&found.lifted).and_then(|why| said_ui(ui, &units.told(&why)));
            asked.or(why_not)
        }
    }
}

/// Says something of the search.
fn said_ui(ui: &mut Ui, words: &str) -> Option<Ask> {
    let response = ui.add(Label::new(RichText::new(words).size(CAPTION)).wrap());
    say_changes(&response);
    None
}

/// Draws one way: the choices, what they cost and bring, and the button that moves them.
fn lift_ui(ui: &mut Ui, units: Units, found: &FoundLifts, priced: &PricedLift) -> Option<Ask> {
    let PricedLift { lift, price } = priced;
    let changes = changes_words(&lift.changes, units);
    let currency = printable(&found.design.supplies.currency);
    let price = price.as_ref().map(|change| price_change_words(change, &currency));
    let lines = short_lift_lines(lift, &found.lifted.warning, price.as_deref(), units);
    ui.add_space(4.0);
    ui.add(Label::new(RichText::new(&changes).font(bold(CAPTION))).wrap());
    for line in lines {
        ui.add(Label::new(RichText::new(line).size(CAPTION).color(Palette::of(ui).soft)).wrap());
    }
    let response = ui.add(Button::new(RichText::new("Make this change").size(CAPTION)));
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, format!("Make this change: {changes}")));
    response.on_hover_text("One step: undo takes it back.").clicked().then(|| Ask::Do(priced.command()))
}
