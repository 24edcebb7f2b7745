//! Undo inside a box to type into comes before undo of the design.

use egui::{Context, Id, Key, Modifiers, Response, Ui};

/// Where the text in the focused box is remembered.
fn place() -> Id {
    Id::unique("text in the focused box")
}

/// Remembers the text of a box while it has the focus; what was typed there before it had the focus is not taken back.
///
/// Returns whether the box has just got the focus, by whatever way: the toolkit tells it only of what was pressed or reached by Tab.
pub(in crate::ui) fn remember_text(ui: &Ui, response: &Response, text: &str) -> bool {
    let had_focus = response.id.with("had the focus");
    let (had, has) = (ui.data(|data| data.get_temp::<bool>(had_focus)).unwrap_or_default(), response.has_focus());
    ui.data_mut(|data| data.insert_temp(had_focus, has));
    if had != has
        && let Some(mut state) = egui::TextEdit::load_state(ui.ctx(), response.id)
    {
        state.clear_undoer();
        state.store(ui.ctx(), response.id);
    }
    if has {
        ui.ctx().data_mut(|data| data.insert_temp(place(), (response.id, text.to_owned())));
    }
    has && !had
}

/// Returns the box that has the focus, if one has.
pub(in crate::ui) fn focused_box(ctx: &Context) -> Option<Id> {
    let focused = ctx.memory(egui::Memory::focused)?;
    let (id, _) = ctx.data(|data| data.get_temp::<(Id, String)>(place()))?;
    (id == focused).then_some(id)
}

/// Returns whether the keys of undo and of redo are for the text that is being typed.
pub(in crate::ui) fn is_for_text(ctx: &Context) -> bool {
    let undo = ctx.input(|input| pressed(input, Modifiers::COMMAND, Key::Z));
    let redo = ctx
        .input(|input| pressed(input, Modifiers::COMMAND, Key::Y) || pressed(input, Modifiers::COMMAND | Modifiers::SHIFT, Key::Z));
    if !undo && !redo {
        return false;
    }
    let Some(id) = focused_box(ctx) else { return false };
    let Some(text) = ctx.data(|data| data.get_temp::<(Id, String)>(place())).map(|(_, text)| text) else { return false };
    let Some(state) = egui::TextEdit::load_state(ctx, id) else { return false };
    let (mut undoer, mut now) = (state.undoer(), (state.cursor.char_range().unwrap_or_default(), text.clone()));
    // A step may have moved the cursor alone: only one that changes the text counts.
    loop {
        let step = if redo { undoer.redo(&now) } else { undoer.undo(&now) };
        match step.cloned() {
            Some(step) if step.1 == text => now = step,
            Some(_) => return true,
            None => return false,
        }
    }
}

fn pressed(input: &egui::InputState, modifiers: Modifiers, key: Key) -> bool {
    input.events.iter().any(|event| {
        matches!(event, egui::Event::Key { key: pressed, pressed: true, modifiers: held, .. } if *pressed == key && held.matches_exact(modifiers))
    })
}
