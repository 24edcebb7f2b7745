//! The sources: every constant with its value, unit, range, source and standing.

use super::theme::{BODY, CAPTION, Palette, TITLE, bold};
use super::view::View;
use crate::batch::{constant_lists, correlation_lists};
use crate::plan;
use crate::source::{Constant, Correlation, SourceId, SourceRow, ledger};
use egui::{RichText, ScrollArea, Ui, vec2};

/// Draws the page.
pub(super) fn sources_ui(ui: &mut Ui, view: &mut View) {
    let palette = Palette::of(ui);
    let rows = ledger().unwrap_or_default();
    ui.label(RichText::new("Where the numbers come from").font(bold(TITLE)));
    ui.label(
        RichText::new("Every constant of the calculation, its likely range and how far to trust it: published, second-hand, from memory, fitted, our own judgement.")
            .color(palette.soft),
    );
    ui.horizontal(|ui| {
        let label = ui.label("Look for");
        ui.add(egui::TextEdit::singleline(&mut view.search).desired_width(280.0).margin(vec2(8.0, 4.0))).labelled_by(label.id);
    });
    ui.add_space(6.0);
    let wanted = view.search.to_lowercase();
    ScrollArea::vertical().id_salt("sources").auto_shrink(false).show(ui, |ui| {
        for (name, list) in constant_lists().into_iter().chain(plan::CONSTANT_LISTS) {
            let found: Vec<&Constant> = list
                .iter()
                .filter(|record| matches(&wanted, &[name, record.name, &title(&rows, record.source), record.standing.words()]))
                .collect();
            if !found.is_empty() {
                heading(ui, name);
                for record in found {
                    constant_ui(ui, record, &rows);
                }
            }
        }
        for (name, list) in correlation_lists() {
            let found: Vec<&Correlation> = list
                .iter()
                .filter(|record| matches(&wanted, &[name, record.name, &title(&rows, record.source), record.standing.words()]))
                .collect();
            if !found.is_empty() {
                heading(ui, &format!("{name}: formulae and tables"));
                for record in found {
                    correlation_ui(ui, record, &rows);
                }
            }
        }
    });
}

fn matches(wanted: &str, texts: &[&str]) -> bool {
    wanted.is_empty() || texts.iter().any(|text| text.to_lowercase().contains(wanted))
}

fn title(rows: &[SourceRow], id: SourceId) -> String {
    rows.iter().find(|row| row.id == id).map_or_else(String::new, |row| row.title.clone())
}

fn heading(ui: &mut Ui, name: &str) {
    ui.add_space(10.0);
    let mut letters = name.chars();
    let capital: String = letters.next().into_iter().flat_map(char::to_uppercase).chain(letters).collect();
    ui.label(RichText::new(capital).font(bold(BODY)));
}

fn constant_ui(ui: &mut Ui, record: &Constant, rows: &[SourceRow]) {
    let (least, most) = record.range;
    // A bare number is recorded with the unit 1.
    let unit = if record.unit == "1" { "" } else { record.unit };
    let value = format!("{} {unit}", number(record.value));
    let range =
        if least.to_bits() == most.to_bits() { String::new() } else { format!("  ({} to {})", number(least), number(most)) };
    row_ui(ui, record.name, &format!("{value}{range}"), &sourced(rows, record.source, record.locator, record.standing.words()));
}

fn correlation_ui(ui: &mut Ui, record: &Correlation, rows: &[SourceRow]) {
    let coefficients: Vec<String> = record.coefficients.iter().map(|value| number(*value)).collect();
    let (least, most) = record.valid;
    let value = format!(
        "{}: {} ({}); valid {} to {} {}",
        record.form,
        coefficients.join(", "),
        record.unit,
        number(least),
        number(most),
        record.valid_in
    );
    row_ui(ui, record.name, &value, &sourced(rows, record.source, record.locator, record.standing.words()));
}

fn sourced(rows: &[SourceRow], id: SourceId, locator: &str, standing: &str) -> String {
    let place = if locator.is_empty() { String::new() } else { format!("; {locator}") };
    format!("{standing}: {}{place}", title(rows, id))
}

fn row_ui(ui: &mut Ui, name: &str, value: &str, source: &str) {
    let palette = Palette::of(ui);
    egui::Frame::new().fill(palette.panel).corner_radius(6).inner_margin(8).show(ui, |ui| {
        ui.set_width(ui.available_width());
        ui.horizontal_wrapped(|ui| {
            ui.label(RichText::new(name).size(BODY));
            ui.label(RichText::new(value).font(bold(BODY)));
        });
        ui.label(RichText::new(source).size(CAPTION).color(palette.soft));
    });
    ui.add_space(4.0);
}

/// Returns a number with the digits that it was given with; very small and very large ones with a power of ten.
fn number(value: f64) -> String {
    let size = value.abs();
    if size > 0.0 && !(1e-3..1e6).contains(&size) { format!("{value:e}").replace('e', " × 10^") } else { format!("{value}") }
}
