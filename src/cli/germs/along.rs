//! How far an organism could grow along a history, alone or beside a starter.

use super::given::Given;
use super::organism::{Law, Organism};
use super::place::outside_law;
use crate::cli::ending::{CliError, Ending};
use crate::cli::options::FormOptions;
use crate::cli::text::{write_json, write_pairs};
use crate::law::growth::{Conditions, Germ, Moment, Start, beside_crowd, dose_along, increase_capped_log10, increase_log10};
use crate::words::POTENTIAL_GROWTH;
use serde_json::json;
use std::io::Write;

/// What is given by the history and may not be given again.
const BY_THE_HISTORY: [&str; 5] = ["temperature_c", "ph", "water_activity", "lactic_mm", "acetic_mm"];

pub(super) fn run(
    organism: &Organism,
    history: &[Moment],
    given: &Given,
    form: &FormOptions,
    data: &mut dyn Write,
) -> Result<Ending, CliError> {
    check(organism, history, given)?;
    let h0 = given.h0().or_else(|| organism.germ().map(Germ::h0)).unwrap_or_default();
    let rate = |at: &Conditions| organism.rate_per_h(at, given.citric_mm()).unwrap_or_default();
    let dose = dose_along(rate, history);
    let start_log = given.start_log();
    let grown = |h0: f64| match (organism.germ(), start_log, &given.starter) {
        (Some(germ), Some(start_log), Some(starter)) => {
            let start = Start { start_log, most_log: germ.most_log(), h0 };
            beside_crowd(rate, history, |at_h| starter.share(at_h), &start)
        }
        (Some(germ), Some(start_log), None) => increase_capped_log10(dose, h0, start_log, germ.most_log()),
        _ => increase_log10(dose, h0),
    };
    let (free, with_lag) = (grown(0.0), grown(h0));
    let most_log = start_log.and(organism.germ()).map(Germ::most_log);
    if form.json {
        let json = json!({
            "organism": organism.key, "name": organism.name, "dose": dose, "h0": h0, "start_log": start_log, "most_log": most_log,
            "beside_starter": given.starter.is_some(), "increase_log10": free, "increase_with_lag_log10": with_lag, "notice": POTENTIAL_GROWTH,
        });
        write_json(json, data)?;
        return Ok(Ending::Done);
    }
    let hours = history.last().map_or(0.0, |last| last.at_h);
    let beside = if given.starter.is_some() { " beside a starter" } else { "" };
    writeln!(data, "{} along a history of {hours:.1} h{beside}", organism.name)?;
    let mut pairs = vec![
        ("Dose of growth, ln".to_owned(), format!("{dose:.2}")),
        ("Potential increase, free of lag".to_owned(), format!("{free:.2} log₁₀")),
        (format!("Potential increase, with a lag of work {h0}"), format!("{with_lag:.2} log₁₀")),
    ];
    if let (Some(start), Some(most)) = (start_log, most_log) {
        pairs.push(("Counted from and up to".to_owned(), format!("{start:.1} to {most:.1} log₁₀ per g")));
    }
    write_pairs(&pairs, data)?;
    writeln!(data, "\n{POTENTIAL_GROWTH}")?;
    Ok(Ending::Done)
}

/// Refuses what cannot be calculated along a history.
fn check(organism: &Organism, history: &[Moment], given: &Given) -> Result<(), CliError> {
    if let Some(key) = given.set_of(&BY_THE_HISTORY) {
        return Err(CliError::Arguments(format!("`{key}` is given by the history, row for row; leave one of the two out")));
    }
    if organism.law == Law::Mould {
        return Err(CliError::Arguments(
            "a mould has a radius and no numbers to follow along a history; leave the history out, or choose another organism"
                .to_owned(),
        ));
    }
    // A box of conditions holds every straight line between two of its points, so the rows are enough.
    if let Some(row) = history.iter().position(|moment| organism.rate_per_h(&moment.conditions, 0.0).is_none()) {
        return Err(outside_law(Some(row + 1)));
    }
    let counts_numbers = given.starter.is_some() || given.start_log().is_some();
    if counts_numbers && organism.germ().is_none() {
        return Err(CliError::Arguments(format!(
            "no greatest density is known for {}, so `starter` and `start_log` have no effect; leave them out, or choose a germ such as listeria",
            organism.key
        )));
    }
    Ok(())
}
