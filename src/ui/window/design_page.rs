//! The page of the design: the run above, and choices, curves and results below it; in a narrow window one column.

use crate::batch::Batch;
use crate::curve::Spread;
use crate::design::{Design, Stage};
use crate::session::{OpenDesign, Session, Which};
use crate::ui::choices::before_buying::before_buying_ui;
use crate::ui::choices::form::choices_ui;
use crate::ui::choices::kitchen_note::kitchen_note_ui;
use crate::ui::choices::marks::FormMarks;
use crate::ui::choices::whose::whose_ui;
use crate::ui::curves::page::{Batches, curves_ui};
use crate::ui::figure_card::card::results_card_ui;
use crate::ui::figure_card::known::Known;
use crate::ui::figure_card::ways::WaysKnown;
use crate::ui::log::shown::Look;
use crate::ui::results::beside::Beside;
use crate::ui::results::both::results_both_ui;
use crate::ui::results::lift::LiftsKnown;
use crate::ui::results::one::results_ui;
use crate::ui::results::shown::Shown;
use crate::ui::run::band::{self, Lane, run_ui};
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::room::Room;
use crate::ui::widget::scroll::scroll_ui;
use crate::ui::widget::theme::Palette;
use crate::ui::window::pane::{CHOICES, CURVES, Panes, RESULTS, RUN};
use crate::ui::window::shell::{ONE_COLUMN, Window};
use crate::ui::window::title::title_row_ui;
use crate::units::Units;
use crate::words::{GuidePlace, to_buy};
use egui::{Align, CentralPanel, Frame, Margin, Panel, Pos2, Rect, Ui};

/// Height below which, in one column, the run scrolls with the rest.
const LOW: f32 = 620.0;
/// Width of the choices and of the results, in a window that is not wide and in a wide one.
const CHOICES_WIDTH: (f32, f32) = (328.0, 344.0);
const RESULTS_WIDTH: (f32, f32) = (312.0, 360.0);
/// Width of the results of two designs, which stand in columns.
const RESULTS_OF_TWO: (f32, f32) = (352.0, 380.0);
/// Width from which on a window is wide.
const WIDE: f32 = 1400.0;

