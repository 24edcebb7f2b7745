//! File dialogs on a thread of their own, one at a time; where the desktop offers none, a path is typed.

use std::path::PathBuf;
use std::sync::mpsc::{Receiver, TryRecvError, channel};
use std::time::{Duration, Instant};

/// What a path is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::ui) enum Purpose {
    /// Open a design.
    Open,
    /// Save the design.
    Save,
    /// Open a design as B.
    OpenSecond,
    /// Save the second design.
    SaveSecond,
    /// Write the plan.
    Export,
    /// Write the plan for a phone.
    Phone,
    /// Write the week for a calendar.
    Calendar,
    /// Write both designs side by side.
    ExportBoth,
    /// Read the table of a probe.
    ProbeTable,
    /// Write the batches of a log as a table.
    BatchTable,
    /// Write the kitchen that was learned.
    SaveKitchen,
    /// Read a kitchen and use it.
    OpenKitchen,
}

impl Purpose {
    /// Returns what the window says of it.
    pub(in crate::ui) const fn title(self) -> &'static str {
        match self {
            Self::Open => "Open a design",
            Self::Save => "Save the design",
            Self::OpenSecond => "Open a design as B",
            Self::SaveSecond => "Save B",
            Self::Export => "Save plan as PDF",
            Self::Phone => "Save plan for a phone",
            Self::Calendar => "Save the week as a calendar file",
            Self::ExportBoth => "Save A and B side by side as PDF",
            Self::ProbeTable => "Read in a probe’s file",
            Self::BatchTable => "Save the batches as a table",
            Self::SaveKitchen => "Save the kitchen",
            Self::OpenKitchen => "Use a kitchen from a file",
        }
    }

    /// Returns such a file, for who types its name.
    pub(in crate::ui) const fn such_as(self) -> &'static str {
        match self {
            Self::SaveKitchen | Self::OpenKitchen => "/home/me/cellar.kitchen.ron",
            _ => "/home/me/may.vat.ron",
        }
    }

    /// Returns whether a file is written, so that one of that name would be lost.
    pub(in crate::ui) const fn writes(self) -> bool {
        !matches!(self, Self::Open | Self::OpenSecond | Self::ProbeTable | Self::OpenKitchen)
    }

    /// Returns what becomes of a file that is overwritten.
    pub(in crate::ui) const fn lost(self) -> &'static str {
        match self {
            Self::Save | Self::SaveSecond => "What it holds now is kept beside it as a .bak file, in place of an earlier one.",
            Self::Calendar => {
                "Overwrite it if it is last time's calendar of this design: then tasks that were dropped are cancelled."
            }
            _ => "What it holds now will be lost.",
        }
    }
}

/// What came of a dialog.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(in crate::ui) enum Answer {
    /// A path was chosen.
    Path(Purpose, PathBuf),
    /// It was cancelled.
    Cancelled,
    /// The desktop offers no dialog.
    NoDialog(Purpose),
}

/// A dialog answers "cancelled" this fast only where there is none to be had.
const TOO_FAST_FOR_A_HAND: Duration = Duration::from_millis(300);

/// What a dialog answered, and how long it took.
type Chosen = (Option<PathBuf>, Duration);

/// The dialog that is open, if one is.
#[derive(Debug, Default)]
pub(in crate::ui) struct Dialogs {
    /// Never ask the desktop, as in tests and pictures.
    typed_only: bool,
    running: Option<(Purpose, Receiver<Chosen>)>,
}

impl Dialogs {
    /// Returns dialogs that never ask the desktop.
    pub(in crate::ui) fn typed() -> Self {
        Self { typed_only: true, running: None }
    }

    /// Asks for a path; returns at once where the desktop is not to be asked or cannot be.
    pub(in crate::ui) fn ask(&mut self, ctx: &egui::Context, purpose: Purpose, suggested: String) -> Option<Answer> {
        if self.running.is_some() {
            return None;
        }
        if self.typed_only {
            return Some(Answer::NoDialog(purpose));
        }
        let (sender, receiver) = channel();
        let repaint = ctx.clone();
        let spawned = std::thread::Builder::new().name("file-dialog".to_owned()).spawn(move || {
            let began = Instant::now();
            let dialog = rfd::FileDialog::new().set_title(purpose.title());
            let path = match purpose {
                Purpose::Open | Purpose::OpenSecond => dialog.add_filter("Vatsketch design", &["ron"]).pick_file(),
                Purpose::Save | Purpose::SaveSecond => {
                    dialog.add_filter("Vatsketch design", &["ron"]).set_file_name(suggested).save_file()
                }
                Purpose::OpenKitchen => dialog.add_filter("Kitchen", &["ron"]).pick_file(),
                Purpose::SaveKitchen => dialog.add_filter("Kitchen", &["ron"]).set_file_name(suggested).save_file(),
                Purpose::ProbeTable => dialog.add_filter("Table", &["csv", "tsv", "txt"]).pick_file(),
                Purpose::BatchTable => dialog.add_filter("CSV", &["csv"]).set_file_name(suggested).save_file(),
                Purpose::Phone => dialog.add_filter("HTML", &["html"]).set_file_name(suggested).save_file(),
                Purpose::Calendar => dialog.add_filter("iCalendar", &["ics"]).set_file_name(suggested).save_file(),
                Purpose::Export | Purpose::ExportBoth => dialog.add_filter("PDF", &["pdf"]).set_file_name(suggested).save_file(),
            };
            // The window may have closed in the meantime; then nobody waits.
            let _ = sender.send((path, began.elapsed()));
            repaint.request_repaint();
        });
        match spawned {
            Ok(_) => {
                self.running = Some((purpose, receiver));
                None
            }
            Err(_) => Some(Answer::NoDialog(purpose)),
        }
    }

    /// Returns what came of the dialog, once something did.
    pub(in crate::ui) fn answer(&mut self) -> Option<Answer> {
        let (purpose, receiver) = self.running.as_ref()?;
        let purpose = *purpose;
        let answer = match receiver.try_recv() {
            Ok((Some(path), _)) => Answer::Path(purpose, path),
            Ok((None, took)) if took < TOO_FAST_FOR_A_HAND => Answer::NoDialog(purpose),
            Ok((None, _)) => Answer::Cancelled,
            Err(TryRecvError::Disconnected) => Answer::NoDialog(purpose),
            Err(TryRecvError::Empty) => return None,
        };
        self.running = None;
        Some(answer)
    }
}
