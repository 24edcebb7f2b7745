//! What scaling the design does, as it is shown before it is done: tables of before and after.

use crate::caution::Caution;
use crate::report::{ComparedRow, ScalePreview};
use crate::ui::widget::scroll::read_ui;
use crate::ui::widget::spoken::table_ui;
use crate::ui::widget::theme::{CAPTION, bold};
use crate::units::Units;
use crate::words::caution_line;
use egui::{Label, RichText, Role, ScrollArea, Ui, WidgetInfo};

/// What is left of the window's height for everything around it.
const AROUND: f32 = 330.0;
/// Its least height.
const LEAST: f32 = 120.0;

/// Draws it, in an area that scrolls.
pub(in crate::ui) fn preview_ui(ui: &mut Ui, preview: &ScalePreview, units: Units) {
    let high = (ui.ctx().content_rect().height() - AROUND).max(LEAST);
    let area = ScrollArea::both().max_height(high).min_scrolled_height(high).auto_shrink([false, true]);
    read_ui(ui, "What scaling changes", area, |ui| {
        for remark in &preview.remarks {
            ui.add(Label::new(RichText::new(remark).size(CAPTION)).wrap());
        }
        cautions_ui(ui, "New warnings", &preview.new, units);
        cautions_ui(ui, "Warnings lifted", &preview.gone, units);
        rows_ui(ui, "Choices that change", &preview.choices);
        for (name, rows) in &preview.follows {
            rows_ui(ui, name, rows);
        }
    });
}

fn cautions_ui(ui: &mut Ui, name: &str, cautions: &[Caution], units: Units) {
    if cautions.is_empty() {
        return;
    }
    title_ui(ui, name);
    for caution in cautions {
        ui.add(Label::new(RichText::new(caution_line(caution, units)).size(CAPTION)).wrap());
    }
}

fn rows_ui(ui: &mut Ui, name: &str, rows: &[ComparedRow]) {
    if rows.is_empty() {
        return;
    }
    title_ui(ui, name);
    let headings = ["", "Before", "After", ""].map(str::to_owned);
    let cells: Vec<Vec<String>> =
        rows.iter().map(|row| vec![row.label.clone(), row.a.clone(), row.b.clone(), row.change.clone()]).collect();
    table_ui(ui, name, &headings, &cells);
}

fn title_ui(ui: &mut Ui, words: &str) {
    ui.add_space(6.0);
    let response = ui.label(RichText::new(words).font(bold(CAPTION)));
    response.widget_info(|| WidgetInfo::labeled(Role::Heading, true, words));
}
