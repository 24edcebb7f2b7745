//! The command line: the same path without a window. Data goes to one writer, words to another; nothing here exits.

mod arguments;
mod compare;
mod described;
mod ending;
mod export;
mod figures;
mod inputs;
mod open;
mod pickling;
mod plan;
mod sensitivity;
mod shop;
mod solve;
mod spread;
mod stage;
mod text;
mod week;
mod why;

pub use arguments::{Arguments, Command, WeekOptions};
pub use ending::Ending;

use clap::Parser;
use ending::CliError;
use std::ffi::OsString;
use std::io::Write;
use std::path::PathBuf;

/// What the arguments ask for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Asked {
    /// The window, with a file if one is named.
    Window(Option<PathBuf>),
    /// A command, which has run.
    Ran(Ending),
}

/// Runs a command line, or says that it asks for the window.
///
/// # Arguments
/// * `arguments`: with the program's name first
/// * `data`: where data goes; `words`: where words go
///
/// # Example
/// ```
/// use vatsketch::cli::{run, Asked, Ending};
/// let (mut data, mut words) = (Vec::new(), Vec::new());
/// let asked = run(["vatsketch", "example", "first-vat"], &mut data, &mut words);
/// assert_eq!(asked, Asked::Ran(Ending::Done));
/// assert!(String::from_utf8(data).unwrap().contains("format: 4"));
/// ```
pub fn run<T: Into<OsString> + Clone>(
    arguments: impl IntoIterator<Item = T>,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Asked {
    let parsed = match Arguments::try_parse_from(arguments) {
        Ok(parsed) => parsed,
        Err(error) => {
            let (to, ending): (&mut dyn Write, Ending) =
                if error.use_stderr() { (words, Ending::BadArguments) } else { (data, Ending::Done) };
            // A reader that has gone away needs no help text.
            let _ = write!(to, "{error}");
            return Asked::Ran(ending);
        }
    };
    let Some(command) = parsed.command else { return Asked::Window(parsed.file) };
    let result = match command {
        Command::Figures { file, set, json } => figures::run(&file, &set, json, data, words),
        Command::Inputs { json } => inputs::run(json, data),
        Command::Stage { name, set, json } => stage::run(&name, &set, json, data, words),
        Command::Export { file, to, set, curve, paper, week } => {
            let wanted = export::Wanted { to: &to, curve: curve.as_deref(), paper, week: &week };
            export::run(&file, &set, &wanted, words)
        }
        Command::Compare { first, second, milk, to, paper, json } => {
            let second = compare::Second { file: second.as_deref(), milk: milk.as_deref() };
            let output = match &to {
                Some(to) => compare::Output::Pages { to, paper },
                None if json => compare::Output::Json,
                None => compare::Output::Text,
            };
            compare::run(&first, &second, &output, data, words)
        }
        Command::Solve { file, goal, by, set, json } => solve::run((&file, &set), &goal, &by, json, data),
        Command::Plan { file, week, set, json } => plan::run((&file, &set), &week, json, data, words),
        Command::Shop { file, set, json } => shop::run((&file, &set), json, data, words),
        Command::Why { file, figure, set, json } => why::run((&file, &set), &figure, json, data),
        Command::Spread { file, draws, set, json } => spread::run((&file, &set), draws as usize, json, data, words),
        Command::Sensitivity { file, figure, set, json } => sensitivity::run((&file, &set), &figure, json, data),
        Command::Example { name } => inputs::example(&name, data),
    };
    Asked::Ran(match result {
        Ok(ending) => ending,
        // Whoever read our output has read enough.
        Err(CliError::Output(error)) if error.kind() == std::io::ErrorKind::BrokenPipe => Ending::Done,
        Err(error) => {
            // An error may quote a file, which need not be kind to the terminal.
            let _ = writeln!(words, "vatsketch: {}", crate::export::printable(&error.to_string()));
            error.ending()
        }
    })
}
