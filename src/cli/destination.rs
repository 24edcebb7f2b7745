//! Where something is written, and as what: into a file by the ending of its name, or to standard output.

use super::ending::CliError;
use super::options::OutputOptions;
use crate::export::{Format, printable};
use crate::file::{is_pipe_or_device, write_safely};
use std::io::Write;
use std::path::Path;

/// A place that takes one kind of bytes.
#[derive(Clone, Copy, Debug)]
pub(super) struct Destination<'a> {
    /// None for standard output.
    file: Option<&'a Path>,
    /// What is written there.
    pub(super) format: Format,
}

impl<'a> Destination<'a> {
    /// Returns where to write and as what, before anything is read or calculated.
    ///
    /// # Arguments
    /// * `of`: the kinds that can be written
    pub(super) fn of(options: &'a OutputOptions, of: impl Fn(Format) -> bool) -> Result<Option<Self>, CliError> {
        let Some(to) = options.to.as_deref() else {
            return match options.kind {
                Some(_) => Err(CliError::Arguments("--as says what to write, and --to where; add --to, as in --to -".to_owned())),
                None => Ok(None),
            };
        };
        let file = Some(to).filter(|to| to.as_os_str() != "-");
        let endings = Format::endings(&of);
        let Some(format) = options.kind.or_else(|| Format::from_ending(&to.extension()?.to_string_lossy())) else {
            let name = to.display();
            return Err(CliError::Arguments(match file {
                Some(_) => format!("cannot write `{name}`: the name must end in {endings}, or add --as, as in --as pdf"),
                None => format!("--to - writes to standard output; add --as ({endings}), as in --as pdf"),
            }));
        };
        if of(format) {
            Ok(Some(Self { file, format }))
        } else {
            Err(CliError::Arguments(format!("cannot write `{}` as .{}; choose {endings}", to.display(), format.ending())))
        }
    }

    /// Returns what the file holds before it is written; nothing where it is none.
    pub(super) fn before(&self) -> Vec<u8> {
        let file = self.file.filter(|path| !is_pipe_or_device(path));
        file.and_then(|path| std::fs::read(path).ok()).unwrap_or_default()
    }

    /// Writes the bytes; of a file it says that it was written, of standard output nothing.
    pub(super) fn write(&self, bytes: &[u8], data: &mut dyn Write, words: &mut dyn Write) -> Result<(), CliError> {
        let Some(path) = self.file else {
            data.write_all(bytes)?;
            return Ok(data.flush()?);
        };
        write_safely(path, bytes, false)?;
        Ok(writeln!(words, "wrote {}", printable(&path.display().to_string()))?)
    }
}
