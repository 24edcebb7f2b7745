//! The picture of the week: a row a day, taken hours shaded and named, tasks as blocks as long as hands are needed, long waits in one row.

use crate::design::WeekDesign;
use crate::plan::{
    KitchenWeek, Now, Taken, TimelineBand, TimelineBlock, TimelineDay, TimelineRow, TimelineWait, day_words, length, timeline,
};
use crate::ui::state::ask::Ask;
use crate::ui::week::drag::StartDrag;
use crate::ui::week::label::{band_word, labels, paint_labels};
use crate::ui::week::start::{HANDLE_ROOM, start_ui};
use crate::ui::week::track::{LINE, Track};
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold, plain};
use crate::units::{Clock, Units};
use egui::{Align2, CornerRadius, Id, Pos2, Rangef, Rect, Role, Sense, Stroke, Ui, WidgetInfo, pos2, vec2};

/// Height of the strip that is shaded.
const STRIP: f32 = 28.0;
/// Space above and below a row.
const PAD: f32 = 5.0;
/// Height of a row for a wait.
const WAIT: f32 = 28.0;
/// Least width of a block: a task of a minute is seen all the same.
const LEAST_WIDTH: f32 = 5.0;
/// Distance of the lines of a hatching.
const HATCH: f32 = 7.0;

/// Draws the picture and returns what is asked for.
pub(in crate::ui) fn timeline_ui(
    ui: &mut Ui,
    units: Units,
    drag: &mut Option<StartDrag>,
    design: &WeekDesign,
    week: &KitchenWeek,
    now: &Now,
) -> Vec<Ask> {
    let picture = timeline(week, drag.map(|drag| drag.first));
    let mut asks = Vec::new();
    ui.spacing_mut().item_spacing.y = 0.0;
    hours_ui(ui, units);
    for row in &picture.rows {
        match row {
            TimelineRow::Day(day) => asks.extend(day_ui(ui, units, drag, design, week, (day, now))),
            TimelineRow::Wait(wait) => wait_ui(ui, wait),
        }
    }
    ui.spacing_mut().item_spacing.y = 6.0;
    legend_ui(ui);
    asks
}

/// Draws the hours above the days.
fn hours_ui(ui: &mut Ui, units: Units) {
    let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), LINE), Sense::hover());
    let track = Track::of(rect);
    for hour in (0..=24_i64).step_by(3) {
        let at = pos2(track.x(60 * hour), rect.bottom());
        ui.painter().text(at, Align2::CENTER_BOTTOM, hour_mark(hour, units), plain(CAPTION), Palette::of(ui).soft);
    }
}

/// Returns an hour as it stands over the days: `18`, or `6 pm`.
fn hour_mark(hour: i64, units: Units) -> String {
    if units.clock == Clock::Hours24 {
        return hour.to_string();
    }
    let half = if hour % 24 < 12 { "am" } else { "pm" };
    format!("{} {half}", (hour + 11) % 12 + 1)
}

fn day_ui(
    ui: &mut Ui,
    units: Units,
    drag: &mut Option<StartDrag>,
    design: &WeekDesign,
    week: &KitchenWeek,
    (day, now): (&TimelineDay, &Now),
) -> Vec<Ask> {
    let palette = Palette::of(ui);
    let width = ui.available_width();
    let starts = day.blocks.first().filter(|block| block.task == 0 && !block.goes_on);
    let above = if starts.is_some() { HANDLE_ROOM } else { 0.0 };
    let track = Track::of(Rect::from_min_size(ui.cursor().min, vec2(width, 0.0)));
    let lines = labels(ui, units, track, week, day);
    let deepest = lines.iter().map(|label| label.line + 1).max().unwrap_or(0);
    let height = 2.0 * PAD + above + STRIP + LINE * deepest as f32;
    let (rect, response) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, in_words(week, day, units)));
    let strip = Rect::from_x_y_ranges(track.range(), Rangef::new(rect.top() + PAD + above, rect.top() + PAD + above + STRIP));
    ui.painter().hline(rect.x_range(), rect.top(), Stroke::new(1.0, palette.grid));
    ui.painter().text(
        pos2(rect.left(), strip.center().y),
        Align2::LEFT_CENTER,
        day_words(day.date),
        if day.blocks.is_empty() { plain(BODY) } else { bold(BODY) },
        palette.text,
    );
    paint_strip(ui, track, strip, day);
    for block in &day.blocks {
        block_ui(ui, units, track, strip, (week, block));
    }
    paint_labels(ui, strip.bottom() + 1.0, &lines);
    if now.at.date() == day.date {
        paint_now(ui, track, strip, now);
    }
    match starts {
        Some(block) => {
            let knob = pos2(track.x(block.from_min), rect.top() + PAD);
            start_ui(ui, units, drag, design, (week, now), track, knob)
        }
        None => Vec::new(),
    }
}

