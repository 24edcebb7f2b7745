//! The log as a file: one entry a line, each with its check, added to and never written over.

mod append;
mod checked;
mod log_file;
mod lost;
mod read;
mod repair;
mod v1;

pub use log_file::LogFile;
pub use lost::{LostLine, WhyLost};
