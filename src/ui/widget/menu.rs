//! Menus: the arrow keys go up and down in one, and from one to the next.

use crate::ui::widget::focus::{focused, follow_focus};
use egui::{Button, Context, Id, Key, Popup, Role, ScrollArea, Ui, WidgetInfo};

/// What lies above and below a menu, points: the bar and the edge of the window.
const AROUND: f32 = 80.0;

/// Where it is remembered which entries open a menu of their own.
fn subs() -> Id {
    Id::unique("entries that open a menu")
}

/// Draws a menu of a bar and returns its button.
pub(in crate::ui) fn menu_ui<R>(ui: &mut Ui, name: &str, draw: impl FnOnce(&mut Ui) -> R) -> Id {
    let menu = ui.menu_button(name, |ui| in_the_window_ui(ui, draw));
    let open = Popup::is_id_open(ui.ctx(), Popup::default_response_id(&menu.response));
    menu.response.widget_info(|| WidgetInfo::labeled(Role::MenuItem, true, name));
    ui.ctx().accesskit_node_builder(menu.response.id, |node| {
        node.set_has_popup(egui::accesskit::HasPopup::Menu);
        node.set_expanded(open);
    });
    menu.response.id
}

/// Draws an entry that opens a menu of its own.
pub(in crate::ui) fn sub_menu_ui<R>(ui: &mut Ui, name: &str, draw: impl FnOnce(&mut Ui) -> R) {
    let menu = ui.menu_button(name, |ui| in_the_window_ui(ui, draw));
    menu.response.widget_info(|| WidgetInfo::labeled(Role::MenuItem, true, name));
    ui.ctx().accesskit_node_builder(menu.response.id, |node| node.set_has_popup(egui::accesskit::HasPopup::Menu));
    ui.data_mut(|data| {
        let ids: &mut Vec<Id> = data.get_temp_mut_or_default(subs());
        if !ids.contains(&menu.response.id) {
            ids.push(menu.response.id);
        }
    });
}

/// Draws the entries of a menu, which scroll where the window is too low for them.
fn in_the_window_ui<R>(ui: &mut Ui, draw: impl FnOnce(&mut Ui) -> R) -> R {
    let room = ui.ctx().viewport_rect().height() - AROUND;
    let area = ScrollArea::vertical().max_height(room).min_scrolled_height(room);
    area.show(ui, |ui| {
        let drawn = draw(ui);
        follow_focus(ui);
        drawn
    })
    .inner
}

/// Draws an entry with a tick before it where it is on; returns whether it was chosen.
pub(in crate::ui) fn ticked_ui(ui: &mut Ui, on: bool, words: &str) -> bool {
    let response = ui.add(Button::new(format!("{} {words}", if on { "✓" } else { "–" })).wrap_mode(egui::TextWrapMode::Extend));
    response.widget_info(|| WidgetInfo::selected(Role::MenuItemCheckBox, true, on, words));
    response.clicked()
}

/// Goes from the open menu to the one at its left or right by the arrow keys, unless the key belongs to a menu inside it.
pub(in crate::ui) fn move_between_menus(ctx: &Context, buttons: &[Id]) {
    let popup = |button: Id| ctx.read_response(button).map(|response| Popup::default_response_id(&response));
    let is_open = |button: &Id| popup(*button).is_some_and(|popup| Popup::is_id_open(ctx, popup));
    let Some(open) = buttons.iter().position(is_open) else { return };
    let (left, right) = ctx.input(|input| (input.key_pressed(Key::ArrowLeft), input.key_pressed(Key::ArrowRight)));
    let Some(has_focus) = focused(ctx) else { return };
    let subs: Vec<Id> = ctx.data(|data| data.get_temp(subs())).unwrap_or_default();
    let inside = has_focus == buttons.get(open).copied().unwrap_or(has_focus)
        || is_in_popup(ctx, has_focus, buttons.get(open).and_then(|button| popup(*button)));
    if left == right || !inside || (right && subs.contains(&has_focus)) {
        return;
    }
    let next = if right { (open + 1) % buttons.len() } else { (open + buttons.len() - 1) % buttons.len() };
    if let (Some(old), Some(new), Some(button)) = (
        buttons.get(open).and_then(|button| popup(*button)),
        buttons.get(next).and_then(|button| popup(*button)),
        buttons.get(next),
    ) {
        Popup::close_id(ctx, old);
        Popup::open_id(ctx, new);
        ctx.memory_mut(|memory| memory.request_focus(*button));
    }
}

/// Returns whether something lies in a popup itself, and not in one that came from it.
fn is_in_popup(ctx: &Context, id: Id, popup: Option<Id>) -> bool {
    ctx.read_response(id).is_some_and(|response| Some(response.layer_id.id) == popup)
}
