//! The window: lays its parts out, collects what they ask for, and has the session do it.

use crate::curve::{Run, run};
use crate::design::{Design, field};
use crate::session::{Command, EXAMPLES, KeptLook, Recent, Recovery, Session, WallClock};
use crate::ui::choices::form as choices;
use crate::ui::curves::page as curves;
use crate::ui::curves::page::Batches;
use crate::ui::figure_card::card as figure_card;
use crate::ui::figure_card::card::Known;
use crate::ui::paper::desk::PlanDesk;
use crate::ui::results::beside::Beside;
use crate::ui::results::{both as results_both, foot, one as results};
use crate::ui::run::band as run_band;
use crate::ui::run::band::Lane;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::{Page, Room, View, station_cut};
use crate::ui::week::desk::WeekDesk;
use crate::ui::widget::theme::Palette;
use crate::ui::window::files::{Dialogs, Purpose};
use crate::ui::window::prompt::{Prompt, Which, notice_ui};
use crate::ui::window::{in_background, sources_page, top_bar};
use egui::{Frame, Margin, Panel, ScrollArea, Ui, ViewportCommand};
use std::path::Path;

/// Width below which everything stands in one column.
pub(super) const ONE_COLUMN: f32 = 1000.0;
/// Height below which, in one column, the run scrolls with the rest.
const LOW: f32 = 620.0;
/// Width of the choices and of the results.
const CHOICES_WIDTH: f32 = 340.0;
const RESULTS_WIDTH: f32 = 360.0;

/// The window around a session.
pub struct Window {
    /// The open design.
    pub session: Session,
    /// What is remembered beside it.
    pub view: View,
    /// What it takes for the time.
    pub clock: WallClock,
    pub(super) recent: Recent,
    pub(super) recovery: Option<Recovery>,
    /// Where the look is kept, and whether it was put on already.
    pub(super) look: Option<(KeptLook, bool)>,
    pub(super) dialogs: Dialogs,
    pub(super) plan_desk: PlanDesk,
    pub(super) week_desk: WeekDesk,
    pub(super) prompt: Option<Prompt>,
    pub(super) notice: Option<String>,
    /// What waits for the design to be saved.
    pub(super) after_save: Option<Ask>,
    pub(super) leaving: bool,
    /// The title that the desktop was last told.
    pub(super) desktop_title: String,
    /// The picture of the run, drawn anew only after a change.
    pub(super) run: Run,
    /// What is shown of the second design, worked out anew only after a change.
    pub(super) beside: Option<Beside>,
    /// What is worked out in the background.
    pub(super) desk: in_background::Desk,
}

impl Window {
    /// Returns a window that keeps nothing outside the designs themselves: for tests and pictures, by a clock that may stand still.
    #[must_use]
    pub fn plain(session: Session, clock: WallClock) -> Self {
        let run = run(session.batch());
        let beside = Beside::of(&session);
        let dialogs = Dialogs::typed();
        Self {
            session,
            view: View::default(),
            clock,
            recent: Recent::default(),
            recovery: None,
            look: None,
            dialogs,
            plan_desk: PlanDesk::without_viewer(),
            week_desk: WeekDesk::default(),
            prompt: None,
            notice: None,
            after_save: None,
            leaving: false,
            desktop_title: String::new(),
            run,
            beside,
            desk: in_background::Desk::default(),
        }
    }

    /// Returns a window that keeps its lists and its recovery copy in these folders.
    #[must_use]
    pub fn with_folders(session: Session, config: &Path, state: &Path) -> Self {
        let recovery = Recovery::in_folder(state);
        let prompt = recovery.left_behind().map(|left| Prompt::Recover(Box::new(left)));
        Self {
            recent: Recent::in_folder(config),
            recovery: Some(recovery),
            look: Some((KeptLook::in_folder(config), false)),
            prompt,
            dialogs: Dialogs::default(),
            plan_desk: PlanDesk::default(),
            desk: in_background::Desk::with_spread(),
            ..Self::plain(session, WallClock::Computer)
        }
    }

    /// Shows a message.
    pub fn tell(&mut self, words: String) {
        self.notice = Some(words);
    }

    /// Returns whether something is being worked out in the background; the window is drawn anew when it is done.
    #[must_use]
    pub fn is_busy(&self) -> bool {
        self.plan_desk.is_busy() || self.desk.is_busy()
    }

