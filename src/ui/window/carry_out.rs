//! Does what the parts of the window ask for.

use crate::curve::curve;
use crate::design::{BEFORE_BUYING, Design};
use crate::session::{Command, EXAMPLES, Session, SessionError, Which};
use crate::ui::paper::jobs::PaperJobs;
use crate::ui::state::ask::Ask;
use crate::ui::state::pages::Page;
use crate::ui::state::view::View;
use crate::ui::window::files::Purpose;
use crate::ui::window::prompt::Prompt;
use crate::ui::window::scale_prompt::ScalePrompt;
use crate::ui::window::shell::Window;
use egui::ViewportCommand;

impl Window {
    pub(super) fn carry_out(&mut self, ctx: &egui::Context, ask: Ask) {
        match ask {
            Ask::Do(command) => {
                self.view.marked = None;
                self.do_command(ctx, command);
            }
            Ask::DoToSecond(command) => {
                self.view.marked = None;
                self.step(ctx, |session| session.apply_to(Which::Second, command));
            }
            Ask::Nudge(command) => self.nudge(ctx, Which::First, command),
            Ask::NudgeSecond(command) => self.nudge(ctx, Which::Second, command),
            Ask::Edit(which) => self.view.edited = which,
            Ask::BeginDrag => self.session.begin_drag(),
            Ask::EndDrag => self.session.end_drag(),
            Ask::GiveUpDrag => self.step(ctx, Session::give_up_drag),
            Ask::Undo => self.step(ctx, Session::undo),
            Ask::Redo => self.step(ctx, Session::redo),
            Ask::Scale => self.prompt = Some(Prompt::Scale(Box::new(ScalePrompt::of(&self.session, self.view.units)))),
            Ask::New | Ask::NewFromMilk | Ask::Open | Ask::OpenFile(_) | Ask::OpenExample(_) | Ask::Recover(_) | Ask::Quit => {
                if self.session.is_dirty() {
                    self.prompt = Some(Prompt::Unsaved { which: Which::First, then: ask });
                } else {
                    self.unless_second_is_lost(ctx, ask);
                }
            }
            Ask::ListLeft => self.list_left(),
            Ask::Changed(which, how) => self.settle_changed(ctx, which, how),
            Ask::Save => self.save(ctx),
            Ask::SaveAs => self.ask_path(ctx, Purpose::Save),
            Ask::ExportPlan => self.ask_path(ctx, Purpose::Export),
            Ask::ExportPhone => self.ask_path(ctx, Purpose::Phone),
            Ask::ExportCalendar => self.ask_path(ctx, Purpose::Calendar),
            Ask::Paper(paper) => self.view.paper = paper,
            Ask::PrintWith(part) => {
                if !self.view.with.remove(&part) {
                    self.view.with.insert(part);
                }
            }
            Ask::Print => self.print(ctx),
            Ask::CopyPlan => {
                self.session.last_change = PaperJobs::copy(ctx, self.session.batch(), &self.clock.now(), self.view.units);
            }
            Ask::Show(page) => self.show(page),
            Ask::ShowPart(part) => self.view.plan_part = part,
            Ask::Station(stage) => self.view.go_to_station(stage),
            Ask::ToCautions => self.view.go_to_cautions(),
            Ask::ToInput(key) => self.view.go_to_input(key),
            Ask::StationCurve(key) => self.view.curve = Some(key),
            Ask::CurveAlone => self.view.turn_curve_alone(),
            Ask::Table(key) => self.view.table = if self.view.table == Some(key) { None } else { Some(key) },
            Ask::CopyCurve(key) => {
                if let Err(words) = self.copier.copy(ctx, curve(self.session.batch(), key)) {
                    self.tell(words);
                }
            }
            Ask::Cut(cut) => self.view.cut = cut,
            Ask::Second(ask) => self.about_second(ctx, ask),
            Ask::Log(ask) => self.about_log(ctx, ask),
            Ask::Figure(figure) => self.open_card(figure),
            Ask::Aim(goal, choice) => self.aim(ctx, &goal, choice),
            Ask::Ways(goal) => {
                if let Some(card) = &mut self.view.card {
                    (card.goal, card.told) = (Some(goal), None);
                }
            }
            Ask::Lifts(caution) => self.view.lifting = Some(*caution),
            Ask::Pin(key) => self.turn_pin(key),
            Ask::NextPane { back } => self.panes.go(ctx, back),
            Ask::ToMenus => self.panes.to_first(ctx),
            Ask::FillScreen => {
                let fills = ctx.input(|input| input.viewport().fullscreen.unwrap_or(false));
                ctx.send_viewport_cmd(ViewportCommand::Fullscreen(!fills));
            }
            Ask::Help(card) => self.view.help = if self.view.help == Some(card) { None } else { Some(card) },
            Ask::Guide(step) => self.view.go_to_guide(step),
        }
    }

    /// Shows a page; a log is read again, for somebody else may have written into it.
    fn show(&mut self, page: Page) {
        self.view.page = page;
        if page == Page::Log {
            self.log.forget();
        }
    }

    /// Does what would have lost an unsaved design, now that this is settled.
    pub(super) fn settled(&mut self, ctx: &egui::Context, ask: Ask) {
        match ask {
            Ask::New => self.replace(Session::open(Design::default(), None).map_err(Into::into)),
            Ask::NewFromMilk => {
                self.replace(Session::open(Design::default(), None).map_err(Into::into));
                if let Some((first, _)) = BEFORE_BUYING.first() {
                    self.view.go_to_input(first);
                }
            }
            Ask::Open => self.ask_path(ctx, Purpose::Open),
            Ask::OpenFile(path) => self.open(&path),
            Ask::OpenExample(index) => {
                if let Some(example) = EXAMPLES.get(index) {
                    self.replace(example.design().map_err(Into::into).and_then(|design| Ok(Session::open(design, None)?)));
                }
            }
            Ask::Recover(left) => self.recover(*left),
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

    fn nudge(&mut self, ctx: &egui::Context, which: Which, command: Command) {
        self.view.marked = None;
        let now_s = ctx.input(|input| input.time);
        self.step(ctx, |session| session.nudge(which, command, now_s));
    }

    pub(super) fn do_command(&mut self, ctx: &egui::Context, command: Command) {
        self.step(ctx, |session| session.apply(command));
    }

    pub(super) fn step(&mut self, ctx: &egui::Context, step: impl FnOnce(&mut Session) -> Result<(), SessionError>) {
        match step(&mut self.session) {
            Ok(()) => {
                self.refresh();
                self.note_change(ctx);
            }
            Err(error) => self.tell(error.to_string()),
        }
    }

    pub(super) fn replace(&mut self, session: Result<Session, SessionError>) {
        match session {
            Ok(session) => {
                self.session = session;
                self.changed = self.session.changed_on_disk();
                self.refresh();
                // Units, cut, part of the plan and paper are how the maker looks at any design, and the guide speaks of any.
                let with = std::mem::take(&mut self.view.with);
                let View { cut, plan_part, paper, units, guide, .. } = self.view;
                self.view = View { cut, plan_part, paper, with, guide, units, ..View::default() };
                self.notice = None;
            }
            Err(error) => self.tell(error.to_string()),
        }
    }
}
