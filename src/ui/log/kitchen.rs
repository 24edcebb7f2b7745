//! What the log tells of the kitchen: which batches it is learned from, what came of it, and the design that uses it.

use crate::design::Design;
use crate::file::MOST_TITLE;
use crate::record::{BatchRecord, LEARNED_FROM};
use crate::report::short_moment;
use crate::session::{Command, FoundKitchen, KitchenJob, Logbook};
use crate::ui::choices::kitchen_note::{STOP_USING, STOP_USING_HELP};
use crate::ui::log::kitchen_found::found_ui;
use crate::ui::state::ask::{Ask, LogAsk};
use crate::ui::state::view::View;
use crate::ui::widget::spoken::{alert_ui, heading_ui, say_changes};
use crate::ui::widget::text_undo::remember_text;
use crate::ui::widget::theme::{CAPTION, Palette};
use crate::ui::widget::tick::tick_ui;
use crate::words::{kitchen_line, kitchen_since};
use egui::{Button, Frame, Label, RichText, TextEdit, Ui, vec2};

/// What is said where learning broke down.
const FAILED: &str = "The program has a fault here and could not learn from these batches. Try again with fewer of them.";
/// Least size of a button.
const BUTTON: (f32, f32) = (180.0, 34.0);
/// Batches that may be chosen from, the newest first.
const MOST_BATCHES: usize = 40;
/// Widest lines of words.
const WORDS: f32 = 760.0;

/// What is known of the kitchen of a log.
#[derive(Clone, Copy)]
pub(in crate::ui) struct KitchenKnown<'a> {
    found: Option<&'a FoundKitchen>,
    running: bool,
    failed: bool,
}

impl<'a> KitchenKnown<'a> {
    /// Returns what is known.
    pub(in crate::ui) fn of(found: Option<&'a FoundKitchen>, job: Option<&KitchenJob>) -> Self {
        Self { found, running: job.is_some_and(KitchenJob::is_running), failed: job.is_some_and(KitchenJob::has_failed) }
    }
}

/// Draws the page and returns what is asked for.
pub(super) fn kitchen_ui(ui: &mut Ui, view: &mut View, (book, design): (&Logbook, &Design), kitchen: KitchenKnown<'_>) -> Vec<Ask> {
    let mut asks = Vec::new();
    heading_ui(ui, "Your kitchen");
    let words = "Your log may show how cheese goes in your kitchen: how strong your rennet is, how your bath heats, how fast your cheeses drain, dry and sour. A design can then be calculated with narrower ranges. They are still estimates: keep measuring pH, temperature and weight. A warning about harm becomes milder only as far as nine cases in ten allow.";
    ui.scope(|ui| {
        ui.set_max_width(ui.available_width().min(WORDS));
        ui.add(Label::new(words).wrap());
        ui.add_space(8.0);
        asks.extend(used_ui(ui, design, book.batches()));
        ui.add_space(12.0);
        asks.extend(batches_ui(ui, view, book, kitchen));
    });
    if kitchen.failed {
        alert_ui(ui, RichText::new(FAILED));
    }
    if let Some(found) = kitchen.found.filter(|_| !kitchen.running) {
        ui.add_space(14.0);
        found_ui(ui, view.units, found, design);
        if !found.is_from(&book.learned_from(view.log.learned_from.as_ref())) {
            let words = "Your log or your choice of batches has changed since. Learn again to take that in.";
            ui.add(Label::new(RichText::new(words).size(CAPTION).color(Palette::of(ui).caution_text)).wrap());
        }
        if found.known("").is_some() {
            ui.add_space(10.0);
            asks.extend(use_ui(ui, view));
        }
    }
    ui.add_space(14.0);
    asks.extend(from_file_ui(ui));
    ui.add_space(40.0);
    asks
}

/// Draws what uses the kitchen of a file.
pub(super) fn from_file_ui(ui: &mut Ui) -> Option<Ask> {
    let open = ui.add(Button::new("Use a kitchen from a file…").min_size(BUTTON.into()));
    open.on_hover_text("Recalculates the design now with values that you saved, *.kitchen.ron; only those of your own kitchen hold for it. You can undo it.")
        .clicked()
        .then_some(Ask::Log(LogAsk::OpenKitchen))
}