    /// Does what comes from keys, dialogs, the desktop and the clock; before each drawing.
    pub fn logic(&mut self, ctx: &egui::Context) {
        self.keep_look(ctx);
        if self.prompt.is_none() {
            for ask in top_bar::keys(ctx) {
                self.carry_out(ctx, ask);
            }
        }
        if let Some(answer) = self.dialogs.answer() {
            self.answered(ctx, answer);
        }
        match self.plan_desk.printed() {
            Some(Ok(words)) => self.session.last_change = words,
            Some(Err(words)) => self.tell(words),
            None => {}
        }
        if ctx.input(|input| input.viewport().close_requested()) && !self.leaving && self.is_unsaved() {
            ctx.send_viewport_cmd(ViewportCommand::CancelClose);
            self.carry_out(ctx, Ask::Quit);
        } else if ctx.input(|input| input.viewport().close_requested())
            && let Some(recovery) = &mut self.recovery
        {
            recovery.clear();
        }
        self.order_work(ctx);
        self.keep_recovery(ctx);
        let title = if self.session.design().title.is_empty() { "Untitled design" } else { &self.session.design().title };
        let mark = if self.session.is_dirty() { "• " } else { "" };
        let title = format!("{mark}{title} – Vatsketch");
        if self.desktop_title != title {
            ctx.send_viewport_cmd(ViewportCommand::Title(title.clone()));
            self.desktop_title = title;
        }
    }

