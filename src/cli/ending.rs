//! How a command ends, well or not.

use std::path::PathBuf;

/// How a command ended; the number is the exit code.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ending {
    /// Everything was calculated.
    Done = 0,
    /// A stage could not be calculated, or a goal or a time not be reached; what could be was printed.
    StageFailed = 1,
    /// The arguments are wrong.
    BadArguments = 2,
    /// A file cannot be read or written.
    FileTrouble = 3,
    /// The window cannot be opened: there is no display or no driver, or the program was built without a window.
    NoWindow = 4,
}

/// A command that cannot be carried out.
#[derive(Debug, thiserror::Error)]
pub(super) enum CliError {
    #[error("{0}")]
    Arguments(String),
    #[error(transparent)]
    Design(#[from] crate::design::DesignError),
    #[error(transparent)]
    File(#[from] crate::file::FileError),
    /// Something that the file says, and that shows only when it is used.
    #[error("{}: {why}; correct it in a text editor or in the window", file.display())]
    InFile { file: PathBuf, why: String },
    #[error("{0}")]
    Stage(String),
    #[error(transparent)]
    Export(#[from] crate::export::ExportError),
    #[error("cannot write the output: {0}")]
    Output(#[from] std::io::Error),
}

impl CliError {
    /// Returns how a command ends that meets it.
    pub(super) const fn ending(&self) -> Ending {
        match self {
            Self::Arguments(_) | Self::Design(_) => Ending::BadArguments,
            Self::File(_) | Self::InFile { .. } | Self::Output(_) => Ending::FileTrouble,
            Self::Stage(_) | Self::Export(_) => Ending::StageFailed,
        }
    }
}
