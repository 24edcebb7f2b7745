//! Lays the parts of the window out, in the order in which they are read.

use crate::session::{WallClock, Which};
use crate::ui::help::guide::{self, GUIDE_PANE, guide_ui, pane_of};
use crate::ui::log::kitchen::KitchenKnown;
use crate::ui::log::shown::Look;
use crate::ui::results::foot::{self, foot_ui};
use crate::ui::state::ask::Ask;
use crate::ui::state::pages::Page;
use crate::ui::widget::focus::{Front, focus_ring};
use crate::ui::widget::room::Room;
use crate::ui::widget::theme::Palette;
use crate::ui::window::changed_bar::changed_ui;
use crate::ui::window::dropped::hovered_ui;
use crate::ui::window::notice::notice_ui;
use crate::ui::window::pane::{LOG, MENUS, PLAN, SOURCES};
use crate::ui::window::shell::{ONE_COLUMN, Window};
use crate::ui::window::sources_page::sources_ui;
use crate::ui::window::top_bar::top_bar_ui;
use egui::{CentralPanel, Frame, Id, Margin, Panel, Rect, Ui, UiBuilder};
use std::time::Duration;

/// How often the log looks at the clock by itself.
const MINUTE: Duration = Duration::from_mins(1);

impl Window {
    /// Draws everything.
    pub fn ui(&mut self, ui: &mut Ui) {
        let palette = Palette::of(ui);
        let mut asks = Vec::new();
        self.panes.begin(self.view.guide_step().map(|step| pane_of(step.place)));
        let bar = Frame::new().fill(palette.panel).inner_margin(Margin::symmetric(12, 0));
        Panel::top("bar").exact_size(48.0).frame(bar).show(ui, |ui| {
            let place = ui.available_rect_before_wrap();
            asks.extend(self.panes.pane_ui(ui, MENUS, place, |ui| {
                top_bar_ui(ui, &mut self.view, &self.session, (&self.recent, !self.left.is_empty()))
            }));
        });
        if let Some(words) = self.notice.clone() {
            let closed = Panel::top("notice").frame(Frame::new()).show(ui, |ui| notice_ui(ui, &words)).inner;
            if closed {
                self.notice = None;
            }
        }
        for changed in self.changed.clone() {
            let id = if changed.which == Which::First { "changed on disk" } else { "B changed on disk" };
            asks.extend(Panel::top(id).frame(Frame::new()).show(ui, |ui| changed_ui(ui, &self.session, changed)).inner);
        }
        let last_change = foot::told_change(self.view.units, &self.session.last_change);
        let high = foot::height(ui, ui.available_width() < ONE_COLUMN, self.beside.is_some(), &last_change);
        // The foot is read last, so it is drawn last: its room is kept for it.
        let room = ui.available_rect_before_wrap();
        let (above, below) = room.split_top_bottom_at_y((room.bottom() - high).max(room.top()));
        let guide_high = self.view.guide_step().map_or(0.0, |step| guide::height(ui, step));
        let (above, between) = above.split_top_bottom_at_y((above.bottom() - guide_high).max(above.top()));
        asks.extend(self.page_ui(ui, above));
        asks.extend(self.guide_pane_ui(ui, between));
        asks.extend(self.foot_pane_ui(ui, below, &last_change));
        let ctx = ui.ctx().clone();
        asks.append(&mut self.waiting);
        for ask in asks {
            self.carry_out(&ctx, ask);
        }
        let question = self.ask_in_front(&ctx);
        self.keep_focus(ui, question);
        hovered_ui(&ctx, &palette);
    }

    /// Draws the page in sight.
    fn page_ui(&mut self, ui: &mut Ui, place: Rect) -> Vec<Ask> {
        let mut panes = std::mem::take(&mut self.panes);
        let asks = match self.view.page {
            Page::Design => {
                let page = UiBuilder::new().max_rect(place).id_salt("page");
                ui.scope_builder(page, |ui| self.design_page(ui, &mut panes)).inner
            }
            Page::Plan => panes.pane_ui(ui, PLAN, place, |ui| self.plan_page(ui)),
            Page::Log => panes.pane_ui(ui, LOG, place, |ui| {
                let room = if ui.available_width() < ONE_COLUMN { Room::Column } else { Room::Own };
                if matches!(self.clock, WallClock::Computer) {
                    // What comes next counts the minutes.
                    ui.ctx().request_repaint_after(MINUTE);
                }
                let spread = self.background.spread(self.session.design());
                let look = Look { now: &self.clock.now(), units: self.view.units, spread: spread.as_ref() };
                let found = self.background.found_kitchen();
                let kitchen = KitchenKnown::of(found.as_deref(), self.background.kitchen.as_ref());
                self.log.page_ui(ui, &mut self.view, (self.session.path(), self.session.design()), (look, kitchen), room)
            }),
            Page::Sources => {
                let frame = Frame::new().fill(Palette::of(ui).background).inner_margin(20);
                let laws = self.shown.laws(self.session.batch());
                panes.pane_ui(ui, SOURCES, place, |ui| {
                    let design = self.session.design();
                    CentralPanel::default().frame(frame).show(ui, |ui| sources_ui(ui, &mut self.view, laws, design));
                });
                Vec::new()
            }
        };
        self.panes = panes;
        asks
    }

    /// Draws the guide, where it is on.
    fn guide_pane_ui(&mut self, ui: &mut Ui, place: Rect) -> Option<Ask> {
        self.guide_pane = None;
        let step = self.view.guide.filter(|_| self.view.guide_step().is_some())?;
        let asked = self.panes.pane_ui(ui, GUIDE_PANE, place, |ui| guide_ui(ui, step));
        self.guide_pane = self.panes.last();
        asked
    }

    fn foot_pane_ui(&mut self, ui: &mut Ui, place: Rect, last_change: &str) -> Option<Ask> {
        let foot = Frame::new().fill(Palette::of(ui).panel).inner_margin(Margin::symmetric(foot::MARGIN.0, foot::MARGIN.1));
        let cost = self.kept_week.cost(self.session.batch());
        self.panes.pane_ui(ui, "Summary", place, |ui| {
            let shown = CentralPanel::default().frame(foot).show(ui, |ui| {
                let of_b = self.beside.as_ref().map(|beside| &beside.summary);
                foot_ui(ui, self.view.units, (&self.shown.summary, of_b), cost, last_change)
            });
            shown.inner
        })
    }

    /// Keeps the focus of the keyboard where it belongs, and shows it.
    fn keep_focus(&mut self, ui: &Ui, question: Option<Id>) {
        let guide = self.guide_pane.map(|pane| (Front::Guide, Some(pane)));
        let card = self.view.card.as_ref().and(self.card_pane).map(|pane| (Front::Card, Some(pane)));
        let question = question.map(|id| (Front::Question, Some(id)));
        let in_front: Vec<(Front, Option<Id>)> = guide.into_iter().chain(card).chain(question).collect();
        self.focus.keep(ui.ctx(), &in_front);
        focus_ring(ui);
    }
}
