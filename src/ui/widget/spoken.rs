//! What a reader of the screen is told of words: headings, tables with rows and cells, and what it says by itself.

use crate::ui::widget::theme::{CAPTION, TITLE, bold};
use egui::accesskit::Live;
use egui::{Grid, Id, Rect, Response, RichText, Role, Sense, Ui, UiBuilder, WidgetInfo, vec2};

/// Least height of a row of a table.
const ROW: f32 = 20.0;

/// Draws a heading.
pub(in crate::ui) fn heading_ui(ui: &mut Ui, words: &str) -> Response {
    let response = ui.label(RichText::new(words).font(bold(TITLE)));
    response.widget_info(|| WidgetInfo::labeled(Role::Heading, true, words));
    response
}

/// Has words said by themselves whenever they change, after what is being said.
pub(in crate::ui) fn say_changes(response: &Response) {
    response.ctx.accesskit_node_builder(response.id, |node| node.set_live(Live::Polite));
}

/// Draws words that are said at once, for something went wrong.
pub(in crate::ui) fn alert_ui(ui: &mut Ui, words: RichText) {
    let said = words.text().to_owned();
    let response = ui.label(words);
    response.widget_info(|| WidgetInfo::labeled(Role::Alert, true, &said));
    response.ctx.accesskit_node_builder(response.id, |node| node.set_live(Live::Assertive));
}

/// Draws a table; each row is one for a reader of the screen, and each cell.
pub(in crate::ui) fn table_ui(ui: &mut Ui, name: &str, headings: &[String], rows: &[Vec<String>]) {
    let table = UiBuilder::new().accessibility_role(Role::Table).accessibility_label(name);
    ui.scope_builder(table, |ui| {
        Grid::new((name, "grid")).striped(true).min_row_height(ROW).spacing(vec2(16.0, 4.0)).show(ui, |ui| {
            let row = row_of(ui, (name, 0));
            for heading in headings {
                cell_ui(ui, row, Role::ColumnHeader, RichText::new(heading).font(bold(CAPTION)));
            }
            ui.end_row();
            for (number, values) in (1_usize..).zip(rows) {
                let row = row_of(ui, (name, number));
                for value in values {
                    cell_ui(ui, row, Role::Cell, RichText::new(value).size(CAPTION));
                }
                ui.end_row();
            }
        });
    });
}

/// Makes a row that cells can belong to; it takes no room.
fn row_of(ui: &Ui, (table, number): (&str, usize)) -> Id {
    let row = ui.interact(Rect::NOTHING, ui.unique_id().with((table, "row", number)), Sense::hover());
    row.widget_info(|| WidgetInfo::new(Role::Row));
    row.id
}

fn cell_ui(ui: &mut Ui, row: Id, role: Role, words: RichText) {
    let cell = UiBuilder::new().accessibility_parent(row).accessibility_role(role);
    ui.scope_builder(cell, |ui| ui.label(words));
}