/// Returns a day in words, for a reader of the screen.
fn in_words(week: &KitchenWeek, day: &TimelineDay, units: Units) -> String {
    let tasks = day.blocks.iter().filter_map(|block| {
        let task = week.tasks.get(block.task)?;
        Some(if block.goes_on {
            format!("{} goes on", task.name)
        } else {
            format!("{} {}", units.hour(task.start.time()), task.name)
        })
    });
    format!("{}: {}", day_words(day.date), tasks.collect::<Vec<_>>().join("; "))
}

/// Paints what is taken: sleep in one tone, work hatched one way, busy times hatched both ways; each with its word.
fn paint_strip(ui: &Ui, track: Track, strip: Rect, day: &TimelineDay) {
    let palette = Palette::of(ui);
    ui.painter().rect_filled(strip, CornerRadius::ZERO, palette.panel);
    for band in &day.bands {
        paint_band(ui, band.by, band_rect(track, strip, *band));
    }
    for hour in (0..=24_i64).step_by(6) {
        ui.painter().vline(track.x(60 * hour), strip.y_range(), Stroke::new(1.0, palette.edge));
    }
    for band in &day.bands {
        let words = if band.impossible { format!("{}, nobody there", band_word(band.by)) } else { band_word(band.by).to_owned() };
        let word = ui.painter().layout_no_wrap(words, plain(CAPTION), palette.text);
        let needed = word.size().x + 12.0;
        let free = free_of_blocks(track, *band, &day.blocks);
        if let Some(widest) =
            free.into_iter().filter(|range| range.span() >= needed).max_by(|one, two| one.span().total_cmp(&two.span()))
        {
            let centre = pos2(widest.center(), strip.center().y);
            let ground = Rect::from_center_size(centre, word.size() + vec2(8.0, 0.0));
            let fill = if band.by == Taken::Sleep { palette.grid } else { palette.panel };
            ui.painter().rect_filled(ground, CornerRadius::same(3), fill);
            ui.painter().galley(Align2::CENTER_CENTER.anchor_size(centre, word.size()).min, word, palette.text);
        }
    }
}

fn band_rect(track: Track, strip: Rect, band: TimelineBand) -> Rect {
    Rect::from_x_y_ranges(Rangef::new(track.x(band.from_min), track.x(band.to_min)), strip.y_range())
}

/// Returns what of a band no block covers.
fn free_of_blocks(track: Track, band: TimelineBand, blocks: &[TimelineBlock]) -> Vec<Rangef> {
    let (mut from, until) = (track.x(band.from_min), track.x(band.to_min));
    let mut free = Vec::new();
    for block in blocks {
        let (left, right) = (track.x(block.from_min), track.x(block.to_min).max(track.x(block.from_min) + LEAST_WIDTH));
        if right > from && left < until {
            free.push(Rangef::new(from, left.max(from)));
            from = right;
        }
    }
    free.push(Rangef::new(from.min(until), until));
    free
}

fn paint_band(ui: &Ui, by: Taken, rect: Rect) {
    let palette = Palette::of(ui);
    let painter = ui.painter().with_clip_rect(rect.intersect(ui.clip_rect()));
    let stroke = Stroke::new(1.0, palette.edge);
    let hatch = |lean: f32| {
        let (height, mut x) = (rect.height(), rect.left() - rect.height());
        while x < rect.right() + rect.height() {
            let (bottom, top) = (pos2(x, rect.bottom()), pos2(x + lean * height, rect.top()));
            painter.line_segment([bottom, top], stroke);
            x += HATCH;
        }
    };
    match by {
        Taken::Sleep => {
            painter.rect_filled(rect, CornerRadius::ZERO, palette.grid);
        }
        Taken::Work => hatch(1.0),
        Taken::Busy => {
            hatch(1.0);
            hatch(-1.0);
        }
    }
}

