//! `log begin`, `log add` and `log correct`: what writes into a log.

use super::EntryOptions;
use super::next::check_task;
use super::open;
use super::shown::{entry_json, iso};
use crate::cli::ending::{CliError, Ending};
use crate::cli::open::design_file;
use crate::cli::options::{DesignOptions, FormOptions};
use crate::cli::text::write_json;
use crate::export::printable;
use crate::file::{LogFile, MOST_TITLE};
use crate::record::{EntryKind, EntryValue};
use crate::report::{earlier_words, entry_words, short_moment};
use serde_json::json;
use std::io::Write;
use std::path::Path;

/// Where data goes, and where words go.
type Writers<'data, 'words> = (&'data mut dyn Write, &'words mut dyn Write);

/// What the name of a log ends in.
const ENDING: &str = ".log.ron";

pub(super) fn begin(
    file: &Path,
    (design, name): (&DesignOptions, &str),
    when: &EntryOptions,
    form: &FormOptions,
    (data, words): Writers<'_, '_>,
) -> Result<Ending, CliError> {
    let there = std::fs::symlink_metadata(file).is_ok();
    if !there && !file.to_string_lossy().ends_with(ENDING) {
        return Err(CliError::Arguments(format!("cannot begin `{}`: the name of a log must end in {ENDING}", file.display())));
    }
    let letters = name.chars().count();
    if letters > MOST_TITLE {
        return Err(CliError::Arguments(format!("the name has {letters} letters, and at most {MOST_TITLE} are kept; shorten it")));
    }
    let source = design_file(design)?;
    let mut log = if there { open::read(file, words)? } else { LogFile::default() };
    let now = open::now(when, &source.design.week)?;
    let at = open::given(when, &source.design.week)?.unwrap_or(now.at);
    let zone = now.zone.iana_name().unwrap_or_default();
    let number = log.log.begin_in(zone, name, at, source.design, source.id);
    open::append(&mut log, file, words)?;
    if form.json {
        write_json(json!({ "batch": number, "begun": iso(at) }), data)?;
    }
    writeln!(words, "began {} in {}", printable(&log.log.batch(number)?.title()), printable(&file.display().to_string()))?;
    Ok(Ending::Done)
}

pub(super) fn add(
    file: &Path,
    (batch, kind, value): (Option<u32>, EntryKind, &str),
    when: &EntryOptions,
    form: &FormOptions,
    (data, words): Writers<'_, '_>,
) -> Result<Ending, CliError> {
    let mut log = open::read(file, words)?;
    let record = open::batch(&log, batch)?;
    let (number, week) = (record.number, &record.design.week);
    let at = open::given(when, week)?.map_or_else(|| Ok(open::now(when, week)?.at), Ok::<_, CliError>)?;
    let value = EntryValue::read(kind, value)?;
    if kind == EntryKind::TaskBegun {
        check_task(&crate::batch::batch(&record.design)?, kind, &value)?;
    }
    let entry = log.log.enter(number, at, kind, value)?;
    open::append(&mut log, file, words)?;
    say(&log, entry, form, (data, words))
}

pub(super) fn correct(
    file: &Path,
    (number, value, take_back): (u32, Option<&str>, bool),
    when: &EntryOptions,
    form: &FormOptions,
    (data, words): Writers<'_, '_>,
) -> Result<Ending, CliError> {
    let mut log = open::read(file, words)?;
    let found = log.log.batches.iter().find_map(|batch| Some((batch, batch.entries.iter().find(|entry| entry.number == number)?)));
    let (batch, old) = found.ok_or(crate::record::RecordError::NoEntry { number })?;
    let at = open::given(when, &batch.design.week)?;
    let value = match value {
        _ if take_back => EntryValue::Withdrawn,
        Some(value) => EntryValue::read(old.kind, value)?,
        None if at.is_some() => old.value.clone(),
        None => {
            return Err(CliError::Arguments("say what is right: a value, a time with --at, or --take-back".to_owned()));
        }
    };
    let entry = log.log.correct(number, at, value)?;
    open::append(&mut log, file, words)?;
    say(&log, entry, form, (data, words))
}

/// Says what was written down.
fn say(log: &LogFile, number: u32, form: &FormOptions, (data, words): Writers<'_, '_>) -> Result<Ending, CliError> {
    let units = form.shown.units;
    let written =
        log.log.batches.iter().find_map(|batch| Some((batch, batch.entries.iter().find(|entry| entry.number == number)?)));
    if let Some((batch, entry)) = written {
        let (value, before) = (entry_words(entry, units), earlier_words(batch, entry, units));
        let said = format!(
            "wrote down in {}: {}, {}: {value}{before} (entry {number})",
            batch.title(),
            short_moment(entry.at, units),
            entry.kind.row().label
        );
        if form.json {
            let mut json = entry_json(entry);
            if let Some(members) = json.as_object_mut() {
                members.insert("batch".to_owned(), json!(batch.number));
            }
            write_json(json, data)?;
        }
        writeln!(words, "{}", printable(&said).replace('\u{a0}', " "))?;
    }
    Ok(Ending::Done)
}
