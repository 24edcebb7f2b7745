//! Questions that must be answered, and messages that must be seen.

use crate::session::LeftBehind;
use crate::ui::state::ask::Ask;
use crate::ui::widget::focus::focus_ring;
use crate::ui::widget::theme::{BODY, Palette, TITLE, bold};
use crate::ui::widget::typed_box::select_all;
use crate::ui::window::files::Purpose;
use crate::ui::window::keys::KEYS;
use egui::{Button, Key, RichText, Ui};

/// One of the two designs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::ui) enum Which {
    /// The open one.
    First,
    /// The one beside it.
    Second,
}

/// A question in front of the window.
#[derive(Clone, Debug, PartialEq)]
pub(in crate::ui) enum Prompt {
    /// A design is not saved, and something would lose it.
    Unsaved {
        /// Which.
        which: Which,
        /// What to do once that is settled.
        then: Ask,
    },
    /// A recovery copy was left behind.
    Recover(Box<LeftBehind>),
    /// A path must be typed.
    Path {
        /// What for.
        purpose: Purpose,
        /// The text so far.
        text: String,
    },
}

/// The answer to a question.
#[derive(Clone, Debug, PartialEq)]
pub(in crate::ui) enum Reply {
    /// Save this design first, then do what was asked for.
    Save(Which, Ask),
    /// Give this design's changes up and do what was asked for.
    Discard(Which, Ask),
    /// Leave everything as it is.
    Cancel,
    /// Open the recovery copy.
    Recover(Box<LeftBehind>),
    /// Give the recovery copy up.
    ForgetRecovery,
    /// Use this path.
    Path(Purpose, String),
}

/// Draws the question and returns its answer, once there is one.
pub(in crate::ui) fn prompt_ui(ctx: &egui::Context, prompt: &mut Prompt) -> Option<Reply> {
    let mut reply = None;
    let modal = egui::Modal::new(egui::Id::unique("prompt")).frame(front(ctx)).show(ctx, |ui| {
        ui.set_max_width(520.0);
        match prompt {
            Prompt::Unsaved { which, then } => {
                let (question, why) = match which {
                    Which::First => (
                        "Save your changes first?",
                        "The design has changes that are in no file. Discarding them cannot be undone.",
                    ),
                    Which::Second => {
                        ("Save B first?", "The second design has changes that are in no file. Discarding them cannot be undone.")
                    }
                };
                heading(ui, question);
                ui.label(why);
                ui.add_space(10.0);
                ui.horizontal(|ui| {
                    if choice(ui, "Save") {
                        reply = Some(Reply::Save(*which, then.clone()));
                    }
                    if choice(ui, "Discard") {
                        reply = Some(Reply::Discard(*which, then.clone()));
                    }
                    if choice(ui, "Cancel") {
                        reply = Some(Reply::Cancel);
                    }
                });
            }
            Prompt::Recover(left) => {
                heading(ui, "Recover unsaved work?");
                let (copy, titles) =
                    (if left.first.is_some() && left.second.is_some() { "Copies were" } else { "A copy was" }, left.titles());
                ui.label(format!("Last time the program ended before {titles} could be saved. {copy} kept."));
                ui.add_space(10.0);
                ui.horizontal(|ui| {
                    if choice(ui, "Recover") {
                        reply = Some(Reply::Recover(left.clone()));
                    }
                    if choice(ui, "Discard") {
                        reply = Some(Reply::ForgetRecovery);
                    }
                });
            }
            Prompt::Path { purpose, text } => {
                heading(ui, purpose.title());
                let label = ui.label("This desktop offers no file dialog. Type the path of the file:");
                let response = ui.add(egui::TextEdit::singleline(text).desired_width(480.0)).labelled_by(label.id);
                let entered = response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
                // Nothing else can be typed into while it is asked.
                if !entered && ui.memory(|memory| memory.focused().is_none()) {
                    response.request_focus();
                }
                if response.gained_focus() {
                    select_all(ui, response.id, text.chars().count());
                }
                ui.add_space(10.0);
                ui.horizontal(|ui| {
                    let named = !text.trim().is_empty();
                    if (choice(ui, "Use this path") || entered) && named {
                        reply = Some(Reply::Path(*purpose, text.trim().to_owned()));
                    }
                    if choice(ui, "Cancel") {
                        reply = Some(Reply::Cancel);
                    }
                });
            }
        }
    });
    let given_up = modal.should_close() && !matches!(prompt, Prompt::Recover(_));
    reply.or_else(|| given_up.then_some(Reply::Cancel))
}

/// Returns the frame of what is in front of the window.
fn front(ctx: &egui::Context) -> egui::Frame {
    egui::Frame::popup(&ctx.global_style()).inner_margin(20).corner_radius(10)
}

fn heading(ui: &mut Ui, words: &str) {
    ui.label(RichText::new(words).font(bold(TITLE)));
    ui.add_space(4.0);
}

fn choice(ui: &mut Ui, words: &str) -> bool {
    let response = ui.add(Button::new(words).min_size(egui::vec2(96.0, 32.0)));
    focus_ring(ui, &response);
    response.clicked()
}

/// Draws the list of keys; returns whether it is to be closed.
pub(in crate::ui) fn keys_ui(ctx: &egui::Context) -> bool {
    let mut close = false;
    let modal = egui::Modal::new(egui::Id::unique("keys")).frame(front(ctx)).show(ctx, |ui| {
        ui.set_max_width(460.0);
        heading(ui, "Keyboard shortcuts");
        egui::Grid::new("keys").spacing(egui::vec2(24.0, 6.0)).show(ui, |ui| {
            for (shortcut, words, _) in &KEYS {
                ui.label(RichText::new(ui.ctx().format_shortcut(shortcut)).font(bold(BODY)));
                ui.label(*words);
                ui.end_row();
            }
            for (key, words) in [
                ("Arrows", "One step of the focused slider"),
                ("Page up, down", "Ten steps"),
                ("Home, End", "Minimum, maximum"),
                ("Escape", "Keep the old value"),
            ] {
                ui.label(RichText::new(key).font(bold(BODY)));
                ui.label(words);
                ui.end_row();
            }
        });
        ui.add_space(8.0);
        close = choice(ui, "Close");
    });
    close || modal.should_close()
}

/// Draws a message that something went wrong; returns whether it is to be closed.
pub(in crate::ui) fn notice_ui(ui: &mut Ui, words: &str) -> bool {
    let palette = Palette::of(ui);
    let (text, fill) = (palette.stop_text, palette.stop_fill);
    egui::Frame::new()
        .fill(fill)
        .inner_margin(10)
        .show(ui, |ui| {
            ui.horizontal_wrapped(|ui| {
                ui.set_width(ui.available_width());
                ui.label(RichText::new(words).color(text));
                let button = Button::new(RichText::new("Close message").color(text))
                    .fill(egui::Color32::TRANSPARENT)
                    .stroke(egui::Stroke::new(1.0, text));
                ui.add(button).clicked()
            })
            .inner
        })
        .inner
}
