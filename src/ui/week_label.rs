//! The labels below a day: each below its block where there is room, else beside the one before it or on the next line.

use super::results::sign;
use super::theme::{CAPTION, Palette, bold, plain};
use super::week_line::{LINE, Track, label_of};
use crate::batch::Severity;
use crate::plan::{KitchenWeek, TimelineDay};
use egui::{Align2, Color32, CornerRadius, FontId, Pos2, Rect, Ui, UiBuilder, pos2, vec2};

/// Space between two labels.
const BETWEEN: f32 = 14.0;
/// Space between the parts of one.
const WITHIN: f32 = 5.0;
/// Room of the sign of what is disturbed.
const SIGN: f32 = 20.0;

/// A label.
pub(super) struct Label {
    /// The time.
    pub(super) at: String,
    /// The task.
    pub(super) name: String,
    /// What it disturbs, if anything.
    pub(super) disturbs: Option<String>,
    /// Its left edge; the height counts from the first line.
    pub(super) place: Pos2,
    /// On which line.
    pub(super) line: usize,
}

fn wide(ui: &Ui, words: &str, font: FontId) -> f32 {
    ui.painter().layout_no_wrap(words.to_owned(), font, Color32::BLACK).size().x
}

impl Label {
    fn width(&self, ui: &Ui) -> f32 {
        let disturbs = self.disturbs.as_ref().map_or(0.0, |words| 2.0 * WITHIN + SIGN + wide(ui, words, bold(CAPTION)));
        wide(ui, &self.at, bold(CAPTION)) + WITHIN + wide(ui, &self.name, plain(CAPTION)) + disturbs
    }
}

/// Returns the labels of a day with their places, in order of time.
///
/// A label stands below its block; where the one before it is in the way it follows that, and where the line is full it begins the next one.
pub(super) fn labels(ui: &Ui, track: Track, week: &KitchenWeek, day: &TimelineDay) -> Vec<Label> {
    let range = track.range();
    let (mut line, mut free_from) = (0, range.min);
    let mut all = Vec::new();
    for block in &day.blocks {
        let Some(mut label) = label_of(week, block) else { continue };
        let width = label.width(ui);
        let mut x = track.x(block.from_min).max(free_from);
        if x + width > range.max {
            // At the end of the day it moves to the left as far as the line allows.
            let moved = range.max - width;
            if moved >= free_from {
                x = moved;
            } else {
                line += 1;
                x = track.x(block.from_min).min(moved).max(range.min);
            }
        }
        (label.place, label.line) = (pos2(x, LINE * line as f32), line);
        free_from = x + width + BETWEEN;
        all.push(label);
    }
    all
}

/// Draws the labels below a height.
pub(super) fn paint_labels(ui: &mut Ui, top: f32, labels: &[Label]) {
    let palette = Palette::of(ui);
    for label in labels {
        let middle = pos2(label.place.x, top + label.place.y + 0.5 * LINE);
        let colour = if label.disturbs.is_some() { palette.caution_text } else { palette.text };
        if label.disturbs.is_some() {
            let ground = Rect::from_min_size(pos2(middle.x - 3.0, middle.y - 0.5 * LINE), vec2(label.width(ui) + 6.0, LINE));
            ui.painter().rect_filled(ground, CornerRadius::same(4), palette.caution_fill);
        }
        let time = ui.painter().text(middle, Align2::LEFT_CENTER, &label.at, bold(CAPTION), colour);
        let name_at = pos2(time.right() + WITHIN, middle.y);
        let name = ui.painter().text(name_at, Align2::LEFT_CENTER, &label.name, plain(CAPTION), colour);
        if let Some(disturbs) = &label.disturbs {
            let place = Rect::from_center_size(pos2(name.right() + WITHIN + 0.5 * SIGN, middle.y), vec2(SIGN, SIGN));
            // A child of its own: the place of the next row does not depend on it.
            sign(&mut ui.new_child(UiBuilder::new().max_rect(place)), Severity::Caution, colour);
            let words_at = pos2(place.right() + WITHIN, middle.y);
            ui.painter().text(words_at, Align2::LEFT_CENTER, disturbs, bold(CAPTION), colour);
        }
    }
}
