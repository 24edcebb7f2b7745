//! `log estimate`: what the log says about this kitchen.

use super::open;
use super::table::write_table;
use crate::cli::ending::{CliError, Ending};
use crate::cli::options::FormOptions;
use crate::cli::text::write_json;
use crate::file::{kitchen_to_text, write_safely};
use crate::kitchen::{Belief, LearnError, Learned, LearnedKitchen, learn, newest};
use crate::record::BatchRecord;
use crate::units::Units;
use crate::words::{FROM_A_MODEL, KitchenRow, NOTHING_TOLD, kitchen_rows, nearness_words, untold_words};
use serde_json::json;
use std::io::Write;
use std::path::Path;

pub(super) fn run(
    file: &Path,
    numbers: &[u32],
    (save, name): (Option<&Path>, Option<&str>),
    form: &FormOptions,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let log = open::read(file, words)?;
    let records: Vec<&BatchRecord> = if numbers.is_empty() {
        newest(&log.log.batches).iter().collect()
    } else {
        numbers.iter().map(|number| log.log.batch(*number)).collect::<Result<_, _>>()?
    };
    let kitchen = learn(&records).map_err(|error| match error {
        LearnError::NothingMeasured | LearnError::NotFinite | LearnError::Stopped => CliError::Stage(error.to_string()),
        LearnError::Design(error) => CliError::Design(error),
    })?;
    if let Some(to) = save {
        if kitchen.told().next().is_none() {
            return Err(CliError::Stage(NOTHING_TOLD.to_owned()));
        }
        let name = name.map_or_else(|| named_after(to), str::to_owned);
        write_safely(to, kitchen_to_text(&kitchen.known(&name, &records)).as_bytes(), true)?;
        writeln!(
            words,
            "Saved the kitchen “{name}” in {}. A design is calculated for it with --kitchen {}.",
            to.display(),
            to.display()
        )?;
    }
    if form.json {
        write_json(to_json(&kitchen, &records), data)?;
    } else {
        write_text(&kitchen, &records, form.shown.units, data)?;
    }
    Ok(open::ending(&log))
}

/// Returns what a kitchen is called that has no name: that of its file.
fn named_after(file: &Path) -> String {
    let name = file.file_name().unwrap_or_default().to_string_lossy();
    name.trim_end_matches(".ron").trim_end_matches(".kitchen").to_owned()
}

/// The value of an unknown, now and between which it lies in eight cases of ten, now and before.
struct Shown {
    value: f64,
    likely: (f64, f64),
    before: (f64, f64),
    unit: &'static str,
}

fn shown(kitchen: &LearnedKitchen, learned: &Learned) -> Shown {
    let Learned { unknown, belief } = *learned;
    let (value, unit) = unknown.value(&kitchen.design);
    let times = |(least, most): (f64, f64)| (least * value, most * value);
    let before = times(Belief::before(unknown, &kitchen.design).likely);
    Shown { value: belief.factor * value, likely: times(belief.likely), before, unit: if unit == "1" { "" } else { unit } }
}

fn write_text(kitchen: &LearnedKitchen, records: &[&BatchRecord], units: Units, data: &mut dyn Write) -> Result<(), CliError> {
    let rows: Vec<[String; 3]> = kitchen_rows(&kitchen.known("", records), units).iter().map(cells).collect();
    if rows.is_empty() {
        writeln!(data, "{NOTHING_TOLD}")?;
    } else {
        write_table(["your kitchen", "your log suggests (8 of 10)", "any kitchen"], &rows, data)?;
    }
    writeln!(data, "\n{}", nearness_words(kitchen))?;
    if let Some(untold) = untold_words(kitchen) {
        writeln!(data, "{untold}")?;
    }
    writeln!(data, "{FROM_A_MODEL}")?;
    Ok(())
}

fn cells(row: &KitchenRow) -> [String; 3] {
    let now = format!("{} ({})", row.value, row.now);
    [row.what.clone(), now, row.before.clone()]
}

fn to_json(kitchen: &LearnedKitchen, records: &[&BatchRecord]) -> serde_json::Value {
    let constant = |learned: &Learned| {
        let Shown { value, likely, before, unit } = shown(kitchen, learned);
        json!({
            "key": learned.unknown.key(), "words": learned.unknown.words(), "unit": unit, "value": value,
            "likely": [likely.0, likely.1], "likely_before": [before.0, before.1], "told": learned.is_told(),
        })
    };
    json!({
        "batches": records.iter().map(|record| record.number).collect::<Vec<_>>(), "measurements": kitchen.measurements,
        "error_before": kitchen.before, "error_after": kitchen.after,
        "constants": kitchen.learned.iter().map(constant).collect::<Vec<_>>(), "notice": FROM_A_MODEL,
    })
}
