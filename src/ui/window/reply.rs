//! The answers to the questions in front of the window, and the parts that all of them are made of.

use crate::analysis::Alike;
use crate::design::MilkKind;
use crate::session::{Command, LeftBehind, Which};
use crate::ui::state::ask::Ask;
use crate::ui::widget::spoken::heading_ui;
use crate::ui::window::files::Purpose;
use egui::{Button, Ui};
use std::path::PathBuf;

/// The answer to a question.
#[derive(Clone, Debug, PartialEq)]
pub(in crate::ui) enum Reply {
    /// Save this design first, then do what was asked for.
    Save(Which, Ask),
    /// Give this design's changes up and do what was asked for.
    Discard(Which, Ask),
    /// Leave everything as it is.
    Cancel,
    /// Open what was left behind.
    Recover(LeftBehind),
    /// Give up what was left behind.
    Forget(LeftBehind),
    /// Answer for what was left behind another time.
    Later,
    /// Write over the file that is there.
    Replace(Purpose, PathBuf),
    /// Choose another name than this.
    OtherName(Purpose, PathBuf),
    /// Make B the same vat from this milk, like in this respect.
    Alike(MilkKind, Alike),
    /// Scale the design by this command.
    Scale(Box<Command>),
    /// Use this path.
    Path(Purpose, String),
}

/// Returns the frame of what is in front of the window.
pub(in crate::ui) fn front(ctx: &egui::Context) -> egui::Frame {
    egui::Frame::popup(&ctx.global_style()).inner_margin(20).corner_radius(10)
}

pub(in crate::ui) fn heading(ui: &mut Ui, words: &str) {
    heading_ui(ui, words);
    ui.add_space(4.0);
}

pub(in crate::ui) fn choice(ui: &mut Ui, words: &str) -> bool {
    let response = ui.add(Button::new(words).min_size(egui::vec2(96.0, 32.0)));
    response.clicked()
}
