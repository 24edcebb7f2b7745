//! What comes next while a batch is made: the step under way, the one after it with its button, and the rest by time.

use crate::design::upper_first;
use crate::record::BatchRecord;
use crate::report::{LogField, NextTask, NextTasks, Step};
use crate::ui::log::entry::{Place, back_ui, done_ui, entry_ui};
use crate::ui::state::ask::{Ask, LogAsk};
use crate::ui::state::view::View;
use crate::ui::widget::severity::{colours, sign};
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold};
use crate::units::Units;
use crate::words::caution_words;
use egui::{Frame, Label, RichText, Ui};
use jiff::civil::DateTime;

/// Steps that are listed after the next one.
const MOST_LATER: usize = 5;

/// Draws it and returns what is asked for.
pub(super) fn next_ui(ui: &mut Ui, view: &mut View, record: &BatchRecord, next: &NextTasks, now: DateTime) -> Vec<Ask> {
    let mut asks = Vec::new();
    let units = view.units;
    heading_ui(ui, "What comes next");
    if let Some(trouble) = &next.trouble {
        let words = format!("The plan goes on without the time that you wished for: {}.", units.told(trouble));
        ui.add(Label::new(RichText::new(words).size(CAPTION).color(Palette::of(ui).caution_text)).wrap());
    }
    if let Some(task) = &next.begun {
        let when = format!("Under way since {}", task.time.words_with_day());
        card_ui(ui, |ui| {
            ui.label(RichText::new(when).size(CAPTION));
            steps_ui(ui, units, &task.steps);
            weighings_ui(ui, next, task);
            asks.extend(records_ui(ui, view, record, task, Place::UnderWay));
            if let Some(entry) = next.begun_by
                && back_ui(ui, &format!("Take back that “{}” is under way", task.name()))
            {
                asks.push(Ask::Log(LogAsk::TakeBack(entry)));
            }
        });
        ui.add_space(6.0);
    }
    let mut later = next.next.iter();
    match later.next() {
        None => {
            ui.label("Nothing of the plan is left.");
        }
        Some(task) => {
            let notes: Vec<String> = task.until(now, units).into_iter().chain(task.moved(units)).collect();
            let when = [format!("Next: {}", task.time.words_with_day())].into_iter().chain(notes).collect::<Vec<_>>().join(", ");
            card_ui(ui, |ui| {
                ui.label(RichText::new(when).font(bold(CAPTION)));
                if done_ui(ui, view, "Started", task.name()) {
                    let (kind, value) = task.begins.clone();
                    asks.push(Ask::Log(LogAsk::Enter(kind, value)));
                }
                steps_ui(ui, units, &task.steps);
                asks.extend(records_ui(ui, view, record, task, Place::Next));
            });
        }
    }
    later_ui(ui, units, later.as_slice());
    ui.add_space(10.0);
    asks
}

fn card_ui(ui: &mut Ui, draw: impl FnOnce(&mut Ui)) {
    Frame::new().fill(Palette::of(ui).panel).corner_radius(8).inner_margin(10).show(ui, |ui| {
        ui.set_width(ui.available_width());
        draw(ui);
    });
}

/// Draws the steps of one task: cautions before each, what is done, what is to be reached, and what to do if it is off.
fn steps_ui(ui: &mut Ui, units: Units, steps: &[Step]) {
    let palette = Palette::of(ui);
    for step in steps {
        for caution in &step.cautions {
            let (text, fill) = colours(&palette, caution.severity);
            Frame::new().fill(fill).corner_radius(6).inner_margin(6).show(ui, |ui| {
                ui.horizontal(|ui| {
                    sign(ui, caution.severity, text);
                    ui.add(Label::new(RichText::new(caution_words(caution, units).short).size(CAPTION).color(text)).wrap());
                });
            });
        }
        ui.add(Label::new(RichText::new(format!("{} {}", step.verb, step.what)).font(bold(BODY))).wrap());
        let targets: Vec<String> = step.targets.iter().chain(&step.lasts).map(crate::report::Target::words).collect();
        if !targets.is_empty() {
            ui.add(Label::new(targets.join("  ·  ")).wrap());
        }
        let (hold, off) = match &step.hold {
            Some(hold) => (hold.words(&step.if_off), String::new()),
            None if step.if_off.is_empty() => (String::new(), String::new()),
            None => (String::new(), format!("If not: {}", step.if_off)),
        };
        for words in [&step.how, &hold, &off].into_iter().filter(|words| !words.is_empty()) {
            ui.add(Label::new(RichText::new(words).size(CAPTION).color(palette.soft)).wrap());
        }
    }
}

/// Draws when the marked cheese is weighed on the way, and what it is to weigh, while the cheeses dry.
fn weighings_ui(ui: &mut Ui, next: &NextTasks, task: &NextTask) {
    if !task.steps.iter().any(Step::begins_drying) || next.weighings.is_empty() {
        return;
    }
    let each =
        next.weighings.iter().map(|weighing| format!("{}: {}", weighing.time.words_with_day(), weighing.weight.amount_words()));
    let words = format!("Weigh the marked cheese: {}", each.collect::<Vec<_>>().join("; "));
    ui.add(Label::new(RichText::new(words).size(CAPTION)).wrap());
}

/// Draws what can be written down with a task; returns what is asked for.
fn records_ui(ui: &mut Ui, view: &mut View, record: &BatchRecord, task: &NextTask, place: Place) -> Vec<Ask> {
    let field = |kind| LogField { kind, step: "", times: Vec::new() };
    task.records.iter().filter_map(|kind| entry_ui(ui, view, record, &field(*kind), place)).collect()
}

/// Draws the tasks after the next one, as far as there is room for.
fn later_ui(ui: &mut Ui, units: Units, later: &[NextTask]) {
    let soft = Palette::of(ui).soft;
    for task in later.iter().take(MOST_LATER) {
        let moved = task.moved(units).map(|words| format!(" ({words})")).unwrap_or_default();
        let words = format!("{}: {}{moved}", task.time.words_with_day(), short(task));
        ui.add(Label::new(RichText::new(upper_first(&words)).size(CAPTION)).wrap());
    }
    let more = later.len().saturating_sub(MOST_LATER);
    if more > 0 {
        let steps = if more == 1 { "step is" } else { "steps are" };
        ui.label(RichText::new(format!("{more} more {steps} in the plan.")).size(CAPTION).color(soft));
    }
}

/// Returns what a task is in a few words: its first step up to its first stop.
fn short(task: &NextTask) -> String {
    let words = task.words();
    let first = words.first().map_or(task.name(), String::as_str);
    first.split(['.', ',', ':', ';']).next().unwrap_or(first).to_owned()
}
