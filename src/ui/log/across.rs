//! All batches beside each other: numbers, and small curves of weight and pH on one scale.

use crate::report::{BATCH_COLUMNS, BatchLine, short_day};
use crate::ui::state::ask::{Ask, LogAsk};
use crate::ui::state::view::View;
use crate::ui::widget::room::Room;
use crate::ui::widget::scroll::read_ui;
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::text_undo::remember_text;
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold, plain};
use crate::units::Units;
use egui::{
    Align2, Button, Color32, Label, Pos2, Rect, RichText, Role, ScrollArea, Sense, Shape, Stroke, TextEdit, Ui, WidgetInfo, pos2,
    vec2,
};

/// Widest column of numbers, and width of a small curve.
const NUMBER: f32 = 84.0;
const CURVE: f32 = 110.0;
/// Room for the bar of what scrolls.
const BAR: f32 = 16.0;
/// Height of the numbers of a batch.
const NUMBERS: f32 = 32.0;
/// Height of the headings.
const HEADINGS: f32 = 60.0;
/// Room around a batch.
const PAD: f32 = 6.0;

/// Draws the batches that were found; returns what is asked for.
///
/// `of`: how many batches there are
pub(super) fn across_ui(ui: &mut Ui, view: &mut View, lines: &[BatchLine], of: usize, room: Room) -> Vec<Ask> {
    let mut asks = Vec::new();
    heading_ui(ui, "All batches");
    ui.horizontal_wrapped(|ui| {
        let edit =
            TextEdit::singleline(&mut view.log.sought).hint_text("Search the batches").desired_width(240.0).margin(vec2(8.0, 5.0));
        let response = ui.add(edit);
        ui.ctx().accesskit_node_builder(response.id, |node| node.set_label("Search the batches"));
        remember_text(ui, &response, &view.log.sought);
        let save = Button::new("Save as a table…").min_size(vec2(0.0, 30.0));
        if ui.add_enabled(!lines.is_empty(), save).on_hover_text("For a spreadsheet, with metric units").clicked() {
            asks.push(Ask::Log(LogAsk::SaveTable));
        }
    });
    let found = if lines.len() == of {
        format!("{of} batches, the newest first. Press one to open it.")
    } else {
        format!("{} of {of} batches.", lines.len())
    };
    ui.label(RichText::new(found).size(CAPTION).color(Palette::of(ui).soft));
    if lines.is_empty() {
        let words = "Try other words: names, designs, days such as 2031-05 and what was written down are searched.";
        ui.add(Label::new(words).wrap());
        return asks;
    }
    let widths = Widths::of(ui.available_width() - BAR);
    headings_ui(ui, widths);
    let scales = Scales::of(lines);
    let units = view.units;
    let mut all_ui = |ui: &mut Ui| {
        let pressed = lines.iter().filter(|line| line_ui(ui, units, line, &scales, widths)).map(|line| line.number);
        asks.extend(pressed.map(|number| Ask::Log(LogAsk::Choose(number))));
    };
    match room {
        Room::Own => read_ui(ui, "Batches side by side", ScrollArea::vertical().auto_shrink(false), all_ui),
        Room::Column => all_ui(ui),
    }
    asks
}

/// How wide the columns are.
#[derive(Clone, Copy)]
struct Widths {
    number: f32,
    /// None where there is no room for the small curves.
    curve: Option<f32>,
}

impl Widths {
    fn of(room: f32) -> Self {
        let count = BATCH_COLUMNS.len() as f32;
        let with_curves = 2.0 * PAD + NUMBER * count + 2.0 * CURVE <= room;
        Self { number: NUMBER.min((room - 2.0 * PAD) / count), curve: with_curves.then_some(CURVE) }
    }

    fn whole(self) -> f32 {
        2.0 * PAD + self.number * BATCH_COLUMNS.len() as f32 + 2.0 * self.curve.unwrap_or(0.0)
    }
}

/// Draws the headings.
fn headings_ui(ui: &mut Ui, widths: Widths) {
    let (rect, _) = ui.allocate_exact_size(vec2(widths.whole(), HEADINGS), Sense::hover());
    let curves = widths.curve.into_iter().flat_map(|curve| [("Weight", curve), ("pH, centre", curve)]);
    let heads = BATCH_COLUMNS.iter().map(|column| (column.label, widths.number)).chain(curves);
    let mut left = rect.left() + PAD;
    for (words, wide) in heads {
        let galley = ui.painter().layout(words.to_owned(), plain(CAPTION), Palette::of(ui).soft, wide - 8.0);
        ui.painter().galley(pos2(left, rect.bottom() - galley.size().y - 2.0), galley, Palette::of(ui).soft);
        left += wide;
    }
}

