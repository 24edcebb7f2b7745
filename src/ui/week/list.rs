//! The week as a list: when, what, how long, what is disturbed; and where the maker is in the plan.

use crate::caution::Severity;
use crate::design::{Reached, WeekDesign};
use crate::plan::{CountedTask, KitchenWeek, Lean, WeekTask, day_words, ends_before_words, length, whole_time_words};
use crate::session::Command;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::week::kept::Reckoned;
use crate::ui::week::when::time_box;
use crate::ui::widget::severity::sign;
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold};
use crate::ui::widget::typed_box::said_ui;
use crate::units::{Clock, Units};
use egui::{Align, Button, Frame, Layout, RichText, Role, Sense, Ui, WidgetInfo, vec2};

/// Room of the times at the left.
const TIME_ROOM: f32 = 64.0;
/// Room of the times with am or pm.
const HALVES_ROOM: f32 = 92.0;
/// Room of counted times at the left.
const COUNTED_ROOM: f32 = 148.0;

/// Draws the list and returns what is asked for.
pub(in crate::ui) fn list_ui(ui: &mut Ui, view: &mut View, design: &WeekDesign, reckoned: &Reckoned) -> Vec<Ask> {
    let mut asks = Vec::new();
    heading_ui(ui, "Task list");
    if let Some(reached) = &design.reached {
        asks.extend(reached_ui(ui, view, design, reached, reckoned));
    }
    let here = |key: &str| {
        let reached = Some(Reached { task: key.to_owned(), began: reckoned.now.at });
        Ask::Do(Command::SetWeek(Box::new(WeekDesign { reached, ..design.clone() })))
    };
    if let Some(week) = reckoned.planned() {
        let mut day = None;
        for (place, task) in week.tasks.iter().enumerate() {
            if day != Some(task.start.date()) {
                day = Some(task.start.date());
                ui.add_space(6.0);
                ui.label(RichText::new(day_words(task.start.date())).font(bold(BODY)));
            }
            if row_ui(ui, &planned_row(week, place, task, view.units)) {
                asks.push(here(&task.key));
            }
        }
    } else {
        for task in &reckoned.counted.tasks {
            if row_ui(ui, &counted_row(task, view.units)) {
                asks.push(here(&task.key));
            }
        }
        if let Some(stage) = reckoned.counted.ends_before {
            ui.label(RichText::new(ends_before_words(stage)).size(CAPTION).color(Palette::of(ui).soft));
        }
    }
    asks
}

/// One row, as it is drawn and as it is read aloud.
struct Row {
    at: String,
    at_room: f32,
    name: String,
    more: String,
    hands: String,
    /// What it disturbs and what that costs.
    marks: Vec<String>,
    /// Whether a maker can say of it: I am here now.
    can_begin: bool,
    /// The whole row in words.
    spoken: String,
}

fn hands_words(hands_min: i64, units: Units) -> String {
    if hands_min > 0 { units.told(&format!("{} of work", length(hands_min))) } else { "nothing to do".to_owned() }
}

fn planned_row(week: &KitchenWeek, place: usize, task: &WeekTask, units: Units) -> Row {
    let own = week.reasons.iter().filter(|reason| reason.handling == Some(place));
    let marks: Vec<String> = own.map(|reason| format!("{}: disruption {}", units.told(&reason.words), reason.points)).collect();
    let hands = if task.begun { "begun".to_owned() } else { hands_words(task.hands_min, units) };
    let mut spoken = format!("{}: {}, {hands}", units.told(&whole_time_words(task.start)), task.name);
    for mark in &marks {
        spoken.push_str(", ");
        spoken.push_str(mark);
    }
    Row {
        at: units.hour(task.start.time()),
        at_room: if units.clock == Clock::Hours12 { HALVES_ROOM } else { TIME_ROOM },
        name: task.name.clone(),
        more: units.told(&more(&task.what, task.note.as_deref())),
        hands,
        marks,
        can_begin: !task.begun && !task.is_last_day(),
        spoken,
    }
}

/// Returns what there is to say of a task, and what does not fit.
fn more(what: &str, note: Option<&str>) -> String {
    [Some(what), note].into_iter().flatten().filter(|words| !words.is_empty()).collect::<Vec<_>>().join(" ")
}

