//! The open design and what was done to it: commands, undo, the dirty mark, the last change in words; no widget.

mod change;
mod command;
mod open;
mod undo;

pub use change::what_changed;
pub use command::Command;
pub use open::{Session, SessionError};
pub use undo::{History, Step};
