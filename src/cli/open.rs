//! Opening a design and setting inputs.

use super::ending::CliError;
use super::options::DesignOptions;
use crate::design::{Design, DesignError, Field};
use crate::file::{DesignFile, read_kitchen};
use crate::session::clear_note_of_example;
use std::path::{Path, PathBuf};

/// What errors call standard input.
const STANDARD_INPUT: &str = "standard input";

/// Returns whether a file stands for standard input.
fn is_standard_input(path: &Path) -> bool {
    path.as_os_str() == "-"
}

/// Returns what errors call a file.
pub(super) fn named(path: &Path) -> PathBuf {
    if is_standard_input(path) { PathBuf::from(STANDARD_INPUT) } else { path.to_owned() }
}

/// Reads a design from a file, or from standard input if the file is named `-`.
pub(super) fn file(path: &Path) -> Result<DesignFile, CliError> {
    Ok(if is_standard_input(path) { DesignFile::read_from(std::io::stdin(), STANDARD_INPUT)? } else { DesignFile::read(path)? })
}

/// Reads a design and sets inputs in it.
pub(super) fn design(options: &DesignOptions) -> Result<Design, CliError> {
    design_file(options).map(|file| file.design)
}

/// Reads a design with its id, as [`design`] reads it.
pub(super) fn design_file(options: &DesignOptions) -> Result<DesignFile, CliError> {
    let mut file = file(&options.file)?;
    if let Some(kitchen) = &options.kitchen {
        file.design.use_kitchen(read_kitchen(kitchen)?)?;
    }
    for assignment in &options.set {
        let (key, text) = split(assignment)?;
        let field = crate::design::field(key)?;
        let value = field.read(text)?;
        field.set(&mut file.design, value)?;
    }
    if !options.set.is_empty() {
        clear_note_of_example(&mut file.design);
    }
    Ok(file)
}

/// Returns key and value of `KEY=VALUE`.
pub(super) fn split(assignment: &str) -> Result<(&str, &str), CliError> {
    assignment
        .split_once('=')
        .ok_or_else(|| CliError::Arguments(format!("`{assignment}` must be written KEY=VALUE, as in milk_l=7.5")))
}

/// Sets an input of some fields in what they belong to; returns whether one of them has that key.
pub(super) fn set_in<D: Default>(fields: &[&'static Field<D>], owner: &mut D, key: &str, text: &str) -> Result<bool, DesignError> {
    let Some(field) = fields.iter().find(|field| field.key == key) else { return Ok(false) };
    let value = field.read(text)?;
    field.set(owner, value)?;
    Ok(true)
}
