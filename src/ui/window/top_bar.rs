//! The top bar: menus, the design's title, the pages.

use crate::session::{Recent, Session};
use crate::ui::state::ask::Ask;
use crate::ui::state::pages::Page;
use crate::ui::state::view::View;
use crate::ui::widget::theme::{BODY, Palette, bold};
use crate::ui::window::menus::menus_ui;
use crate::ui::window::title::{TITLE_IN_BAR, title_box_ui};
use egui::{Button, Color32, Id, Pos2, RichText, Role, Sense, Stroke, Ui, UiBuilder, WidgetInfo, vec2};

/// Width of the box of the title, the least and the most, and of what stands around it: its edges and the mark of changes.
const LEAST_TITLE: f32 = 90.0;
const MOST_TITLE_WIDTH: f32 = 380.0;
const BESIDE_TITLE: f32 = 60.0;

/// Draws the bar and returns what is asked for.
///
/// `files`: those opened lately, and whether unsaved work was left behind
pub(in crate::ui) fn top_bar_ui(ui: &mut Ui, view: &mut View, session: &Session, files: (&Recent, bool)) -> Vec<Ask> {
    let mut asks = Vec::new();
    ui.horizontal_centered(|ui| {
        menus_ui(ui, view, session, files, &mut asks);
        ui.add_space(4.0);
        steps_ui(ui, session, &mut asks);
        title_ui(ui, view, session, &mut asks);
        pages_ui(ui, view.page, &mut asks);
    });
    asks
}

/// Draws the two arrows that take a step back and do it again, named by the step.
fn steps_ui(ui: &mut Ui, session: &Session, asks: &mut Vec<Ask>) {
    ui.spacing_mut().item_spacing.x = 4.0;
    for (way, does, step, ask) in
        [(-1.0, "Undo", session.history().undo_name(), Ask::Undo), (1.0, "Redo", session.history().redo_name(), Ask::Redo)]
    {
        let words = step.map_or_else(|| format!("Nothing to {}", does.to_lowercase()), |step| format!("{does} “{step}”"));
        let response = ui.add_enabled(step.is_some(), Button::new("").min_size(vec2(32.0, 30.0)));
        let palette = Palette::of(ui);
        turned_arrow(ui, response.rect.center(), way, if step.is_some() { palette.text } else { palette.edge });
        response.widget_info(|| WidgetInfo::labeled(Role::Button, step.is_some(), &words));
        if response.on_hover_text(&words).on_disabled_hover_text(&words).clicked() {
            asks.push(ask);
        }
    }
    ui.add_space(4.0);
}

/// Paints an arrow that turns: back to the left, or forth to the right.
fn turned_arrow(ui: &Ui, centre: Pos2, way: f32, colour: Color32) {
    let at = |x: f32, y: f32| centre + vec2(way * x, y);
    let bow: Vec<Pos2> = (0..=12)
        .map(|step| std::f32::consts::PI * (step as f32 / 12.0 - 0.5))
        .map(|angle| at(2.5 - 4.5 * angle.cos(), 0.5 + 4.5 * angle.sin()))
        .collect();
    let stroke = Stroke::new(1.8, colour);
    ui.painter().line(bow, stroke);
    ui.painter().line_segment([at(2.5, -4.0), at(6.5, -4.0)], stroke);
    ui.painter().line(vec![at(3.5, -7.0), at(7.0, -4.0), at(3.5, -1.0)], stroke);
}

/// Draws the title where there is room for it, and the mark of what is not saved.
fn title_ui(ui: &mut Ui, view: &mut View, session: &Session, asks: &mut Vec<Ask>) {
    if ui.ctx().content_rect().width() >= TITLE_IN_BAR {
        let width = (ui.available_width() - pages_width(ui) - BESIDE_TITLE).clamp(LEAST_TITLE, MOST_TITLE_WIDTH);
        asks.extend(title_box_ui(ui, view, &session.design().title, width));
    }
    if session.is_dirty() {
        let (rect, dot) = ui.allocate_exact_size(vec2(16.0, 24.0), Sense::hover());
        ui.painter().circle_filled(rect.center(), 5.0, Palette::of(ui).design);
        dot.widget_info(|| WidgetInfo::labeled(Role::Label, true, "Unsaved changes"));
        dot.on_hover_text("Unsaved changes");
    }
}

fn page_ui(ui: &mut Ui, page: Page, shown: bool, asks: &mut Vec<Ask>) {
    let palette = Palette::of(ui);
    let text = RichText::new(page.title()).font(bold(BODY)).color(if shown { palette.text } else { palette.soft });
    let response = ui.add(Button::new(text).frame(false).min_size(vec2(0.0, 32.0)));
    response.widget_info(|| WidgetInfo::selected(Role::Button, true, shown, format!("Page {}", page.title())));
    if shown {
        let line = response.rect.x_range();
        ui.painter().hline(line, response.rect.bottom() - 1.0, Stroke::new(3.0, palette.link));
    }
    if response.clicked() {
        asks.push(Ask::Show(page));
    }
}

/// Where it is remembered how wide the pages are.
fn pages() -> Id {
    Id::unique("width of the pages")
}

/// Returns how wide the pages were when they were drawn last.
fn pages_width(ui: &Ui) -> f32 {
    ui.data(|data| data.get_temp(pages())).unwrap_or_default()
}

/// Draws the pages at the right end, in the order in which they are read: their width is that of the last drawing.
fn pages_ui(ui: &mut Ui, shown: Page, asks: &mut Vec<Ask>) {
    let width = pages_width(ui);
    ui.add_space((ui.available_width() - width).max(0.0));
    let list = UiBuilder::new().accessibility_role(Role::Navigation).accessibility_label("Pages");
    let drawn = ui.scope_builder(list, |ui| {
        ui.horizontal_centered(|ui| {
            for page in Page::ALL {
                page_ui(ui, page, shown == page, asks);
            }
        })
        .response
        .rect
        .width()
    });
    if (drawn.inner - width).abs() > 0.5 {
        ui.data_mut(|data| data.insert_temp(pages(), drawn.inner));
        ui.ctx().request_discard("the pages have another width");
    }
}
