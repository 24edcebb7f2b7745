//! `vatsketch scale`: the whole design scaled, what follows, and the scaled design as a file.

use super::ending::{CliError, Ending};
use super::open;
use super::options::{DesignOptions, FormOptions, ScaleOptions};
use super::side_by_side::write_columns;
use super::text::{with_notice, write_failures, write_json, write_notice};
use crate::analysis::{ScaleGoal, ScaleTo, ScaledChoice, compare, differing_choices};
use crate::batch::{Batch, batch};
use crate::caution::Caution;
use crate::export::{json_figure, printable};
use crate::file::{DesignFile, is_pipe_or_device};
use crate::report::ScalePreview;
use crate::session::{Command, ScaleTrial, Session, SessionError};
use crate::units::Units;
use crate::words::{KEPT_IN_SCALING, caution_line, caution_words};
use serde_json::{Value, json};
use std::io::Write;
use std::path::Path;

pub(super) fn run(
    options: &DesignOptions,
    goal: ScaleOptions,
    to: Option<&Path>,
    form: &FormOptions,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let goal = goal_of(goal)?;
    let written_out = to.is_some_and(|to| to.as_os_str() == "-");
    check_name(to, written_out && form.json)?;
    let before = batch(&open::design(options)?)?;
    let units = form.shown.units;
    let trial = ScaleTrial::of(&before, goal, units).map_err(|error| CliError::Arguments(error.in_words(units)))?;
    match to {
        Some(_) if written_out => write!(data, "{}", DesignFile { id: None, design: trial.after.design.clone() }.to_text())?,
        _ if form.json => write_json(with_notice(to_json(&before, &trial), &trial.after), data)?,
        _ => write_text(&trial, units, data)?,
    }
    if let Some(to) = to.filter(|_| !written_out) {
        save(&before, &trial, &options.file, to)?;
        writeln!(words, "wrote {}", printable(&to.display().to_string()))?;
    }
    Ok(write_failures(&trial.after, "", units, words)?)
}

/// Returns what is asked for; exactly one is given.
fn goal_of(options: ScaleOptions) -> Result<ScaleGoal, CliError> {
    let given = [options.milk, options.pot, options.moulds, options.jars];
    let mut found = [ScaleTo::Milk, ScaleTo::Pot, ScaleTo::Moulds, ScaleTo::Jars].into_iter().zip(given);
    let goal = found.find_map(|(to, amount)| amount.map(|amount| ScaleGoal { to, amount }));
    goal.ok_or_else(|| CliError::Arguments("say what to scale to, as in --milk 8".to_owned()))
}

/// Checks where the design is to be written, before anything is calculated.
fn check_name(to: Option<&Path>, both: bool) -> Result<(), CliError> {
    if both {
        return Err(CliError::Arguments("--to - and --json both write to standard output; leave one of them out".to_owned()));
    }
    let Some(to) = to.filter(|to| to.as_os_str() != "-" && !is_pipe_or_device(to)) else { return Ok(()) };
    if to.extension().is_some_and(|ending| ending.eq_ignore_ascii_case("ron")) {
        return Ok(());
    }
    Err(CliError::Arguments(format!("cannot write `{}`: the name of a design must end in .vat.ron", to.display())))
}

/// Saves the scaled design as the window does: its own file keeps its id and its last version, another file gets a new id.
fn save(before: &Batch, trial: &ScaleTrial, from: &Path, to: &Path) -> Result<(), CliError> {
    let refused = |error: SessionError| match error {
        SessionError::Design(error) => CliError::Design(error),
        SessionError::File(error) => CliError::File(error),
        SessionError::ChangedOnDisk { path } => {
            CliError::InFile { file: path, why: "it was changed while it was being scaled".to_owned() }
        }
    };
    let own = crate::session::is_same_file(from, to);
    let mut session = if own { Session::open_file(from).map_err(refused)? } else { Session::open(before.design.clone(), None)? };
    // What --set changed is not in the file.
    let set: Vec<_> =
        differing_choices(session.design(), &before.design).iter().map(|choice| (choice.field.key, choice.b)).collect();
    session.apply(Command::SetInputs(set)).map_err(refused)?;
    session.apply(trial.command()).map_err(refused)?;
    session.save(to).map_err(refused)?;
    Ok(())
}

fn write_text(trial: &ScaleTrial, units: Units, data: &mut dyn Write) -> Result<(), CliError> {
    let ScalePreview { name, choices, remarks, follows, gone, new, .. } = &trial.preview;
    writeln!(data, "{name}")?;
    for (heading, rows) in std::iter::once(&("Choices that change", choices.clone())).chain(follows) {
        writeln!(data, "\n{heading}")?;
        write_columns(["", "before", "after", ""], rows, data)?;
    }
    for (heading, cautions) in [("New warnings", new), ("Warnings lifted", gone)] {
        if !cautions.is_empty() {
            writeln!(data, "\n{heading}")?;
        }
        cautions.iter().try_for_each(|caution| writeln!(data, "  {}", caution_line(caution, units)))?;
    }
    writeln!(data)?;
    remarks.iter().try_for_each(|remark| writeln!(data, "{}", printable(remark)))?;
    writeln!(data, "{KEPT_IN_SCALING}")?;
    write_notice(&trial.after, units, data)?;
    Ok(())
}

fn to_json(before: &Batch, trial: &ScaleTrial) -> Value {
    let (scaled, preview) = (&trial.scaled, &trial.preview);
    let choice = |choice: &ScaledChoice| {
        let ScaledChoice { field, from, exact, to } = choice;
        json!({ "key": field.key, "label": field.label, "unit": field.unit.symbol(), "from": from, "to": to, "exact": exact })
    };
    let figures = compare(before, &trial.after).into_iter().map(|figure| {
        let unit = figure.a.as_ref().or(figure.b.as_ref()).map_or("", |one| one.unit.symbol());
        json!({
            "key": figure.key, "label": figure.label, "unit": unit,
            "before": figure.a.as_ref().map(json_figure), "after": figure.b.as_ref().map(json_figure),
        })
    });
    let cautions = |all: &[Caution]| -> Vec<Value> {
        let said = |caution: &Caution| {
            let short = caution_words(caution, Units::METRIC).short;
            json!({ "key": caution.key, "severity": caution.severity.key(), "short": short })
        };
        all.iter().map(said).collect()
    };
    let goal = scaled.goal;
    json!({
        "goal": { "to": goal.to.key(), "amount": goal.amount, "unit": goal.to.unit().symbol() },
        "factor": scaled.factor, "choices": scaled.choices.iter().map(choice).collect::<Vec<_>>(),
        "remarks": preview.remarks, "figures": figures.collect::<Vec<_>>(),
        "cautions_that_come": cautions(&preview.new), "cautions_that_go": cautions(&preview.gone),
    })
}
