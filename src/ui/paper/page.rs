//! The plan as it comes out of the printer, and what can be done with it.

use crate::batch::Batch;
use crate::design::upper_first;
use crate::export::{Paper, Part, missing_letters_of};
use crate::plan::Now;
use crate::ui::paper::note::note_ui;
use crate::ui::paper::preview::Preview;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::menu::menu_ui;
use crate::ui::widget::scroll::read_ui;
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::theme::{BODY, Palette};
use egui::{Button, Frame, Image, RichText, Role, ScrollArea, Stroke, TextureHandle, Ui, WidgetInfo, vec2};

/// Widest page; wider than that it is no easier to read.
const WIDEST: f32 = 860.0;
/// Below this width what can be printed stands in a menu.
const NARROW: f32 = 800.0;
/// Room that the bar of the scroll area takes.
const SCROLL_BAR: f32 = 24.0;

/// Draws the page and returns what is asked for.
///
/// # Arguments
/// * `batch`, `now`: the design with what follows, and what the clock on the wall says
/// * `printing`: whether a plan is on its way to the viewer
pub(in crate::ui) fn plan_ui(
    ui: &mut Ui,
    view: &mut View,
    preview: &mut Preview,
    (batch, now): (&Batch, &Now),
    printing: bool,
) -> Vec<Ask> {
    let paper = view.paper;
    let mut asks = Vec::new();
    // In a narrow window the pages themselves need the room.
    let narrow = ui.available_width() < NARROW;
    ui.horizontal_wrapped(|ui| {
        heading_ui(ui, "The plan on paper");
        ui.add_space(12.0);
        for choice in Paper::ALL {
            if paper_ui(ui, choice, choice == paper) {
                asks.push(Ask::Paper(choice));
            }
        }
        ui.add_space(12.0);
        let has_paper = cfg!(feature = "paper");
        for (words, ask, possible) in [
            ("Save as PDF…", Ask::ExportPlan, has_paper),
            ("Print…", Ask::Print, has_paper && !printing),
            ("Copy as text", Ask::CopyPlan, true),
            ("Save for a phone…", Ask::ExportPhone, true),
        ] {
            // The menu of files has it too.
            if narrow && ask == Ask::ExportPhone {
                continue;
            }
            let response = ui.add_enabled(possible, Button::new(words).min_size(vec2(0.0, 32.0)));
            if response.clicked() {
                asks.push(ask);
            }
        }
        if narrow {
            menu_ui(ui, "Print with", |ui| asks.extend(parts_ui(ui, view)));
        }
    });
    if !narrow {
        ui.horizontal_wrapped(|ui| {
            ui.label("Two pages for the kitchen, and with them:");
            asks.extend(parts_ui(ui, view));
        });
    }
    ui.add_space(6.0);
    asks.extend(note_ui(ui, view, &batch.design.note));
    if let Some(said) = missing_letters_of(&batch.design) {
        ui.label(RichText::new(format!("{}.", upper_first(&said))).color(Palette::of(ui).soft));
    }
    ui.add_space(6.0);
    let width = (ui.available_width() - SCROLL_BAR).clamp(120.0, WIDEST);
    let shown = preview.look(ui.ctx(), batch, now, (view.sheets(), view.units), width);
    if shown.drawing {
        let words = match shown.pages {
            Some(Ok(_)) => "Drawing the plan… Below is the plan before the change.",
            Some(Err(_)) | None => "Drawing the plan…",
        };
        ui.label(RichText::new(words).color(Palette::of(ui).soft));
    }
    match shown.pages {
        Some(Ok(pages)) => pages_ui(ui, pages, width),
        Some(Err(why)) if !shown.drawing => trouble_ui(ui, why),
        Some(Err(_)) | None => {}
    }
    asks
}

/// Draws what may be printed behind the two pages, each with its box; returns what is asked for.
fn parts_ui(ui: &mut Ui, view: &View) -> Vec<Ask> {
    let mut asks = Vec::new();
    for part in Part::ALL {
        let printed = view.with.contains(&part);
        // A tick beside the colour: colour alone tells nobody who does not see it.
        let words = if printed { format!("✓ {}", part.title()) } else { part.title().to_owned() };
        let response =
            ui.add(Button::selectable(printed, words).min_size(vec2(0.0, 28.0)).stroke(Stroke::new(1.0, Palette::of(ui).edge)));
        response
            .widget_info(|| WidgetInfo::selected(Role::CheckBox, true, printed, format!("Print with the plan: {}", part.title())));
        if response.on_hover_text(part.help()).clicked() {
            asks.push(Ask::PrintWith(part));
        }
    }
    asks
}

/// Draws one choice of paper; returns whether it was chosen.
fn paper_ui(ui: &mut Ui, paper: Paper, chosen: bool) -> bool {
    let response = ui.add(Button::selectable(chosen, paper.title()).min_size(vec2(48.0, 32.0)));
    response.widget_info(|| WidgetInfo::selected(Role::RadioButton, true, chosen, format!("Paper {}", paper.title())));
    response.clicked()
}

fn pages_ui(ui: &mut Ui, pages: &[TextureHandle], width: f32) {
    let palette = Palette::of(ui);
    read_ui(ui, "The pages of the plan", ScrollArea::vertical().auto_shrink(false), |ui| {
        ui.vertical_centered(|ui| {
            for (number, page) in (1..).zip(pages) {
                let [wide, high] = page.size();
                let size = vec2(width, width * high as f32 / wide as f32);
                let words = format!("Page {number} of {} of the plan, as a picture; “Copy as text” gives it in words", pages.len());
                let picture = Image::new((page.id(), size)).alt_text(words);
                let response = ui.add(picture);
                let edge = Stroke::new(1.0, palette.edge);
                ui.painter().rect_stroke(response.rect, 0, edge, egui::StrokeKind::Inside);
                ui.add_space(12.0);
            }
        });
    });
}

fn trouble_ui(ui: &mut Ui, why: &str) {
    let palette = Palette::of(ui);
    Frame::new().fill(palette.caution_fill).corner_radius(6).inner_margin(10).show(ui, |ui| {
        ui.label(RichText::new(format!("The plan cannot be drawn: {why}.")).size(BODY).color(palette.caution_text));
    });
}
