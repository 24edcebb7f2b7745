//! Lays the parts of the window out.

use crate::ui::choices::form::{FormMarks, choices_ui};
use crate::ui::curves::page::{Batches, curves_ui};
use crate::ui::figure_card::card::results_card_ui;
use crate::ui::figure_card::known::Known;
use crate::ui::results::both::results_both_ui;
use crate::ui::results::foot::{self, foot_ui};
use crate::ui::results::one::results_ui;
use crate::ui::run::band::{self, Lane, run_ui};
use crate::ui::state::ask::Ask;
use crate::ui::state::pages::Page;
use crate::ui::state::view::View;
use crate::ui::widget::room::Room;
use crate::ui::widget::theme::Palette;
use crate::ui::window::changed_bar::changed_ui;
use crate::ui::window::notice::notice_ui;
use crate::ui::window::shell::{ONE_COLUMN, Window};
use crate::ui::window::sources_page::sources_ui;
use crate::ui::window::top_bar::top_bar_ui;
use egui::{Frame, Margin, Panel, ScrollArea, Ui};

/// Height below which, in one column, the run scrolls with the rest.
const LOW: f32 = 620.0;
/// Width of the choices and of the results.
const CHOICES_WIDTH: f32 = 340.0;
const RESULTS_WIDTH: f32 = 360.0;

impl Window {
    /// Draws everything.
    pub fn ui(&mut self, ui: &mut Ui) {
        let palette = Palette::of(ui);
        let mut asks = Vec::new();
        let bar = Frame::new().fill(palette.panel).inner_margin(Margin::symmetric(12, 0));
        Panel::top("bar").exact_size(48.0).frame(bar).show(ui, |ui| {
            asks.extend(top_bar_ui(ui, &mut self.view, &self.session, (&self.recent, !self.left.is_empty())));
        });
        if let Some(words) = self.notice.clone() {
            let closed = Panel::top("notice").frame(Frame::new()).show(ui, |ui| notice_ui(ui, &words)).inner;
            if closed {
                self.notice = None;
            }
        }
        for which in self.changed.clone() {
            let id = if which == crate::session::Which::First { "changed on disk" } else { "B changed on disk" };
            asks.extend(Panel::top(id).frame(Frame::new()).show(ui, |ui| changed_ui(ui, &self.session, which)).inner);
        }
        let foot = Frame::new().fill(palette.panel).inner_margin(Margin::symmetric(foot::MARGIN.0, foot::MARGIN.1));
        let high = foot::height(ui, ui.available_width() < ONE_COLUMN, self.beside.is_some(), &self.session.last_change);
        Panel::bottom("foot").exact_size(high).frame(foot).show(ui, |ui| {
            let of_b = self.beside.as_ref().map(|beside| &beside.summary);
            let cost = self.kept_week.cost(self.session.batch());
            foot_ui(ui, &self.shown.summary, of_b, cost, &self.session.last_change);
        });
        match self.view.page {
            Page::Design => asks.extend(self.design_page(ui)),
            Page::Plan => asks.extend(self.plan_page(ui)),
            Page::Sources => {
                egui::CentralPanel::default()
                    .frame(Frame::new().fill(palette.background).inner_margin(20))
                    .show(ui, |ui| sources_ui(ui, &mut self.view, self.shown.laws(self.session.batch())));
            }
        }
        let ctx = ui.ctx().clone();
        asks.append(&mut self.waiting);
        for ask in asks {
            self.carry_out(&ctx, ask);
        }
        self.ask_in_front(&ctx);
    }

    pub(super) fn design_page(&mut self, ui: &mut Ui) -> Vec<Ask> {
        let palette = Palette::of(ui);
        let mut asks = Vec::new();
        let side = Frame::new().fill(palette.background).inner_margin(Margin::symmetric(12, 10));
        let station = self.view.station;
        let lane = |name, run, colour| Lane { name, run, colour };
        let lanes = self.beside.as_ref().map_or_else(
            || vec![lane(None, &self.shown.run, palette.design)],
            |beside| vec![lane(Some("A"), &self.shown.run, palette.design), lane(Some("B"), &beside.run, palette.second)],
        );
        let one_column = ui.available_width() < ONE_COLUMN;
        let run_scrolls = one_column && ui.available_height() < LOW;
        if !run_scrolls {
            let run = Panel::top("run").exact_size(band::height(lanes.len())).frame(Frame::new().fill(palette.background));
            asks.extend(run.show(ui, |ui| run_ui(ui, &lanes, station)).inner);
        }
        let beside = self.beside.as_ref();
        let second = self.session.second().map(crate::session::OpenDesign::batch).zip(beside);
        let spread = self.background.spread(self.session.design());
        let batches = Batches { now: self.session.batch(), spread: spread.as_deref(), before: self.session.before(), second };
        let differing = beside.map_or(&[][..], |beside| &beside.choices);
        let marks = FormMarks { differing, pins: self.session.pins() };
        let spread_failed = self.background.spread_failed();
        let (card, effects) = (self.background.card(), self.background.effects());
        let mut open = self.view.card.take();
        let mut results_of = |ui: &mut Ui, view: &View, room| match (&mut open, beside) {
            (Some(open), _) => {
                let likely = spread.as_ref().and_then(|spread| spread.figure(open.figure));
                results_card_ui(ui, view.units, open, Known { card, effects: effects.as_ref(), likely, spread_failed }, room)
            }
            (None, Some(beside)) => results_both_ui(ui, view, &self.shown.run, beside, room),
            (None, None) => results_ui(ui, view, &self.shown, room),
        };
        if one_column {
            egui::CentralPanel::default().frame(side).show(ui, |ui| {
                ScrollArea::vertical().id_salt("one column").auto_shrink(false).show(ui, |ui| {
                    if run_scrolls {
                        asks.extend(run_ui(ui, &lanes, station));
                        ui.separator();
                    }
                    asks.extend(curves_ui(ui, &self.view, batches, Room::Column));
                    ui.separator();
                    asks.extend(choices_ui(ui, &mut self.view, self.session.design(), marks, Room::Column));
                    ui.separator();
                    asks.extend(results_of(ui, &self.view, Room::Column));
                });
            });
            self.view.card = open;
            return asks;
        }
        Panel::left("choices").exact_size(CHOICES_WIDTH).resizable(false).frame(side).show(ui, |ui| {
            asks.extend(choices_ui(ui, &mut self.view, self.session.design(), marks, Room::Own));
        });
        Panel::right("results").exact_size(RESULTS_WIDTH).resizable(false).frame(side).show(ui, |ui| {
            asks.extend(results_of(ui, &self.view, Room::Own));
        });
        egui::CentralPanel::default().frame(side).show(ui, |ui| {
            asks.extend(curves_ui(ui, &self.view, batches, Room::Own));
        });
        self.view.card = open;
        asks
    }
}
