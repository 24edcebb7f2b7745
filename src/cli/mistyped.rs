//! A first word that is neither a command nor a file.

use super::arguments::Arguments;
use super::ending::CliError;
use crate::design::{did_you_mean, nearest};
use clap::CommandFactory;
use std::ffi::OsStr;
use std::path::Path;

/// Refuses a first word that is no option, no command and no file, naming the command that was perhaps meant; a word with a point or a
/// slash in it is left to whoever opens files.
pub(super) fn check(first: Option<&OsStr>) -> Result<(), CliError> {
    let Some(first) = first else { return Ok(()) };
    let word = first.to_string_lossy();
    if word.is_empty() || word.starts_with('-') || word.contains(['.', '/', '\\']) || Path::new(first).exists() {
        return Ok(());
    }
    let command = Arguments::command();
    let known: Vec<&str> = command
        .get_subcommands()
        .flat_map(|known| std::iter::once(known.get_name()).chain(known.get_all_aliases()))
        .chain(["help"])
        .collect();
    if known.contains(&word.as_ref()) {
        return Ok(());
    }
    let meant = did_you_mean(nearest(&word, known.into_iter()));
    Err(CliError::Arguments(format!(
        "there is no command and no file called `{word}` (`vatsketch --help` lists the commands){meant}"
    )))
}