/// Draws the kitchen that a design uses, and the way out of it.
///
/// `batches`: those of its log
pub(super) fn used_ui(ui: &mut Ui, design: &Design, batches: &[BatchRecord]) -> Option<Ask> {
    let used = design.kitchen.as_ref()?;
    let palette = Palette::of(ui);
    let shown = Frame::new().fill(palette.panel).corner_radius(6).inner_margin(10).show(ui, |ui| {
        ui.add(Label::new(kitchen_line(design).unwrap_or_default()).wrap());
        if let Some(since) = kitchen_since(used, batches) {
            ui.add(Label::new(RichText::new(since).size(CAPTION).color(palette.caution_text)).wrap());
        }
        ui.add_space(4.0);
        let stop = ui.add(Button::new(STOP_USING).min_size(BUTTON.into()));
        stop.on_hover_text(STOP_USING_HELP).clicked()
    });
    shown.inner.then_some(Ask::Do(Command::UseKitchen(None)))
}

/// Draws the choice of batches and what has them worked out.
fn batches_ui(ui: &mut Ui, view: &View, book: &Logbook, known: KitchenKnown<'_>) -> Vec<Ask> {
    let mut asks = Vec::new();
    let from = book.learned_from(view.log.learned_from.as_ref());
    ui.label("Batches to learn from");
    let palette = Palette::of(ui);
    let soft = |ui: &mut Ui, words: &str| {
        ui.add(Label::new(RichText::new(words).size(CAPTION).color(palette.soft)).wrap());
    };
    soft(
        ui,
        &format!(
            "At first, the newest {:.0} are ticked. Untick those that went wrong, or that had another rennet, thermometer or room.",
            LEARNED_FROM.value
        ),
    );
    // Each on a line of its own: beside each other, the last would wrap after each letter.
    for batch in book.batches().iter().rev().take(MOST_BATCHES) {
        let learns = from.iter().any(|own| own.number == batch.number);
        let label = format!("{}, begun {}", batch.title(), short_moment(batch.begun, view.units));
        if tick_ui(ui, learns, &label) {
            asks.push(Ask::Log(LogAsk::LearnFrom(batch.number)));
        }
    }
    if let Some(left) = book.batches().len().checked_sub(MOST_BATCHES).filter(|left| *left > 0) {
        soft(ui, &format!("{left} older batches are not listed."));
    }
    ui.add_space(6.0);
    ui.horizontal_wrapped(|ui| {
        let words = if from.len() == 1 { "Learn from 1 batch".to_owned() } else { format!("Learn from {} batches", from.len()) };
        let learn = Button::new(words).min_size(BUTTON.into());
        if ui.add_enabled(!from.is_empty() && !known.running, learn).clicked() {
            asks.push(Ask::Log(LogAsk::Learn));
        }
        if known.running {
            if ui.add(Button::new("Stop learning").min_size(vec2(90.0, BUTTON.1))).clicked() {
                asks.push(Ask::Log(LogAsk::StopLearning));
            }
            say_changes(&ui.label("Learning… this takes some seconds for each batch."));
        }
    });
    asks
}

/// Draws what uses the kitchen that was learned.
fn use_ui(ui: &mut Ui, view: &mut View) -> Option<Ask> {
    let name = "Name of your kitchen, if you like";
    ui.label(name);
    let edit = TextEdit::singleline(&mut view.log.kitchen)
        .char_limit(MOST_TITLE)
        .desired_width(260.0_f32.min(ui.available_width() - 16.0))
        .margin(vec2(8.0, 5.0));
    let response = ui.add(edit);
    ui.ctx().accesskit_node_builder(response.id, |node| node.set_label(name));
    remember_text(ui, &response, &view.log.kitchen);
    let mut asked = None;
    ui.horizontal_wrapped(|ui| {
        let used = ui.add(Button::new("Calculate the design for your kitchen").min_size(BUTTON.into()));
        if used.on_hover_text("Recalculates the design now; it keeps a copy of these values. You can undo it.").clicked() {
            asked = Some(LogAsk::UseLearned);
        }
        let save = ui.add(Button::new("Save your kitchen…").min_size(BUTTON.into()));
        if save.on_hover_text("As a file, for your other designs").clicked() {
            asked = Some(LogAsk::SaveKitchen);
        }
    });
    asked.map(Ask::Log)
}
