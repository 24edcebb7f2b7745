//! One stage of the trade alone, for a maker who starts from bought curd and for checks from outside.

use super::columns::{Column, write_columns};
use super::described::{described_matter, hours, not_here};
use super::ending::{CliError, Ending};
use super::options::{FormOptions, StageOptions};
use super::parameters::Parameters;
use super::text::{write_figures, write_json};
use super::{open, pickling};
use crate::batch::{Batch, batch_given};
use crate::design::{DESCRIBED_CHEESE_FIELDS, DescribedCheese, Design, Field, Stage, Unit, fields};
use crate::export::json_figures;
use crate::figure::{Figure, figures};
use crate::process::{Cheese, DrainingOutcome, DryingPoint, Fineness, Given, StageError, dry_cheese_given, salting_given};
use serde_json::{Value, json};
use std::io::Write;

/// What was set for one stage alone.
#[derive(Default)]
struct Described {
    design: Design,
    cheese: DescribedCheese,
    report_h: Vec<f64>,
    parameters: Parameters,
}

pub(super) fn run(stage: Stage, how: &StageOptions, data: &mut dyn Write, words: &mut dyn Write) -> Result<Ending, CliError> {
    if stage == Stage::Pickling {
        return pickling::run(how, data, words);
    }
    let form = &how.form;
    let mut described = described(stage, &how.set)?;
    described.parameters = Parameters::read_for(stage, &how.parameters, &described.design)?;
    match stage {
        // What may be said about keeping rests on every stage, so it is calculated from the milk.
        Stage::Milk | Stage::Vat | Stage::Draining | Stage::Pickling | Stage::Keeping => {
            from_milk(stage, &described, form, data, words)
        }
        Stage::Salting => salted(&described, form, data),
        Stage::Drying => dried(&described, how.fine, form, data),
    }
}

/// Reads the settings: those of the stage, and those of what comes to it (the milk's own way there, or a described cheese).
fn described(stage: Stage, set: &[String]) -> Result<Described, CliError> {
    let from_cheese = matches!(stage, Stage::Salting | Stage::Drying);
    let in_design: Vec<&'static Field> = fields()
        .filter(|field| field.stage == stage || (!from_cheese && (field.stage <= Stage::Draining || stage == Stage::Keeping)))
        .collect();
    let in_cheese: Vec<&'static Field<DescribedCheese>> =
        if from_cheese { DESCRIBED_CHEESE_FIELDS.iter().collect() } else { Vec::new() };
    let mut described = Described::default();
    if stage == Stage::Salting {
        // What comes to the salting is not salted yet; `salt_percent` then means the salt that is sprinkled on.
        described.cheese.salt_percent = 0.0;
    }
    for assignment in set {
        let (key, text) = open::split(assignment)?;
        if stage == Stage::Drying && key == "report_h" {
            described.report_h = hours(text)?;
        } else if !open::set_in(&in_design, &mut described.design, key, text)?
            && !open::set_in(&in_cheese, &mut described.cheese, key, text)?
        {
            let known = in_design.iter().map(|field| field.key).chain(in_cheese.iter().map(|field| field.key));
            return Err(not_here(stage, key, known));
        }
    }
    Ok(described)
}

fn from_milk(
    stage: Stage,
    described: &Described,
    form: &FormOptions,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let given = Given { parameters: described.parameters.values, ..Given::default() };
    let batch = batch_given(&described.design, &given)?;
    let figures: Vec<Figure> = figures(&batch).into_iter().filter(|figure| figure.stage == stage).collect();
    if form.json {
        write_json(described.parameters.beside(Value::Object(json_figures(&figures))), data)?;
    } else {
        write_figures(&figures, form.shown.units, data)?;
        described.parameters.write(data)?;
    }
    match failure(&batch, stage) {
        Some(error) => {
            writeln!(words, "vatsketch: {}", form.shown.units.told(&error.to_string()))?;
            Ok(Ending::StageFailed)
        }
        None => Ok(Ending::Done),
    }
}

/// Returns the first error up to a stage.
fn failure(batch: &Batch, stage: Stage) -> Option<StageError> {
    Stage::ALL.into_iter().filter(|at| *at <= stage).find_map(|at| batch.ending(at).failed().cloned())
}

