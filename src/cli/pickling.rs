//! `vatsketch stage pickling`: one described cheese in its share of the vinegar.

use super::columns::{Column, write_columns};
use super::described::{described_matter, hours, not_here};
use super::ending::{CliError, Ending};
use super::open;
use super::options::StageOptions;
use super::parameters::Parameters;
use super::text::{amount_text, write_json};
use crate::caution::{Caution, soak_cautions};
use crate::design::{DESCRIBED_PICKLING_FIELDS, DescribedCheese, DescribedPickling, Design, Field, Stage, Unit};
use crate::process::{
    Fineness, LONGEST_SOAK_H, PicklePoint, PickleRun, PickledCheese, STRONGEST_BUFFER, TargetHours, VinegarBath, pickle_given,
};
use crate::units::Units;
use crate::words::{CautionWords, caution_line, caution_words};
use serde_json::{Value, json};
use std::io::Write;

/// Hours that are reported where none are asked for.
const USUAL_HOURS: [f64; 7] = [6.0, 12.0, 24.0, 48.0, 96.0, 168.0, 336.0];

pub(super) fn run(how: &StageOptions, data: &mut dyn Write, words: &mut dyn Write) -> Result<Ending, CliError> {
    let form = &how.form;
    let (described, report_h) = described(&how.set)?;
    let parameters = Parameters::read_for(Stage::Pickling, &how.parameters, &Design::default())?;
    let cheese = cheese(&described)?;
    let bath = VinegarBath {
        acid_g_per_100ml: described.acid_g_per_100ml,
        volume_ml: described.vinegar_ml,
        temperature_c: described.pickling_temperature_c,
    };
    let fineness = if how.fine { Fineness::SOAK_FINE } else { Fineness::SOAK_SHOWN };
    let run = pickle_given(&cheese, &bath, &report_h, &parameters.values, fineness)
        .map_err(|error| CliError::Stage(error.to_string()))?;
    let cautions = soak_cautions(&run, &bath);
    let cheese_g = 1000.0 * cheese.matter.total_kg();
    if form.json {
        write_json(parameters.beside(as_json(&run, cheese_g, &cautions)), data)?;
        return Ok(Ending::Done);
    }
    write_text(&run, cheese_g, form.shown.units, data)?;
    parameters.write(data)?;
    for caution in &cautions {
        writeln!(words, "{}", caution_line(caution, form.shown.units))?;
    }
    Ok(Ending::Done)
}

fn described(set: &[String]) -> Result<(DescribedPickling, Vec<f64>), CliError> {
    let fields: Vec<&'static Field<DescribedPickling>> = DESCRIBED_PICKLING_FIELDS.iter().collect();
    let mut described = DescribedPickling::default();
    let mut report_h = USUAL_HOURS.to_vec();
    for assignment in set {
        let (key, text) = open::split(assignment)?;
        if key == "report_h" {
            report_h = hours(text)?;
        } else if !open::set_in(&fields, &mut described, key, text)? {
            return Err(not_here(Stage::Pickling, key, fields.iter().map(|field| field.key)));
        }
    }
    Ok((described, report_h))
}

/// Returns the cheese, its fat being what nothing else is.
fn cheese(described: &DescribedPickling) -> Result<PickledCheese, CliError> {
    let without_fat = described.moisture_percent
        + described.protein_percent
        + described.carbohydrate_percent
        + described.ash_percent
        + described.salt_percent;
    let leaves_room = without_fat <= 100.0;
    if !leaves_room {
        return Err(CliError::Arguments(format!(
            "water, protein, carbohydrate, ash and salt of the described cheese add up to {without_fat:.1} %; they may be 100 % at most, and what is left is fat"
        )));
    }
    let matter = described_matter(&DescribedCheese {
        diameter_mm: described.diameter_mm,
        thickness_mm: described.thickness_mm,
        moisture_percent: described.moisture_percent,
        fat_percent: 100.0 - without_fat,
        protein_percent: described.protein_percent,
        carbohydrate_percent: described.carbohydrate_percent,
        ash_percent: described.ash_percent,
        salt_percent: described.salt_percent,
        ..DescribedCheese::default()
    })?;
    Ok(PickledCheese {
        matter,
        diameter_mm: described.diameter_mm,
        thickness_mm: described.thickness_mm,
        start_ph: described.start_ph,
        buffer_scale: described.buffer_scale,
        diffusivity_scale: described.diffusivity_scale,
        ..PickledCheese::default()
    })
}

