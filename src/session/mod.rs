//! The open design and what was done to it: commands, undo, the dirty mark, the last change in words; no widget.

mod aim;
mod appearance;
mod background;
mod change;
mod command;
mod draws;
mod error;
mod examples;
mod fault;
mod jobs;
mod now;
mod open;
mod open_design;
mod recent;
mod recovery;
mod saved;
mod second;
mod undo;

pub use aim::{AimError, TargetChoice};
pub use appearance::{Appearance, Colours, KeptAppearance};
pub use background::Background;
pub use change::what_changed;
pub use command::Command;
pub use draws::{Work, cores, spread};
pub use error::SessionError;
pub use examples::{EXAMPLES, Example};
pub use fault::FaultLog;
pub use jobs::{Sensitivity, SensitivityJob, SpreadJob};
pub use now::{WallClock, now};
pub use open::Session;
pub use open_design::OpenDesign;
pub use recent::Recent;
pub use recovery::{LeftBehind, Recovery, WAIT_S};
pub use saved::Saved;
pub use undo::{History, Step};
