//! The command line: the same path without a window. Data goes to one writer, words to another; nothing here exits.

mod alone;
mod arguments;
mod columns;
mod compare;
mod definition;
mod described;
mod destination;
mod ending;
mod export;
mod figures;
mod germs;
mod inputs;
mod lift;
mod log;
mod mistyped;
mod named;
mod open;
mod options;
mod parameters;
mod pickling;
mod plan;
mod scale;
mod sensitivity;
mod shop;
mod side_by_side;
mod solve;
mod souring;
mod spread;
mod stage;
mod stage_alone;
mod text;
mod week;
mod why;

pub use arguments::{Arguments, Command};
pub use ending::Ending;
pub use log::{EntryOptions, LogCommand};
pub use options::{
    DesignOptions, FigureOptions, FormOptions, OutputOptions, PaperChoice, PaperOptions, ParameterOptions, ScaleOptions,
    StageOptions, UnitOptions, WeekOptions,
};
pub use stage_alone::StageAlone;

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
/// assert!(String::from_utf8(data).unwrap().contains("format: 7"));
/// ```
pub fn run<T: Into<OsString> + Clone>(
    arguments: impl IntoIterator<Item = T>,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Asked {
    let arguments: Vec<OsString> = arguments.into_iter().map(Into::into).collect();
    if let Err(error) = mistyped::check(arguments.get(1).map(OsString::as_os_str)) {
        return Asked::Ran(refused(&error, words));
    }
    let parsed = match Arguments::try_parse_from(arguments) {
        Ok(parsed) => parsed,
        Err(error) => {
            let (to, ending): (&mut dyn Write, Ending) =
                if error.use_stderr() { (words, Ending::BadArguments) } else { (data, Ending::Done) };
            // A reader that has gone away needs no help text.
            let _ = write!(to, "{}", crate::export::printable(&error.to_string()));
            return Asked::Ran(ending);
        }
    };
    let Some(command) = parsed.command else { return Asked::Window(parsed.file) };
    let result = match command {
        Command::Figures { design, parameters, form } => figures::run(&design, &parameters, &form, data, words),
        Command::Inputs { form } => inputs::run(&form, data),
        Command::Stage { name, how } => alone::run(name, &how, data, words),
        Command::Export { design, output, curve, paper, with, week, shown } => {
            let wanted = export::Wanted { output: &output, curve, paper: paper.size, with: &with, week: &week, units: shown.units };
            export::run(&design, &wanted, data, words)
        }
        Command::Compare { first, second, milk, alike, output, paper, form } => {
            let second = compare::Second { file: second.as_deref(), milk, alike };
            let wanted = compare::Wanted { output: &output, json: form.json, paper: paper.size };
            compare::run(&first, &second, &wanted, form.shown.units, data, words)
        }
        Command::Solve { design, goal, by, form } => solve::run(&design, &goal, &by, &form, data),
        Command::Scale { design, goal, to, form } => scale::run(&design, goal, to.as_deref(), &form, data, words),
        Command::Lift { design, pin, in_turn, form } => {
            let wanted = lift::Wanted { pins: &pin, in_turn: in_turn.map(|most| most as usize) };
            lift::run(&design, &wanted, &form, data, words)
        }
        Command::Log { file, what } => log::run(&file, what.as_ref(), data, words),
        Command::Plan { design, week, form } => plan::run(&design, &week, &form, data, words),
        Command::Shop { design, form } => shop::run(&design, &form, data, words),
        Command::Why { design, figure, form } => why::run(&design, &figure, &form, data),
        Command::Spread { design, draws, trials, form } => {
            spread::run(&design, &spread::Wanted { draws: draws as usize, trials }, &form, data, words)
        }
        Command::Sensitivity { design, figure, form } => sensitivity::run(&design, &figure, &form, data),
        Command::Completions { shell } => definition::completions(shell, data),
        Command::Man { command } => definition::man(command.as_deref(), data),
        Command::Example { name } => inputs::example(name, data),
    };
    Asked::Ran(match result {
        Ok(ending) => ending,
        // Whoever read our output has read enough.
        Err(CliError::Output(error)) if error.kind() == std::io::ErrorKind::BrokenPipe => Ending::Done,
        Err(error) => refused(&error, words),
    })
}

/// Says why a command cannot be carried out, and returns how it ends.
fn refused(error: &CliError, words: &mut dyn Write) -> Ending {
    // An error may quote a file, which need not be kind to the terminal.
    let _ = writeln!(words, "vatsketch: {}", crate::export::printable(&error.to_string()));
    error.ending()
}
