//! What scrolls: it follows the focus of the keyboard, and what is only read scrolls by keys.

use crate::ui::widget::focus::follow_focus;
use egui::{EventFilter, Id, Key, Role, ScrollArea, Sense, Ui, WidgetInfo, vec2};

/// A step of an arrow key.
const STEP: f32 = 48.0;

/// Draws something that scrolls up and down in all the room that there is.
pub(in crate::ui) fn scroll_ui<R>(ui: &mut Ui, id: impl std::hash::Hash + std::fmt::Debug, draw: impl FnOnce(&mut Ui) -> R) -> R {
    let area = ScrollArea::vertical().id_salt(id).auto_shrink(false);
    area.show(ui, |ui| {
        let drawn = draw(ui);
        follow_focus(ui);
        drawn
    })
    .inner
}

/// Draws something that scrolls up and down where it is higher than there is room for, and takes no more than it needs.
pub(in crate::ui) fn shrunk_ui<R>(
    ui: &mut Ui,
    id: impl std::hash::Hash + std::fmt::Debug,
    most: f32,
    draw: impl FnOnce(&mut Ui) -> R,
) -> R {
    let area = ScrollArea::vertical().id_salt(id).max_height(most).auto_shrink([false, true]);
    area.show(ui, |ui| {
        let drawn = draw(ui);
        follow_focus(ui);
        drawn
    })
    .inner
}

/// Draws the same in a card in front of the window, whose own height follows from it.
pub(in crate::ui) fn in_card_ui<R>(ui: &mut Ui, id: &'static str, most: f32, draw: impl FnOnce(&mut Ui) -> R) -> R {
    // A card offers the height that it had the last time, which would never let it grow.
    let area = ScrollArea::vertical().id_salt(id).max_height(most).min_scrolled_height(most).auto_shrink([false, true]);
    area.show(ui, |ui| {
        let drawn = draw(ui);
        follow_focus(ui);
        drawn
    })
    .inner
}

/// Draws something that is only read, in an area that scrolls: the Tab key stops at it, and arrows, Page Up and Down, Home and End move it.
pub(in crate::ui) fn read_ui<R>(ui: &mut Ui, name: &str, area: ScrollArea, draw: impl FnOnce(&mut Ui) -> R) -> R {
    let id = ui.make_persistent_id((name, "is read"));
    let (page, is_read) = (ui.available_height(), ui.memory(|memory| memory.has_focus(id)));
    let shown = area.id_salt(name).show(ui, |ui| {
        if is_read {
            move_by_keys(ui, id, page);
        }
        let drawn = draw(ui);
        follow_focus(ui);
        drawn
    });
    let region = ui.interact(shown.inner_rect, id, Sense::focusable_noninteractive());
    region.widget_info(|| WidgetInfo::labeled(Role::ScrollView, true, name));
    shown.inner
}

fn move_by_keys(ui: &Ui, region: Id, page: f32) {
    ui.memory_mut(|memory| {
        let arrows = EventFilter { vertical_arrows: true, horizontal_arrows: true, ..Default::default() };
        memory.set_focus_lock_filter(region, arrows);
    });
    let (down, right) = ui.input(|input| {
        let pressed = |key: Key| input.num_presses(key) as f32;
        let lines = pressed(Key::ArrowDown) - pressed(Key::ArrowUp);
        let pages = pressed(Key::PageDown) - pressed(Key::PageUp);
        let ends = pressed(Key::End) - pressed(Key::Home);
        (
            STEP * lines + 0.9 * page * pages + ends * f32::from(u16::MAX),
            STEP * (pressed(Key::ArrowRight) - pressed(Key::ArrowLeft)),
        )
    });
    if down != 0.0 || right != 0.0 {
        ui.scroll_with_delta(vec2(-right, -down));
    }
}
