//! What the window does before each drawing: keys, dialogs, the desktop and the clock.

use crate::ui::state::ask::Ask;
use crate::ui::widget::text_undo::focused_box;
use crate::ui::window::dropped::dropped;
use crate::ui::window::keys::keys;
use crate::ui::window::shell::Window;
use egui::ViewportCommand;

/// A drawing that took longer counts as this, so that the hours do not leap where the machine is busy, s.
const LONGEST_S: f64 = 0.1;

impl Window {
    /// Does what comes from keys, dialogs, the desktop and the clock; before each drawing.
    pub fn logic(&mut self, ctx: &egui::Context) {
        self.keep_appearance(ctx);
        self.run_hours(ctx);
        let comes_back = ctx.input(|input| input.events.contains(&egui::Event::WindowFocused(true)));
        if comes_back {
            self.changed = self.session.changed_on_disk();
            self.recent.look();
        }
        if self.prompt.is_none() {
            let mut asks = keys(ctx);
            asks.extend(self.closed_by_escape(ctx));
            asks.extend(dropped(ctx));
            self.after_typing(ctx, asks);
        }
        if let Some(answer) = self.dialogs.answer() {
            self.answered(ctx, answer);
        }
        match self.paper_jobs.printed().or_else(|| self.copier.answer(ctx)) {
            Some(Ok(words)) => self.session.last_change = words,
            Some(Err(words)) => self.tell(words),
            None => {}
        }
        let closes = ctx.input(|input| input.viewport().close_requested());
        if closes && !self.leaving && (self.is_unsaved() || focused_box(ctx).is_some()) {
            ctx.send_viewport_cmd(ViewportCommand::CancelClose);
            self.after_typing(ctx, vec![Ask::Quit]);
        } else if closes && let Some(recovery) = &mut self.recovery {
            recovery.clear();
        }
        self.order_work(ctx);
        self.keep_recovery(ctx);
        let title = self.title();
        if self.desktop_title != title {
            ctx.send_viewport_cmd(ViewportCommand::Title(title.clone()));
            self.desktop_title = title;
        }
    }

    /// Lets the hours of the cut run on.
    fn run_hours(&mut self, ctx: &egui::Context) {
        if self.view.cut.runs {
            let passed_s = ctx.input(|input| f64::from(input.stable_dt));
            self.view.cut = self.view.cut.later(passed_s.min(LONGEST_S));
            ctx.request_repaint();
        }
    }

    /// Returns what the bar of the desktop says: the title of the design, its file, and whether it has changes that are not saved.
    fn title(&self) -> String {
        let title = if self.session.design().title.is_empty() { "Untitled design" } else { &self.session.design().title };
        let mark = if self.session.is_dirty() { "• " } else { "" };
        let file = self.session.path().and_then(|path| path.file_name()).map(|name| format!(" ({})", name.to_string_lossy()));
        format!("{mark}{title}{} – Vatsketch", file.unwrap_or_default())
    }

    /// Returns that a curve alone is to be closed, or else the card of a figure, or else the guide, if Escape was pressed and nothing else has a use for it.
    fn closed_by_escape(&self, ctx: &egui::Context) -> Option<Ask> {
        let pressed = ctx.input(|input| input.key_pressed(egui::Key::Escape));
        let other_use =
            self.view.help.is_some() || self.session.is_dragging() || focused_box(ctx).is_some() || egui::Popup::is_any_open(ctx);
        if !pressed || other_use {
            return None;
        }
        if self.view.curve_alone {
            return Some(Ask::CurveAlone);
        }
        let card = self.view.card.as_ref().map(|_| Ask::Figure(None));
        card.or_else(|| self.view.guide.map(|_| Ask::Guide(None)))
    }

    /// Does what keys ask for; while something is being typed, once the box was left and what was typed counts.
    fn after_typing(&mut self, ctx: &egui::Context, asks: Vec<Ask>) {
        // What takes the focus elsewhere leaves the box by itself.
        let (moves, acts): (Vec<Ask>, Vec<Ask>) = asks.into_iter().partition(|ask| {
            matches!(ask, Ask::NextPane { .. } | Ask::ToMenus | Ask::Station(_) | Ask::FillScreen | Ask::CurveAlone | Ask::Help(_))
        });
        match focused_box(ctx) {
            Some(typing) if !acts.is_empty() => {
                ctx.memory_mut(|memory| memory.surrender_focus(typing));
                self.waiting.extend(acts);
                self.focus.give_back = true;
            }
            _ => acts.into_iter().for_each(|ask| self.carry_out(ctx, ask)),
        }
        for ask in moves {
            self.carry_out(ctx, ask);
        }
    }
}
