//! What is in front of the window: the help and the prompts.

use crate::session::{ExamplesJob, Which};
use crate::ui::help::card::HelpReply;
use crate::ui::help::changes::changes_ui;
use crate::ui::help::welcome::welcome_ui;
use crate::ui::help::words::words_ui;
use crate::ui::state::ask::{Ask, SecondAsk};
use crate::ui::state::pages::HelpCard;
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
        let front = self.help_in_front(ctx);
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

    /// Draws what of the help is in front, and does what it asks for.
    fn help_in_front(&mut self, ctx: &egui::Context) -> Option<Id> {
        let HelpReply { asked, closed, part } = match self.view.help? {
            HelpCard::Keys => keys_ui(ctx),
            HelpCard::Words => words_ui(ctx, &mut self.view.sought_word),
            HelpCard::Changes => changes_ui(ctx),
            HelpCard::Welcome => {
                let cards = self.background.examples.as_ref().and_then(ExamplesJob::answer);
                welcome_ui(ctx, self.view.units, cards.as_deref().map(Vec::as_slice))
            }
        };
        if closed || asked.is_some() {
            self.view.help = None;
        }
        if let Some(ask) = asked {
            self.carry_out(ctx, ask);
        }
        self.view.help.is_some().then_some(part)
    }
}