fn salted(described: &Described, form: &FormOptions, data: &mut dyn Write) -> Result<Ending, CliError> {
    let curd = described_matter(&described.cheese)?;
    // Bought curd is turned as often as it is salted, and drips no more.
    let (turns, gap_h) = (described.design.salting.salted_turns, described.design.draining.turn_gap_h);
    let drained = DrainingOutcome {
        curd,
        turns_h: (1..=turns).map(|turn| f64::from(turn) * gap_h).collect(),
        draining_h: f64::from(turns + 1) * gap_h,
        cheese_count: 1,
        cheese_g: 1000.0 * curd.total_kg(),
        diameter_mm: described.cheese.diameter_mm,
        thickness_mm: described.cheese.thickness_mm,
        ..DrainingOutcome::default()
    };
    let given = Given { parameters: described.parameters.values, ..Given::default() };
    let outcome = salting_given(&described.design.salting, &drained, described.cheese.start_temperature_c, &given)
        .map_err(|error| CliError::Stage(error.to_string()))?;
    let figures = crate::figure::salting_figures(&outcome);
    if form.json {
        write_json(described.parameters.beside(Value::Object(json_figures(&figures))), data)?;
    } else {
        write_figures(&figures, form.shown.units, data)?;
        described.parameters.write(data)?;
    }
    Ok(Ending::Done)
}

fn dried(described: &Described, fine: bool, form: &FormOptions, data: &mut dyn Write) -> Result<Ending, CliError> {
    let share = |percent: f64| percent / 100.0;
    let cheese = Cheese {
        matter: described_matter(&described.cheese)?,
        diameter_mm: described.cheese.diameter_mm,
        thickness_mm: described.cheese.thickness_mm,
        temperature_c: described.cheese.start_temperature_c,
        top_open: share(described.cheese.top_open_percent),
        side_open: share(described.cheese.side_open_percent),
        coat_s_m: described.cheese.coat_s_m,
    };
    let fineness = if fine { Fineness::FINE } else { Fineness::SHOWN };
    let run = dry_cheese_given(&cheese, &described.design.drying, &described.report_h, &described.parameters.values, fineness)
        .map_err(|error| CliError::Stage(error.to_string()))?;
    if form.json {
        let points: Vec<Value> = run.points.iter().map(as_json).collect();
        let json = json!({ "cheese_g": 1000.0 * cheese.matter.total_kg(), "points": points });
        write_json(described.parameters.beside(json), data)?;
        return Ok(Ending::Done);
    }
    write_columns(&drying_columns(&run.points), form.shown.units, data)?;
    described.parameters.write(data)?;
    Ok(Ending::Done)
}

fn drying_columns(points: &[DryingPoint]) -> Vec<Column> {
    let column = |heading, unit, decimals, of: fn(&DryingPoint) -> f64| {
        Column::new(heading, unit, decimals, points.iter().map(of).collect())
    };
    vec![
        column("time", Unit::Hour, 2, |point| point.at_h),
        column("weight", Unit::Gram, 1, |point| point.cheese_g),
        column("loss", Unit::Percent, 1, |point| point.loss_percent),
        column("moisture", Unit::Percent, 1, |point| point.moisture_percent),
        column("moisture at the centre", Unit::Percent, 1, |point| point.centre_moisture_percent),
        column("water activity", Unit::One, 3, |point| point.water_activity),
        column("cheese", Unit::Celsius, 1, |point| point.temperature_c),
        column("diameter", Unit::Millimetre, 1, |point| point.diameter_mm),
        column("thickness", Unit::Millimetre, 1, |point| point.thickness_mm),
    ]
}

fn as_json(point: &DryingPoint) -> Value {
    json!({
        "at_h": point.at_h, "cheese_g": point.cheese_g, "loss_percent": point.loss_percent, "moisture_percent": point.moisture_percent,
        "centre_moisture_percent": point.centre_moisture_percent, "surface_moisture_percent": point.surface_moisture_percent,
        "water_activity": point.water_activity, "centre_water_activity": point.centre_water_activity, "temperature_c": point.temperature_c,
        "diameter_mm": point.diameter_mm, "thickness_mm": point.thickness_mm, "fat_free_moisture_percent": point.fat_free_moisture_percent,
        "firmness": crate::law::firmness::classes(point.fat_free_moisture_percent),
    })
}
