//! One figure of two designs as a row: its name with its unit, A, B and B less A.

use crate::analysis::{Difference, Likeness};
use crate::design::Unit;
use crate::figure::{Figure, Reading, Weight};
use crate::report::ComparedRow;
use crate::ui::results::beside::Beside;
use crate::ui::state::ask::Ask;
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold, plain};
use crate::units::{Scale, Units};
use egui::text::LayoutJob;
use egui::{Align2, Color32, FontId, Rect, Response, RichText, Role, Sense, Stroke, Ui, WidgetInfo, pos2, vec2};

/// Narrowest and widest column of values.
const COLUMN: (f32, f32) = (54.0, 120.0);
/// So much wider is the last column, in which words such as "only in B" stand.
const WIDER: f32 = 12.0;
/// Gap between a name and the first column.
const GAP: f32 = 8.0;

/// Where the columns of a table end.
#[derive(Clone, Copy, Debug)]
pub(in crate::ui) struct Columns {
    name: f32,
    each: f32,
}

impl Columns {
    /// Returns the columns that fit into a width.
    pub(in crate::ui) fn of(width: f32) -> Self {
        let each = (0.185 * width).clamp(COLUMN.0, COLUMN.1);
        Self { name: width - 3.0 * each - WIDER, each }
    }

    fn end(self, column: usize) -> f32 {
        self.name + (column + 1) as f32 * self.each + if column == 2 { WIDER } else { 0.0 }
    }
}

/// Draws the heads of the columns, each with its stroke.
pub(in crate::ui) fn heads_ui(ui: &mut Ui) {
    let palette = Palette::of(ui);
    let columns = Columns::of(ui.available_width());
    let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), 22.0), Sense::hover());
    for (column, (name, colour)) in [("A", palette.design), ("B", palette.second), ("B − A", palette.soft)].into_iter().enumerate()
    {
        let end = pos2(rect.left() + columns.end(column), rect.center().y);
        let written = ui.painter().text(end, Align2::RIGHT_CENTER, name, bold(CAPTION), palette.text);
        if column < 2 {
            stroke(
                ui,
                Rect::from_min_max(pos2(written.left() - 30.0, rect.top()), pos2(written.left() - 6.0, rect.bottom())),
                column,
                colour,
            );
        }
    }
}

/// Draws how a design's lines look: solid for A, dashed for B.
pub(in crate::ui) fn stroke(ui: &Ui, rect: Rect, column: usize, colour: Color32) {
    let ends = [rect.left_center(), rect.right_center()];
    let stroke = Stroke::new(3.0, colour);
    if column == 0 {
        ui.painter().line_segment(ends, stroke);
    } else {
        ui.painter().extend(egui::Shape::dashed_line(&ends, stroke, 6.0, 4.0));
    }
}

/// One line of the table.
struct Row {
    /// What it is, with its unit.
    name: String,
    /// The first design's.
    a: String,
    /// The second design's.
    b: String,
    /// Second less first.
    change: String,
    /// Whether it is one of the few that count most.
    lead: bool,
    /// Whether the change is a number that counts.
    apart: bool,
    /// The whole in one sentence.
    whole: String,
    /// What is said of it where the pointer rests.
    hover: String,
    /// Whether it opens a card.
    opens: bool,
}

/// A figure of two designs as it is shown: without units, which stand in its name.
struct Compared {
    unit: &'static str,
    a: String,
    b: String,
    change: String,
}

impl Compared {
    fn of(figure: &Difference, units: Units) -> Self {
        let both = [&figure.a, &figure.b].into_iter().flatten();
        // One unit for both, that of the larger.
        let largest = both.filter_map(|one| if let Reading::Number(value) = one.reading { Some(value) } else { None });
        let largest = largest.fold(0.0, |largest: f64, value| largest.max(value.abs()));
        let either = figure.a.as_ref().or(figure.b.as_ref());
        let scale = either.map_or(Scale::own(Unit::One), |one| units.scale(one.unit, largest));
        let bare = |one: &Figure| match one.reading {
            Reading::Number(value) if scale.is_own() => one.digits(value),
            Reading::Number(value) => scale.digits(value, one.decimals),
            Reading::Words(_) | Reading::Switch(_) => one.text(),
        };
        let of = |one: &Option<Figure>| one.as_ref().map_or_else(|| "–".to_owned(), bare);
        let change = match (figure.likeness, figure.change, either) {
            (Likeness::Differs, Some(change), Some(one)) => {
                let sign = if change < 0.0 { '−' } else { '+' };
                let size = change.abs();
                let digits = if scale.is_own() { one.digits(size) } else { scale.apart_digits(size, one.decimals) };
                format!("{sign}{digits}")
            }
            _ => figure.change_text(units),
        };
        Self { unit: scale.symbol, a: of(&figure.a), b: of(&figure.b), change }
    }
}

