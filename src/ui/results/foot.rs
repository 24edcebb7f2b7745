//! The foot: the few figures that are always in sight, of both designs where there are two, and what the last change did.

use crate::analysis::Summary;
use crate::caution::{PlanEnd, Severity};
use crate::design::Unit;
use crate::ui::state::ask::Ask;
use crate::ui::widget::severity::sign;
use crate::ui::widget::spoken::say_changes;
use crate::ui::widget::theme::{BODY, CAPTION, FOOT, Palette, TITLE, bold, plain};
use crate::units::Units;
use crate::words::{FROM_A_MODEL, counted, end_words};
use egui::text::{LayoutJob, TextFormat};
use egui::{Align, RichText, Role, Ui, WidgetInfo, vec2};

/// Space left and right of the foot, and above and below.
pub(in crate::ui) const MARGIN: (i8, i8) = (16, 8);
/// Width of a sign and the gap after it.
const SIGN_ROOM: f32 = 28.0;
/// Width below which two designs have no room for more than their serious warnings, and how each ends has a line of its own.
const NARROW: f32 = 900.0;

/// Width below which what is said of a plan that ends before the cheeses are sour leaves room for the serious warnings alone.
const LONG_END: f32 = 1500.0;

/// Returns the height that the foot needs: its figures, and the line about the last change with as many rows as it takes.
pub(in crate::ui) fn height(ui: &Ui, one_column: bool, two: bool, last_change: &str) -> f32 {
    let with_one_row = match (one_column, two) {
        (false, false) => 78.0,
        (_, true) if ui.available_width() < NARROW => 144.0,
        (_, true) => 92.0,
        (true, false) => 112.0,
    };
    let room = ui.available_width() - 2.0 * f32::from(MARGIN.0);
    let words = ui.painter().layout(said(last_change).to_owned(), plain(CAPTION), Palette::of(ui).soft, room);
    with_one_row + words.size().y - words.rows.first().map_or(0.0, |row| row.height())
}

/// Returns what is said of the last change, or what to do first.
const fn said(last_change: &str) -> &str {
    if last_change.is_empty() { FROM_A_MODEL } else { last_change }
}

/// Units of which every mention in the line about the last change is a whole quantity.
const CHANGED: [Unit; 6] = [Unit::Celsius, Unit::Litre, Unit::Millilitre, Unit::Kilogram, Unit::Gram, Unit::Hour];

/// Returns the line about the last change as it is shown; what names a file or a title is left as it is.
pub(in crate::ui) fn told_change(units: Units, last_change: &str) -> String {
    let names_something = last_change.contains(['/', '\\', '“']);
    if names_something { last_change.to_owned() } else { units.told_of(last_change, &CHANGED) }
}

/// Draws the foot.
///
/// # Arguments
/// * `of_a`, `of_b`: what is said of the two, or of one
/// * `cost`: what is to be paid, in words; said of one design alone
pub(in crate::ui) fn foot_ui(
    ui: &mut Ui,
    units: Units,
    (of_a, of_b): (&Summary, Option<&Summary>),
    cost: Option<&str>,
    last_change: &str,
) -> Option<Ask> {
    let palette = Palette::of(ui);
    let asked = match of_b {
        Some(of_b) => both_ui(ui, units, of_a, of_b),
        None => one_ui(ui, units, of_a, cost),
    };
    let words = said(last_change);
    let response = ui.add(egui::Label::new(RichText::new(words).size(CAPTION).color(palette.soft)).wrap());
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, format!("Last change: {words}")));
    say_changes(&response);
    asked
}

/// The figures of a summary in words: cheeses, the mass of each, how the plan ends with when.
fn texts(summary: &Summary, units: Units) -> [String; 4] {
    let unknown = || "–".to_owned();
    let end = summary.end.map(|end| end_words(&end, units));
    [
        summary.cheese_count.map_or_else(unknown, |count| count.to_string()),
        summary
            .dried_cheese_g
            .map_or_else(unknown, |grams| units.text(Unit::Gram, grams, 0).unwrap_or_else(|| format!("{grams:.0} g"))),
        end.as_ref().map_or("ends after", |end| end.label).to_owned(),
        end.map_or_else(unknown, |end| end.text),
    ]
}

fn one_ui(ui: &mut Ui, units: Units, summary: &Summary, cost: Option<&str>) -> Option<Ask> {
    let shown = ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = 6.0;
        let [cheeses, each, ends, when] = texts(summary, units);
        // First, so that nobody reads "finished" without them.
        let ends_long = ui.available_width() < LONG_END && matches!(summary.end, Some(PlanEnd::NotSour { .. }));
        let asked = cautions_ui(ui, summary, if ends_long { 1 } else { 3 });
        figure(ui, "cheeses", &cheeses, false);
        figure(ui, "each", &each, true);
        figure(ui, &ends, &when, true);
        // The shopping page says what is to be paid too: it never takes a row more than the foot has.
        let fits = |ui: &Ui, cost: &str| {
            let wide = ui.painter().layout_job(figure_words(ui, "to pay", cost, true)).size().x;
            !ends_long || wide <= ui.available_size_before_wrap().x
        };
        if let Some(cost) = cost.filter(|cost| fits(ui, cost)) {
            figure(ui, "to pay", cost, true);
        }
        asked
    });
    shown.inner
}

