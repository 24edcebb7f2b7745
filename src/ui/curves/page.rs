//! The curves: that of the chosen station large, its cut beside it; below them warming and drying loss, small and always in sight.

use crate::batch::Batch;
use crate::curve::{self, Axis, CurveKey, MeasuredLine, Spread, in_one_frame, with_measured, with_spread};
use crate::design::Stage;
use crate::ui::curves::cut::{cross_section_ui, moment};
use crate::ui::curves::germs_foot::{germs_foot_ui, said_height, said_of_germs};
use crate::ui::curves::heading::heading_ui;
use crate::ui::curves::plot::plot_ui;
use crate::ui::curves::plotted::PlottedCurves;
use crate::ui::curves::tables::{germs_ui, table_ui};
use crate::ui::curves::vessel;
use crate::ui::results::beside::Beside;
use crate::ui::results::milk_against::milk_against_ui;
use crate::ui::state::ask::Ask;
use crate::ui::state::cut::{always_shown, shown_curve};
use crate::ui::state::view::View;
use crate::ui::widget::motion::glided;
use crate::ui::widget::room::Room;
use crate::ui::widget::theme::Palette;
use egui::{Id, RichText, Ui, vec2};

/// Height of a plot in one column.
const COLUMN_HEIGHT: f32 = 200.0;
/// Least height of a plot that can still be read.
const LEAST_HEIGHT: f32 = 92.0;
/// Least height of the chosen station's curve, beside which the cut through a cheese may stand.
const CUT_HEIGHT: f32 = 208.0;
/// The same with two designs, whose runs and figures take more of the height.
const LEAST_OF_TWO: f32 = 86.0;
const CUT_OF_TWO: f32 = 188.0;
/// Share of the height of the two curves that are always in sight, next to each other below the chosen one.
const SMALL_SHARE: f32 = 0.27;
/// Width from which on two curves, or curve and cut, stand side by side.
const SIDE_BY_SIDE: f32 = 520.0;
/// Shares of the width of the chosen curve and the cut next to it.
const CURVE_AND_CUT: (f32, f32) = (0.56, 0.44);
/// The same where a pot takes the place of the cut, whose picture needs less of it.
const CURVE_AND_POT: (f32, f32) = (0.68, 0.32);
/// Height of the caption of a vessel, of up to two lines, with the gap above it.
const CAPTIONS: f32 = 48.0;
/// Height of a curve's heading with the gap below the curve.
const HEADING: f32 = 50.0;
/// Height of a heading of one line with the gap below it.
const HEADING_LINE: f32 = 34.0;
/// Least height of a plot below a heading of several lines.
const LEAST_PLOT: f32 = 64.0;

/// What the curves are drawn from.
#[derive(Clone, Copy)]
pub(in crate::ui) struct Batches<'a> {
    /// The open design's.
    pub now: &'a Batch,
    /// How far its curves may be wrong, once that is known.
    pub spread: Option<&'a Spread>,
    /// The same before the last change.
    pub before: Option<&'a Batch>,
    /// That with which a running drag began.
    pub held: Option<&'a Batch>,
    /// What was measured of the batch of the log that is in sight.
    pub measured: &'a [MeasuredLine],
    /// The second design's, and what is shown of it.
    pub second: Option<(&'a Batch, &'a Beside)>,
}

/// Draws the curves and returns what is asked for.
pub(in crate::ui) fn curves_ui(ui: &mut Ui, view: &View, batches: Batches<'_>, room: Room) -> Vec<Ask> {
    let mut asks = Vec::new();
    // The heights are the same at every station, so that nothing jumps.
    let (each, stage) = if view.curve_alone {
        (0.0, (ui.available_height() - HEADING).max(CUT_HEIGHT).floor())
    } else {
        heights(ui, batches.second.is_some(), room)
    };
    room.scrolled(ui, "curves", |ui| {
        let small = always_shown(shown_curve(view.station, view.curve).filter(|_| milk_instead(view, batches).is_none()));
        asks.extend(stage_ui(ui, view, batches, stage, room));
        if view.curve_alone {
            return;
        }
        if side_by_side(ui, room) {
            asks.extend(side_by_side_ui(
                ui,
                each + HEADING,
                small.map(|key| (0.5, Box::new(move |ui: &mut Ui| curve_ui(ui, view, (key, true), batches, each)) as Drawn<'_>)),
            ));
        } else {
            asks.extend(small.into_iter().flat_map(|key| curve_ui(ui, view, (key, true), batches, each)).collect::<Vec<_>>());
        }
    });
    asks
}

/// Returns the two designs whose milks are compared in the place of the station's curve, where they are.
fn milk_instead<'a>(view: &View, batches: Batches<'a>) -> Option<&'a Beside> {
    batches.second.map(|(_, beside)| beside).filter(|beside| beside.milk.is_some() && view.station == Stage::Milk)
}

