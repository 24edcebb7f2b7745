//! Other values of uncertain constants than those of their records, as checks from outside set them.

use super::ending::CliError;
use super::open;
use super::options::ParameterOptions;
use crate::design::{Design, DesignError, Stage};
use crate::process::{UNCERTAIN_PARAMETERS, UncertainParameter, UncertainParameters};
use crate::source::Constant;
use serde_json::{Map, Value, json};
use std::io::Write;

/// How far beside its range a value may be: the last digit of a printed number.
const ROUNDED: f64 = 1e-12;

/// What counts for the stages that are told of a cheese: not what comes with it, nor how warm a place is, which is set itself.
const ALONE: [(Stage, &[&str]); 3] = [
    (Stage::Salting, &["salt_diffusivity"]),
    (Stage::Drying, &["moisture_diffusivity", "diffusion_energy", "air_transfer", "solids_hold", "radiation"]),
    (Stage::Pickling, &["acid_obstruction", "acetate_mobility", "acid_pk", "buffer", "acid_film"]),
];

/// Returns whether a parameter has an effect on a stage alone.
fn counts(stage: Stage, parameter: &UncertainParameter) -> bool {
    match ALONE.iter().find(|(alone, _)| *alone == stage) {
        Some((_, keys)) => keys.contains(&parameter.key),
        None => parameter.stages.iter().any(|looks| *looks <= stage),
    }
}

/// What was set.
#[derive(Debug, Default)]
pub(super) struct Parameters {
    /// As factors on the records.
    pub(super) values: UncertainParameters,
    /// What was set, each with its record and value.
    set: Vec<(&'static UncertainParameter, Constant, f64)>,
}

impl Parameters {
    /// Reads the settings; which record a parameter rests on may depend on the design.
    pub(super) fn read(options: &ParameterOptions, design: &Design) -> Result<Self, CliError> {
        let mut read = Self::default();
        for assignment in &options.parameter {
            let (key, text) = open::split(assignment)?;
            let parameter = UncertainParameter::named(key)
                .ok_or_else(|| DesignError::unknown_key(key, UncertainParameter::all().map(|parameter| parameter.key)))?;
            let record = parameter.record(design);
            let value = value(parameter, &record, text)?;
            read.values = parameter.set(read.values, value / record.value);
            read.set.retain(|(set, ..)| set.key != parameter.key);
            read.set.push((parameter, record, value));
        }
        Ok(read)
    }

    /// Reads the settings for one stage alone, and refuses those that have no effect there.
    pub(super) fn read_for(stage: Stage, options: &ParameterOptions, design: &Design) -> Result<Self, CliError> {
        let read = Self::read(options, design)?;
        match read.set.iter().find(|(parameter, ..)| !counts(stage, parameter)) {
            None => Ok(read),
            Some((parameter, ..)) => Err(CliError::Arguments(format!(
                "`{}` has no effect on `vatsketch stage {}` alone; leave it out, or give it to `vatsketch figures`",
                parameter.key,
                stage.key()
            ))),
        }
    }

    /// Refuses settings for what is told everything with `--set`.
    pub(super) fn refuse(options: &ParameterOptions, name: &str) -> Result<(), CliError> {
        match options.parameter.first() {
            None => Ok(()),
            Some(set) => Err(CliError::Arguments(format!(
                "`--parameter {set}` has no effect on `vatsketch stage {name}`, which is told everything with --set; leave it out"
            ))),
        }
    }

    /// Returns a JSON object with what was set beside it, if anything was.
    pub(super) fn beside(&self, value: Value) -> Value {
        match value {
            Value::Object(mut members) if !self.set.is_empty() => {
                let set = self.set.iter().map(|(parameter, _, value)| (parameter.key.to_owned(), json!(value)));
                members.insert("parameters".to_owned(), Value::Object(set.collect()));
                Value::Object(members)
            }
            other => other,
        }
    }

    /// Says what was set, if anything was.
    pub(super) fn write(&self, data: &mut dyn Write) -> std::io::Result<()> {
        self.set.iter().try_for_each(|(parameter, record, value)| {
            let unit = unit(record);
            let (set, usual) = (number(*value), number(record.value));
            writeln!(data, "Calculated with {} = {set}{unit} instead of {usual}{unit}.", parameter.key)
        })
    }
}

/// Reads a value within the range of its record.
fn value(parameter: &UncertainParameter, record: &Constant, text: &str) -> Result<f64, DesignError> {
    let (label, key, (least, most), unit) = (record.name, parameter.key, record.range, record.unit);
    let number = text.trim().replace(',', ".").parse::<f64>().ok().filter(|number| number.is_finite());
    let given = number.ok_or_else(|| DesignError::NotANumber { label, key, given: text.to_owned(), least, most, unit })?;
    let within = (least - ROUNDED * least.abs()..=most + ROUNDED * most.abs()).contains(&given);
    if within { Ok(given) } else { Err(DesignError::OutOfRange { label, key, given, least, most, unit }) }
}

/// Returns a number as it is written, a very small or great one with a power of ten.
fn number(value: f64) -> String {
    let usual = (1e-3..1e6).contains(&value.abs());
    if usual || value.to_bits() == 0.0_f64.to_bits() { value.to_string() } else { format!("{value:e}") }
}

/// Returns the unit of a record behind a space; nothing where it has none.
fn unit(record: &Constant) -> String {
    if record.unit == "1" { String::new() } else { format!(" {}", record.unit) }
}

/// Returns the values of one trial run, by their keys.
pub(super) fn drawn_json(trial: &UncertainParameters, design: &Design) -> Value {
    let value = |parameter: &UncertainParameter| {
        let value = parameter.of(trial) * parameter.record(design).value;
        (parameter.key.to_owned(), json!(value))
    };
    Value::Object(UNCERTAIN_PARAMETERS.iter().map(value).collect::<Map<_, _>>())
}

/// Returns every parameter with its record, for a design that is all defaults.
pub(super) fn list_json() -> Vec<Value> {
    let drawn = |key: &str| UNCERTAIN_PARAMETERS.iter().any(|parameter| parameter.key == key);
    let row = |parameter: &UncertainParameter| {
        let record = parameter.record(&Design::default());
        json!({
            "key": parameter.key, "label": record.name, "what": parameter.words, "unit": record.unit, "default": record.value,
            "least": record.range.0, "most": record.range.1, "drawn": drawn(parameter.key), "standing": record.standing.words(),
        })
    };
    UncertainParameter::all().map(row).collect()
}

/// Lists every parameter with its record, for a design that is all defaults.
pub(super) fn write_list(data: &mut dyn Write) -> std::io::Result<()> {
    for parameter in UncertainParameter::all() {
        let record = parameter.record(&Design::default());
        let range = format!("{} to {}{}", number(record.range.0), number(record.range.1), unit(&record));
        writeln!(data, "  {:<28} {range:<44} default {:<14} {}", parameter.key, number(record.value), record.name)?;
    }
    Ok(())
}
