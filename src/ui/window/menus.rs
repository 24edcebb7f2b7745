//! The menus of the top bar.

use crate::analysis::{other_milks, same_vat_from};
use crate::session::{EXAMPLES, Recent, Session};
use crate::ui::state::ask::{Ask, SecondAsk};
use crate::ui::state::pages::HelpCard;
use crate::ui::state::view::View;
use crate::ui::widget::menu::{menu_ui, move_between_menus, sub_menu_ui, ticked_ui};
use crate::ui::window::keys::KEYS;
use crate::ui::window::units_menu::units_ui;
use egui::{Button, Id, Role, ThemePreference, Ui, UiBuilder, WidgetInfo};

/// Draws the menus.
///
/// `files`: those opened lately, and whether unsaved work was left behind
pub(in crate::ui) fn menus_ui(ui: &mut Ui, view: &mut View, session: &Session, files: (&Recent, bool), asks: &mut Vec<Ask>) {
    let bar = UiBuilder::new().accessibility_role(Role::MenuBar).accessibility_label("Menus");
    ui.scope_builder(bar, |ui| {
        ui.horizontal_centered(|ui| {
            let file = file_menu(ui, files, asks);
            let edit = change_menu(ui, session, asks);
            let compare = second_menu(ui, session, asks);
            let look = look_menu(ui, view, asks);
            let help = help_menu(ui, asks);
            move_between_menus(ui.ctx(), &[file, edit, compare, look, help]);
        });
    });
}

fn file_menu(ui: &mut Ui, (recent, left): (&Recent, bool), asks: &mut Vec<Ask>) -> Id {
    menu_ui(ui, "File", |ui| {
        entry(ui, "New", Some(&Ask::New), Ask::New, asks);
        entry(ui, "Open…", Some(&Ask::Open), Ask::Open, asks);
        sub_menu_ui(ui, "Open an example", |ui| {
            for (index, example) in EXAMPLES.iter().enumerate() {
                entry(ui, example.shows, None, Ask::OpenExample(index), asks);
            }
        });
        if !recent.files.is_empty() {
            sub_menu_ui(ui, "Open recent", |ui| {
                for path in &recent.files {
                    let name = path.file_name().map_or_else(String::new, |name| name.to_string_lossy().into_owned());
                    let is_there = recent.is_there(path);
                    let shown =
                        ui.add_enabled_ui(is_there, |ui| entry(ui, &name, None, Ask::OpenFile(path.clone()), asks)).response;
                    let folder = path.parent().unwrap_or(path).display();
                    shown.on_hover_text(if is_there { format!("in {folder}") } else { format!("not found in {folder}") });
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
        entry(ui, "Save plan for a phone…", None, Ask::ExportPhone, asks);
        entry(ui, "Save calendar…", None, Ask::ExportCalendar, asks);
        ui.separator();
        entry(ui, "Quit", Some(&Ask::Quit), Ask::Quit, asks);
    })
}

/// Draws the menu of how things look: nothing in it touches the design. Its parts are menus of their own, so that it fits into a low window.
fn look_menu(ui: &mut Ui, view: &mut View, asks: &mut Vec<Ask>) -> Id {
    menu_ui(ui, "View", |ui| {
        sub_menu_ui(ui, "Colours", colours_ui);
        sub_menu_ui(ui, "Units", |ui| units_ui(ui, &mut view.units));
        sub_menu_ui(ui, "Zoom", zoom_ui);
        ui.separator();
        entry(ui, "Show only the curve", Some(&Ask::CurveAlone), Ask::CurveAlone, asks);
    })
}

/// Draws the menu of what explains the program.
fn help_menu(ui: &mut Ui, asks: &mut Vec<Ask>) -> Id {
    menu_ui(ui, "Help", |ui| {
        entry(ui, "A short guide", None, Ask::Guide(Some(0)), asks);
        for (name, card) in [
            ("Words of the trade", HelpCard::Words),
            ("What is new", HelpCard::Changes),
            ("Keyboard shortcuts", HelpCard::Keys),
            ("Welcome", HelpCard::Welcome),
        ] {
            entry(ui, name, Some(&Ask::Help(card)), Ask::Help(card), asks);
        }
    })
}

fn colours_ui(ui: &mut Ui) {
    let now = ui.ctx().options(|options| options.theme_preference);
    for (preference, words) in
        [(ThemePreference::System, "As the desktop"), (ThemePreference::Light, "Light"), (ThemePreference::Dark, "Dark")]
    {
        if ticked_ui(ui, now == preference, words) {
            ui.ctx().set_theme(preference);
        }
    }
}

fn zoom_ui(ui: &mut Ui) {
    for (percent, zoom) in [(100, 1.0), (125, 1.25), (150, 1.5), (200, 2.0)] {
        if ticked_ui(ui, (ui.ctx().zoom_factor() - zoom).abs() < 0.01, &format!("{percent} %")) {
            ui.ctx().set_zoom_factor(zoom);
        }
    }
}

fn change_menu(ui: &mut Ui, session: &Session, asks: &mut Vec<Ask>) -> Id {
    menu_ui(ui, "Edit", |ui| {
        let undo = session.history().undo_name().map(|name| format!("Undo: {name}"));
        let redo = session.history().redo_name().map(|name| format!("Redo: {name}"));
        for (name, nothing, ask) in [(undo, "Nothing to undo", Ask::Undo), (redo, "Nothing to redo", Ask::Redo)] {
            ui.add_enabled_ui(name.is_some(), |ui| entry(ui, name.as_deref().unwrap_or(nothing), Some(&ask), ask.clone(), asks));
        }
        ui.separator();
        entry(ui, "Scale the design…", None, Ask::Scale, asks);
    })
}

/// Draws the menu of the second design.
fn second_menu(ui: &mut Ui, session: &Session, asks: &mut Vec<Ask>) -> Id {
    menu_ui(ui, "Compare", |ui| {
        let mut ask = |ui: &mut Ui, name: &str, ask: SecondAsk| entry(ui, name, None, Ask::Second(ask), asks);
        if session.second().is_some() {
            ask(ui, "Swap A and B", SecondAsk::Swap);
            ask(ui, "Save B", SecondAsk::Save);
            ask(ui, "Save B as…", SecondAsk::SaveAs);
            ask(ui, "Save A and B side by side as PDF…", SecondAsk::Export);
            ask(ui, "Close B", SecondAsk::PutAway);
            ui.separator();
            ui.label("Another B");
        }
        ask(ui, "Compare with a copy of A", SecondAsk::Copy);
        for kind in other_milks(session.design().milk.milk_kind) {
            ask(ui, &format!("{}…", same_vat_from(kind)), SecondAsk::Milk(kind));
        }
        ask(ui, "Compare with a file…", SecondAsk::Open);
    })
}

/// Draws one entry of a menu, with the key that does the same.
fn entry(ui: &mut Ui, name: &str, key: Option<&Ask>, ask: Ask, asks: &mut Vec<Ask>) {
    let shortcut =
        key.and_then(|key| KEYS.iter().find(|(.., asked)| asked == key)).map(|(shortcut, ..)| ui.ctx().format_shortcut(shortcut));
    let button = Button::new(name).shortcut_text(shortcut.unwrap_or_default()).wrap_mode(egui::TextWrapMode::Extend);
    let response = ui.add(button);
    response.widget_info(|| WidgetInfo::labeled(Role::MenuItem, ui.is_enabled(), name));
    if response.clicked() {
        asks.push(ask);
        ui.close();
    }
}
