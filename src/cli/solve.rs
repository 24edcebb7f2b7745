//! `vatsketch solve`: the value of one choice that brings a figure to what is asked for.

use super::ending::{CliError, Ending};
use super::open;
use super::options::{DesignOptions, FormOptions};
use super::text::{with_notice, write_json, write_notice};
use crate::analysis::{Goal, Solved, solve};
use crate::batch::{batch, batch_after};
use crate::design::Value;
use crate::export::json_figure;
use serde_json::json;
use std::io::Write;

pub(super) fn run(
    options: &DesignOptions,
    goal: &str,
    choice: &str,
    form: &FormOptions,
    data: &mut dyn Write,
) -> Result<Ending, CliError> {
    let goal = read_goal(goal)?;
    let batch = batch(&open::design(options)?)?;
    let solved = solve(&batch, &goal, choice).map_err(|error| CliError::Arguments(error.to_string()))?;
    let answer = solved.answer();
    // What is warned of is the design that was found, not the one that was asked about.
    let mut found = batch.design.clone();
    found.set(answer.choice.key, Value::Number(answer.value))?;
    let (found, _) = batch_after(&found, Some(&batch))?;
    if form.json {
        write_json(
            with_notice(
                json!({
                "reached": matches!(solved, Solved::Reached(_)),
                "choice": answer.choice.key, "value": answer.value, "choice_unit": answer.choice.unit.symbol(),
                // The key by which it was asked for.
                "figure": goal.figure, "wanted": goal.wanted, "gives": json_figure(&answer.figure),
                "figure_unit": answer.figure.unit.symbol(),
                }),
                &found,
            ),
            data,
        )?;
    } else {
        writeln!(data, "{}", solved.in_words(&goal, form.shown.units))?;
        write_notice(&found, form.shown.units, data)?;
    }
    Ok(match solved {
        Solved::Reached(_) => Ending::Done,
        Solved::NotReachable { .. } => Ending::StageFailed,
    })
}

fn read_goal(text: &str) -> Result<Goal, CliError> {
    let wrong = || CliError::Arguments(format!("`{text}` must be written FIGURE=VALUE, as in dried_cheese_g=70"));
    let (figure, wanted) = text.split_once('=').ok_or_else(wrong)?;
    let wanted = wanted.trim().replace(',', ".").parse().map_err(|_| wrong())?;
    Ok(Goal { figure: figure.trim().to_owned(), wanted })
}