    /// Draws everything.
    pub fn ui(&mut self, ui: &mut Ui) {
        let palette = Palette::of(ui);
        let mut asks = Vec::new();
        let bar = Frame::new().fill(palette.panel).inner_margin(Margin::symmetric(12, 0));
        Panel::top("bar").exact_size(48.0).frame(bar).show(ui, |ui| {
            asks.extend(top_bar::top_bar_ui(ui, &mut self.view, &self.session, &self.recent));
        });
        if let Some(words) = self.notice.clone() {
            let closed = Panel::top("notice").frame(Frame::new()).show(ui, |ui| notice_ui(ui, &words)).inner;
            if closed {
                self.notice = None;
            }
        }
        let foot = Frame::new().fill(palette.panel).inner_margin(Margin::symmetric(16, 8));
        Panel::bottom("foot").exact_size(foot::height(ui.available_width() < ONE_COLUMN, self.beside.is_some())).frame(foot).show(
            ui,
            |ui| {
                let second = self.session.second().map(crate::session::Second::batch);
                let cost = self.week_desk.cost(self.session.batch());
                foot::foot_ui(ui, self.session.batch(), second, cost, &self.session.last_change);
            },
        );
        match self.view.page {
            Page::Design => asks.extend(self.design_page(ui)),
            Page::Plan => asks.extend(self.plan_page(ui)),
            Page::Sources => {
                egui::CentralPanel::default()
                    .frame(Frame::new().fill(palette.background).inner_margin(20))
                    .show(ui, |ui| sources_page::sources_ui(ui, &mut self.view, self.session.batch()));
            }
        }
        let ctx = ui.ctx().clone();
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
            || vec![lane(None, &self.run, palette.design)],
            |beside| vec![lane(Some("A"), &self.run, palette.design), lane(Some("B"), &beside.run, palette.second)],
        );
        let one_column = ui.available_width() < ONE_COLUMN;
        let run_scrolls = one_column && ui.available_height() < LOW;
        if !run_scrolls {
            let run = Panel::top("run").exact_size(run_band::height(lanes.len())).frame(Frame::new().fill(palette.background));
            asks.extend(run.show(ui, |ui| run_band::run_ui(ui, &lanes, station)).inner);
        }
        let beside = self.beside.as_ref();
        let second = self.session.second().map(crate::session::Second::batch).zip(beside);
        let spread = self.desk.spread(self.session.design());
        let batches = Batches { now: self.session.batch(), spread: spread.as_deref(), before: self.session.before(), second };
        let differing = beside.map_or(&[][..], |beside| &beside.choices);
        let marks = choices::Marks { differing, pins: self.session.pins() };
        let (card, effects) = (self.desk.card(), self.desk.effects());
        let mut open = self.view.card.take();
        let mut results_of = |ui: &mut Ui, view: &View, room| match (&mut open, beside) {
            (Some(open), _) => {
                let likely = spread.as_ref().and_then(|spread| spread.figure(open.figure));
                figure_card::results_card_ui(ui, view.units, open, Known { card, effects: effects.as_ref(), likely }, room)
            }
            (None, Some(beside)) => results_both::results_both_ui(ui, view, &self.run, beside, room),
            (None, None) => results::results_ui(ui, view, batches.now, &self.run, room),
        };
        if one_column {
            egui::CentralPanel::default().frame(side).show(ui, |ui| {
                ScrollArea::vertical().id_salt("one column").auto_shrink(false).show(ui, |ui| {
                    if run_scrolls {
                        asks.extend(run_band::run_ui(ui, &lanes, station));
                        ui.separator();
                    }
                    asks.extend(curves::curves_ui(ui, &self.view, batches, Room::Column));
                    ui.separator();
                    asks.extend(choices::choices_ui(ui, &mut self.view, self.session.design(), marks, Room::Column));
                    ui.separator();
                    asks.extend(results_of(ui, &self.view, Room::Column));
                });
            });
            self.view.card = open;
            return asks;
        }
        Panel::left("choices").exact_size(CHOICES_WIDTH).resizable(false).frame(side).show(ui, |ui| {
            asks.extend(choices::choices_ui(ui, &mut self.view, self.session.design(), marks, Room::Own));
        });
        Panel::right("results").exact_size(RESULTS_WIDTH).resizable(false).frame(side).show(ui, |ui| {
            asks.extend(results_of(ui, &self.view, Room::Own));
        });
        egui::CentralPanel::default().frame(side).show(ui, |ui| {
            asks.extend(curves::curves_ui(ui, &self.view, batches, Room::Own));
        });
        self.view.card = open;
        asks
    }

    pub(super) fn carry_out(&mut self, ctx: &egui::Context, ask: Ask) {
        match ask {
            Ask::Do(command) => self.do_command(ctx, command),
            Ask::BeginDrag => self.session.begin_drag(),
            Ask::EndDrag => self.session.end_drag(),
            Ask::GiveUpDrag => self.step(ctx, Session::give_up_drag),
            Ask::Undo => self.step(ctx, Session::undo),
            Ask::Redo => self.step(ctx, Session::redo),
            Ask::New | Ask::Open | Ask::OpenFile(_) | Ask::OpenExample(_) | Ask::Quit => {
                if self.session.is_dirty() {
                    self.prompt = Some(Prompt::Unsaved { which: Which::First, then: ask });
                } else {
                    self.unless_second_is_lost(ctx, ask);
                }
            }
            Ask::Save => self.save(ctx),
            Ask::SaveAs => self.ask_path(ctx, Purpose::Save),
            Ask::ExportPlan => self.ask_path(ctx, Purpose::Export),
            Ask::ExportCalendar => self.ask_path(ctx, Purpose::Calendar),
            Ask::Paper(paper) => self.view.paper = paper,
            Ask::Print => self.print(ctx),
            Ask::CopyPlan => self.session.last_change = PlanDesk::copy(ctx, self.session.batch(), &self.clock.now()),
            Ask::Show(page) => self.view.page = page,
            Ask::ShowPart(part) => self.view.plan_part = part,
            Ask::Station(stage) => {
                self.view.station = stage;
                self.view.scroll_to = Some(stage);
                if let Some(key) = station_cut(stage) {
                    self.view.cut.key = key;
                }
            }
            Ask::ToInput(key) => {
                self.view.marked = Some(key);
                self.view.mark_scrolls = true;
                if let Ok(field) = field(key) {
                    self.view.station = field.stage;
                }
            }
            Ask::Table(key) => self.view.table = if self.view.table == Some(key) { None } else { Some(key) },
            Ask::Cut(cut) => self.view.cut = cut,
            Ask::Second(ask) => self.about_second(ctx, ask),
            Ask::Figure(figure) => self.open_card(figure),
            Ask::Aim(goal, choice) => self.aim(ctx, &goal, choice),
            Ask::Pin(key) => self.turn_pin(key),
            Ask::Help => self.view.help = !self.view.help,
        }
    }

    /// Does what would have lost an unsaved design, now that this is settled.
    pub(super) fn settled(&mut self, ctx: &egui::Context, ask: Ask) {
        match ask {
            Ask::New => self.replace(Session::open(Design::default(), None).map_err(Into::into)),
            Ask::Open => self.ask_path(ctx, Purpose::Open),
            Ask::OpenFile(path) => self.open(&path),
            Ask::OpenExample(index) => {
                if let Some(example) = EXAMPLES.get(index) {
                    self.replace(example.design().map_err(Into::into).and_then(|design| Ok(Session::open(design, None)?)));
                }
            }
            Ask::Quit => {
                self.leaving = true;
                if let Some(recovery) = &mut self.recovery {
                    recovery.clear();
                }
                ctx.send_viewport_cmd(ViewportCommand::Close);
            }
            Ask::Second(ask) => self.second_settled(ctx, &ask),
            _ => {}
        }
    }

    pub(super) fn do_command(&mut self, ctx: &egui::Context, command: Command) {
        self.step(ctx, |session| session.apply(command));
    }

    pub(super) fn step(
        &mut self,
        ctx: &egui::Context,
        step: impl FnOnce(&mut Session) -> Result<(), crate::session::SessionError>,
    ) {
        match step(&mut self.session) {
            Ok(()) => {
                self.refresh();
                self.note_change(ctx);
            }
            Err(error) => self.tell(error.to_string()),
        }
    }

    pub(super) fn replace(&mut self, session: Result<Session, crate::session::SessionError>) {
        match session {
            Ok(mut session) => {
                // The second design stays where it is.
                session.take_second_of(&mut self.session);
                self.session = session;
                self.refresh();
                // Units, cut, part of the plan and paper are how the maker looks at any design.
                let View { cut, plan_part, paper, units, .. } = self.view;
                self.view = View { cut, plan_part, paper, units, ..View::default() };
                self.notice = None;
            }
            Err(error) => self.tell(error.to_string()),
        }
    }
}