fn counted_row(task: &CountedTask, units: Units) -> Row {
    let (at, hands) = (units.told(&format!("+ {}", length(task.after_min))), hands_words(task.hands_min, units));
    Row {
        spoken: format!("After {}: {}, {hands}", units.told(&length(task.after_min)), task.name),
        at,
        at_room: COUNTED_ROOM,
        name: task.name.clone(),
        more: units.told(&more(&task.what, task.note.as_deref())),
        hands,
        marks: Vec::new(),
        can_begin: true,
    }
}

/// Draws a row; returns whether the maker says: I am here now.
fn row_ui(ui: &mut Ui, row: &Row) -> bool {
    let palette = Palette::of(ui);
    let mut here = false;
    let fill = if row.marks.is_empty() { palette.panel } else { palette.caution_fill };
    let text = if row.marks.is_empty() { palette.text } else { palette.caution_text };
    let soft = if row.marks.is_empty() { palette.soft } else { palette.caution_text };
    let shown = Frame::new().fill(fill).corner_radius(6).inner_margin(egui::Margin::symmetric(10, 4)).show(ui, |ui| {
        ui.set_width(ui.available_width());
        ui.horizontal_top(|ui| {
            ui.allocate_ui(vec2(row.at_room, 24.0), |ui| {
                ui.set_min_width(row.at_room);
                ui.label(RichText::new(&row.at).font(bold(BODY)).color(text));
            });
            ui.with_layout(Layout::right_to_left(Align::Min), |ui| {
                if row.can_begin {
                    here = here_ui(ui, &row.name);
                }
                ui.label(RichText::new(&row.hands).size(CAPTION).color(soft));
                ui.with_layout(Layout::top_down(Align::Min), |ui| {
                    ui.spacing_mut().item_spacing.y = 2.0;
                    ui.add(egui::Label::new(RichText::new(&row.name).color(text)).wrap());
                    if !row.more.is_empty() {
                        ui.add(egui::Label::new(RichText::new(&row.more).size(CAPTION).color(soft)).wrap());
                    }
                    for mark in &row.marks {
                        ui.horizontal(|ui| {
                            sign(ui, Severity::Caution, palette.caution_text);
                            ui.add(egui::Label::new(RichText::new(mark).size(CAPTION).color(text)).wrap());
                        });
                    }
                });
            });
        });
    });
    let whole = ui.interact(shown.response.rect, shown.response.id.with("row"), Sense::focusable_noninteractive());
    whole.widget_info(|| WidgetInfo::labeled(Role::Label, true, &row.spoken));
    here
}

fn here_ui(ui: &mut Ui, task: &str) -> bool {
    let fill = Palette::of(ui).background;
    let response = ui.add(Button::new(RichText::new("I am here now").size(CAPTION)).fill(fill).min_size(vec2(0.0, 24.0)));
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, format!("I am here now: {task}")));
    response.on_hover_text("You begin this task now; everything after it is planned again.").clicked()
}

/// Draws where the maker is in the plan, with the time to correct and a way back.
fn reached_ui(ui: &mut Ui, view: &mut View, design: &WeekDesign, reached: &Reached, reckoned: &Reckoned) -> Vec<Ask> {
    let mut asks = Vec::new();
    let set = |reached| Ask::Do(Command::SetWeek(Box::new(WeekDesign { reached, ..design.clone() })));
    let own = reckoned.counted.tasks.iter().find(|task| task.key == reached.task);
    let name = own.map_or(reached.task.as_str(), |task| task.name.as_str());
    let palette = Palette::of(ui);
    Frame::new().fill(palette.changed).corner_radius(6).inner_margin(10).show(ui, |ui| {
        let mut said = None;
        ui.horizontal_wrapped(|ui| {
            ui.label(RichText::new(format!("You began “{name}”")).font(bold(BODY)));
            let (typed, words) =
                time_box(ui, view, "reached", "Begun at: day and time", reached.began, reckoned.now.at, Lean::Back);
            asks.extend(typed.map(|began| set(Some(Reached { began, ..reached.clone() }))));
            said = words;
            let response = ui.add(Button::new("Mark as not begun").min_size(vec2(0.0, 28.0)));
            if response.clicked() {
                asks.push(set(None));
            }
        });
        match said {
            Some(said) => said_ui(ui, &said),
            None => {
                ui.label(RichText::new("What comes after it is planned from there.").size(CAPTION));
            }
        }
    });
    asks
}