/// Draws one figure of two designs; chosen, it opens the card of the first design's.
pub(in crate::ui) fn compared_ui(ui: &mut Ui, units: Units, figure: &Difference) -> Option<Ask> {
    let shown = Compared::of(figure, units);
    let label = units.told(figure.label);
    let apart = figure.likeness == Likeness::Differs && figure.change.is_some();
    let whole = format!(
        "{}: A {}, B {}, B − A {}{}",
        label,
        with_unit(&shown.a, shown.unit, figure.a.is_some()),
        with_unit(&shown.b, shown.unit, figure.b.is_some()),
        with_unit(&shown.change, shown.unit, apart),
        likely(figure, units)
    );
    let law = figure.a.as_ref().or(figure.b.as_ref()).map_or_else(String::new, |one| units.told(one.law));
    let name = if shown.unit.is_empty() { label } else { format!("{label}, {}", shown.unit) };
    let hover = format!("{whole}\n{law}");
    let lead = figure.weight == Weight::Lead;
    let row = Row { name, a: shown.a, b: shown.b, change: shown.change, lead, apart, whole, hover, opens: true };
    row_ui(ui, row).clicked().then_some(Ask::Figure(Some(figure.key)))
}

/// Draws what two designs cost.
pub(in crate::ui) fn costs_ui(ui: &mut Ui, units: Units, beside: &Beside) {
    for ComparedRow { label, a, b, change, lead, differs } in beside.costs.iter().flat_map(|costs| costs.rows(units)) {
        let whole = format!("{label}: A {a}, B {b}, B − A {change}");
        row_ui(ui, Row { name: label, a, b, change, lead, apart: differs, hover: whole.clone(), whole, opens: false });
    }
    if let Some(note) = &beside.cost_note {
        ui.label(RichText::new(note).size(CAPTION).color(Palette::of(ui).soft));
    }
}

fn row_ui(ui: &mut Ui, row: Row) -> Response {
    let palette = Palette::of(ui);
    let font = if row.lead { bold(BODY) } else { plain(CAPTION) };
    let columns = Columns::of(ui.available_width());
    let wide = |text: &str, font: &FontId| ui.painter().layout_no_wrap(text.to_owned(), font.clone(), palette.text).size().x;
    let fits = |text: &str, font: &FontId| wide(text, font) <= columns.each - 4.0;
    // Numbers that are a little too wide are set smaller; words stand below each other.
    let font = if fits(&row.a, &font) && fits(&row.b, &font) { font } else { plain(CAPTION) };
    let in_columns = fits(&row.a, &font) && fits(&row.b, &font);
    let name_width = if in_columns { columns.name - GAP } else { columns.end(1) - GAP };
    let name = ui.painter().layout(row.name, plain(CAPTION), if row.lead { palette.text } else { palette.soft }, name_width);
    let words = if in_columns { None } else { Some(words_job(&row.a, &row.b, ui.available_width(), &palette)) };
    let words = words.map(|job| ui.painter().layout_job(job));
    let below = words.as_ref().map_or(0.0, |words| words.size().y + 2.0);
    let first = name.size().y.max(24.0);
    let (rect, response) =
        ui.allocate_exact_size(vec2(ui.available_width(), first + below), if row.opens { Sense::click() } else { Sense::hover() });
    let line = rect.top() + 10.0;
    ui.painter().galley(pos2(rect.left(), rect.top() + 1.0), name, palette.text);
    let at = |column: usize| pos2(rect.left() + columns.end(column), line);
    if let Some(words) = words {
        ui.painter().galley(pos2(rect.left(), rect.top() + first), words, palette.text);
    } else {
        ui.painter().text(at(0), Align2::RIGHT_CENTER, &row.a, font.clone(), palette.text);
        ui.painter().text(at(1), Align2::RIGHT_CENTER, &row.b, font, palette.text);
    }
    // Words such as "only in B" are wider than the numbers above and below them.
    let (change_font, colour) = change_style(row.apart, &palette);
    ui.painter().text(at(2), Align2::RIGHT_CENTER, &row.change, change_font, colour);
    let role = if row.opens { Role::Button } else { Role::Label };
    response.widget_info(|| WidgetInfo::labeled(role, true, &row.whole));
    response.on_hover_text(row.hover)
}

fn change_style(apart: bool, palette: &Palette) -> (FontId, Color32) {
    if apart { (bold(CAPTION), palette.text) } else { (plain(CAPTION), palette.soft) }
}

fn with_unit(words: &str, unit: &str, is_number: bool) -> String {
    if is_number && !unit.is_empty() { format!("{words} {unit}") } else { words.to_owned() }
}

/// Returns the likely ranges of both, where they are known.
fn likely(figure: &Difference, units: Units) -> String {
    let of = |name: &str, one: &Option<Figure>| {
        one.as_ref().and_then(|figure| figure.likely_text(units)).map(|range| format!("{name} {range}"))
    };
    let ranges: Vec<String> = of("A", &figure.a).into_iter().chain(of("B", &figure.b)).collect();
    if ranges.is_empty() { String::new() } else { format!("; likely {}", ranges.join(", ")) }
}

/// Returns the words of the two below each other.
fn words_job(a: &str, b: &str, width: f32, palette: &Palette) -> LayoutJob {
    let mut job = LayoutJob::default();
    job.wrap.max_width = width;
    for (name, words) in [("A  ", a), ("\nB  ", b)] {
        for (text, font) in [(name, bold(CAPTION)), (words, plain(CAPTION))] {
            job.append(text, 0.0, egui::TextFormat { font_id: font, color: palette.text, ..Default::default() });
        }
    }
    job
}
