//! `vatsketch completions` and `vatsketch man`: made from the definition of the command line, so that they cannot differ from it.

use super::arguments::Arguments;
use super::ending::{CliError, Ending};
use crate::design::{did_you_mean, nearest};
use clap::CommandFactory;
use clap_complete::{Shell, generate};
use clap_mangen::Man;
use std::io::Write;

/// The program as a shell calls it.
const PROGRAM: &str = "vatsketch";

pub(super) fn completions(shell: Shell, data: &mut dyn Write) -> Result<Ending, CliError> {
    // In memory first, because the library breaks down where a reader has gone away.
    let mut script = Vec::new();
    generate(shell, &mut Arguments::command(), PROGRAM, &mut script);
    data.write_all(&script)?;
    Ok(Ending::Done)
}

pub(super) fn man(name: Option<&str>, data: &mut dyn Write) -> Result<Ending, CliError> {
    let mut program = Arguments::command();
    // So that every command knows what it is called in full.
    program.build();
    let command = match name {
        None => program,
        Some(name) => program.find_subcommand(name).cloned().ok_or_else(|| {
            let known: Vec<&str> = program.get_subcommands().map(clap::Command::get_name).collect();
            let meant = did_you_mean(nearest(name, known.iter().copied()));
            CliError::Arguments(format!("there is no command called `{name}`; there are {}{meant}", known.join(", ")))
        })?,
    };
    Man::new(command).render(data)?;
    Ok(Ending::Done)
}
