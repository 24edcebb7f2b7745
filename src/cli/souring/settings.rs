//! Reads what is to be soured, by what and for how long.

use super::keys::{ACIDS, CULTURES, MATTERS, Matter, NUMBERS, read_choice, read_number, unknown, usual};
use crate::cli::described::hours;
use crate::cli::ending::CliError;
use crate::cli::open;
use crate::law::souring::{
    Acid, AcidAmounts, Culture, CultureLaw, CultureState, SOURING_STEP_H, Sourable, SouringPoint, gluconic_mol_kg,
    sour_beside_lactone,
};
use std::collections::BTreeMap;

/// Hours that are reported where none are asked for, as far as the souring goes.
const USUAL_HOURS: [f64; 20] =
    [0.0, 1.0, 2.0, 3.0, 4.0, 6.0, 8.0, 10.0, 12.0, 16.0, 20.0, 24.0, 30.0, 36.0, 48.0, 72.0, 96.0, 168.0, 240.0, 336.0];

/// What was set.
pub(super) struct Settings {
    pub(super) sourable: Sourable,
    pub(super) culture: Option<Culture>,
    /// Whether the cells were said, and not assumed.
    pub(super) cells_said: bool,
    pub(super) temperature_c: f64,
    pub(super) hours: f64,
    pub(super) report_h: Vec<f64>,
    pub(super) start: CultureState,
    pub(super) lactone_mol_kg: f64,
    pub(super) wanted: Option<(f64, Acid)>,
    lactic_per_lactose: f64,
}

impl Settings {
    /// Reads settings, in any order; of two for the same key the last counts.
    pub(super) fn read(set: &[String]) -> Result<Self, CliError> {
        let mut given = Given::default();
        for assignment in set {
            let (key, text) = open::split(assignment)?;
            given.take(key, text)?;
        }
        let [protein, water, start_ph, lactose] = usual(given.matter);
        let parts = [
            given.number("protein_percent", protein),
            given.number("water_percent", water),
            given.number("lactose_percent", lactose),
        ];
        let sum: f64 = parts.iter().sum();
        if sum > 100.0 {
            return Err(CliError::Arguments(format!(
                "protein_percent, water_percent and lactose_percent add up to {sum:.1} %; they may be 100 % at most"
            )));
        }
        let [protein, water, lactose] = parts.map(|percent| 0.01 * percent);
        let sourable = Sourable::new(protein, water, given.number("start_ph", start_ph), given.number_or_default("buffer_scale"));
        let culture = given.culture;
        let cells_per_g = if culture.is_some() { given.number_or_default("cells_per_g") } else { 0.0 };
        let (report_h, hours) = given.hours()?;
        let wanted = match (given.numbers.get("wanted_ph"), given.acid) {
            (Some(ph), acid) => Some((*ph, acid.unwrap_or_default())),
            (None, Some(_)) => {
                return Err(CliError::Arguments(
                    "acid says which acid is to bring it to a pH; set wanted_ph too, from 3 to 7".to_owned(),
                ));
            }
            (None, None) => None,
        };
        Ok(Self {
            sourable,
            culture,
            cells_said: given.numbers.contains_key("cells_per_g"),
            temperature_c: given.number_or_default("temperature_c"),
            hours,
            report_h,
            start: CultureState::new(cells_per_g, lactose, given.acids()?),
            lactone_mol_kg: given.amount("gdl_g_per_kg", "gdl_mol_per_kg", gluconic_mol_kg)?,
            wanted,
            lactic_per_lactose: given.number_or_default("lactic_per_lactose"),
        })
    }

    /// Returns the course of souring; without a culture no cells are at work, whatever the law.
    pub(super) fn course(&self) -> Vec<SouringPoint> {
        let law = CultureLaw { lactic_per_lactose: self.lactic_per_lactose, ..CultureLaw::of(self.culture.unwrap_or_default()) };
        let (start, lactone) = (&self.start, self.lactone_mol_kg);
        sour_beside_lactone(&law, start, lactone, &self.sourable, &|_| self.temperature_c, self.hours, SOURING_STEP_H)
    }

