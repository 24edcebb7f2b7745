//! From a report to bytes; nothing is written here.

#[cfg(feature = "paper")]
mod chart;
mod error;
mod pdf;
#[cfg(feature = "paper")]
mod sheet;
#[cfg(feature = "paper")]
mod template;

pub use error::ExportError;
pub use pdf::{Paper, pdf};
