//! Arguments to window or command line; the only place that exits.

use std::path::Path;
use std::process::ExitCode;
use vatsketch::cli::{Asked, Ending, run};

fn main() -> ExitCode {
    match run(std::env::args_os(), &mut std::io::stdout(), &mut std::io::stderr()) {
        Asked::Ran(ending) => ExitCode::from(ending as u8),
        Asked::Window(file) => open_window(file.as_deref()),
    }
}

/// Opens the window; where none can be had, says so in one sentence.
#[cfg(feature = "gui")]
fn open_window(file: Option<&Path>) -> ExitCode {
    match vatsketch::ui::run(file) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("vatsketch: {error}");
            ExitCode::from(Ending::NoWindow as u8)
        }
    }
}

/// Says that this program was built without a window.
#[cfg(not(feature = "gui"))]
fn open_window(_file: Option<&Path>) -> ExitCode {
    eprintln!("vatsketch: this program was built without a window; `vatsketch --help` lists what the command line does");
    ExitCode::from(Ending::NoWindow as u8)
}
