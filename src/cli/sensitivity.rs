//! `vatsketch sensitivity`: what moves a figure, the strongest first.

use super::ending::{CliError, Ending};
use super::open;
use super::options::{DesignOptions, FigureOptions, FormOptions};
use super::text::{with_notice, write_json, write_notice};
use crate::analysis::{Cause, Effect, sensitivity};
use crate::batch::batch;
use crate::design::{Design, Kind};
use crate::figure::{Figure, current_key, figures};
use crate::units::Units;
use crate::words::{number_words, three_figures};
use serde_json::{Value, json};
use std::io::Write;

pub(super) fn run(
    options: &DesignOptions,
    figure: &FigureOptions,
    form: &FormOptions,
    data: &mut dyn Write,
) -> Result<Ending, CliError> {
    let key = figure.key.as_str();
    let batch = batch(&open::design(options)?)?;
    let effects = sensitivity(&batch, key).map_err(|error| CliError::Arguments(error.to_string()))?;
    let figure = figures(&batch).into_iter().find(|figure| figure.key == current_key(key));
    if form.json {
        let effects: Vec<Value> = effects.iter().map(|effect| in_json(effect, &batch.design)).collect();
        let unit = figure.map(|figure| figure.unit.symbol());
        // `movers` is the name of the list before, for scripts.
        let answer = json!({ "figure": key, "unit": unit, "effects": effects, "movers": effects });
        write_json(with_notice(answer, &batch), data)?;
    } else if let Some(figure) = figure {
        write_words(&figure, &effects, &batch.design, form.shown.units, data)?;
        write_notice(&batch, form.shown.units, data)?;
    }
    Ok(Ending::Done)
}

fn write_words(figure: &Figure, effects: &[Effect], design: &Design, units: Units, data: &mut dyn Write) -> Result<(), CliError> {
    writeln!(data, "{}: {}\n", figure.label_in(units), figure.text_in(units))?;
    let changes: Vec<(String, String)> = effects
        .iter()
        .filter(|effect| effect.reach() >= figure.rounding())
        .map(|effect| (figure.change_text(effect.down, units), figure.change_text(effect.up, units)))
        .collect();
    let wide = |of: fn(&(String, String)) -> &String| changes.iter().map(|pair| of(pair).chars().count()).max().unwrap_or(0);
    let (down_width, up_width) = (wide(|(down, _)| down), wide(|(_, up)| up));
    for (effect, (down, up)) in effects.iter().zip(&changes) {
        writeln!(data, "  {down:>down_width$}  {up:>up_width$}  {}", moved(&effect.cause, design, units))?;
    }
    let still = effects.len() - changes.len();
    writeln!(data, "\nThe first change is with less, the second with more; {still} more change it by less than is shown.")?;
    Ok(())
}

/// Returns what is moved, and how far.
fn moved(cause: &Cause, design: &Design, units: Units) -> String {
    match cause {
        Cause::Choice(field) => match field.kind {
            Kind::Number { step, .. } => format!("{} by {}", field.label, units.step_text(field, step)),
            Kind::Choice(_) | Kind::Switch => field.label.to_owned(),
        },
        Cause::Constant(parameter) => {
            let record = parameter.record(design);
            let unit = if record.unit == "1" { String::new() } else { format!(" {}", record.unit) };
            let (least, most, says) = match parameter.known(design) {
                Some(known) => {
                    let of = |factor: f64| three_figures(factor * record.value);
                    (of(known.least), of(known.most), "as your log tells")
                }
                None => (number_words(record.range.0), number_words(record.range.1), record.standing.words()),
            };
            format!("uncertain: {}, {least} to {most}{unit} ({says})", parameter.words)
        }
    }
}

fn in_json(effect: &Effect, design: &Design) -> Value {
    let cause = &effect.cause;
    match cause {
        Cause::Choice(_) => {
            json!({ "kind": "choice", "key": cause.key(), "label": cause.label(), "down": effect.down, "up": effect.up })
        }
        Cause::Constant(parameter) => {
            let record = parameter.record(design);
            let known = parameter.known(design).map(|known| {
                json!({ "value": known.value * record.value, "least": known.least * record.value, "most": known.most * record.value })
            });
            let mut all = json!({
                "kind": "constant", "key": cause.key(), "label": cause.label(), "down": effect.down, "up": effect.up,
                "record": record.name, "value": record.value, "range": [record.range.0, record.range.1], "unit": record.unit,
                "source": record.source, "standing": record.standing.words(),
            });
            if let (Some(known), Some(members)) = (known, all.as_object_mut()) {
                members.insert("known".to_owned(), known);
            }
            all
        }
    }
}
