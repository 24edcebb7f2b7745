//! What a part of the window asks for; one place carries it out.

use crate::analysis::{Alike, Goal};
use crate::caution::Caution;
use crate::curve::CurveKey;
use crate::design::{MilkKind, Stage};
use crate::export::{Paper, Part};
use crate::record::{EntryKind, EntryValue};
use crate::session::{Command, LeftBehind, ProbeWish, Which};
use crate::ui::state::cut::CutView;
use crate::ui::state::log_view::LogPart;
use crate::ui::state::pages::{HelpCard, Page, PlanPart};
use jiff::civil::DateTime;
use std::path::PathBuf;

/// Something that a part of the window asks for.
#[derive(Clone, Debug, PartialEq)]
pub enum Ask {
    /// Do a command as one step.
    Do(Command),
    /// Do a command that moves a choice a little: such moves in a row are one step.
    Nudge(Command),
    /// Do a command to the second design as one step.
    DoToSecond(Command),
    /// Do a command that moves a choice of the second design a little.
    NudgeSecond(Command),
    /// Show the choices of this one of the two designs, and change them.
    Edit(Which),
    /// A drag begins: what follows is one step.
    BeginDrag,
    /// The drag ends.
    EndDrag,
    /// The drag is given up: all is as it was before.
    GiveUpDrag,
    /// Take the last step back.
    Undo,
    /// Do it again.
    Redo,
    /// Ask to what the whole design is to be scaled.
    Scale,
    /// A new design.
    New,
    /// A new design that begins with the milk that can be bought.
    NewFromMilk,
    /// Choose a file and open it.
    Open,
    /// Open this file.
    OpenFile(PathBuf),
    /// Open an example.
    OpenExample(usize),
    /// List the unsaved work that was left behind.
    ListLeft,
    /// Open unsaved work that was left behind.
    Recover(Box<LeftBehind>),
    /// Save where it was saved last.
    Save,
    /// Save somewhere else.
    SaveAs,
    /// Settle a file that somebody else changed.
    Changed(Which, OnDisk),
    /// Write the plan as PDF.
    ExportPlan,
    /// Write the week for a calendar.
    ExportCalendar,
    /// Ask where to save the plan for a phone.
    ExportPhone,
    /// Print this part behind the two pages of the plan, or no longer.
    PrintWith(Part),
    /// Lay the plan out for this paper.
    Paper(Paper),
    /// Hand the plan to the system's viewer.
    Print,
    /// Put the plan into the clipboard as text.
    CopyPlan,
    /// Leave.
    Quit,
    /// Show a page.
    Show(Page),
    /// Show a part of the plan.
    ShowPart(PlanPart),
    /// Choose a station: its controls and its curve come into sight.
    Station(Stage),
    /// Bring an input into sight and mark it.
    ToInput(&'static str),
    /// Bring the cautions into sight.
    ToCautions,
    /// Show this curve of the station.
    StationCurve(CurveKey),
    /// Fill the page with the curve of the station, or show the rest again.
    CurveAlone,
    /// Show or hide the table of a curve.
    Table(CurveKey),
    /// Put a curve into the clipboard as a picture.
    CopyCurve(CurveKey),
    /// Show the cut through a cheese so.
    Cut(CutView),
    /// Open the card of a figure, or close it.
    Figure(Option<&'static str>),
    /// Move a choice until a figure is what is asked for.
    Aim(Goal, &'static str),
    /// Compare the ways to a target.
    Ways(Goal),
    /// Look for what would lift a caution.
    Lifts(Box<Caution>),
    /// Pin a choice, so that no aim moves it, or take its pin out.
    Pin(&'static str),
    /// Go to the first control of the next part of the window, or of the one before.
    NextPane {
        /// Of the one before.
        back: bool,
    },
    /// Go to the menus.
    ToMenus,
    /// Fill the screen, or not any more.
    FillScreen,
    /// Show or hide something of the help.
    Help(HelpCard),
    /// Show a step of the guide, or leave the guide.
    Guide(Option<usize>),
    /// Something about the second design.
    Second(SecondAsk),
    /// Something about the log.
    Log(LogAsk),
}

impl Ask {
    /// Returns what the controls of a design's choices ask for, of the second design where the choices are its.
    #[must_use]
    pub fn of(self, which: Which) -> Self {
        match (which, self) {
            (Which::Second, Self::Do(command)) => Self::DoToSecond(command),
            (Which::Second, Self::Nudge(command)) => Self::NudgeSecond(command),
            (_, ask) => ask,
        }
    }
}

/// What is to be done about a file that somebody else changed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OnDisk {
    /// Take what is on the disk.
    Reload,
    /// Save under another name.
    SaveAs,
    /// Write over what is on the disk.
    Overwrite,
}

/// Something that is asked about the log.
#[derive(Clone, Debug, PartialEq)]
pub enum LogAsk {
    /// Begin a batch of the open design, under this name.
    Begin(String),
    /// Bring a batch into sight.
    Choose(u32),
    /// Write an entry down.
    Enter(EntryKind, EntryValue),
    /// Take an entry back; what it said is kept.
    TakeBack(u32),
    /// Everything that is written down from now on was at this time; none: at the time of writing.
    At(Option<DateTime>),
    /// Show this part of it.
    Part(LogPart),
    /// Learn a kitchen from this batch too, or not any more.
    LearnFrom(u32),
    /// Work out what the batches tell of the kitchen.
    Learn,
    /// Stop working it out.
    StopLearning,
    /// Calculate the open design for the kitchen that was learned.
    UseLearned,
    /// Save what was learned as a file.
    SaveKitchen,
    /// Choose the file of a kitchen, and calculate the open design for it.
    OpenKitchen,
    /// Compare the batch in sight with another; none: with no other.
    Beside(Option<u32>),
    /// Choose the table of a probe.
    ImportFrom,
    /// Read it in another way.
    ImportAs(ProbeWish),
    /// Write down what it gives.
    Import,
    /// Leave it.
    ImportNothing,
    /// Write all batches that are shown as a table.
    SaveTable,
    /// Look at the invented log, or leave it.
    Example(bool),
}

/// Something that is asked about the second design.
#[derive(Clone, Debug, PartialEq)]
pub enum SecondAsk {
    /// Make B a copy of A.
    Copy,
    /// Ask in which respect B is to be the same vat from this milk.
    Milk(MilkKind),
    /// Make B the same vat from this milk, like in this respect.
    MilkAlike(MilkKind, Alike),
    /// Choose a file and open its design as B.
    Open,
    /// Exchange the two.
    Swap,
    /// Save it where it was saved last.
    Save,
    /// Save it somewhere else.
    SaveAs,
    /// Write both side by side as PDF.
    Export,
    /// Put it away.
    PutAway,
    /// Take its choice over into the first.
    Take(&'static str),
    /// Give it the choice of the first.
    Give(&'static str),
}