    /// Returns the amount of the wanted acid, mol/kg, beside what is there and what the lactone turns into.
    pub(super) fn wanted_mol_kg(&self) -> Option<f64> {
        let (ph, acid) = self.wanted?;
        let already = self.start.acids + AcidAmounts::of(Acid::Gluconic, self.lactone_mol_kg);
        Some(self.sourable.acid_for_beside(ph, acid, &already))
    }
}

/// The settings as they come, before the rest is filled in.
#[derive(Default)]
struct Given {
    matter: Matter,
    culture: Option<Culture>,
    acid: Option<Acid>,
    report_h: Option<Vec<f64>>,
    numbers: BTreeMap<&'static str, f64>,
}

impl Given {
    fn take(&mut self, key: &str, text: &str) -> Result<(), CliError> {
        match key {
            "matter" => self.matter = read_choice("matter", "What is soured", &MATTERS, text)?,
            "culture" => self.culture = read_choice("culture", "Culture", &CULTURES, text)?,
            "acid" => self.acid = Some(read_choice("acid", "Acid for the wanted pH", &ACIDS, text)?),
            "report_h" => self.report_h = Some(hours(text)?),
            _ => {
                let row = NUMBERS.iter().find(|row| row.key == key).ok_or_else(|| CliError::Arguments(unknown(key)))?;
                self.numbers.insert(row.key, read_number(row, text)?);
            }
        }
        Ok(())
    }

    fn number(&self, key: &str, otherwise: f64) -> f64 {
        self.numbers.get(key).copied().unwrap_or(otherwise)
    }

    fn number_or_default(&self, key: &str) -> f64 {
        let default = NUMBERS.iter().find(|row| row.key == key).and_then(|row| row.default);
        self.number(key, default.unwrap_or(0.0))
    }

    /// Returns the hours to report, and how long the souring goes: as long as is reported, where nothing else is said.
    fn hours(&self) -> Result<(Vec<f64>, f64), CliError> {
        let said = self.number_or_default("hours");
        let Some(report_h) = &self.report_h else {
            let usual = USUAL_HOURS.into_iter().filter(|hour| *hour < said).chain([said]).collect();
            return Ok((usual, said));
        };
        let last = report_h.last().copied().unwrap_or(0.0);
        let [_, most] = NUMBERS.iter().find(|row| row.key == "hours").map_or([0.0; 2], |row| [row.least, row.most]);
        let longest = if self.numbers.contains_key("hours") { said } else { most };
        if last > longest {
            return Err(CliError::Arguments(format!(
                "report_h goes to {last} h, but hours ends at {longest} h; report no later, or set hours from {last} up, to {most} at most"
            )));
        }
        Ok((report_h.clone(), said.max(last)))
    }

    /// Returns an amount in mol/kg, given in one of two units.
    fn amount(&self, g_key: &str, mol_key: &str, mol_of_g: impl Fn(f64) -> f64) -> Result<f64, CliError> {
        match (self.numbers.get(g_key), self.numbers.get(mol_key)) {
            (Some(_), Some(_)) => {
                Err(CliError::Arguments(format!("{g_key} and {mol_key} say the same twice; give only one of them")))
            }
            (Some(grams), None) => Ok(mol_of_g(*grams)),
            (None, mol) => Ok(mol.copied().unwrap_or(0.0)),
        }
    }

    fn acids(&self) -> Result<AcidAmounts, CliError> {
        let gluconic = AcidAmounts::of(Acid::Gluconic, self.number("gluconic_mol_per_kg", 0.0));
        ACIDS.into_iter().try_fold(gluconic, |sum, (name, acid)| {
            let (g_key, mol_key) = (format!("{name}_g_per_kg"), format!("{name}_mol_per_kg"));
            Ok(sum + AcidAmounts::of(acid, self.amount(&g_key, &mol_key, |grams| grams / acid.g_per_mol())?))
        })
    }
}
