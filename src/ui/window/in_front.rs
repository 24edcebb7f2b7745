//! What is in front of the window: the keys and the prompts.

use crate::session::Which;
use crate::ui::state::ask::{Ask, SecondAsk};
use crate::ui::window::keys_list::keys_ui;
use crate::ui::window::prompt::{Prompt, prompt_ui};
use crate::ui::window::reply::Reply;
use crate::ui::window::shell::Window;
use egui::Id;
use std::path::Path;

impl Window {
    /// Draws what is in front of everything, and does what it answers.
    ///
    /// Returns its part of the window, if something is in front.
    pub(super) fn ask_in_front(&mut self, ctx: &egui::Context) -> Option<Id> {
        let mut front = None;
        if self.view.help {
            let (close, part) = keys_ui(ctx);
            self.view.help = !close;
            front = (!close).then_some(part);
        }
        let Some(prompt) = &mut self.prompt else { return front };
        let (reply, part) = prompt_ui(ctx, prompt);
        let Some(reply) = reply else { return Some(part) };
        self.prompt = None;
        match reply {
            Reply::Cancel => self.after_save = None,
            Reply::Discard(Which::First, then) => self.unless_second_is_lost(ctx, then),
            Reply::Discard(Which::Second, then) => self.settled(ctx, then),
            Reply::Save(which, then) => {
                self.after_save = Some(then);
                match which {
                    Which::First => self.save(ctx),
                    Which::Second => self.save_second(ctx),
                }
            }
            Reply::Recover(left) => self.carry_out(ctx, Ask::Recover(Box::new(left))),
            Reply::Forget(left) => self.forget(left),
            // It stays in the menu of files.
            Reply::Later => {}
            Reply::Replace(purpose, path) => self.use_path(ctx, purpose, path),
            Reply::OtherName(purpose, path) => {
                self.prompt = Some(Prompt::Path { purpose, text: path.to_string_lossy().into_owned() });
            }
            Reply::Alike(kind, alike) => self.carry_out(ctx, Ask::Second(SecondAsk::MilkAlike(kind, alike))),
            Reply::Scale(command) => self.carry_out(ctx, Ask::Do(*command)),
            Reply::Path(purpose, path) => self.with_path(ctx, purpose, Path::new(&path), false),
        }
        front
    }
}
