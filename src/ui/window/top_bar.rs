//! The top bar: menus, the design's title, the pages.

use crate::analysis::{other_milks, same_vat_from};
use crate::session::{Command, EXAMPLES, Recent, Session};
use crate::ui::state::ask::{Ask, SecondAsk};
use crate::ui::state::pages::Page;
use crate::ui::state::view::View;
use crate::ui::widget::focus::focus_ring;
use crate::ui::widget::text_undo::remember_text;
use crate::ui::widget::theme::{BODY, Palette, bold};
use crate::ui::window::keys::KEYS;
use egui::{Align, Button, Key, Layout, RichText, Role, Sense, ThemePreference, Ui, WidgetInfo, vec2};

/// Name of the menu of the second design, and the room below which it shortens.
const COMPARE: &str = "Compare";

/// Draws the bar and returns what is asked for.
///
/// `files`: those opened lately, and whether unsaved work was left behind
pub(in crate::ui) fn top_bar_ui(ui: &mut Ui, view: &mut View, session: &Session, files: (&Recent, bool)) -> Vec<Ask> {
    let mut asks = Vec::new();
    ui.horizontal_centered(|ui| {
        file_menu(ui, files, &mut asks);
        change_menu(ui, session, &mut asks);
        second_menu(ui, session, &mut asks);
        look_menu(ui, view, &mut asks);
        ui.add_space(12.0);
        title_ui(ui, view, session, &mut asks);
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            for page in Page::ALL.into_iter().rev() {
                page_ui(ui, page, view.page == page, &mut asks);
            }
        });
    });
    asks
}

fn file_menu(ui: &mut Ui, (recent, left): (&Recent, bool), asks: &mut Vec<Ask>) {
    ui.menu_button("File", |ui| {
        entry(ui, "New", Some(&Ask::New), Ask::New, asks);
        entry(ui, "Open…", Some(&Ask::Open), Ask::Open, asks);
        ui.menu_button("Open an example", |ui| {
            for (index, example) in EXAMPLES.iter().enumerate() {
                entry(ui, example.shows, None, Ask::OpenExample(index), asks);
            }
        });
        if !recent.files.is_empty() {
            ui.menu_button("Open recent", |ui| {
                for path in &recent.files {
                    let name = path.file_name().map_or_else(String::new, |name| name.to_string_lossy().into_owned());
                    let is_there = path.exists();
                    let shown =
                        ui.add_enabled_ui(is_there, |ui| entry(ui, &name, None, Ask::OpenFile(path.clone()), asks)).response;
                    let folder = path.parent().unwrap_or(path).display();
                    shown.on_hover_text(if is_there { format!("in {folder}") } else { format!("not in {folder} any more") });
                }
            });
        }
        if left {
            entry(ui, "Recover unsaved work…", None, Ask::ListLeft, asks);
        }
        ui.separator();
        entry(ui, "Save", Some(&Ask::Save), Ask::Save, asks);
        entry(ui, "Save as…", Some(&Ask::SaveAs), Ask::SaveAs, asks);
        entry(ui, "Save plan as PDF…", Some(&Ask::ExportPlan), Ask::ExportPlan, asks);
        entry(ui, "Save calendar…", None, Ask::ExportCalendar, asks);
        ui.separator();
        entry(ui, "Quit", Some(&Ask::Quit), Ask::Quit, asks);
    });
}

/// Draws the menu of how things look: nothing in it touches the design.
fn look_menu(ui: &mut Ui, view: &mut View, asks: &mut Vec<Ask>) {
    ui.menu_button("View", |ui| {
        ui.label("Colours");
        let now = ui.ctx().options(|options| options.theme_preference);
        for (preference, words) in
            [(ThemePreference::System, "As the desktop"), (ThemePreference::Light, "Light"), (ThemePreference::Dark, "Dark")]
        {
            if ticked(ui, now == preference, words) {
                ui.ctx().set_theme(preference);
            }
        }
        ui.separator();
        ui.label("Units (the file keeps °C and litres)");
        if ticked(ui, view.units.fahrenheit, "Temperatures in °F") {
            view.units.fahrenheit = !view.units.fahrenheit;
        }
        if ticked(ui, view.units.cups, "Litres as cups") {
            view.units.cups = !view.units.cups;
        }
        ui.separator();
        ui.label("Zoom");
        for (percent, zoom) in [(100, 1.0), (125, 1.25), (150, 1.5), (200, 2.0)] {
            if ticked(ui, (ui.ctx().zoom_factor() - zoom).abs() < 0.01, &format!("{percent} %")) {
                ui.ctx().set_zoom_factor(zoom);
            }
        }
        ui.separator();
        if ui.button("Keyboard shortcuts (F1)").clicked() {
            asks.push(Ask::Help);
        }
    });
}