/// Draws one batch as a button; returns whether it was pressed.
fn line_ui(ui: &mut Ui, units: Units, line: &BatchLine, scales: &Scales, widths: Widths) -> bool {
    let inside = widths.whole() - 2.0 * PAD;
    let palette = Palette::of(ui);
    let day = short_day(line.begun.date());
    let title = format!("{}, {day}, {}", line.title, line.design);
    let title = ui.painter().layout(title, bold(BODY), palette.text, inside);
    let words =
        (!line.words.is_empty()).then(|| ui.painter().layout(format!("“{}”", line.words), plain(CAPTION), palette.soft, inside));
    let words_high = words.as_ref().map_or(0.0, |words| words.size().y);
    let high = title.size().y + NUMBERS + words_high + 2.0 * PAD;
    let (rect, response) = ui.allocate_exact_size(vec2(widths.whole(), high), Sense::click());
    // A reader of the screen finds it also where it is out of sight.
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, spoken(line, &line.texts(units))));
    if !ui.is_rect_visible(rect) {
        return response.clicked();
    }
    let texts = line.texts(units);
    let fill = if response.hovered() || response.has_focus() { palette.panel } else { Color32::TRANSPARENT };
    ui.painter().rect_filled(rect, 6.0, fill);
    if response.has_focus() {
        ui.painter().rect_stroke(rect, 6.0, Stroke::new(2.0, palette.link), egui::StrokeKind::Inside);
    }
    let mut top = rect.top() + PAD;
    let left = rect.left() + PAD;
    let title_high = title.size().y;
    ui.painter().galley(pos2(left, top), title, palette.text);
    top += title_high;
    for (place, text) in texts.iter().enumerate() {
        let at = pos2(left + widths.number * place as f32, top + 0.5 * NUMBERS);
        ui.painter().text(at, Align2::LEFT_CENTER, text, plain(BODY), palette.text);
    }
    if let Some(wide) = widths.curve {
        let mut from = left + widths.number * texts.len() as f32;
        for (points, scale) in [(&line.weights, &scales.weights), (&line.centre, &scales.centre)] {
            let own = Rect::from_min_size(pos2(from, top + 3.0), vec2(wide - 12.0, NUMBERS - 6.0));
            small_curve(ui, own, points, scale);
            from += wide;
        }
    }
    top += NUMBERS;
    if let Some(words) = words {
        ui.painter().galley(pos2(left, top), words, palette.soft);
    }
    response.clicked()
}

/// Returns a batch in words.
fn spoken(line: &BatchLine, texts: &[String]) -> String {
    let numbers = BATCH_COLUMNS.iter().zip(texts).zip(line.numbers).filter(|(_, number)| number.is_some());
    let numbers: Vec<String> = numbers.map(|((column, text), _)| format!("{} {text}", column.label)).collect();
    format!("{}, begun {}: {}", line.title, short_day(line.begun.date()), numbers.join(", "))
}

/// What the small curves of all batches have in common, so that they can be compared by eye.
struct Scales {
    weights: Scale,
    centre: Scale,
}

/// From where to where the points of some curves lie.
struct Scale {
    last_h: f64,
    least: f64,
    most: f64,
}

impl Scales {
    fn of(lines: &[BatchLine]) -> Self {
        Self {
            weights: Scale::of(lines.iter().flat_map(|line| &line.weights)),
            centre: Scale::of(lines.iter().flat_map(|line| &line.centre)),
        }
    }
}

impl Scale {
    fn of<'a>(points: impl Iterator<Item = &'a (f64, f64)>) -> Self {
        points.fold(Self { last_h: f64::MIN_POSITIVE, least: f64::INFINITY, most: f64::NEG_INFINITY }, |scale, (hour, value)| {
            Self { last_h: scale.last_h.max(*hour), least: scale.least.min(*value), most: scale.most.max(*value) }
        })
    }
}

/// Draws a small curve with its points.
fn small_curve(ui: &Ui, rect: Rect, points: &[(f64, f64)], scale: &Scale) {
    let palette = Palette::of(ui);
    ui.painter().line_segment([rect.left_bottom(), rect.right_bottom()], Stroke::new(1.0, palette.grid));
    let span = (scale.most - scale.least).max(f64::MIN_POSITIVE);
    let place = |(hour, value): &(f64, f64)| {
        let across = (hour.max(0.0) / scale.last_h) as f32;
        let up = ((value - scale.least) / span) as f32;
        pos2(rect.left() + across * rect.width(), rect.bottom() - 3.0 - up * (rect.height() - 6.0))
    };
    let places: Vec<Pos2> = points.iter().map(place).collect();
    for at in &places {
        ui.painter().circle_filled(*at, 2.0, palette.text);
    }
    ui.painter().add(Shape::line(places, Stroke::new(1.5, palette.text)));
}