impl Window {
    pub(super) fn design_page(&mut self, ui: &mut Ui, panes: &mut Panes) -> Vec<Ask> {
        let palette = Palette::of(ui);
        let mut asks = Vec::new();
        let side = Frame::new().fill(palette.background).inner_margin(Margin::symmetric(12, 10));
        let station = self.view.station;
        let beside = self.beside.as_ref();
        let spread = self.background.spread(self.session.design());
        let look = Look { now: &self.clock.now(), units: self.view.units, spread: spread.as_ref() };
        let (measured, weighed) = self.log.measured(self.session.path(), look);
        let lanes = lanes(&palette, &self.shown, weighed, beside);
        let one_column = ui.available_width() < ONE_COLUMN;
        let run_scrolls = one_column && ui.available_height() < LOW;
        if !run_scrolls {
            asks.extend(run_panel_ui(ui, panes, self.view.units, &lanes, station));
        }
        let batches = Batches { measured, ..batches(&self.session, spread.as_deref(), beside) };
        if beside.is_none() {
            self.view.edited = Which::First;
        }
        let edited = self.view.edited;
        let marks = FormMarks { edited, differing: beside.map_or(&[][..], |beside| &beside.choices), pins: self.session.pins() };
        let (design, batch) = shown_design(&self.session, edited);
        let to_buy = to_buy(batch, self.view.units);
        let searched = (design, &self.shown.figures[..]);
        let title = self.session.design().title.as_str();
        let before_buying = |ui: &mut Ui, view: &mut View| {
            let mut asks: Vec<Ask> = title_row_ui(ui, view, title).into_iter().collect();
            asks.extend(beside.and_then(|_| whose_ui(ui, edited)));
            asks.extend(kitchen_note_ui(ui, design).map(|ask| ask.of(edited)));
            asks.extend(before_buying_ui(ui, view, design, marks, &to_buy).into_iter().map(|ask| ask.of(edited)));
            ui.add_space(6.0);
            asks
        };
        let choices_of =
            |ui: &mut Ui, view: &mut View, room| choices_ui(ui, view, searched, marks, room).into_iter().map(|ask| ask.of(edited));
        let spread_failed = self.background.spread_failed();
        let (ways, ways_failed) = (self.background.found_ways(), self.background.ways_failed());
        let (card, effects) = (self.background.card(), self.background.effects());
        let found = self.background.found_lifts();
        let lifts = LiftsKnown::of(found.as_deref(), self.background.lifts_failed());
        let mut open = self.view.card.take();
        let mut results_of = |ui: &mut Ui, view: &mut View, room| match (&mut open, beside) {
            (Some(open), _) => {
                let likely = spread.as_ref().and_then(|spread| spread.figure(open.figure));
                let ways = WaysKnown::of(open.goal.is_some(), ways.as_deref(), ways_failed);
                results_card_ui(ui, view.units, open, Known { card, effects: effects.as_ref(), ways, likely, spread_failed }, room)
            }
            (None, Some(beside)) => results_both_ui(ui, view, &self.shown, lifts, beside, room),
            (None, None) => results_ui(ui, view, &self.shown, lifts, room),
        };
        let mut parts = Parts {
            run: &|ui, view| run_ui(ui, view.units, &lanes, station),
            before_buying: &before_buying,
            curves: &|ui, view, room| curves_ui(ui, view, batches, room),
            choices: &|ui, view, room| choices_of(ui, view, room).collect(),
            results: &mut results_of,
        };
        let view = &mut self.view;
        if view.curve_alone {
            let place = ui.available_rect_before_wrap();
            panes.pane_ui(ui, CURVES, place, |ui| {
                CentralPanel::default().frame(side).show(ui, |ui| asks.extend((parts.curves)(ui, view, Room::Own)));
            });
        } else if one_column {
            asks.extend(parts.one_column_ui(ui, view, panes, side, run_scrolls));
        } else {
            let places = columns(ui.available_rect_before_wrap(), beside.is_some());
            asks.extend(parts.three_columns_ui(ui, view, panes, side, places));
        }
        // A card stands where the results do, which are the last pane.
        self.card_pane = panes.last().filter(|_| !self.view.curve_alone);
        self.view.card = open;
        asks
    }
}

/// What draws each part of the page.
struct Parts<'a> {
    run: &'a dyn Fn(&mut Ui, &View) -> Option<Ask>,
    before_buying: &'a dyn Fn(&mut Ui, &mut View) -> Vec<Ask>,
    curves: &'a dyn Fn(&mut Ui, &View, Room) -> Vec<Ask>,
    choices: &'a dyn Fn(&mut Ui, &mut View, Room) -> Vec<Ask>,
    results: &'a mut dyn FnMut(&mut Ui, &mut View, Room) -> Vec<Ask>,
}

impl Parts<'_> {
    /// Draws them below each other, the run among them where it scrolls with the rest.
    fn one_column_ui(&mut self, ui: &mut Ui, view: &mut View, panes: &mut Panes, side: Frame, run_scrolls: bool) -> Vec<Ask> {
        let mut asks = Vec::new();
        CentralPanel::default().frame(side).show(ui, |ui| {
            let place = ui.available_rect_before_wrap();
            panes.pane_ui(ui, "Design", place, |ui| {
                if !run_scrolls {
                    asks.extend((self.before_buying)(ui, view));
                }
                scroll_ui(ui, "one column", |ui| {
                    let top = ui.next_widget_position();
                    let mut buying = top;
                    if run_scrolls {
                        asks.extend((self.run)(ui, view));
                        ui.separator();
                        buying = ui.next_widget_position();
                        asks.extend((self.before_buying)(ui, view));
                    }
                    let curves = ui.next_widget_position();
                    asks.extend((self.curves)(ui, view, Room::Column));
                    ui.separator();
                    asks.extend((self.choices)(ui, view, Room::Column));
                    ui.separator();
                    asks.extend((self.results)(ui, view, Room::Column));
                    // Last, since a station brings its choices into sight.
                    follow_guide(ui, view.guide_to.take(), [buying, top, curves]);
                });
            });
        });
        asks
    }

    /// Draws choices, curves and results next to each other.
    fn three_columns_ui(
        &mut self,
        ui: &mut Ui,
        view: &mut View,
        panes: &mut Panes,
        side: Frame,
        (choices, curves, results): (Rect, Rect, Rect),
    ) -> Vec<Ask> {
        let mut asks = Vec::new();
        panes.pane_ui(ui, CHOICES, choices, |ui| {
            CentralPanel::default().frame(side).show(ui, |ui| {
                asks.extend((self.before_buying)(ui, view));
                asks.extend((self.choices)(ui, view, Room::Own));
            });
        });
        panes.pane_ui(ui, CURVES, curves, |ui| {
            CentralPanel::default().frame(side).show(ui, |ui| asks.extend((self.curves)(ui, view, Room::Own)));
        });
        panes.pane_ui(ui, RESULTS, results, |ui| {
            CentralPanel::default().frame(side).show(ui, |ui| asks.extend((self.results)(ui, view, Room::Own)));
        });
        asks
    }
}

