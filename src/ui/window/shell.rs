//! The window: lays its parts out, collects what they ask for, and has the session do it.

use crate::session::{Appearance, ChangedFile, Kept, Recent, Recovery, Session, WallClock};
use crate::ui::log::desk::LogDesk;
use crate::ui::paper::copying::Copier;
use crate::ui::paper::jobs::PaperJobs;
use crate::ui::results::beside::Beside;
use crate::ui::results::shown::Shown;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::week::kept::KeptWeek;
use crate::ui::widget::focus::FocusKeeper;
use crate::ui::window::background::BackgroundWork;
use crate::ui::window::files::Dialogs;
use crate::ui::window::pane::Panes;
use crate::ui::window::prompt::Prompt;
use crate::ui::window::recover_prompt::Left;
use std::path::Path;

/// Width below which everything stands in one column.
pub(super) const ONE_COLUMN: f32 = 1000.0;

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
    /// Unsaved work of programs that ended badly, not settled yet.
    pub(super) left: Vec<Left>,
    /// The designs whose file somebody else changed.
    pub(super) changed: Vec<ChangedFile>,
    /// Where the appearance is kept, and whether it was put on already.
    pub(super) appearance: Option<(Kept<Appearance>, bool)>,
    pub(super) dialogs: Dialogs,
    pub(super) paper_jobs: PaperJobs,
    pub(super) copier: Copier,
    pub(super) kept_week: KeptWeek,
    pub(super) log: LogDesk,
    pub(super) prompt: Option<Prompt>,
    pub(super) notice: Option<String>,
    /// What waits for the design to be saved.
    pub(super) after_save: Option<Ask>,
    /// What keys asked for while something was being typed: done once that counts.
    pub(super) waiting: Vec<Ask>,
    pub(super) leaving: bool,
    /// The panes that were drawn.
    pub(super) panes: Panes,
    /// Where the card of a figure is drawn.
    pub(super) card_pane: Option<egui::Id>,
    /// Where the guide is drawn.
    pub(super) guide_pane: Option<egui::Id>,
    /// Where the focus of the keyboard goes back to.
    pub(super) focus: FocusKeeper,
    /// The title that the desktop was last told.
    pub(super) desktop_title: String,
    /// What is shown of the open design, calculated again only after a change.
    pub(super) shown: Shown,
    /// What is shown of the second design, calculated again only after a change.
    pub(super) beside: Option<Beside>,
    /// What is calculated in the background.
    pub(super) background: BackgroundWork,
}

impl Window {
    /// Returns a window that keeps nothing outside the designs themselves: for tests and pictures, by a clock that may stand still.
    #[must_use]
    pub fn plain(session: Session, clock: WallClock) -> Self {
        let shown = Shown::of(session.batch());
        let beside = Beside::of(&session);
        let dialogs = Dialogs::typed();
        Self {
            session,
            view: View::default(),
            clock,
            recent: Recent::default(),
            recovery: None,
            left: Vec::new(),
            changed: Vec::new(),
            appearance: None,
            dialogs,
            paper_jobs: PaperJobs::without_viewer(),
            copier: Copier::default(),
            kept_week: KeptWeek::default(),
            log: LogDesk::default(),
            prompt: None,
            notice: None,
            after_save: None,
            waiting: Vec::new(),
            leaving: false,
            panes: Panes::default(),
            card_pane: None,
            guide_pane: None,
            focus: FocusKeeper::default(),
            desktop_title: String::new(),
            shown,
            beside,
            background: BackgroundWork::default(),
        }
    }

    /// Returns a window that keeps its lists and its recovery copies in these folders.
    #[must_use]
    pub fn with_folders(session: Session, config: &Path, state: &Path) -> Self {
        Self::with_recovery(session, config, Recovery::in_folder(state))
    }

    /// Returns a window that keeps its lists in a folder and its recovery copies as given.
    #[must_use]
    pub fn with_recovery(session: Session, config: &Path, recovery: Recovery) -> Self {
        let clock = WallClock::Computer;
        let left = recovery.left_behind().into_iter().map(|work| Left::of(work, &clock)).collect();
        let mut window = Self {
            recent: Recent::in_folder(config),
            recovery: Some(recovery),
            left,
            appearance: Some((Kept::<Appearance>::in_folder(config), false)),
            dialogs: Dialogs::default(),
            paper_jobs: PaperJobs::default(),
            background: BackgroundWork::with_spread(),
            ..Self::plain(session, clock)
        };
        window.list_left();
        window
    }

    /// Shows a message.
    pub fn tell(&mut self, words: String) {
        self.notice = Some(words);
    }

    /// Returns whether something is being calculated in the background; the window is drawn again when it is done.
    #[must_use]
    pub fn is_busy(&self) -> bool {
        self.paper_jobs.is_busy() || self.copier.is_copying() || self.background.is_busy()
    }
}
