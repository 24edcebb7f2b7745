//! Everything that was set for germs alone.

use super::organism::Organism;
use super::rows::{history, starter};
use super::settings::{ACETIC, CITRIC, LACTIC, LAG, PH, SETTINGS, START, Setting, TEMPERATURE, TEXTS, WATER};
use crate::cli::ending::CliError;
use crate::cli::open;
use crate::design::DesignError;
use crate::law::growth::{CARELESS_START, Conditions, LogisticCrowd, Moment};

/// What was set; of a key that is given again the last counts.
#[derive(Default)]
pub(super) struct Given {
    pub(super) organism: Option<Organism>,
    pub(super) history: Option<Vec<Moment>>,
    pub(super) starter: Option<LogisticCrowd>,
    numbers: Vec<(&'static str, f64)>,
}

impl Given {
    /// Reads the settings.
    pub(super) fn read(set: &[String]) -> Result<Self, CliError> {
        let mut given = Self::default();
        for assignment in set {
            let (key, text) = open::split(assignment)?;
            match key {
                "organism" => given.organism = Some(Organism::read(text.trim())?),
                "history" => given.history = Some(history(text)?),
                "starter" => given.starter = Some(starter(text)?),
                _ => {
                    let setting = SETTINGS.iter().find(|setting| setting.key == key).ok_or_else(|| unknown(key))?;
                    given.numbers.push((setting.key, setting.read(text)?));
                }
            }
        }
        Ok(given)
    }

    fn number(&self, setting: &Setting) -> Option<f64> {
        self.numbers.iter().rev().find(|(key, _)| *key == setting.key).map(|(_, number)| *number)
    }

    /// Returns what was asked for of some settings, by their keys.
    pub(super) fn set_of(&self, keys: &[&'static str]) -> Option<&'static str> {
        keys.iter().copied().find(|key| self.numbers.iter().any(|(set, _)| set == key))
    }

    /// Returns the conditions at one place, or which setting is missing.
    pub(super) fn conditions(&self, needs_ph: bool) -> Result<Conditions, CliError> {
        let needed = |setting: &Setting| {
            self.number(setting).ok_or_else(|| {
                CliError::Arguments(format!(
                    "{} is missing; give it with --set {}=NUMBER, or a history",
                    setting.label, setting.key
                ))
            })
        };
        Ok(Conditions {
            temperature_c: needed(&TEMPERATURE)?,
            ph: if needs_ph { needed(&PH)? } else { self.number(&PH).unwrap_or_default() },
            water_activity: needed(&WATER)?,
            lactic_mm: self.number(&LACTIC).unwrap_or_default(),
            acetic_mm: self.number(&ACETIC).unwrap_or_default(),
        })
    }

    pub(super) fn citric_mm(&self) -> f64 {
        self.number(&CITRIC).unwrap_or_default()
    }

    pub(super) fn h0(&self) -> Option<f64> {
        self.number(&LAG)
    }

    /// Returns how many germs there are at the start; beside a starter there have to be some.
    pub(super) fn start_log(&self) -> Option<f64> {
        self.number(&START).or_else(|| self.starter.map(|_| CARELESS_START.value))
    }
}

fn unknown(key: &str) -> CliError {
    let known = SETTINGS.iter().map(|setting| setting.key).chain(TEXTS.iter().map(|(key, ..)| *key));
    DesignError::unknown_key(key, known).into()
}
