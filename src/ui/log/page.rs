//! The page of the log.

use crate::design::Design;
use crate::plan::Now;
use crate::session::Logbook;
use crate::ui::log::batches::batches_ui;
use crate::ui::log::fields::{against_ui, fields_ui};
use crate::ui::log::shown::LogShown;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::room::Room;
use crate::ui::widget::scroll::scroll_ui;
use crate::ui::widget::spoken::{alert_ui, heading_ui};
use crate::ui::widget::theme::Palette;
use egui::{Button, CentralPanel, Frame, Label, Margin, Panel, RichText, Ui, vec2};

/// Width of the batches at the left, and of what was off at the right.
const BATCHES_WIDTH: f32 = 300.0;
const AGAINST_WIDTH: f32 = 330.0;

/// The log as the page finds it.
pub(in crate::ui) enum LogFound<'a> {
    /// The design is in no file yet, so that nothing can stand beside it.
    NoFile,
    /// The file is no log, or cannot be read.
    Unreadable(&'a str),
    /// The log, what is shown of its batch in sight, and the design as it is now.
    Book(&'a Logbook, Option<&'a LogShown>, &'a Design),
}

/// Draws the page and returns what is asked for.
pub(in crate::ui) fn log_page_ui(ui: &mut Ui, view: &mut View, found: &LogFound<'_>, now: &Now, room: Room) -> Vec<Ask> {
    let side = Frame::new().fill(Palette::of(ui).background).inner_margin(Margin::symmetric(12, 10));
    let mut asks = Vec::new();
    let (book, shown, design) = match found {
        LogFound::NoFile => return CentralPanel::default().frame(side).show(ui, no_file_ui).inner.into_iter().collect(),
        LogFound::Unreadable(why) => {
            CentralPanel::default().frame(side).show(ui, |ui| alert_ui(ui, RichText::new(*why)));
            return asks;
        }
        LogFound::Book(book, shown, design) => (*book, *shown, *design),
    };
    let chosen = book.chosen().zip(shown);
    match room {
        Room::Own => {
            Panel::left("batches").exact_size(BATCHES_WIDTH).resizable(false).frame(side).show(ui, |ui| {
                scroll_ui(ui, "batches", |ui| asks.extend(batches_ui(ui, view, book, now)));
            });
            if let Some((_, shown)) = chosen {
                Panel::right("against").exact_size(AGAINST_WIDTH).resizable(false).frame(side).show(ui, |ui| {
                    scroll_ui(ui, "against", |ui| against_ui(ui, shown.against.as_ref()));
                });
            }
            CentralPanel::default().frame(side).show(ui, |ui| {
                scroll_ui(ui, "entries", |ui| match chosen {
                    Some((record, shown)) => asks.extend(fields_ui(ui, view, (record, design), shown)),
                    None => what_it_is_for_ui(ui),
                });
            });
        }
        Room::Column => {
            CentralPanel::default().frame(side).show(ui, |ui| {
                scroll_ui(ui, "log", |ui| {
                    asks.extend(batches_ui(ui, view, book, now));
                    ui.separator();
                    match chosen {
                        Some((record, shown)) => {
                            asks.extend(fields_ui(ui, view, (record, design), shown));
                            against_ui(ui, shown.against.as_ref());
                        }
                        None => what_it_is_for_ui(ui),
                    }
                });
            });
        }
    }
    asks
}

fn what_it_is_for_ui(ui: &mut Ui) {
    heading_ui(ui, "What really happened");
    let words = "Begin a batch when you begin to make the cheese. It keeps a copy of this design as it is today, and you write down what you measure: \
                 temperatures, times, pH, weights. The log is a file next to the design, and nothing in it is ever overwritten.";
    ui.add(Label::new(words).wrap());
}

fn no_file_ui(ui: &mut Ui) -> Option<Ask> {
    heading_ui(ui, "What really happened");
    ui.add(Label::new("The log is kept in a file next to the design. Save the design first.").wrap());
    ui.add_space(8.0);
    ui.add(Button::new("Save the design…").min_size(vec2(180.0, 34.0))).clicked().then_some(Ask::Save)
}
