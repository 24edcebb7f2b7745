//! The page of the log.

use crate::design::Design;
use crate::plan::Now;
use crate::report::BatchLine;
use crate::session::{Logbook, ProbeImport};
use crate::ui::log::across::across_ui;
use crate::ui::log::batches::batches_ui;
use crate::ui::log::beside::beside_ui;
use crate::ui::log::fields::{against_ui, fields_ui, head_ui};
use crate::ui::log::import::import_ui;
use crate::ui::log::kitchen::{KitchenKnown, from_file_ui, kitchen_ui, used_ui};
use crate::ui::log::shown::LogShown;
use crate::ui::state::ask::{Ask, LogAsk};
use crate::ui::state::log_view::LogPart;
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
    NoFile(&'a Design),
    /// The file is no log, or cannot be read.
    Unreadable(&'a str),
    /// The log.
    Book(LogParts<'a>),
}

/// What the page shows of a log.
#[derive(Clone, Copy)]
pub(in crate::ui) struct LogParts<'a> {
    /// The log.
    pub(in crate::ui) book: &'a Logbook,
    /// The design as it is now.
    pub(in crate::ui) design: &'a Design,
    /// What is shown of its batch in sight.
    pub(in crate::ui) shown: Option<&'a LogShown>,
    /// All batches that were found.
    pub(in crate::ui) across: &'a [BatchLine],
    /// The table of a probe that is looked at.
    pub(in crate::ui) import: Option<&'a ProbeImport>,
    /// What is known of the kitchen.
    pub(in crate::ui) kitchen: KitchenKnown<'a>,
}

/// Draws the page and returns what is asked for.
pub(in crate::ui) fn log_page_ui(ui: &mut Ui, view: &mut View, found: &LogFound<'_>, now: &Now, room: Room) -> Vec<Ask> {
    let side = Frame::new().fill(Palette::of(ui).background).inner_margin(Margin::symmetric(12, 10));
    let mut asks = Vec::new();
    let parts = match found {
        LogFound::NoFile(design) => return CentralPanel::default().frame(side).show(ui, |ui| no_file_ui(ui, design)).inner,
        LogFound::Unreadable(why) => {
            CentralPanel::default().frame(side).show(ui, |ui| alert_ui(ui, RichText::new(*why)));
            return asks;
        }
        LogFound::Book(parts) => *parts,
    };
    match room {
        Room::Own => {
            Panel::left("batches").exact_size(BATCHES_WIDTH).resizable(false).frame(side).show(ui, |ui| {
                scroll_ui(ui, "batches", |ui| asks.extend(batches_ui(ui, view, parts.book, now)));
            });
            if room_for(view, parts) == Middle::Entries && parts.shown.is_some() {
                Panel::right("against").exact_size(AGAINST_WIDTH).resizable(false).frame(side).show(ui, |ui| {
                    scroll_ui(ui, "against", |ui| asks.extend(compared_ui(ui, view, parts)));
                });
            }
            CentralPanel::default().frame(side).show(ui, |ui| match room_for(view, parts) {
                // It scrolls both ways by itself.
                Middle::Across => asks.extend(across_ui(ui, view, parts.across, parts.book.batches().len(), room)),
                middle => scroll_ui(ui, "entries", |ui| asks.extend(middle_ui(ui, view, parts, middle))),
            });
        }
        Room::Column => {
            CentralPanel::default().frame(side).show(ui, |ui| {
                scroll_ui(ui, "log", |ui| {
                    let middle = room_for(view, parts);
                    // At the counter, what comes next is first.
                    if let (Middle::Entries, Some((record, shown))) = (middle, parts.book.chosen().zip(parts.shown)) {
                        asks.extend(head_ui(ui, view, (record, parts.design), shown));
                        ui.separator();
                        asks.extend(batches_ui(ui, view, parts.book, now));
                        ui.separator();
                        asks.extend(fields_ui(ui, view, record, shown));
                        asks.extend(compared_ui(ui, view, parts));
                    } else {
                        asks.extend(batches_ui(ui, view, parts.book, now));
                        ui.separator();
                        asks.extend(middle_ui(ui, view, parts, middle));
                    }
                });
            });
        }
    }
    asks
}

/// What stands in the middle of the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Middle {
    /// The table of a probe that is looked at.
    Import,
    /// All batches.
    Across,
    /// What they tell of the kitchen.
    Kitchen,
    /// One batch.
    Entries,
}

const fn room_for(view: &View, parts: LogParts<'_>) -> Middle {
    if parts.import.is_some() {
        Middle::Import
    } else {
        match view.log.part {
            LogPart::Batch => Middle::Entries,
            LogPart::All => Middle::Across,
            LogPart::Kitchen => Middle::Kitchen,
        }
    }
}

fn middle_ui(ui: &mut Ui, view: &mut View, parts: LogParts<'_>, middle: Middle) -> Vec<Ask> {
    let chosen = parts.book.chosen();
    match (middle, chosen, parts.shown) {
        (Middle::Across, ..) => across_ui(ui, view, parts.across, parts.book.batches().len(), Room::Column),
        (Middle::Kitchen, ..) => kitchen_ui(ui, view, (parts.book, parts.design), parts.kitchen),
        (Middle::Import, Some(record), _) => {
            parts.import.and_then(|table| import_ui(ui, view, table, record)).into_iter().collect()
        }
        (_, Some(record), Some(shown)) => {
            let mut asks = head_ui(ui, view, (record, parts.design), shown);
            asks.extend(fields_ui(ui, view, record, shown));
            asks
        }
        _ => {
            what_it_is_for_ui(ui);
            Vec::new()
        }
    }
}

/// Draws the batch in sight beside its plan, and beside another batch.
fn compared_ui(ui: &mut Ui, view: &View, parts: LogParts<'_>) -> Option<Ask> {
    let (record, shown) = parts.book.chosen().zip(parts.shown)?;
    against_ui(ui, shown.against.as_ref());
    beside_ui(ui, view, parts.book, record)
}

fn what_it_is_for_ui(ui: &mut Ui) {
    heading_ui(ui, "What really happened");
    let words = "Begin a batch when you begin to make the cheese. It keeps a copy of this design as it is today, and you write down what you measure: \
                 temperatures, times, pH, weights. The log is a file next to the design, and nothing in it is ever overwritten.";
    ui.add(Label::new(words).wrap());
}

fn no_file_ui(ui: &mut Ui, design: &Design) -> Vec<Ask> {
    heading_ui(ui, "What really happened");
    ui.add(Label::new("The log is kept in a file next to the design. Save the design first.").wrap());
    ui.add_space(8.0);
    let save = ui.add(Button::new("Save the design…").min_size(vec2(180.0, 34.0))).clicked();
    ui.add_space(18.0);
    ui.add(Label::new("Or look at what a log is like first: three invented batches.").wrap());
    ui.add_space(8.0);
    let look = ui.add(Button::new("Look at an invented log").min_size(vec2(180.0, 34.0))).clicked();
    ui.add_space(18.0);
    heading_ui(ui, "Your kitchen");
    let used = used_ui(ui, design, &[]);
    ui.add_space(8.0);
    let from_file = from_file_ui(ui);
    let asks = [save.then_some(Ask::Save), look.then_some(Ask::Log(LogAsk::Example(true))), used, from_file];
    asks.into_iter().flatten().collect()
}
