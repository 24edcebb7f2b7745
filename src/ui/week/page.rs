//! The week: when, the picture of it, and the same as a list.

use crate::batch::Batch;
use crate::caution::plan_end;
use crate::design::WeekDesign;
use crate::plan::{KitchenWeek, Now, Reason, TurnsOffer, ends_before_words, length, time_words};
use crate::session::Command;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::week::drag::StartDrag;
use crate::ui::week::hours::hours_ui;
use crate::ui::week::kept::{KeptWeek, Reckoned};
use crate::ui::week::line::timeline_ui;
use crate::ui::week::list::list_ui;
use crate::ui::week::when::{offer_ui, when_ui};
use crate::ui::widget::room::Room;
use crate::ui::widget::scroll::scroll_ui;
use crate::ui::widget::theme::{BODY, CAPTION, FOOT, Palette, bold};
use crate::units::Units;
use crate::words::{EndWords, alarm_words, end_words};
use egui::{Button, CentralPanel, Frame, Margin, Panel, RichText, Ui, vec2};

/// Width of the choices at the left.
const CHOICES_WIDTH: f32 = 408.0;
/// Reasons that are named at most; the list has them all.
const MOST_REASONS: usize = 4;

/// Draws the page and returns what is asked for.
pub(in crate::ui) fn week_page_ui(
    ui: &mut Ui,
    desk: &mut KeptWeek,
    view: &mut View,
    batch: &Batch,
    now: &Now,
    room: Room,
) -> Vec<Ask> {
    let side = Frame::new().fill(Palette::of(ui).background).inner_margin(Margin::symmetric(12, 10));
    let mut drag = desk.drag;
    let reckoned = desk.reckon(batch, now);
    let mut asks = Vec::new();
    match room {
        Room::Own => {
            Panel::left("week choices").exact_size(CHOICES_WIDTH).resizable(false).frame(side).show(ui, |ui| {
                scroll_ui(ui, "week choices", |ui| {
                    asks.extend(choices_ui(ui, view, batch, reckoned));
                });
            });
            CentralPanel::default().frame(side).show(ui, |ui| {
                scroll_ui(ui, "week", |ui| {
                    asks.extend(plan_ui(ui, &mut drag, view, batch, reckoned));
                });
            });
        }
        Room::Column => {
            CentralPanel::default().frame(side).show(ui, |ui| {
                scroll_ui(ui, "week", |ui| {
                    asks.extend(when_ui(ui, view, &batch.design.week, reckoned));
                    ui.add_space(10.0);
                    asks.extend(plan_ui(ui, &mut drag, view, batch, reckoned));
                    ui.separator();
                    asks.extend(hours_ui(ui, view, &batch.design.week, reckoned));
                });
            });
        }
    }
    // Whatever became of the picture, a drag ends with the button.
    if drag.is_some() && !ui.input(|input| input.pointer.any_down()) {
        drag = None;
        asks.push(Ask::EndDrag);
    }
    desk.drag = drag;
    asks
}

fn choices_ui(ui: &mut Ui, view: &mut View, batch: &Batch, reckoned: &Reckoned) -> Vec<Ask> {
    let mut asks = when_ui(ui, view, &batch.design.week, reckoned);
    ui.add_space(14.0);
    asks.extend(hours_ui(ui, view, &batch.design.week, reckoned));
    asks
}

fn plan_ui(ui: &mut Ui, drag: &mut Option<StartDrag>, view: &mut View, batch: &Batch, reckoned: &Reckoned) -> Vec<Ask> {
    let mut asks = Vec::new();
    match &reckoned.week {
        Ok(Some(week)) => {
            let end = plan_end(batch).map(|end| end_words(&end, view.units));
            asks.extend(ends_ui(ui, view.units, week, end.as_ref()));
            asks.extend(timeline_ui(ui, view.units, drag, &batch.design.week, week, &reckoned.now));
            // Below the picture: as many lines as it takes, and nothing moves under a pointer that drags the start.
            asks.extend(impossible_ui(ui, view.units, &batch.design.week, week));
            costs_ui(ui, view.units, week, end.and_then(|end| end.sour));
            asks.extend(reckoned.turns.as_ref().and_then(|offer| turns_ui(ui, view.units, offer)));
            ui.add_space(10.0);
        }
        Ok(None) => asks.extend(invitation_ui(ui, view.units, batch, reckoned)),
        Err(_) => {
            let words =
                "No plan fits your hours; the reason is shown next to them. Until one does, times count from the first task.";
            ui.label(RichText::new(words).size(BODY));
        }
    }
    asks.extend(list_ui(ui, view, &batch.design.week, reckoned));
    asks
}