/// Draws the curve of the chosen station, with its cut and what must be said of both.
fn stage_ui(ui: &mut Ui, view: &View, batches: Batches<'_>, height: f32, room: Room) -> Vec<Ask> {
    let Some(key) = shown_curve(view.station, view.curve) else { return Vec::new() };
    if let Some(beside) = milk_instead(view, batches) {
        // The milk has no curve of its own; its place is taken by what tells the two apart.
        return milk_against_ui(ui, view.units, beside, height + HEADING - 36.0, room);
    }
    // A cheese can be cut from the salting on; before that what is filled stands in its place. Germ by stage takes the whole width.
    let with_cut = !(key == CurveKey::Germs && view.table == Some(key));
    let of_cheese = with_cut && view.station > Stage::Draining;
    let said = said_of_germs(view, (batches.now, batches.second.is_some()), key, of_cheese);
    let height = (height - said_height(ui, &said)).max(LEAST_HEIGHT);
    let asks = if !with_cut {
        curve_ui(ui, view, (key, false), batches, height)
    } else if side_by_side(ui, Room::Own) {
        let curve: Drawn<'_> = Box::new(|ui| curve_ui(ui, view, (key, false), batches, height));
        let cut: Drawn<'_> = Box::new(|ui| cut_ui(ui, view, batches, height + HEADING - 8.0));
        let (of_curve, of_cut) = if view.station < Stage::Draining { CURVE_AND_POT } else { CURVE_AND_CUT };
        side_by_side_ui(ui, height + HEADING, [(of_curve, curve), (of_cut, cut)])
    } else {
        let mut asks = curve_ui(ui, view, (key, false), batches, height);
        asks.extend(cut_ui(ui, view, batches, CUT_HEIGHT.max(height)));
        asks
    };
    germs_foot_ui(ui, &said);
    asks
}

/// What draws a part.
type Drawn<'a> = Box<dyn FnOnce(&mut Ui) -> Vec<Ask> + 'a>;