/// Draws the run, or both, above everything else.
fn run_panel_ui(ui: &mut Ui, panes: &mut Panes, units: Units, lanes: &[Lane<'_>], station: Stage) -> Option<Ask> {
    let frame = Frame::new().fill(Palette::of(ui).background);
    let run = Panel::top("run").exact_size(band::height(lanes.len())).frame(frame);
    let shown = run.show(ui, |ui| {
        let place = ui.available_rect_before_wrap();
        panes.pane_ui(ui, RUN, place, |ui| run_ui(ui, units, lanes, station))
    });
    shown.inner
}

/// Brings into sight what the guide speaks of, where all stands in one column: the choices before buying, the run, the curves.
fn follow_guide(ui: &Ui, to: Option<GuidePlace>, [buying, run, curves]: [Pos2; 3]) {
    let place = match to {
        Some(GuidePlace::BeforeBuying) => buying,
        Some(GuidePlace::Run) => run,
        Some(GuidePlace::Curve) => curves,
        Some(GuidePlace::Results | GuidePlace::Menus | GuidePlace::Plan | GuidePlace::Log | GuidePlace::Sources) | None => return,
    };
    ui.scroll_to_rect(Rect::from_min_max(place, place), Some(Align::Min));
}

/// Returns the design whose choices are shown, and its batch.
fn shown_design(session: &Session, edited: Which) -> (&Design, &Batch) {
    session.one(edited).map_or_else(|| (session.design(), session.batch()), |open| (open.design(), open.batch()))
}

/// Returns the batches whose curves are drawn.
fn batches<'a>(session: &'a Session, spread: Option<&'a Spread>, beside: Option<&'a Beside>) -> Batches<'a> {
    Batches {
        now: session.batch(),
        spread,
        before: session.before(),
        held: session.held(),
        measured: &[],
        second: session.second().map(OpenDesign::batch).zip(beside),
    }
}

/// Returns the runs of the one design, or of both above each other.
fn lanes<'a>(palette: &Palette, shown: &'a Shown, weighed: &'a [(Stage, f64)], beside: Option<&'a Beside>) -> Vec<Lane<'a>> {
    let a = Lane { name: beside.map(|_| "A"), run: &shown.run, colour: palette.design, worst: &shown.worst, weighed };
    let b = beside.map(|beside| Lane {
        name: Some("B"),
        run: &beside.run,
        colour: palette.second,
        worst: &beside.worst,
        // What was made is a batch of the first design.
        weighed: &[],
    });
    std::iter::once(a).chain(b).collect()
}

/// Returns the places of choices, curves and results, with a line's width between them.
fn columns(room: Rect, two: bool) -> (Rect, Rect, Rect) {
    let of = |(narrow, wide): (f32, f32)| if room.width() < WIDE { narrow } else { wide };
    let (choices, rest) = room.split_left_right_at_x(room.left() + of(CHOICES_WIDTH));
    let (curves, results) = rest.split_left_right_at_x(rest.right() - of(if two { RESULTS_OF_TWO } else { RESULTS_WIDTH }));
    (choices, curves, results)
}
