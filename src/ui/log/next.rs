//! What comes next while a batch is made: the task under way, the one after it with its button, and the rest by time.

use crate::caution::{Caution, Severity};
use crate::design::upper_first;
use crate::record::{BatchRecord, EntryKind};
use crate::report::{LogField, NextTask, NextTasks, Step, short_moment};
use crate::ui::log::entry::{Place, back_ui, done_ui, entry_ui};
use crate::ui::log::shown::LogShown;
use crate::ui::state::ask::{Ask, LogAsk};
use crate::ui::state::view::View;
use crate::ui::widget::severity::{colours, sign};
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold};
use crate::units::Units;
use crate::words::caution_words;
use egui::{Frame, Label, RichText, Ui};
use jiff::civil::DateTime;

/// Tasks that are listed after the next one.
const MOST_LATER: usize = 5;

/// Draws it and returns what is asked for.
pub(super) fn next_ui(ui: &mut Ui, view: &mut View, of: (&BatchRecord, &LogShown), next: &NextTasks, now: DateTime) -> Vec<Ask> {
    let mut asks = Vec::new();
    let units = view.units;
    heading_ui(ui, "What comes next");
    if let Some(trouble) = &next.trouble {
        let words =
            format!("The time that you asked for can no longer be met, and the plan goes on without it: {}.", units.told(trouble));
        ui.add(Label::new(RichText::new(words).size(CAPTION).color(Palette::of(ui).caution_text)).wrap());
    }
    next.before_all.iter().for_each(|caution| caution_ui(ui, units, caution));
    if let Some(task) = &next.begun {
        card_ui(ui, |ui| {
            ui.label(RichText::new(format!("Under way since {}", task.since(units))).font(bold(CAPTION)));
            steps_ui(ui, units, task);
            weighings_ui(ui, next, task);
            asks.extend(records_ui(ui, view, of, task, Place::UnderWay));
            asks.extend(next.begun_by.and_then(|entry| begun_back_ui(ui, units, of, task, entry)));
        });
        ui.add_space(6.0);
    }
    let mut later = next.next.iter();
    match later.next() {
        None => {
            ui.label("No task of the plan comes after this. That is no check of the cheese.");
        }
        Some(task) => card_ui(ui, |ui| {
            ui.label(RichText::new(task.when(now, units)).font(bold(CAPTION)));
            steps_ui(ui, units, task);
            if done_ui(ui, view, ("Begin now", "Begun"), &task.name) {
                let (kind, value) = task.begins.clone();
                asks.push(Ask::Log(LogAsk::Enter(kind, value)));
            }
            asks.extend(records_ui(ui, view, of, task, Place::Next));
        }),
    }
    later_ui(ui, units, later.as_slice());
    if let Some(stopped) = &next.stopped {
        let words = format!("The plan stops here. {}: {}.", stopped.stage.title(), stopped.why);
        ui.add(Label::new(RichText::new(words).color(Palette::of(ui).caution_text)).wrap());
    }
    ui.add_space(10.0);
    asks
}

/// Draws the way to take back what says that a task is under way; none where that has a box of its own, with its own way.
fn begun_back_ui(
    ui: &mut Ui,
    units: Units,
    (record, shown): (&BatchRecord, &LogShown),
    task: &NextTask,
    entry: u32,
) -> Option<Ask> {
    let entry = record.entries.iter().find(|one| one.number == entry).filter(|one| !task.records.contains(&one.kind))?;
    let label = entry.kind.row().label;
    let said = if entry.kind == EntryKind::TaskBegun { shown.words(entry) } else { label.to_owned() };
    let words = format!("Take back: {said} ({})", short_moment(entry.at, units));
    back_ui(ui, &words, &words).then_some(Ask::Log(LogAsk::TakeBack(entry.number)))
}

fn card_ui(ui: &mut Ui, draw: impl FnOnce(&mut Ui)) {
    Frame::new().fill(Palette::of(ui).panel).corner_radius(8).inner_margin(10).show(ui, |ui| {
        ui.set_width(ui.available_width());
        draw(ui);
    });
}