/// Draws when it begins and how it ends.
fn ends_ui(ui: &mut Ui, units: Units, week: &KitchenWeek, end: Option<&EndWords>) -> Option<Ask> {
    let row = ui.horizontal_wrapped(|ui| {
        let soft = Palette::of(ui).soft;
        let begun = week.tasks.first().is_some_and(|task| task.begun);
        let first = week.tasks.first().map_or_else(String::new, |task| units.told(&time_words(task.start)));
        ui.label(RichText::new(if begun { "begun" } else { "begin" }).color(soft));
        ui.label(RichText::new(first).font(bold(FOOT)));
        ui.add_space(12.0);
        ui.label(RichText::new(end.map_or("ends", |end| end.by_clock)).color(soft));
        let finished = week.finished.map_or_else(|| "not calculated".to_owned(), |finished| units.told(&time_words(finished)));
        ui.label(RichText::new(finished).font(bold(FOOT)));
        ui.add_space(12.0);
        let save = ui.add(Button::new("Save calendar…").min_size(vec2(0.0, 32.0)));
        save.clicked().then_some(Ask::ExportCalendar)
    });
    row.inner
}

/// Draws when the cheeses are sour, if not by the end, what the week costs and what it does to the cheese.
fn costs_ui(ui: &mut Ui, units: Units, week: &KitchenWeek, sour: Option<String>) {
    let mut lines: Vec<String> = sour.into_iter().collect();
    if week.points == 0 {
        lines.push("No task falls into sleep, work or busy times, and none is moved from its usual time.".to_owned());
    } else {
        // Units come last: what is said here is told in them below.
        let alarms = alarm_words(week, Units::METRIC).unwrap_or_else(|| "no alarm at night".to_owned());
        let others: Vec<&Reason> = week.reasons.iter().filter(|reason| !reason.is_alarm).collect();
        let reasons = others.iter().take(MOST_REASONS).map(|reason| format!("; {} ({})", reason.words, reason.points));
        let more = others.len().saturating_sub(MOST_REASONS);
        let more = if more > 0 { format!("; {more} more in the list") } else { String::new() };
        let reasons: String = reasons.collect();
        lines.push(format!("Disruption: {alarms}{reasons}{more}. In all {}, the least possible (our weighting).", week.points));
    }
    if !week.stretches.is_empty() {
        let words: Vec<&str> = week.stretches.iter().map(|stretch| stretch.words.as_str()).collect();
        lines.push(format!("To fit your hours: {}.", words.join("; ")));
    }
    if let Some(stage) = week.ends_before {
        lines.push(ends_before_words(stage));
    }
    for line in lines {
        ui.label(RichText::new(units.told(&line)).size(CAPTION).color(Palette::of(ui).soft));
    }
}

/// Draws what could not be kept out of impossible hours, and a wish that would.
fn impossible_ui(ui: &mut Ui, units: Units, design: &WeekDesign, week: &KitchenWeek) -> Option<Ask> {
    let found = week.impossible.as_ref()?;
    let palette = Palette::of(ui);
    Frame::new().fill(palette.caution_fill).corner_radius(6).inner_margin(8).show(ui, |ui| {
        ui.set_width(ui.available_width());
        let words = units.told(&format!("{} {}", found.words, found.help));
        ui.label(RichText::new(words).size(BODY).color(palette.caution_text));
    });
    found.offer.as_ref().and_then(|offer| offer_ui(ui, units, design, offer))
}

/// Draws fewer turns that save a night, to take over.
fn turns_ui(ui: &mut Ui, units: Units, offer: &TurnsOffer) -> Option<Ask> {
    let response = ui.add(Button::new(RichText::new(units.told(&offer.words)).size(CAPTION)).min_size(vec2(0.0, 28.0)));
    let response = response.on_hover_text("The cheeses drain as long as before. One step to undo.");
    response.clicked().then(|| Ask::Do(Command::SetInputs(offer.changes())))
}

/// Draws the invitation to choose a time.
fn invitation_ui(ui: &mut Ui, units: Units, batch: &Batch, reckoned: &Reckoned) -> Vec<Ask> {
    let mut asks = Vec::new();
    let palette = Palette::of(ui);
    Frame::new().fill(palette.panel).corner_radius(8).inner_margin(14).show(ui, |ui| {
        ui.set_width(ui.available_width());
        let finished = reckoned
            .counted
            .finished_min
            .map(|minutes| format!(" The plan ends {} after the first task.", units.told(&length(minutes))));
        ui.label(RichText::new("No date yet").font(bold(BODY)));
        ui.label(format!(
            "Choose when to begin or by when to be finished, and every task gets its day and hour.{}",
            finished.unwrap_or_default()
        ));
        ui.horizontal_wrapped(|ui| {
            for offer in &reckoned.offers {
                asks.extend(offer_ui(ui, units, &batch.design.week, offer));
            }
        });
    });
    ui.add_space(10.0);
    asks
}
