//! The keys of the whole window.

use crate::design::Stage;
use crate::ui::state::ask::Ask;
use crate::ui::state::pages::HelpCard;
use crate::ui::widget::text_undo::is_for_text;
use egui::{Key, KeyboardShortcut, Modifiers};

const CTRL: Modifiers = Modifiers::COMMAND;

const CTRL_SHIFT: Modifiers = Modifiers { shift: true, ..Modifiers::COMMAND };

/// Every key with what it asks for, the longer combinations first so that they are not taken for the shorter.
pub(in crate::ui) const KEYS: [(KeyboardShortcut, &str, Ask); 16] = [
    (KeyboardShortcut::new(CTRL_SHIFT, Key::S), "Save as", Ask::SaveAs),
    (KeyboardShortcut::new(CTRL_SHIFT, Key::Z), "Redo", Ask::Redo),
    (KeyboardShortcut::new(Modifiers::SHIFT, Key::F6), "Previous part of the window", Ask::NextPane { back: true }),
    (KeyboardShortcut::new(CTRL, Key::S), "Save", Ask::Save),
    (KeyboardShortcut::new(CTRL, Key::Z), "Undo", Ask::Undo),
    (KeyboardShortcut::new(CTRL, Key::Y), "Redo", Ask::Redo),
    (KeyboardShortcut::new(CTRL, Key::N), "New", Ask::New),
    (KeyboardShortcut::new(CTRL, Key::O), "Open", Ask::Open),
    (KeyboardShortcut::new(CTRL, Key::P), "Save plan as PDF", Ask::ExportPlan),
    (KeyboardShortcut::new(CTRL, Key::Q), "Quit", Ask::Quit),
    (KeyboardShortcut::new(CTRL, Key::W), "Quit", Ask::Quit),
    (KeyboardShortcut::new(Modifiers::NONE, Key::F6), "Next part of the window", Ask::NextPane { back: false }),
    (KeyboardShortcut::new(Modifiers::NONE, Key::F9), "Show only the curve, or everything again", Ask::CurveAlone),
    (KeyboardShortcut::new(Modifiers::NONE, Key::F10), "To the menus", Ask::ToMenus),
    (KeyboardShortcut::new(Modifiers::NONE, Key::F11), "Full screen on or off", Ask::FillScreen),
    (KeyboardShortcut::new(Modifiers::NONE, Key::F1), "Show these keys", Ask::Help(HelpCard::Keys)),
];

/// The keys of the stations, in the trade's order.
const STATION_KEYS: [Key; 7] = [Key::Num1, Key::Num2, Key::Num3, Key::Num4, Key::Num5, Key::Num6, Key::Num7];

/// Keys that are looked after elsewhere.
pub(in crate::ui) const OTHER_KEYS: [(&str, &str); 11] = [
    ("Ctrl+1 … 7", "The choices of milk, vat … keeping"),
    ("Ctrl+Plus, Minus, 0", "Zoom in, zoom out, normal size"),
    ("Tab, Shift+Tab", "Next button or box, previous one"),
    ("Arrows", "One step of the selected slider; next of a row of choices"),
    ("Page up, down", "Ten steps; in a list one page"),
    ("Home, End", "Minimum, maximum; in a list its ends"),
    ("P", "On a slider: pin it, unpin it"),
    ("Delete", "On a slider: back to the default"),
    ("Enter", "Press a button, accept what you typed"),
    ("Escape", "Give up what you typed, close the box in front"),
    ("Ctrl+Z while typing", "First what you typed, then the last step"),
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
        for (key, stage) in STATION_KEYS.into_iter().zip(Stage::ALL) {
            if input.consume_shortcut(&KeyboardShortcut::new(CTRL, key)) {
                asks.push(Ask::Station(stage));
            }
        }
        asks
    })
}
