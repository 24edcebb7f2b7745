//! `vatsketch stage souring`: a described milk or curd with a culture or an acid in it, and the pH over the hours.

mod keys;
mod notes;
mod settings;

pub(super) use keys::{NUMBERS, choices};

use super::columns::{Column, write_columns};
use super::ending::{CliError, Ending};
use super::options::FormOptions;
use super::text::{amount_text, write_json};
use crate::design::Unit;
use crate::law::acidity::USUAL_VINEGAR;
use crate::law::souring::{Acid, SouringPoint, Taste, hours_to, lactose_percent, souring_at};
use serde_json::{Map, Value, json};
use settings::Settings;
use std::io::Write;

/// pH to which the hours are told.
const TARGETS: [f64; 7] = [6.0, 5.8, 5.5, 5.2, 5.0, 4.8, 4.6];

pub(super) fn run(set: &[String], form: &FormOptions, data: &mut dyn Write, words: &mut dyn Write) -> Result<Ending, CliError> {
    let settings = Settings::read(set)?;
    let course = settings.course();
    let end_ph = course.last().map_or(f64::NAN, |point| point.ph);
    let points: Vec<SouringPoint> = settings.report_h.iter().filter_map(|hour| souring_at(&course, *hour)).collect();
    let notes = notes::notes(&settings, &course);
    let wanted = wanted(&settings);
    if form.json {
        let hours: Map<String, Value> = TARGETS.map(|ph| (format!("{ph:.1}"), json!(hours_to(&course, ph)))).into_iter().collect();
        let mut members = Map::new();
        members.insert("ph".to_owned(), json!(end_ph));
        members.insert("points".to_owned(), points.iter().map(as_json).collect());
        members.insert("hours_to".to_owned(), Value::Object(hours));
        if let Some(wanted) = &wanted {
            members.insert("acid".to_owned(), wanted.as_json());
        }
        members.insert("taste".to_owned(), json!(Taste::at(end_ph).words()));
        members.insert("notes".to_owned(), json!(notes));
        write_json(Value::Object(members), data)?;
        return Ok(Ending::Done);
    }
    let units = form.shown.units;
    write_columns(&columns(&points), units, data)?;
    for ph in TARGETS {
        let when = hours_to(&course, ph).map_or_else(
            || format!("not within {}", amount_text(units, Unit::Hour, settings.hours, 0)),
            |hours| amount_text(units, Unit::Hour, hours, 1),
        );
        writeln!(data, "  pH {ph:.1}: {when}")?;
    }
    writeln!(data, "  taste and body at pH {end_ph:.2}, from memory: {}", Taste::at(end_ph).words())?;
    if let Some(wanted) = &wanted {
        writeln!(data, "  {}", wanted.words())?;
    }
    for note in &notes {
        writeln!(words, "{}", units.told(note))?;
    }
    Ok(Ending::Done)
}

fn columns(points: &[SouringPoint]) -> Vec<Column> {
    let column = |heading, unit, decimals, of: fn(&SouringPoint) -> f64| {
        Column::new(heading, unit, decimals, points.iter().map(of).collect())
    };
    vec![
        column("time", Unit::Hour, 2, |point| point.at_h),
        column("pH", Unit::One, 2, |point| point.ph),
        column("lactic acid, mmol/kg", Unit::One, 1, |point| 1000.0 * point.lactic_mol_kg),
        column("million cells in each g", Unit::One, 1, |point| 1e-6 * point.cells_per_g),
        column("lactose", Unit::Percent, 2, |point| lactose_percent(point.lactose_mol_kg)),
    ]
}

fn as_json(point: &SouringPoint) -> Value {
    json!({
        "at_h": point.at_h, "ph": point.ph, "lactic_mmol_per_kg": 1000.0 * point.lactic_mol_kg, "cells_per_g": point.cells_per_g,
        "lactose_percent": lactose_percent(point.lactose_mol_kg),
    })
}

/// An acid that is to be stirred in.
struct Wanted {
    ph: f64,
    name: &'static str,
    mmol_per_kg: f64,
    g_per_kg: f64,
    /// Usual vinegar with as much acetic acid.
    vinegar_ml_per_kg: Option<f64>,
}

/// Returns the amount of the wanted acid.
fn wanted(settings: &Settings) -> Option<Wanted> {
    let ((ph, acid), mol_kg) = (settings.wanted?, settings.wanted_mol_kg()?);
    let name = keys::ACIDS.iter().find(|(_, known)| *known == acid).map_or("", |(name, _)| *name);
    let g_per_kg = mol_kg * acid.g_per_mol();
    let vinegar_ml_per_kg = (acid == Acid::Acetic).then_some(100.0 * g_per_kg / USUAL_VINEGAR.value);
    Some(Wanted { ph, name, mmol_per_kg: 1000.0 * mol_kg, g_per_kg, vinegar_ml_per_kg })
}

impl Wanted {
    fn as_json(&self) -> Value {
        json!({
            "acid": self.name, "wanted_ph": self.ph, "mmol_per_kg": self.mmol_per_kg, "g_per_kg": self.g_per_kg,
            "vinegar_ml_per_kg": self.vinegar_ml_per_kg,
        })
    }

    fn words(&self) -> String {
        let vinegar = self
            .vinegar_ml_per_kg
            .map(|ml| format!(", {ml:.0} mL of vinegar of {} g in 100 mL", USUAL_VINEGAR.value))
            .unwrap_or_default();
        format!("for pH {:.2}: {} acid {:.2} g/kg, {:.1} mmol/kg{vinegar}", self.ph, self.name, self.g_per_kg, self.mmol_per_kg)
    }
}