/// Draws two lines, figure below figure, so that they are read against each other.
fn both_ui(ui: &mut Ui, units: Units, a: &Summary, b: &Summary) -> Option<Ask> {
    let palette = Palette::of(ui);
    let mut asked = None;
    let narrow = ui.available_width() < NARROW;
    let told = if narrow { 1 } else { 3 };
    egui::Grid::new("foot of both").num_columns(5).min_col_width(0.0).spacing(vec2(18.0, 0.0)).min_row_height(27.0).show(
        ui,
        |ui| {
            for (name, colour, summary) in [("A", palette.design, a), ("B", palette.second, b)] {
                let [cheeses, each, ends, when] = texts(summary, units);
                let letter = ui.label(RichText::new(name).font(bold(TITLE)).color(colour));
                let serious = counted(Severity::Stop, summary.cautions[0]);
                let words = format!("{name}: {serious}, {cheeses} cheeses, each {each}, {ends} {when}");
                letter.widget_info(|| WidgetInfo::labeled(Role::Label, true, &words));
                ui.horizontal(|ui| {
                    ui.spacing_mut().item_spacing.x = 6.0;
                    asked = cautions_ui(ui, summary, told).or_else(|| asked.take());
                });
                named_ui(ui, ("", &cheeses, "cheeses"));
                named_ui(ui, ("each", &each, ""));
                if !narrow {
                    named_ui(ui, (&ends, &when, ""));
                }
                ui.end_row();
            }
        },
    );
    if narrow {
        for (name, summary) in [("A", a), ("B", b)] {
            let [_, _, ends, when] = texts(summary, units);
            named_ui(ui, (&format!("{name}: {ends}"), &when, ""));
        }
    }
    asked
}

/// Draws a value between the words before it and after it.
fn named_ui(ui: &mut Ui, (before, value, after): (&str, &str, &str)) {
    let soft = Palette::of(ui).soft;
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 6.0;
        let said = |ui: &mut Ui, words: &str| {
            if !words.is_empty() {
                ui.label(RichText::new(words).size(BODY).color(soft));
            }
        };
        said(ui, before);
        ui.label(RichText::new(value).font(bold(TITLE)));
        said(ui, after);
    });
}

/// Draws how many serious warnings, cautions and notes there are, the gravest few kinds of them; pressed, each leads to them.
fn cautions_ui(ui: &mut Ui, summary: &Summary, kinds: usize) -> Option<Ask> {
    let palette = Palette::of(ui);
    let mut asked = None;
    let [stops, cautions, notes] = summary.cautions;
    for (severity, count, colour) in [
        (Severity::Stop, stops, palette.stop_fill),
        (Severity::Caution, cautions, palette.caution_text),
        (Severity::Note, notes, palette.soft),
    ]
    .into_iter()
    .filter(|(_, count, _)| *count > 0)
    .take(kinds)
    {
        let words = counted(severity, count);
        // Sign, number and word in one piece: a sign alone at the end of a line says nothing.
        let wide = ui.painter().layout_no_wrap(words.clone(), plain(BODY), palette.text).size().x;
        if ui.layout().main_wrap() && ui.available_size_before_wrap().x < SIGN_ROOM + wide {
            ui.end_row();
        }
        sign(ui, severity, colour);
        let response =
            ui.add(egui::Button::new(RichText::new(&words).size(BODY)).frame(false).wrap_mode(egui::TextWrapMode::Extend));
        say_changes(&response);
        if response.on_hover_text("Show the warnings").clicked() {
            asked = Some(Ask::ToCautions);
        }
        ui.add_space(8.0);
    }
    asked
}

/// Draws one figure, its name after it or before it.
fn figure(ui: &mut Ui, name: &str, value: &str, name_first: bool) {
    // In one piece, so that no line ends between the two.
    ui.add(egui::Label::new(figure_words(ui, name, value, name_first)).extend());
    ui.add_space(22.0);
}

/// Returns one figure and its name as they are drawn.
fn figure_words(ui: &Ui, name: &str, value: &str, name_first: bool) -> LayoutJob {
    let palette = Palette::of(ui);
    let mut job = LayoutJob::default();
    let mut part = |text: &str, font, colour| {
        let format = TextFormat { font_id: font, color: colour, valign: Align::Center, ..TextFormat::default() };
        // A space that is read aloud too.
        let space = if job.is_empty() { "" } else { " " };
        job.append(&format!("{space}{text}"), 0.0, format);
    };
    if name_first {
        part(name, plain(BODY), palette.soft);
    }
    part(value, bold(FOOT), palette.text);
    if !name_first {
        part(name, plain(BODY), palette.soft);
    }
    job
}
