//! What the window remembers that is not part of the design.

use crate::curve::{CurveKey, SectionKey};
use crate::design::{Good, Stage};
use crate::export::Paper;
use crate::ui::figure_card::card::CardView;
use crate::ui::supplies::good::Draft;
use crate::ui::widget::units::Units;
use std::collections::BTreeMap;

/// A page of the window.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Page {
    /// Choices, curves and results.
    #[default]
    Design,
    /// The week, what to buy, and the plan on paper.
    Plan,
    /// Every constant with its source.
    Sources,
}

impl Page {
    /// Every page.
    pub const ALL: [Self; 3] = [Self::Design, Self::Plan, Self::Sources];

    /// Returns its name.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::Design => "Design",
            Self::Plan => "Plan",
            Self::Sources => "Sources",
        }
    }
}

/// A part of the page of the plan.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum PlanPart {
    /// When everything is done.
    #[default]
    Week,
    /// What is at home, and what to buy.
    Shopping,
    /// The plan on paper.
    Paper,
}

impl PlanPart {
    /// Every part.
    pub const ALL: [Self; 3] = [Self::Week, Self::Shopping, Self::Paper];

    /// Returns its name.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::Week => "Week",
            Self::Shopping => "Shopping",
            Self::Paper => "Paper",
        }
    }
}

/// How a part is laid out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Room {
    /// It has a room of its own and scrolls by itself.
    Own,
    /// It stands in one column with the others, which scrolls as a whole.
    Column,
}

impl Room {
    /// Draws something with a scroll of its own, or plainly in the column.
    pub(in crate::ui) fn scrolled(
        self,
        ui: &mut egui::Ui,
        id: impl std::hash::Hash + std::fmt::Debug,
        draw: impl FnOnce(&mut egui::Ui),
    ) {
        match self {
            Self::Own => {
                egui::ScrollArea::vertical().id_salt(id).auto_shrink(false).show(ui, draw);
            }
            Self::Column => draw(ui),
        }
    }
}

/// Which cut through a cheese is shown.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CutView {
    /// The quantity.
    pub key: SectionKey,
    /// The moment, as a share of the time that the quantity is known for.
    pub share: f64,
}

/// The text being typed into a box.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Typing {
    /// What the box showed before.
    pub was: String,
    /// The text so far.
    pub text: String,
}

/// What the window remembers that is not part of the design.
#[derive(Clone, Debug)]
pub struct View {
    /// The page in sight.
    pub page: Page,
    /// The chosen station.
    pub station: Stage,
    /// The stage whose controls are to come into sight.
    pub scroll_to: Option<Stage>,
    /// The input that is to come into sight and stays marked.
    pub marked: Option<&'static str>,
    /// Whether the marked input is still to come into sight.
    pub mark_scrolls: bool,
    /// What is typed into boxes and does not count yet, by the key of the box.
    pub typing: BTreeMap<String, Typing>,
    /// Packages that are not on the list yet.
    pub drafts: BTreeMap<Good, Draft>,
    /// The title being typed.
    pub title: Option<String>,
    /// The curve whose table is shown.
    pub table: Option<CurveKey>,
    /// The cut through a cheese that is shown.
    pub cut: CutView,
    /// The part of the plan in sight.
    pub plan_part: PlanPart,
    /// The open card of a figure.
    pub card: Option<CardView>,
    /// The paper of the plan.
    pub paper: Paper,
    /// What the sources are searched for.
    pub search: String,
    /// Whether the keys are shown.
    pub help: bool,
    /// How quantities are shown.
    pub units: Units,
}

impl Default for View {
    fn default() -> Self {
        Self {
            page: Page::Design,
            station: Stage::Milk,
            scroll_to: None,
            marked: None,
            mark_scrolls: false,
            typing: BTreeMap::new(),
            drafts: BTreeMap::new(),
            title: None,
            table: None,
            cut: CutView { key: SectionKey::Moisture, share: 1.0 },
            plan_part: PlanPart::Week,
            card: None,
            paper: Paper::A4,
            search: String::new(),
            help: false,
            units: Units::default(),
        }
    }
}

/// Returns the quantity that the cut through a cheese shows at a station; none where the last one stays.
#[must_use]
pub const fn station_cut(stage: Stage) -> Option<SectionKey> {
    match stage {
        Stage::Milk | Stage::Vat | Stage::Draining | Stage::Keeping => None,
        Stage::Salting => Some(SectionKey::Salt),
        Stage::Drying => Some(SectionKey::Moisture),
        Stage::Pickling => Some(SectionKey::Ph),
    }
}

/// Returns the curve that belongs to a station, below the two that are always in sight.
#[must_use]
pub const fn station_curve(stage: Stage) -> CurveKey {
    match stage {
        Stage::Milk | Stage::Vat | Stage::Draining => CurveKey::WheyDrip,
        Stage::Salting => CurveKey::Salt,
        Stage::Drying => CurveKey::Moisture,
        Stage::Pickling => CurveKey::Souring,
        Stage::Keeping => CurveKey::WaterActivity,
    }
}