/// Draws an entry with a tick before it where it is on; returns whether it was chosen.
fn ticked(ui: &mut Ui, on: bool, words: &str) -> bool {
    let response = ui.add(Button::new(format!("{} {words}", if on { "✓" } else { "–" })).wrap_mode(egui::TextWrapMode::Extend));
    response.widget_info(|| WidgetInfo::selected(Role::CheckBox, true, on, words));
    response.clicked()
}

fn change_menu(ui: &mut Ui, session: &Session, asks: &mut Vec<Ask>) {
    ui.menu_button("Edit", |ui| {
        let undo = session.history().undo_name().map(|name| format!("Undo: {name}"));
        let redo = session.history().redo_name().map(|name| format!("Redo: {name}"));
        for (name, nothing, ask) in [(undo, "Nothing to undo", Ask::Undo), (redo, "Nothing to redo", Ask::Redo)] {
            ui.add_enabled_ui(name.is_some(), |ui| entry(ui, name.as_deref().unwrap_or(nothing), Some(&ask), ask.clone(), asks));
        }
    });
}

/// Draws the menu of the second design.
fn second_menu(ui: &mut Ui, session: &Session, asks: &mut Vec<Ask>) {
    let menu = ui.menu_button(COMPARE, |ui| {
        let mut ask = |ui: &mut Ui, name: &str, ask: SecondAsk| entry(ui, name, None, Ask::Second(ask), asks);
        if session.second().is_some() {
            ask(ui, "Swap A and B", SecondAsk::Swap);
            ask(ui, "Save B…", SecondAsk::Save);
            ask(ui, "Save A and B side by side as PDF…", SecondAsk::Export);
            ask(ui, "Close B", SecondAsk::PutAway);
            ui.separator();
            ui.label("Replace B");
        }
        ask(ui, "Compare with a copy of A", SecondAsk::Copy);
        for kind in other_milks(session.design().milk.milk_kind) {
            ask(ui, &same_vat_from(kind), SecondAsk::Milk(kind));
        }
        ask(ui, "Compare with a file…", SecondAsk::Open);
    });
    menu.response.widget_info(|| WidgetInfo::labeled(Role::Button, true, COMPARE));
}

/// Draws one entry of a menu, with the key that does the same.
fn entry(ui: &mut Ui, name: &str, key: Option<&Ask>, ask: Ask, asks: &mut Vec<Ask>) {
    let shortcut =
        key.and_then(|key| KEYS.iter().find(|(.., asked)| asked == key)).map(|(shortcut, ..)| ui.ctx().format_shortcut(shortcut));
    let button = Button::new(name).shortcut_text(shortcut.unwrap_or_default()).wrap_mode(egui::TextWrapMode::Extend);
    if ui.add(button).clicked() {
        asks.push(ask);
        ui.close();
    }
}

fn title_ui(ui: &mut Ui, view: &mut View, session: &Session, asks: &mut Vec<Ask>) {
    let palette = Palette::of(ui);
    let mut text = view.title.clone().unwrap_or_else(|| session.design().title.clone());
    let width = (ui.available_width() - 330.0).clamp(80.0, 420.0);
    let edit = egui::TextEdit::singleline(&mut text)
        .hint_text("Untitled design")
        .char_limit(120)
        .font(bold(BODY))
        .desired_width(width)
        .margin(vec2(8.0, 4.0));
    let response = ui.add(edit);
    ui.ctx().accesskit_node_builder(response.id, |node| node.set_label("Title of the design"));
    remember_text(ui, &response, &text);
    if response.changed() {
        view.title = Some(text.clone());
    }
    if response.lost_focus()
        && let Some(title) = view.title.take()
        && title != session.design().title
        && !ui.input(|input| input.key_pressed(Key::Escape))
    {
        asks.push(Ask::Do(Command::SetTitle(title)));
    }
    if session.is_dirty() {
        let (rect, dot) = ui.allocate_exact_size(vec2(16.0, 24.0), Sense::hover());
        ui.painter().circle_filled(rect.center(), 5.0, palette.design);
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
        ui.painter().hline(line, response.rect.bottom() - 1.0, egui::Stroke::new(3.0, palette.design));
    }
    focus_ring(ui, &response);
    if response.clicked() {
        asks.push(Ask::Show(page));
    }
}
