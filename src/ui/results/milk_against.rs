//! One milk against another: what it holds, gives and becomes, and what cream and dry milk can and cannot change.

use crate::ui::results::beside::Beside;
use crate::ui::results::compared::{compared_ui, costs_ui, heads_ui};
use crate::ui::state::ask::Ask;
use crate::ui::widget::focus::follow_focus;
use crate::ui::widget::room::Room;
use crate::ui::widget::theme::{BODY, CAPTION, bold};
use crate::units::Units;
use egui::{RichText, ScrollArea, Ui, vec2};

/// Width from which on figures and words stand side by side.
const SIDE_BY_SIDE: f32 = 520.0;

/// Draws the figures and the words, as high as it is told where it has a room of its own.
pub(in crate::ui) fn milk_against_ui(ui: &mut Ui, units: Units, beside: &Beside, height: f32, room: Room) -> Vec<Ask> {
    let mut asks = Vec::new();
    ui.label(RichText::new("The milk of A against the milk of B").font(bold(BODY)));
    let wide = ui.available_width();
    if room == Room::Column || wide < SIDE_BY_SIDE {
        asks.extend(figures_ui(ui, units, beside));
        ui.add_space(6.0);
        words_ui(ui, units, beside);
        return asks;
    }
    ui.horizontal_top(|ui| {
        let mut part = |share: f32, id: &str, draw: &mut dyn FnMut(&mut Ui)| {
            ui.allocate_ui(vec2(share * wide - 8.0, height), |ui| {
                ui.vertical(|ui| {
                    ui.set_width(share * wide - 8.0);
                    ScrollArea::vertical().id_salt(id).max_height(height).auto_shrink(false).show(ui, |ui| {
                        draw(ui);
                        follow_focus(ui);
                    });
                });
            });
        };
        part(0.54, "milk figures", &mut |ui| asks.extend(figures_ui(ui, units, beside)));
        part(0.46, "milk words", &mut |ui| words_ui(ui, units, beside));
    });
    asks
}

fn figures_ui(ui: &mut Ui, units: Units, beside: &Beside) -> Vec<Ask> {
    ui.spacing_mut().item_spacing.y = 3.0;
    heads_ui(ui);
    let mut asks = Vec::new();
    for figure in beside.milk.iter().flat_map(|milk| &milk.figures) {
        asks.extend(compared_ui(ui, units, figure));
    }
    costs_ui(ui, units, beside);
    asks
}

fn words_ui(ui: &mut Ui, units: Units, beside: &Beside) {
    ui.label(RichText::new("Standardisation of A's milk to B's fat and casein").font(bold(CAPTION)));
    for line in beside.milk.iter().flat_map(|milk| milk.standardisation.in_words(units)) {
        ui.label(RichText::new(line).size(CAPTION));
    }
}
