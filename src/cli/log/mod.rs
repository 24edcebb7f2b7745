//! `vatsketch log`: what really happened, written down and laid beside the plan.

mod across;
mod against;
mod asked;
mod enter;
mod estimate;
mod import;
mod list;
mod next;
mod open;
mod shown;
mod table;

pub use asked::{EntryOptions, LogCommand};

use super::ending::{CliError, Ending};
use super::options::FormOptions;
use std::io::Write;
use std::path::Path;

pub(super) fn run(file: &Path, what: Option<&LogCommand>, data: &mut dyn Write, words: &mut dyn Write) -> Result<Ending, CliError> {
    match what {
        None => list::run(file, None, &FormOptions::default(), data, words),
        Some(LogCommand::List { batch, form }) => list::run(file, *batch, form, data, words),
        Some(LogCommand::Fields { batch, form }) => list::fields(file, *batch, form, data, words),
        Some(LogCommand::Begin { design, name, when, form }) => enter::begin(file, (design, name), when, form, (data, words)),
        Some(LogCommand::Add { kind, value, batch, when, form }) => {
            enter::add(file, (*batch, *kind, value), when, form, (data, words))
        }
        Some(LogCommand::Correct { entry, value, take_back, when, form }) => {
            enter::correct(file, (*entry, value.as_deref(), *take_back), when, form, (data, words))
        }
        Some(LogCommand::Import { kind, table, time, value, dates, batch, preview, form }) => {
            let wanted = import::Wanted { kind: *kind, time: time.as_deref(), value: value.as_deref(), order: *dates };
            import::run(file, (table, &wanted), *batch, (*preview, form), data, words)
        }
        Some(LogCommand::Across { search, csv, form }) => across::run(file, (search, *csv, form), data, words),
        Some(LogCommand::Next(options)) => next::run(file, options, data, words),
        Some(LogCommand::Against { batch, form }) => against::run(file, *batch, form, data, words),
        Some(LogCommand::Estimate { batches, save, name, form }) => {
            estimate::run(file, batches, (save.as_deref(), name.as_deref()), form, data, words)
        }
        Some(LogCommand::Changed { a, b, form }) => against::changed(file, (*a, *b), form, data, words),
    }
}

impl From<crate::record::RecordError> for CliError {
    fn from(error: crate::record::RecordError) -> Self {
        Self::Arguments(error.to_string())
    }
}
