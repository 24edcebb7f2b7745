//! The batches of a log, and what begins a new one.

use crate::file::MOST_TITLE;
use crate::plan::{Lean, Now, spoken_time};
use crate::record::BatchRecord;
use crate::report::short_moment;
use crate::session::Logbook;
use crate::ui::state::ask::{Ask, LogAsk};
use crate::ui::state::log_view::LogPart;
use crate::ui::state::view::View;
use crate::ui::widget::pill::{pill_ui, pills_ui};
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::text_undo::remember_text;
use crate::ui::widget::theme::{CAPTION, Palette};
use crate::ui::widget::typed_box::{TypedBox, said_ui, typed_ui};
use egui::{Button, Label, RichText, TextEdit, Ui, vec2};

/// Width of the box of a time.
const TIME: f32 = 150.0;
/// Width of the button that begins a batch.
const BEGIN: f32 = 180.0;
/// Batches that are listed, the newest first.
const MOST_BATCHES: usize = 40;

/// Draws the batches and returns what is asked for.
pub(super) fn batches_ui(ui: &mut Ui, view: &mut View, book: &Logbook, now: &Now) -> Vec<Ask> {
    let palette = Palette::of(ui);
    let mut asks = Vec::new();
    heading_ui(ui, "Batches");
    pills_ui(ui, "Batches", |ui| {
        let chosen = book.chosen().map(|batch| batch.number).filter(|_| view.log.part == LogPart::Batch);
        let parts = [
            (LogPart::All, "All batches", "Lay all batches side by side", 1),
            (LogPart::Kitchen, "Your kitchen", "What the batches show of your kitchen", 0),
        ];
        for (part, label, help, more_than) in parts {
            let shown = view.log.part == part;
            if book.batches().len() > more_than && pill_ui(ui, label, label, help, (shown, shown)) {
                asks.push(Ask::Log(LogAsk::Part(part)));
            }
        }
        for batch in book.batches().iter().rev().take(MOST_BATCHES) {
            let label = label(batch, view);
            let is_chosen = chosen == Some(batch.number);
            let stops = is_chosen || (chosen.is_none() && view.log.part == LogPart::Batch);
            if pill_ui(ui, &label, &label, "Show what was written down of this batch", (is_chosen, stops)) {
                asks.push(Ask::Log(LogAsk::Choose(batch.number)));
            }
        }
    });
    if let Some(left) = book.batches().len().checked_sub(MOST_BATCHES).filter(|left| *left > 0) {
        let words = format!("{left} older batches are among “All batches”.");
        ui.label(RichText::new(words).size(CAPTION).color(palette.soft));
    }
    if book.chosen().is_some() && view.log.part == LogPart::Batch {
        ui.add_space(10.0);
        asks.extend(time_ui(ui, view, now));
        ui.add_space(6.0);
        let import = ui.add(Button::new("Read in a probe’s file…").min_size(vec2(BEGIN, 30.0)));
        if import.on_hover_text("Takes over times and values that a thermometer, scale or meter saved as a table").clicked() {
            asks.push(Ask::Log(LogAsk::ImportFrom));
        }
    }
    ui.add_space(14.0);
    if book.is_example() {
        asks.extend(example_ui(ui));
    } else {
        asks.extend(begin_ui(ui, view, !book.batches().is_empty()));
    }
    for lost in book.lost() {
        ui.add_space(6.0);
        ui.label(RichText::new(lost).size(CAPTION).color(palette.caution_text));
    }
    asks
}

/// Draws what begins a batch.
fn begin_ui(ui: &mut Ui, view: &mut View, another: bool) -> Option<Ask> {
    let name = "Name of the next batch";
    let edit = TextEdit::singleline(&mut view.log.name)
        .hint_text("Its name, if you like")
        .char_limit(MOST_TITLE)
        .desired_width(ui.available_width() - 16.0)
        .margin(vec2(8.0, 5.0));
    let response = ui.add(edit);
    ui.ctx().accesskit_node_builder(response.id, |node| node.set_label(name));
    remember_text(ui, &response, &view.log.name);
    let begin = if another { "Begin another batch" } else { "Begin a batch" };
    ui.add(Button::new(begin).min_size(vec2(BEGIN, 34.0)))
        .on_hover_text("Begins a record with a copy of the design as it is now. It stays in the log.")
        .clicked()
        .then(|| Ask::Log(LogAsk::Begin(view.log.name.trim().to_owned())))
}

/// Draws that this log is invented, and the way back.
fn example_ui(ui: &mut Ui) -> Option<Ask> {
    let words = "This log is invented: three batches to look at. What you write here is not kept.";
    ui.add(Label::new(RichText::new(words).color(Palette::of(ui).caution_text)).wrap());
    ui.add(Button::new("Back to my own log").min_size(vec2(BEGIN, 34.0))).clicked().then_some(Ask::Log(LogAsk::Example(false)))
}

fn label(batch: &BatchRecord, view: &View) -> String {
    format!("{}, begun {}", batch.title(), short_moment(batch.begun, view.units))
}

/// Draws the time that what is written down was at.
fn time_ui(ui: &mut Ui, view: &mut View, now: &Now) -> Option<Ask> {
    let name = "Time of the next entries";
    ui.label(name);
    let shown = view.log.at.map_or_else(|| "now".to_owned(), |at| short_moment(at, view.units).replace('\u{a0}', " "));
    let this = TypedBox { key: "log time", shown, width: TIME, number: false };
    let read = |text: &str| {
        let given = text.trim();
        if given.is_empty() || given.eq_ignore_ascii_case("now") {
            return Ok((None, None));
        }
        spoken_time(given, now.at, Lean::Back).map(|at| (Some(at), None)).map_err(|error| error.to_string())
    };
    let typed = ui.horizontal(|ui| {
        let typed = typed_ui(ui, &mut view.typing, &this, read).named(ui, name);
        let back = view.log.at.is_some()
            && ui.button("Back to now").on_hover_text("Each entry gets the time at which you write it.").clicked();
        (typed, back)
    });
    let (typed, back) = typed.inner;
    if let Some(said) = &typed.said {
        said_ui(ui, said);
    }
    let hint = if view.log.at.is_some() {
        "Everything that you write down gets this time until you press “Back to now”."
    } else {
        "Such as 14:30, or yesterday 9:15."
    };
    ui.add(Label::new(RichText::new(hint).size(CAPTION).color(Palette::of(ui).soft)).wrap());
    if back { Some(Ask::Log(LogAsk::At(None))) } else { typed.value.map(|at| Ask::Log(LogAsk::At(at))) }
}