fn as_json(run: &PickleRun, cheese_g: f64, cautions: &[Caution]) -> Value {
    let sentences = cautions.iter().map(|caution| {
        let CautionWords { what, remedy, .. } = caution_words(caution, Units::METRIC);
        format!("{what} {remedy}")
    });
    let points: Vec<Value> = run
        .points
        .iter()
        .map(|point| {
            json!({
                "at_h": point.at_h, "centre_ph": point.centre_ph, "slurry_ph": point.slurry_ph, "surface_ph": point.surface_ph,
                "bath_ph": point.bath_ph, "acid_percent": point.acid_percent,
            })
        })
        .collect();
    let targets: Vec<Value> = run
        .targets
        .iter()
        .map(|target| {
            json!({ "ph": target.ph, "centre_h": target.centre_h, "slurry_h": target.slurry_h, "never": never(run, target) })
        })
        .collect();
    json!({
        "cheese_g": cheese_g, "vinegar_ml_per_g": run.vinegar_ml_per_g, "equilibrium_ph": run.equilibrium_ph,
        "strong_equilibrium_ph": run.strong_equilibrium_ph,
        // The names of the two before, for scripts.
        "balance_ph": run.equilibrium_ph, "strong_balance_ph": run.strong_equilibrium_ph, "targets": targets,
        "points": points, "cautions": sentences.collect::<Vec<_>>(),
    })
}

fn never(run: &PickleRun, target: &TargetHours) -> bool {
    let comes_there = run.equilibrium_ph < target.ph;
    !comes_there
}

fn write_text(run: &PickleRun, cheese_g: f64, units: Units, data: &mut dyn Write) -> Result<(), CliError> {
    write_columns(&columns(&run.points), units, data)?;
    let cheese = amount_text(units, Unit::Gram, cheese_g, 1);
    writeln!(data, "  {cheese} of cheese, {:.2} mL of vinegar for each g", run.vinegar_ml_per_g)?;
    let (likely, strong) = (run.equilibrium_ph, run.strong_equilibrium_ph);
    writeln!(data, "  equilibrium pH {likely:.2}; {strong:.2} if the cheese takes up {STRONGEST_BUFFER} times as much acid")?;
    for target in &run.targets {
        let when = |hours: Option<f64>| match hours {
            Some(hours) => amount_text(units, Unit::Hour, hours, 0),
            None if never(run, target) => "never".to_owned(),
            None => format!("not within {}", amount_text(units, Unit::Hour, LONGEST_SOAK_H, 0)),
        };
        writeln!(data, "  pH {:.1}: centre {}, blended {}", target.ph, when(target.centre_h), when(target.slurry_h))?;
    }
    Ok(())
}

fn columns(points: &[PicklePoint]) -> Vec<Column> {
    let column = |heading, unit, of: fn(&PicklePoint) -> f64| Column::new(heading, unit, 2, points.iter().map(of).collect());
    vec![
        column("time", Unit::Hour, |point| point.at_h),
        column("pH at the centre", Unit::One, |point| point.centre_ph),
        column("pH, blended", Unit::One, |point| point.slurry_ph),
        column("pH at the surface", Unit::One, |point| point.surface_ph),
        column("pH of the vinegar", Unit::One, |point| point.bath_ph),
        column("acid", Unit::Percent, |point| point.acid_percent),
    ]
}
