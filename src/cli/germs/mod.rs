//! `vatsketch stage germs`: how fast an organism could grow at one place, or how far along a history.

mod along;
mod given;
mod organism;
mod place;
mod rows;
mod settings;

pub(super) use settings::{SETTINGS, TEXTS};

use super::ending::{CliError, Ending};
use super::options::FormOptions;
use given::Given;
use organism::{Law, keys};

use std::io::Write;

pub(super) fn run(set: &[String], form: &FormOptions, data: &mut dyn Write) -> Result<Ending, CliError> {
    let given = Given::read(set)?;
    let organism = given.organism.ok_or_else(|| {
        CliError::Arguments(format!("the organism is missing; give one of {}, as in --set organism=listeria", keys()))
    })?;
    if given.citric_mm() > 0.0 && !matches!(organism.law, Law::Chilled(_)) {
        return Err(CliError::Arguments(format!(
            "citric acid (`citric_mm`) enters md_listeria and md_lab only; leave it out for {}, or choose one of those",
            organism.key
        )));
    }
    match &given.history {
        Some(history) => along::run(&organism, history, &given, form, data),
        None => place::run(&organism, &given, form, data),
    }
}
