//! A curve as a table, and germ by stage.

use crate::batch::Batch;
use crate::curve::{Curve, table, table_of_both};
use crate::figure::{GermTable, germ_table};
use crate::process::GermLine;
use crate::ui::widget::scroll::read_ui;
use crate::ui::widget::spoken;
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold};
use crate::units::Units;
use egui::{RichText, ScrollArea, Ui};

/// Rows of the table of a curve.
const TABLE_ROWS: usize = 12;

/// Room for the bar that scrolls.
const SCROLL_BAR: f32 = 16.0;

/// Draws the table of a curve, or of the same curve of two designs.
pub(in crate::ui) fn table_ui(ui: &mut Ui, drawn: &Curve, second: Option<&Curve>, height: f32) {
    read_ui(ui, &format!("{}, as a table", drawn.title), ScrollArea::both().max_height(height), |ui| {
        points_ui(ui, drawn, second);
    });
}

fn points_ui(ui: &mut Ui, drawn: &Curve, second: Option<&Curve>) {
    let table = second.map_or_else(|| table(drawn, TABLE_ROWS), |second| table_of_both(drawn, second, TABLE_ROWS));
    let words = |value: &Option<f64>| value.map_or_else(|| "–".to_owned(), |value| format!("{value:.1}"));
    let rows: Vec<Vec<String>> = table.rows.iter().map(|row| row.iter().map(words).collect()).collect();
    spoken::table_ui(ui, drawn.title, &table.headings, &rows);
}

/// Draws germ by stage of one design or two, and below it their growth against time.
pub(in crate::ui) fn germs_ui(
    ui: &mut Ui,
    units: Units,
    (now, second): (&Batch, Option<&Batch>),
    (drawn, of_second): (&Curve, Option<&Curve>),
    height: f32,
) {
    let width = ui.available_width() - SCROLL_BAR;
    read_ui(ui, &format!("{}, as a table", drawn.title), ScrollArea::both().max_height(height).auto_shrink(false), |ui| {
        let whose = if second.is_some() { ["A: ", "B: "] } else { ["", ""] };
        for (whose, batch) in whose.into_iter().zip(std::iter::once(now).chain(second)) {
            if let Some(table) = germ_table(batch) {
                stages_ui(ui, (units, width), whose, &table);
            }
        }
        ui.add_space(8.0);
        ui.label(RichText::new("Against time").font(bold(BODY)));
        points_ui(ui, drawn, of_second);
    });
}

fn stages_ui(ui: &mut Ui, (units, width): (Units, f32), whose: &str, table: &GermTable) {
    let name = format!("{whose}Tenfold steps in each stage");
    ui.label(RichText::new(&name).font(bold(BODY)));
    spoken::table_ui(ui, &name, &table.headings(), &table.cells(GermLine::short_name));
    ui.add_space(6.0);
    let soft = Palette::of(ui).soft;
    // The table may scroll sideways; what is said of it keeps to the room that is in sight.
    let said = |ui: &mut Ui, words: &str, colour| {
        ui.scope(|ui| {
            ui.set_max_width(width);
            ui.add(egui::Label::new(RichText::new(words).size(CAPTION).color(colour)).wrap());
        });
    };
    let text = Palette::of(ui).text;
    for figure in &table.others {
        said(ui, &format!("{}: {}", figure.label_in(units), figure.text_in(units)), text);
    }
    for note in table.notes(GermLine::short_name) {
        said(ui, &note, soft);
    }
}
