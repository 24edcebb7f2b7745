//! What the window remembers that is not part of the design.

use crate::caution::Caution;
use crate::curve::{CurveKey, SectionKey};
use crate::design::{Good, Stage, field};
use crate::export::{Paper, Part, Sheets};
use crate::session::Which;
use crate::ui::state::card::CardView;
use crate::ui::state::cut::{CutView, station_cut};
use crate::ui::state::draft::Draft;
use crate::ui::state::log_view::LogView;
use crate::ui::state::pages::{HelpCard, Page, PlanPart};
use crate::ui::widget::typing::Typing;
use crate::units::Units;
use crate::words::GuidePlace;
use std::collections::{BTreeMap, BTreeSet};

/// What the window remembers that is not part of the design.
#[derive(Clone, Debug)]
pub struct View {
    /// The page in sight.
    pub page: Page,
    /// The chosen station.
    pub station: Stage,
    /// The stage whose controls are to come into sight.
    pub scroll_to: Option<Stage>,
    /// The stage whose first control is to get the focus.
    pub focus_to: Option<Stage>,
    /// Whether the first caution is to come into sight.
    pub to_cautions: bool,
    /// Of two designs the one whose choices are shown.
    pub edited: Which,
    /// The input that is to come into sight, marked until something else is done.
    pub marked: Option<&'static str>,
    /// Whether the marked input is still to come into sight.
    pub mark_scrolls: bool,
    /// Whether it is still to get the focus.
    pub mark_focuses: bool,
    /// What is typed into boxes and does not count yet, by the key of the box.
    pub typing: BTreeMap<String, Typing>,
    /// Packages that are not on the list yet.
    pub drafts: BTreeMap<Good, Draft>,
    /// The title being typed.
    pub title: Option<String>,
    /// The note being typed.
    pub note: Option<String>,
    /// The curve whose table is shown.
    pub table: Option<CurveKey>,
    /// The curve that was chosen at a station with several.
    pub curve: Option<CurveKey>,
    /// Whether the curve of the station fills the page.
    pub curve_alone: bool,
    /// The cut through a cheese that is shown.
    pub cut: CutView,
    /// The part of the plan in sight.
    pub plan_part: PlanPart,
    /// The caution of which is shown what would lift it.
    pub lifting: Option<Caution>,
    /// The open card of a figure.
    pub card: Option<CardView>,
    /// The paper of the plan.
    pub paper: Paper,
    /// What is printed behind the two pages of the plan.
    pub with: BTreeSet<Part>,
    /// What the sources are searched for.
    pub search: String,
    /// What choices and figures are searched for.
    pub sought: String,
    /// What of the help is in front of the window.
    pub help: Option<HelpCard>,
    /// What the words that are explained are searched for.
    pub sought_word: String,
    /// The step of the guide that is shown.
    pub guide: Option<usize>,
    /// What the guide speaks of and is to come into sight where all stands in one column.
    pub guide_to: Option<GuidePlace>,
    /// How the log is looked at.
    pub log: LogView,
    /// How quantities are shown.
    pub units: Units,
}

impl Default for View {
    fn default() -> Self {
        Self {
            page: Page::Design,
            station: Stage::Milk,
            scroll_to: None,
            focus_to: None,
            to_cautions: false,
            edited: Which::First,
            marked: None,
            mark_scrolls: false,
            mark_focuses: false,
            typing: BTreeMap::new(),
            drafts: BTreeMap::new(),
            title: None,
            note: None,
            table: None,
            curve: None,
            curve_alone: false,
            cut: CutView { key: SectionKey::Moisture, share: None, runs: false, germ: None },
            plan_part: PlanPart::Week,
            lifting: None,
            card: None,
            paper: Paper::A4,
            with: BTreeSet::new(),
            search: String::new(),
            sought: String::new(),
            help: None,
            sought_word: String::new(),
            guide: None,
            guide_to: None,
            log: LogView::default(),
            units: Units::default(),
        }
    }
}

impl View {
    /// Fills the page of the design with the curve of the station, or shows the rest again.
    pub(in crate::ui) fn turn_curve_alone(&mut self) {
        self.curve_alone = !self.curve_alone || self.page != Page::Design;
        self.page = Page::Design;
    }

    /// Brings a station's choices, curve and figures into sight.
    pub(in crate::ui) fn go_to_station(&mut self, stage: Stage) {
        self.show_station(stage);
        self.focus_to = Some(stage);
    }

    /// Does the same, and leaves the focus where it is.
    pub(in crate::ui) fn show_station(&mut self, stage: Stage) {
        self.page = Page::Design;
        self.station = stage;
        self.scroll_to = Some(stage);
        self.marked = None;
        if let Some(key) = station_cut(stage)
            && key != self.cut.key
        {
            // The hours of another quantity are other hours.
            self.cut = CutView { key, share: None, runs: false, ..self.cut };
        }
    }

    /// Brings the cautions into sight.
    pub(in crate::ui) fn go_to_cautions(&mut self) {
        self.page = Page::Design;
        self.card = None;
        self.to_cautions = true;
    }

    /// Brings an input into sight and marks it.
    pub(in crate::ui) fn go_to_input(&mut self, key: &'static str) {
        self.marked = Some(key);
        self.mark_scrolls = true;
        if let Ok(field) = field(key) {
            self.station = field.stage;
        }
    }

    /// Returns what is printed of the plan, and on which paper.
    #[must_use]
    pub fn sheets(&self) -> Sheets {
        Sheets { paper: self.paper, with: self.with.clone() }
    }
}
