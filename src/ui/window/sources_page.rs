//! The sources: every constant with its value, unit, range, source and standing.

use crate::analysis::{constant_lists, correlation_lists};
use crate::design::{Design, upper_first};
use crate::plan;
use crate::report::{LawRow, constant_row, correlation_row, source_title};
use crate::source::{AnyCorrelation, Constant, ledger};
use crate::ui::state::view::View;
use crate::ui::widget::record::{record_ui, text_ui};
use crate::ui::widget::scroll::read_ui;
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::text_undo::remember_text;
use crate::ui::widget::theme::{BODY, Palette, bold};
use crate::units::Units;
use crate::words::{EXACT_WORDS, kitchen_line, kitchen_rows};
use egui::{RichText, ScrollArea, Ui, vec2};

/// Draws the page.
///
/// `design`: whose kitchen may put values in the place of the records'
pub(in crate::ui) fn sources_ui(ui: &mut Ui, view: &mut View, laws: &[LawRow], design: &Design) {
    let palette = Palette::of(ui);
    let rows = ledger().unwrap_or_default();
    heading_ui(ui, "Where the numbers come from");
    ui.label(
        RichText::new("The law behind every figure, and every constant of the calculation with its likely range and how far to trust it: published, second-hand, from memory, fitted, our own judgement.")
            .color(palette.soft),
    );
    ui.horizontal(|ui| {
        let label = ui.label("Search");
        let edit = egui::TextEdit::singleline(&mut view.search).desired_width(280.0).margin(vec2(8.0, 4.0));
        let response = ui.add(edit).labelled_by(label.id);
        remember_text(ui, &response, &view.search);
    });
    ui.add_space(6.0);
    let wanted = view.search.to_lowercase();
    read_ui(ui, "Sources, laws and words", ScrollArea::vertical().auto_shrink(false), |ui| {
        kitchen_ui(ui, design, view.units, &wanted);
        glossary_ui(ui, &wanted);
        laws_ui(ui, laws, &wanted);
        for (name, list) in constant_lists().into_iter().chain(plan::CONSTANT_LISTS) {
            let found: Vec<&Constant> = list
                .iter()
                .filter(|record| {
                    matches(&wanted, &[name, record.name, &source_title(rows, record.source), record.standing.words()])
                })
                .collect();
            if !found.is_empty() {
                heading(ui, name);
                for record in found {
                    record_ui(ui, &constant_row(record, rows));
                }
            }
        }
        for (name, list) in correlation_lists() {
            let found: Vec<&AnyCorrelation> = list
                .iter()
                .filter(|record| {
                    matches(&wanted, &[name, record.name, &source_title(rows, record.source), record.standing.words()])
                })
                .collect();
            if !found.is_empty() {
                heading(ui, &format!("{name}: formulae and tables"));
                for record in found {
                    record_ui(ui, &correlation_row(record, rows));
                }
            }
        }
    });
}

/// Draws what the kitchen of the design puts in the place of the records.
fn kitchen_ui(ui: &mut Ui, design: &Design, units: Units, wanted: &str) {
    let rows = design.kitchen.as_ref().map(|kitchen| kitchen_rows(kitchen, units)).unwrap_or_default();
    let found: Vec<_> = rows.iter().filter(|row| matches(wanted, &["your kitchen", &row.what])).collect();
    if let Some(line) = kitchen_line(design).filter(|_| !found.is_empty()) {
        heading(ui, "your kitchen");
        text_ui(ui, "", &line, "What follows stands in the place of the constants below.");
    }
    for row in found {
        text_ui(ui, &upper_first(&row.what), &row.value, &format!("likely {}, in any kitchen {}", row.now, row.before));
    }
}

/// Draws the exact words that need explaining; those of the trade are in the menu of help.
fn glossary_ui(ui: &mut Ui, wanted: &str) {
    let found: Vec<_> = EXACT_WORDS.iter().filter(|term| matches(wanted, &["words explained", term.term, term.means])).collect();
    if !found.is_empty() {
        heading(ui, "words explained");
    }
    for term in found {
        text_ui(ui, "", term.term, term.means);
    }
}

/// Draws the laws behind the figures of the open design, those of one law together.
fn laws_ui(ui: &mut Ui, laws: &[LawRow], wanted: &str) {
    let found: Vec<_> =
        laws.iter().filter(|row| matches(wanted, &["laws", &row.figures.join(", "), row.law, &row.source])).collect();
    if !found.is_empty() {
        heading(ui, "laws behind the figures; the card of a figure says what enters");
    }
    for row in found {
        text_ui(ui, &row.figures.join(", "), row.law, &row.source);
    }
}

fn matches(wanted: &str, texts: &[&str]) -> bool {
    wanted.is_empty() || texts.iter().any(|text| text.to_lowercase().contains(wanted))
}

fn heading(ui: &mut Ui, name: &str) {
    ui.add_space(10.0);
    ui.label(RichText::new(upper_first(name)).font(bold(BODY)));
}