/// Draws two parts next to each other, each with its share of the width.
fn side_by_side_ui(ui: &mut Ui, height: f32, parts: [(f32, Drawn<'_>); 2]) -> Vec<Ask> {
    let (wide, mut asks) = (ui.available_width(), Vec::new());
    ui.horizontal_top(|ui| {
        for (share, draw) in parts {
            ui.allocate_ui(vec2(share * wide - 8.0, height), |ui| {
                ui.vertical(|ui| {
                    ui.set_width(share * wide - 8.0);
                    asks.extend(draw(ui));
                });
            });
        }
    });
    asks
}

/// Returns whether there is room for two parts next to each other; the small curves stand below each other in a column.
fn side_by_side(ui: &Ui, room: Room) -> bool {
    room == Room::Own && ui.available_width() >= SIDE_BY_SIDE
}

/// Returns the height of the plots that are always in sight, and of the chosen station's.
fn heights(ui: &Ui, two: bool, room: Room) -> (f32, f32) {
    if room == Room::Column {
        return (COLUMN_HEIGHT, COLUMN_HEIGHT.max(CUT_HEIGHT));
    }
    let (least_each, least_stage) = if two { (LEAST_OF_TWO, CUT_OF_TWO) } else { (LEAST_HEIGHT, CUT_HEIGHT) };
    let rows = if side_by_side(ui, room) { 1.0 } else { 2.0 };
    let left = ui.available_height() - (rows + 1.0) * HEADING;
    // Whole points, so that rounding makes nothing scroll.
    let each = (SMALL_SHARE * left).max(least_each).floor();
    (each, (left - rows * each).max(least_stage).floor())
}

/// Draws the cut through a cheese of the open design, and the vessel that is filled at its station where there is room for it.
fn cut_ui(ui: &mut Ui, view: &View, batches: Batches<'_>, height: f32) -> Vec<Ask> {
    let whose = if batches.second.is_some() { "A: " } else { "" };
    let bottom = ui.cursor().top() + height;
    let asks = if view.station <= Stage::Draining {
        Vec::new()
    } else {
        cross_section_ui(ui, (view.cut, view.units), batches.now, whose, height)
    };
    let left = bottom - ui.cursor().top() - CAPTIONS;
    if left >= vessel::LEAST
        && let Some(filled) = curve::vessel(batches.now, view.station)
    {
        ui.add_space(6.0);
        vessel::vessel_ui(ui, view.units, &filled, left);
    }
    asks
}

/// Draws one curve with its heading.
fn curve_ui(ui: &mut Ui, view: &View, (key, small): (CurveKey, bool), batches: Batches<'_>, height: f32) -> Vec<Ask> {
    let shown = |batch: &Batch| curve::curve(batch, key).shown_in(view.units);
    let now = match batches.spread {
        Some(spread) => with_spread(key, curve::curve(batches.now, key), spread),
        None => curve::curve(batches.now, key),
    };
    let now = with_measured(key, now, batches.measured).shown_in(view.units);
    // What the last change left as it was has no curve from before it.
    let ghost = batches.before.map(shown).filter(|ghost| ghost.series != now.series);
    let (a, b) = match batches.second {
        Some((second, _)) => {
            let (a, b) = in_one_frame(now, shown(second));
            (a, Some(b))
        }
        None => (now, None),
    };
    // While something is dragged the axes reach as far as they did when it was taken hold of, so that they do not follow the pointer.
    let mut a = match batches.held {
        Some(held) => in_one_frame(a, shown(held)).0,
        None => a,
    };
    // A limit that jumps is hard to follow; what is dragged is followed at once.
    for axis in [(&mut a.x, 'x'), (&mut a.y, 'y')] {
        glide(ui, axis, (key, small), batches.held.is_some());
    }
    let top = ui.cursor().top();
    let mut asks = heading_ui(ui, view, (key, small), (&a, b.as_ref()));
    // Half of the uppermost number beside the axis stands above the plot, which a small one has close below its unit.
    ui.add_space(if small { 8.0 } else { 4.0 });
    // What a heading of two lines takes, the plot gives, so that the whole stays as high as it is.
    let height = (height - (ui.cursor().top() - top - HEADING_LINE).max(0.0)).max(LEAST_PLOT);
    let nothing = b.as_ref().is_none_or(|b| b.empty_because.is_some());
    if view.table == Some(key) {
        match key {
            CurveKey::Germs => {
                let second = batches.second.map(|(second, _)| second);
                germs_ui(ui, view.units, (batches.now, second), (&a, b.as_ref()), height);
            }
            _ => table_ui(ui, &a, b.as_ref(), height),
        }
    } else if let (Some(why), true) = (&a.empty_because, nothing) {
        empty_ui(ui, why, height);
    } else {
        let cut = (!small).then(|| (view.cut, moment(batches.now, view.cut)));
        let drawn = PlottedCurves { a: &a, ghost: ghost.as_ref(), b: b.as_ref(), edited: view.edited };
        asks.extend(plot_ui(ui, view.units, &drawn, cut, height));
    }
    ui.add_space(4.0);
    asks
}

/// Lets the limits of an axis go to where they are wanted.
fn glide(ui: &Ui, (axis, name): (&mut Axis, char), chart: (CurveKey, bool), at_once: bool) {
    let limit = |which: &str, to: f64| glided(ui.ctx(), Id::unique(("axis", chart, name, axis.unit, which)), to, at_once);
    (axis.least, axis.most) = (limit("least", axis.least), limit("most", axis.most));
}

fn empty_ui(ui: &mut Ui, why: &str, height: f32) {
    let palette = Palette::of(ui);
    egui::Frame::new().fill(palette.panel).corner_radius(8).inner_margin(16).show(ui, |ui| {
        ui.set_min_size(vec2(ui.available_width(), height - 32.0));
        ui.label(RichText::new(format!("No curve: {why}")).color(palette.text));
    });
}
