//! Reports as bytes; nothing here writes.

mod pdf;

pub use pdf::{ExportError, Paper, pdf};
