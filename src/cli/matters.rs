//! `vatsketch matters`: what moves a figure, the strongest first.

use super::text::write_json;
use super::{CliError, Ending, open};
use crate::batch::{Cause, Mover, Readout, batch, matters, readouts};
use crate::design::{Design, Kind, Value as Chosen};
use crate::report::number_words;
use serde_json::{Value, json};
use std::io::Write;
use std::path::Path;

pub(super) fn run((path, set): (&Path, &[String]), key: &str, as_json: bool, data: &mut dyn Write) -> Result<Ending, CliError> {
    let batch = batch(&open::design(path, set)?)?;
    let movers = matters(&batch, key).map_err(|error| CliError::Arguments(error.to_string()))?;
    let figure = readouts(&batch).into_iter().find(|figure| figure.key == key);
    if as_json {
        let movers: Vec<Value> = movers.iter().map(|mover| in_json(mover, &batch.design)).collect();
        let unit = figure.map(|figure| figure.unit.symbol());
        write_json(&json!({ "figure": key, "unit": unit, "movers": movers }), data)?;
    } else if let Some(figure) = figure {
        write_words(&figure, &movers, &batch.design, data)?;
    }
    Ok(Ending::Done)
}

fn write_words(figure: &Readout, movers: &[Mover], design: &Design, data: &mut dyn Write) -> Result<(), CliError> {
    writeln!(data, "{}: {}\n", figure.label, figure.text())?;
    let changes: Vec<(String, String)> = movers
        .iter()
        .filter(|mover| mover.reach() >= figure.rounding())
        .map(|mover| (figure.change_text(mover.down), figure.change_text(mover.up)))
        .collect();
    let wide = |of: fn(&(String, String)) -> &String| changes.iter().map(|pair| of(pair).chars().count()).max().unwrap_or(0);
    let (down_width, up_width) = (wide(|(down, _)| down), wide(|(_, up)| up));
    for (mover, (down, up)) in movers.iter().zip(&changes) {
        writeln!(data, "  {down:>down_width$}  {up:>up_width$}  {}", moved(&mover.cause, design))?;
    }
    let still = movers.len() - changes.len();
    writeln!(data, "\nFirst the change with less, then with more; {still} more move it by less than shows.")?;
    Ok(())
}

/// Returns what is moved, and how far.
fn moved(cause: &Cause, design: &Design) -> String {
    match cause {
        Cause::Choice(field) => match field.kind {
            Kind::Number { step, .. } => format!("{} by {}", field.label, field.words_with_unit(Chosen::Number(step))),
            Kind::Choice(_) | Kind::Switch => field.label.to_owned(),
        },
        Cause::Constant(belief) => {
            let record = belief.record(design);
            let (least, most) = record.range;
            let unit = if record.unit == "1" { String::new() } else { format!(" {}", record.unit) };
            format!(
                "uncertain: {}, {} to {}{unit} ({})",
                belief.words,
                number_words(least),
                number_words(most),
                record.standing.words()
            )
        }
    }
}

fn in_json(mover: &Mover, design: &Design) -> Value {
    let cause = &mover.cause;
    match cause {
        Cause::Choice(_) => {
            json!({ "kind": "choice", "key": cause.key(), "label": cause.label(), "down": mover.down, "up": mover.up })
        }
        Cause::Constant(belief) => {
            let record = belief.record(design);
            json!({
                "kind": "constant", "key": cause.key(), "label": cause.label(), "down": mover.down, "up": mover.up,
                "record": record.name, "value": record.value, "range": [record.range.0, record.range.1], "unit": record.unit,
                "source": format!("{:?}", record.source), "standing": record.standing.words(),
            })
        }
    }
}