/// Draws a task: a bar as long as hands are needed, a ring where none are.
fn block_ui(ui: &mut Ui, units: Units, track: Track, strip: Rect, (week, block): (&KitchenWeek, &TimelineBlock)) {
    let palette = Palette::of(ui);
    let Some(task) = week.tasks.get(block.task) else { return };
    let from = track.x(block.from_min);
    let to = track.x(block.to_min).max(from + LEAST_WIDTH);
    let bar = Rect::from_x_y_ranges(Rangef::new(from, to), strip.y_range()).shrink2(vec2(0.0, 3.0));
    if task.hands_min == 0 {
        ui.painter().circle(pos2(from, strip.center().y), 6.0, palette.background, Stroke::new(2.0, palette.design));
    } else {
        ui.painter().rect(
            bar,
            CornerRadius::same(2),
            palette.design,
            Stroke::new(1.0, palette.background),
            egui::StrokeKind::Inside,
        );
    }
    if !block.disturbs.is_empty() {
        let frame = Stroke::new(2.0, palette.text);
        ui.painter().rect_stroke(bar.expand(1.0), CornerRadius::same(2), frame, egui::StrokeKind::Outside);
    }
    let id = Id::unique(("task of the week", block.task, block.goes_on));
    let hovered = ui.interact(bar.expand2(vec2(2.0, 3.0)), id, Sense::hover());
    hovered.on_hover_ui(|ui| {
        ui.label(format!("{} {}", units.hour(task.start.time()), task.name));
        ui.label(if task.hands_min > 0 { format!("{} of work", length(task.hands_min)) } else { "Nothing to do".to_owned() });
        for reason in week.reasons.iter().filter(|reason| reason.handling == Some(block.task)) {
            ui.label(format!("{}: disruption {}", reason.words, reason.points));
        }
    });
}

fn paint_now(ui: &Ui, track: Track, strip: Rect, now: &Now) {
    let palette = Palette::of(ui);
    let x = track.x(60 * i64::from(now.at.hour()) + i64::from(now.at.minute()));
    ui.painter().vline(x, strip.y_range().expand(3.0), Stroke::new(2.0, palette.link));
    let word = ui.painter().layout_no_wrap("now".to_owned(), plain(CAPTION), palette.link);
    // What is still to be done stands at the right of the line, so the word is at its left.
    let left = (x - 4.0 - word.size().x).max(strip.left());
    let ground = Rect::from_min_size(pos2(left, strip.center().y - 0.5 * word.size().y), word.size());
    ui.painter().rect_filled(ground.expand2(vec2(2.0, 0.0)), CornerRadius::same(3), palette.background);
    ui.painter().galley(ground.min, word, palette.link);
}

fn wait_ui(ui: &mut Ui, wait: &TimelineWait) {
    let palette = Palette::of(ui);
    let (rect, response) = ui.allocate_exact_size(vec2(ui.available_width(), WAIT), Sense::hover());
    let days = if wait.days == 1 { day_words(wait.from) } else { format!("{} to {}", day_words(wait.from), day_words(wait.to)) };
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, format!("{}, {days}", wait.words)));
    ui.painter().hline(rect.x_range(), rect.top(), Stroke::new(1.0, palette.grid));
    for dot in [-1.0, 0.0, 1.0] {
        ui.painter().circle_filled(pos2(rect.left() + 12.0, rect.center().y + 6.0 * dot), 1.5, palette.soft);
    }
    let at = pos2(Track::of(rect).x(0), rect.center().y);
    let words = ui.painter().text(at, Align2::LEFT_CENTER, &wait.words, bold(BODY), palette.text);
    let beside: Pos2 = words.right_center() + vec2(12.0, 0.0);
    ui.painter().text(beside, Align2::LEFT_CENTER, days, plain(CAPTION), palette.soft);
}

/// Says what the shades mean.
fn legend_ui(ui: &mut Ui) {
    let palette = Palette::of(ui);
    ui.horizontal_wrapped(|ui| {
        for (by, words) in [(Taken::Sleep, "sleep"), (Taken::Work, "work"), (Taken::Busy, "one-off busy time")] {
            let (rect, _) = ui.allocate_exact_size(vec2(28.0, 16.0), Sense::hover());
            ui.painter().rect_filled(rect, CornerRadius::ZERO, palette.panel);
            paint_band(ui, by, rect);
            ui.label(egui::RichText::new(words).size(CAPTION).color(palette.soft));
        }
        let (rect, _) = ui.allocate_exact_size(vec2(28.0, 16.0), Sense::hover());
        ui.painter().rect_filled(rect, CornerRadius::same(2), palette.design);
        ui.label(egui::RichText::new("you are needed; outlined where it clashes").size(CAPTION).color(palette.soft));
    });
}
