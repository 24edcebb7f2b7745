//! The keys of the whole window.

use crate::ui::state::ask::Ask;
use crate::ui::widget::text_undo::is_for_text;
use egui::{Key, KeyboardShortcut, Modifiers};

const CTRL: Modifiers = Modifiers::COMMAND;

const CTRL_SHIFT: Modifiers = Modifiers { shift: true, ..Modifiers::COMMAND };

/// Every key with what it asks for, the longer combinations first so that they are not taken for the shorter.
pub(in crate::ui) const KEYS: [(KeyboardShortcut, &str, Ask); 9] = [
    (KeyboardShortcut::new(CTRL_SHIFT, Key::S), "Save as", Ask::SaveAs),
    (KeyboardShortcut::new(CTRL_SHIFT, Key::Z), "Redo", Ask::Redo),
    (KeyboardShortcut::new(CTRL, Key::S), "Save", Ask::Save),
    (KeyboardShortcut::new(CTRL, Key::Z), "Undo", Ask::Undo),
    (KeyboardShortcut::new(CTRL, Key::N), "New design", Ask::New),
    (KeyboardShortcut::new(CTRL, Key::O), "Open a design", Ask::Open),
    (KeyboardShortcut::new(CTRL, Key::P), "Save plan as PDF", Ask::ExportPlan),
    (KeyboardShortcut::new(CTRL, Key::Q), "Quit", Ask::Quit),
    (KeyboardShortcut::new(Modifiers::NONE, Key::F1), "Show these keys", Ask::Help),
];

/// Returns what the pressed keys ask for.
pub(in crate::ui) fn keys(ctx: &egui::Context) -> Vec<Ask> {
    let for_text = is_for_text(ctx);
    let is_meant = |ask: &Ask| !(for_text && matches!(ask, Ask::Undo | Ask::Redo));
    ctx.input_mut(|input| {
        let mut asks: Vec<Ask> = Vec::new();
        for (shortcut, _, ask) in KEYS.iter().filter(|(.., ask)| is_meant(ask)) {
            if input.consume_shortcut(shortcut) {
                asks.push(ask.clone());
            }
        }
        asks
    })
}
