//! `vatsketch export`: the plan as a file.

use super::arguments::PaperChoice;
use super::{CliError, Ending, open};
use crate::batch::batch;
use crate::export::{Paper, pdf};
use crate::file::write_safely;
use crate::report::plan;
use std::io::Write;
use std::path::Path;

pub(super) fn run(path: &Path, set: &[String], to: &Path, paper: PaperChoice, words: &mut dyn Write) -> Result<Ending, CliError> {
    let ending = to.extension().map(|ending| ending.to_string_lossy().to_lowercase()).unwrap_or_default();
    if ending != "pdf" {
        return Err(CliError::Arguments(format!("cannot write `{}`: the name must end in .pdf", to.display())));
    }
    let batch = batch(&open::design(path, set)?)?;
    let paper = match paper {
        PaperChoice::A4 => Paper::A4,
        PaperChoice::Letter => Paper::Letter,
    };
    let bytes = pdf(&plan(&batch), paper).map_err(|error| CliError::Stage(error.to_string()))?;
    write_safely(to, &bytes, false)?;
    writeln!(words, "wrote {}", to.display())?;
    Ok(if batch.drying.done().is_some() { Ending::Done } else { Ending::StageFailed })
}
