//! A history and a starter as they are written on the command line.

use super::settings::{ACETIC, LACTIC, PH, Setting, TEMPERATURE, WATER};
use crate::cli::ending::CliError;
use crate::law::growth::{Conditions, LogisticCrowd, Moment};

const HOURS: Setting = Setting { key: "hours", label: "Time", unit: "h", least: 0.0, most: 20_000.0, otherwise: "" };
const STARTER_START: Setting =
    Setting { key: "starter", label: "Starter at the start", unit: "log₁₀ per g", least: 0.0, most: 12.0, otherwise: "" };
const STARTER_RATE: Setting =
    Setting { key: "starter", label: "Rate of the starter", unit: "per hour", least: 0.0, most: 5.0, otherwise: "" };
const STARTER_MOST: Setting =
    Setting { key: "starter", label: "Greatest number of the starter", unit: "per g", least: 1.0, most: 1e12, otherwise: "" };

/// How a row is written.
const ROW: &str =
    "a row is hours:temperature:pH:water activity:lactic:acetic, as in 36:21:6.5:0.988:0:0, and its acids may be left out";

/// Reads a history: rows joined by |.
pub(super) fn history(text: &str) -> Result<Vec<Moment>, CliError> {
    let moments: Vec<Moment> = text.split('|').enumerate().map(|(at, row)| moment(at + 1, row)).collect::<Result<_, _>>()?;
    let begins = moments.first().is_some_and(|first| first.at_h == 0.0);
    let ascends = moments.is_sorted_by(|before, after| before.at_h <= after.at_h);
    let lasts = moments.last().is_some_and(|last| last.at_h > 0.0);
    if begins && ascends && lasts {
        return Ok(moments);
    }
    Err(CliError::Arguments(format!(
        "the hours of `history` must begin at 0, never go back and end later than they begin, but `{text}` was given; {ROW}, and rows are joined by |"
    )))
}

fn moment(number: usize, row: &str) -> Result<Moment, CliError> {
    let parts: Vec<&str> = row.split(':').collect();
    let (hours, temperature, ph, water, acids) = match parts.as_slice() {
        [hours, temperature, ph, water, acids @ ..] if acids.len() <= 2 => (hours, temperature, ph, water, acids),
        _ => return Err(CliError::Arguments(format!("row {number} of `history`, `{row}`, has {} parts; {ROW}", parts.len()))),
    };
    let read = |setting: &Setting, text: &str| {
        setting.read(text).map_err(|error| CliError::Arguments(format!("row {number} of `history`: {error}; {ROW}")))
    };
    let acid = |setting: &Setting, text: Option<&&str>| text.map_or(Ok(0.0), |text| read(setting, text));
    Ok(Moment {
        at_h: read(&HOURS, hours)?,
        conditions: Conditions {
            temperature_c: read(&TEMPERATURE, temperature)?,
            ph: read(&PH, ph)?,
            water_activity: read(&WATER, water)?,
            lactic_mm: acid(&LACTIC, acids.first())?,
            acetic_mm: acid(&ACETIC, acids.get(1))?,
        },
    })
}

/// Reads a starter: log₁₀ of its start, rate per hour and greatest density, joined by semicolons.
pub(super) fn starter(text: &str) -> Result<LogisticCrowd, CliError> {
    let wrong = |why: &str| {
        CliError::Arguments(format!(
            "`starter` must be the log₁₀ per g at the start, the rate per hour and the greatest number per g, as in 6.6;0.85;1.5e9, but `{text}` {why}"
        ))
    };
    let parts: Vec<&str> = text.split(';').collect();
    let [start, rate, most] = parts.as_slice() else { return Err(wrong(&format!("has {} parts", parts.len()))) };
    let crowd = LogisticCrowd {
        start_log: STARTER_START.read(start)?,
        rate_per_h: STARTER_RATE.read(rate)?,
        most_per_g: STARTER_MOST.read(most)?,
    };
    let has_room = crowd.start_log <= crowd.most_per_g.log10();
    if has_room { Ok(crowd) } else { Err(wrong("starts with more than its greatest number")) }
}
