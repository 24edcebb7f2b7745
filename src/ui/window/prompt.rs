//! Questions that must be answered.

use crate::analysis::{Alike, same_vat_from};
use crate::design::MilkKind;
use crate::session::Which;
use crate::ui::state::ask::Ask;
use crate::ui::widget::text_undo::remember_text;
use crate::ui::widget::typed_box::select_all;
use crate::ui::window::files::Purpose;
use crate::ui::window::recover_prompt::{Left, recover_ui};
use crate::ui::window::reply::{Reply, choice, front, heading};
use crate::ui::window::scale_prompt::{ScalePrompt, scale_ui};
use egui::{Id, Key, Ui};
use std::path::PathBuf;

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
    /// Unsaved work was left behind.
    Recover(Vec<Left>),
    /// A file of that name is there already.
    Replace {
        /// What would be written.
        purpose: Purpose,
        /// Where.
        path: PathBuf,
    },
    /// B is to be the same vat from this milk: in which respect?
    Alike(MilkKind),
    /// To what is the whole design to be scaled?
    Scale(Box<ScalePrompt>),
    /// A path must be typed.
    Path {
        /// What for.
        purpose: Purpose,
        /// The text so far.
        text: String,
    },
}

/// Width of a question with tables.
const WIDE: f32 = 680.0;

/// Draws the question and returns its answer, once there is one, and its part of the window.
pub(in crate::ui) fn prompt_ui(ctx: &egui::Context, prompt: &mut Prompt) -> (Option<Reply>, Id) {
    let (mut reply, mut part) = (None, Id::NULL);
    let modal = egui::Modal::new(Id::unique("prompt")).frame(front(ctx)).show(ctx, |ui| {
        part = ui.unique_id();
        ui.set_max_width(if matches!(prompt, Prompt::Scale(_)) { WIDE } else { 520.0 });
        match prompt {
            Prompt::Unsaved { which, then } => {
                let question = match which {
                    Which::First => "Save your changes first?",
                    Which::Second => "Save B first?",
                };
                // Closing B alone is a step that undo takes back.
                let lost =
                    if matches!(then, Ask::Second(_)) { "Undo brings it back." } else { "Discarding them cannot be undone." };
                let whose = if *which == Which::First { "The design" } else { "The second design, B," };
                heading(ui, question);
                ui.label(format!("{whose} has changes that are in no file. {lost}"));
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
            Prompt::Recover(left) => reply = recover_ui(ui, left),
            Prompt::Replace { purpose, path } => {
                heading(ui, "Overwrite the file?");
                ui.label(format!("{} exists already. {}", path.display(), purpose.lost()));
                ui.add_space(10.0);
                ui.horizontal(|ui| {
                    if choice(ui, "Overwrite") {
                        reply = Some(Reply::Replace(*purpose, path.clone()));
                    }
                    if choice(ui, "Choose another name") {
                        reply = Some(Reply::OtherName(*purpose, path.clone()));
                    }
                    if choice(ui, "Cancel") {
                        reply = Some(Reply::Cancel);
                    }
                });
            }
            Prompt::Alike(kind) => reply = alike_ui(ui, *kind),
            Prompt::Scale(scale) => reply = scale_ui(ui, scale),
            Prompt::Path { purpose, text } => {
                heading(ui, purpose.title());
                let such_as = purpose.such_as();
                let label =
                    ui.label(format!("Files cannot be chosen by mouse here. Type the folder and the name, as in {such_as}:"));
                let response = ui.add(egui::TextEdit::singleline(text).desired_width(480.0)).labelled_by(label.id);
                let comes = remember_text(ui, &response, text);
                let entered = response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
                // Nothing else can be typed into while it is asked.
                if !entered && ui.memory(|memory| memory.focused().is_none()) {
                    response.request_focus();
                }
                if comes {
                    select_all(ui, response.id, text.chars().count());
                }
                ui.add_space(10.0);
                ui.horizontal(|ui| {
                    let named = !text.trim().is_empty();
                    if (choice(ui, if purpose.writes() { "Save" } else { "Open" }) || entered) && named {
                        reply = Some(Reply::Path(*purpose, text.trim().to_owned()));
                    }
                    if choice(ui, "Cancel") {
                        reply = Some(Reply::Cancel);
                    }
                });
            }
        }
    });
    let given_up = modal.should_close().then(|| if matches!(prompt, Prompt::Recover(_)) { Reply::Later } else { Reply::Cancel });
    (reply.or(given_up), part)
}

/// Asks in which respect the same vat from another milk is to be like.
fn alike_ui(ui: &mut Ui, kind: MilkKind) -> Option<Reply> {
    heading(ui, &same_vat_from(kind));
    ui.label("Milks differ in fat and in how much curd they give. What should stay the same?");
    ui.add_space(10.0);
    let answers = Alike::ALL.map(|alike| choice(ui, &format!("The same {}", alike.label())).then_some(Reply::Alike(kind, alike)));
    ui.add_space(6.0);
    let given_up = choice(ui, "Cancel").then_some(Reply::Cancel);
    answers.into_iter().flatten().next().or(given_up)
}