/// Draws a caution in short; the page Design says it in full.
fn caution_ui(ui: &mut Ui, units: Units, caution: &Caution) {
    // Red is for what this design can change, as everywhere.
    let severity = if caution.always { Severity::Note } else { caution.severity };
    let (text, fill) = colours(&Palette::of(ui), severity);
    Frame::new().fill(fill).corner_radius(6).inner_margin(6).show(ui, |ui| {
        ui.horizontal(|ui| {
            sign(ui, severity, text);
            ui.add(Label::new(RichText::new(caution_words(caution, units).short).size(CAPTION).color(text)).wrap());
        });
    });
}

/// Draws the steps of one task: cautions before each, what is done, what is to be reached, and what to do if it goes wrong; below them what
/// must be checked before it goes on.
fn steps_ui(ui: &mut Ui, units: Units, task: &NextTask) {
    let palette = Palette::of(ui);
    for step in &task.steps {
        step.cautions.iter().for_each(|caution| caution_ui(ui, units, caution));
        ui.add(Label::new(RichText::new(format!("{} {}", step.verb, step.what)).font(bold(BODY))).wrap());
        let targets: Vec<String> = step.targets.iter().chain(&step.lasts).map(crate::report::Target::words).collect();
        if !targets.is_empty() {
            ui.add(Label::new(targets.join("  ·  ")).wrap());
        }
        // What to do if a hold is not so is said with it.
        let off = if step.hold.is_some() || step.if_off.is_empty() {
            String::new()
        } else {
            format!("If it goes wrong: {}", step.if_off)
        };
        for words in [&step.how, &off].into_iter().filter(|words| !words.is_empty()) {
            ui.add(Label::new(RichText::new(words).size(CAPTION).color(palette.soft)).wrap());
        }
    }
    if let Some(hold) = &task.hold {
        // As on paper: a bar in the colours the other way round.
        Frame::new().fill(palette.text).corner_radius(6).inner_margin(8).show(ui, |ui| {
            ui.set_width(ui.available_width());
            ui.add(Label::new(RichText::new(hold).font(bold(BODY)).color(palette.background)).wrap());
        });
    }
}

/// Draws when the marked cheese is weighed on the way, and what it is to weigh, while the cheeses dry.
fn weighings_ui(ui: &mut Ui, next: &NextTasks, task: &NextTask) {
    if !task.steps.iter().any(Step::begins_drying) || next.weighings.is_empty() {
        return;
    }
    let each =
        next.weighings.iter().map(|weighing| format!("{}: {}", weighing.time.words_with_day(), weighing.weight.amount_words()));
    let words = format!("Weigh the marked cheese; the plan expects {}", each.collect::<Vec<_>>().join("; "));
    ui.add(Label::new(RichText::new(words).size(CAPTION)).wrap());
}

/// Draws what can be written down with a task; returns what is asked for.
fn records_ui(ui: &mut Ui, view: &mut View, of: (&BatchRecord, &LogShown), task: &NextTask, place: Place) -> Vec<Ask> {
    let field = |kind| LogField { kind, step: "", times: Vec::new() };
    task.records.iter().filter_map(|kind| entry_ui(ui, view, of, &field(*kind), place)).collect()
}

/// Draws the tasks after the next one, as far as there is room for.
fn later_ui(ui: &mut Ui, units: Units, later: &[NextTask]) {
    let soft = Palette::of(ui).soft;
    for task in later.iter().take(MOST_LATER) {
        let moved = task.moved(units).map(|words| format!(" ({words})")).unwrap_or_default();
        let words = format!("{}: {}{moved}", task.time.words_with_day(), task.name);
        ui.add(Label::new(RichText::new(upper_first(&words)).size(CAPTION)).wrap());
    }
    let more = later.len().saturating_sub(MOST_LATER);
    if more > 0 {
        let tasks = if more == 1 { "task is" } else { "tasks are" };
        ui.label(RichText::new(format!("{more} more {tasks} in the plan.")).size(CAPTION).color(soft));
    }
}
