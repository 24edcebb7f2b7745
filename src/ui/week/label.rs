//! The labels below a day: each below its block where there is room, else beside the one before it or on the next line.

use crate::caution::Severity;
use crate::plan::{KitchenWeek, Taken, TimelineBlock, TimelineDay};
use crate::ui::week::track::{LINE, Track};
use crate::ui::widget::severity::sign;
use crate::ui::widget::theme::{CAPTION, Palette, bold, plain};
use crate::units::Units;
use egui::{Align2, Color32, CornerRadius, FontId, Pos2, Rect, Ui, UiBuilder, pos2, vec2};

/// Space between two labels.
const BETWEEN: f32 = 14.0;
/// Space between the parts of one.
const WITHIN: f32 = 5.0;
/// A label that moves to the left of its block ends so far before it.
const ASIDE: f32 = 10.0;
/// Room of the sign of what is disturbed.
const SIGN: f32 = 20.0;

/// A label.
pub(in crate::ui) struct Label {
    /// The time.
    pub(in crate::ui) at: String,
    /// The task.
    pub(in crate::ui) name: String,
    /// What it disturbs, if anything.
    pub(in crate::ui) disturbs: Option<String>,
    /// Its left edge; the height counts from the first line.
    pub(in crate::ui) place: Pos2,
    /// On which line.
    pub(in crate::ui) line: usize,
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
/// A label stands below its block; where the one before it is in the way it follows that. Where the line is full, the one before it makes room
/// by moving to the left of its own block, if it is alone on the line; otherwise the next line begins.
pub(in crate::ui) fn labels(ui: &Ui, units: Units, track: Track, week: &KitchenWeek, day: &TimelineDay) -> Vec<Label> {
    let range = track.range();
    let mut line = Line { number: 0, free_from: range.min, alone: None };
    let mut all: Vec<Label> = Vec::new();
    for block in &day.blocks {
        let Some(mut label) = label_of(week, block, units) else { continue };
        let (at, width) = (track.x(block.from_min), label.width(ui));
        let last_fit = range.max - width;
        let mut x = at.max(line.free_from);
        if x > last_fit {
            x = last_fit;
            if x < line.free_from {
                let aside = line.alone.map(|(end, wide)| end - wide).filter(|left| *left >= range.min);
                match (aside, all.last_mut()) {
                    (Some(left), Some(before)) if at.min(last_fit) >= before.place.x => {
                        before.place.x = left;
                        x = at.min(last_fit);
                    }
                    _ => {
                        line = Line { number: line.number + 1, free_from: range.min, alone: None };
                        x = at.min(last_fit).max(range.min);
                    }
                }
            }
        }
        // Alone so far, and where it would end if it had to move aside.
        line.alone = (line.free_from <= range.min).then_some((at - ASIDE, width));
        line.free_from = x + width + BETWEEN;
        (label.place, label.line) = (pos2(x, LINE * line.number as f32), line.number);
        all.push(label);
    }
    all
}

/// A line of labels while it is filled.
struct Line {
    number: usize,
    free_from: f32,
    /// Where the only label on it would end if it moved aside, and its width.
    alone: Option<(f32, f32)>,
}

/// Draws the labels below a height.
pub(in crate::ui) fn paint_labels(ui: &mut Ui, top: f32, labels: &[Label]) {
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

/// Returns the words of a label: its time and its verb.
fn label_of(week: &KitchenWeek, block: &TimelineBlock, units: Units) -> Option<Label> {
    let task = week.tasks.get(block.task).filter(|_| !block.goes_on)?;
    let disturbs: Vec<&str> = block.disturbs.iter().map(|by| band_word(*by)).collect();
    let disturbs = (!disturbs.is_empty()).then(|| disturbs.join(" and "));
    Some(Label { at: units.hour(task.start.time()), name: block.short.clone(), disturbs, place: Pos2::ZERO, line: 0 })
}

/// Returns what takes a time, in one word.
pub(in crate::ui) const fn band_word(by: Taken) -> &'static str {
    match by {
        Taken::Sleep => "sleep",
        Taken::Work => "work",
        Taken::Busy => "busy",
    }
}
