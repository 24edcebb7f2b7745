//! One choice of several, as a rounded button. A group of them is one stop of the Tab key; arrows move in it.

use crate::ui::widget::focus::{focused, is_inside};
use crate::ui::widget::theme::{CAPTION, Palette};
use egui::{CornerRadius, EventFilter, Id, Key, RichText, Role, Sense, Stroke, Ui, UiBuilder, WidgetInfo, vec2};

/// Where it is remembered which choice an arrow key asked for.
fn asked() -> Id {
    Id::unique("choice that an arrow key asked for")
}

/// Draws a group of choices, of which at most one is chosen, with its name for a reader of the screen.
pub(in crate::ui) fn pills_ui<R>(ui: &mut Ui, name: &str, draw: impl FnOnce(&mut Ui) -> R) -> R {
    let group = UiBuilder::new().accessibility_role(Role::RadioGroup).accessibility_label(name);
    let shown = ui.scope_builder(group, |ui| {
        ui.horizontal_wrapped(|ui| {
            ui.spacing_mut().item_spacing = vec2(6.0, 6.0);
            draw(ui)
        })
        .inner
    });
    move_by_arrows(ui, shown.response.id);
    shown.inner
}

/// Moves the choice by arrow keys, round and round.
fn move_by_arrows(ui: &Ui, group: Id) {
    let Some(now) = focused(ui.ctx()).filter(|id| is_inside(ui.ctx(), *id, group)) else { return };
    ui.memory_mut(|memory| {
        let arrows = EventFilter { horizontal_arrows: true, vertical_arrows: true, ..Default::default() };
        memory.set_focus_lock_filter(now, arrows);
    });
    let step = ui.input(|input| {
        let pressed = |key: Key| isize::try_from(input.num_presses(key)).unwrap_or(0);
        pressed(Key::ArrowRight) + pressed(Key::ArrowDown) - pressed(Key::ArrowLeft) - pressed(Key::ArrowUp)
    });
    if step == 0 {
        return;
    }
    let pressed: Vec<Id> = ui.ctx().viewport(|viewport| {
        let of_layer = viewport.this_pass.widgets.get_layer(ui.layer_id());
        of_layer.filter(|drawn| drawn.sense.senses_click()).map(|drawn| drawn.id).collect()
    });
    let radios: Vec<Id> = pressed.into_iter().filter(|id| is_inside(ui.ctx(), *id, group)).collect();
    let place = radios.iter().position(|id| *id == now);
    let next = place.and_then(|place| {
        let count = isize::try_from(radios.len()).ok()?;
        radios.get(usize::try_from((isize::try_from(place).ok()? + step).rem_euclid(count)).ok()?).copied()
    });
    if let Some(next) = next.filter(|next| *next != now) {
        ui.data_mut(|data| data.insert_temp(asked(), next));
        ui.ctx().request_repaint();
    }
}

/// Draws one choice as a rounded button, filled where it is chosen; returns whether it was chosen just now.
///
/// * `stops`: whether the Tab key stops at it: the chosen one of a group, or each where none is chosen
pub(in crate::ui) fn pill_ui(ui: &mut Ui, label: &str, name: &str, help: &str, (chosen, stops): (bool, bool)) -> bool {
    let palette = Palette::of(ui);
    let (text, fill) = if chosen { (palette.background, palette.link) } else { (palette.text, palette.background) };
    let button = egui::Button::new(RichText::new(label).size(CAPTION).color(text))
        .fill(fill)
        .corner_radius(CornerRadius::same(13))
        .stroke(Stroke::new(1.0, if chosen { palette.link } else { palette.edge }))
        .sense(if stops { Sense::click() } else { Sense::CLICK })
        .min_size(vec2(0.0, 26.0));
    let response = ui.add(button).on_hover_text(help);
    response.widget_info(|| WidgetInfo::selected(Role::RadioButton, true, chosen, name));
    let by_arrow = ui.data(|data| data.get_temp::<Id>(asked())) == Some(response.id);
    if by_arrow && (chosen || stops) {
        // Only now it can have the focus.
        response.request_focus();
        ui.data_mut(|data| data.remove::<Id>(asked()));
    } else if by_arrow {
        ui.ctx().request_repaint();
    }
    (response.clicked() || by_arrow) && !chosen
}
