//! What batches tell of their kitchen: each constant and each figure with its range before and now.

use crate::design::Design;
use crate::report::{NarrowedRow, narrowed};
use crate::session::FoundKitchen;
use crate::ui::widget::spoken::{alert_ui, heading_ui};
use crate::ui::widget::theme::{CAPTION, Palette, bold};
use crate::units::Units;
use crate::words::{KitchenRow, NOTHING_TOLD, kitchen_rows, nearness_words, untold_words};
use egui::{Label, Rect, RichText, Role, Sense, Ui, WidgetInfo, pos2, vec2};

/// Width from which on constants and figures stand side by side.
const TWO_COLUMNS: f32 = 720.0;
/// Height of the picture of two ranges.
const BAR: f32 = 14.0;
/// Room at each end of a picture, over what the wider range takes.
const MARGIN: f64 = 0.08;

/// Draws what was found.
pub(super) fn found_ui(ui: &mut Ui, units: Units, found: &FoundKitchen, design: &Design) {
    let learned = match &found.learned {
        Ok(learned) => learned,
        Err(why) => {
            alert_ui(ui, RichText::new(crate::design::upper_first(why)));
            return;
        }
    };
    let count = found.records.len();
    let title = if count == 1 { "What 1 batch shows".to_owned() } else { format!("What {count} batches show") };
    heading_ui(ui, &title);
    let soft = |ui: &mut Ui, words: &str| {
        ui.add(Label::new(RichText::new(words).size(CAPTION).color(Palette::of(ui).soft)).wrap());
    };
    soft(ui, &nearness_words(learned));
    let Some(known) = found.known("") else {
        ui.add(Label::new(NOTHING_TOLD).wrap());
        return;
    };
    soft(
        ui,
        "Wide bar: what we expect of any kitchen. Narrow bar: what your log suggests for yours. The true value should lie inside about 8 times in 10, and outside 2 times in 10.",
    );
    ui.add_space(8.0);
    let rows = kitchen_rows(&known, units);
    let figures = found.spreads.as_ref().filter(|_| found.is_of(design)).map(|(before, now)| narrowed(before, now, units));
    let room = ui.available_width();
    if let Some(figures) = figures.as_ref().filter(|_| room >= TWO_COLUMNS) {
        ui.horizontal_top(|ui| {
            let half = 0.5 * room - 16.0;
            for side in 0..2 {
                ui.vertical(|ui| {
                    ui.set_width(half);
                    if side == 0 { constants_ui(ui, &rows) } else { figures_ui(ui, figures) }
                });
                ui.add_space(8.0);
            }
        });
    } else {
        constants_ui(ui, &rows);
        if let Some(figures) = &figures {
            ui.add_space(10.0);
            figures_ui(ui, figures);
        }
    }
    if !found.is_of(design) {
        soft(ui, "The design has changed since: learn again to see how its figures change.");
    }
    ui.add_space(6.0);
    if let Some(untold) = untold_words(learned) {
        let header = egui::CollapsingHeader::new(RichText::new("What these batches do not show").size(CAPTION));
        header.show_unindented(ui, |ui| soft(ui, &untold));
    }
}

fn constants_ui(ui: &mut Ui, rows: &[KitchenRow]) {
    ui.label(RichText::new("Your kitchen").font(bold(CAPTION)));
    for row in rows {
        let [now, before, ends] = row.ranges;
        let words = format!("{} ({})", row.value, row.now);
        row_ui(ui, &crate::design::upper_first(&row.what), &words, &row.before, Ranges::of(before, now, ends));
    }
}

fn figures_ui(ui: &mut Ui, rows: &[NarrowedRow]) {
    ui.label(RichText::new("This design, calculated for your kitchen").font(bold(CAPTION)));
    if rows.is_empty() {
        ui.add(Label::new("None of its main figures gets a narrower range.").wrap());
    }
    for row in rows {
        let [before, now] = row.ranges;
        let ends = (before.0.min(now.0), before.1.max(now.1));
        row_ui(ui, &row.label, &row.now, &row.before, Ranges::of(before, now, ends));
    }
}

/// Two ranges and what they are drawn within, as shares of the width.
#[derive(Clone, Copy)]
struct Ranges {
    before: [f32; 2],
    now: [f32; 2],
}

impl Ranges {
    fn of(before: (f64, f64), now: (f64, f64), ends: (f64, f64)) -> Self {
        let span = (ends.1 - ends.0).max(f64::MIN_POSITIVE);
        let (from, span) = (MARGIN.mul_add(-span, ends.0), (1.0 + 2.0 * MARGIN) * span);
        let share = |value: f64| ((value - from) / span).clamp(0.0, 1.0) as f32;
        Self { before: [share(before.0), share(before.1)], now: [share(now.0), share(now.1)] }
    }
}

/// Draws one range before and now, in words and as a picture.
fn row_ui(ui: &mut Ui, what: &str, now: &str, before: &str, ranges: Ranges) {
    let palette = Palette::of(ui);
    ui.add_space(4.0);
    ui.add(Label::new(what).wrap());
    let words = format!("{now}; in any kitchen {before}");
    ui.add(Label::new(RichText::new(&words).size(CAPTION).color(palette.soft)).wrap());
    let (rect, response) = ui.allocate_exact_size(vec2(ui.available_width().min(360.0), BAR), Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, format!("{what}: {words}")));
    let bar = |[from, to]: [f32; 2], high: f32| {
        let place = |share: f32| rect.left() + share * rect.width();
        let (from, to) = (place(from), place(to).max(place(from) + 2.0));
        let middle = rect.center().y;
        Rect::from_min_max(pos2(from, middle - 0.5 * high), pos2(to, middle + 0.5 * high))
    };
    ui.painter().hline(rect.x_range(), rect.center().y, egui::Stroke::new(1.0, palette.grid));
    ui.painter().rect_filled(bar(ranges.before, BAR), 3.0, palette.grid);
    ui.painter().rect_filled(bar(ranges.now, 0.5 * BAR), 3.0, palette.design);
}
