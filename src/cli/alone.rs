//! `vatsketch stage`: one stage of the trade alone, or a law that holds in all of them.

use super::ending::{CliError, Ending};
use super::options::StageOptions;
use super::parameters::Parameters;
use super::stage_alone::StageAlone;
use super::{germs, souring, stage};
use crate::design::Stage;
use std::io::Write;

pub(super) fn run(name: StageAlone, how: &StageOptions, data: &mut dyn Write, words: &mut dyn Write) -> Result<Ending, CliError> {
    let follows_a_cheese = matches!(name, StageAlone::Stage(Stage::Drying | Stage::Pickling));
    if how.fine && !follows_a_cheese {
        return Err(CliError::Arguments(format!(
            "`--fine` has no effect on `vatsketch stage {}`: only drying and pickling cut a cheese into rings; leave it out",
            name.key()
        )));
    }
    match name {
        StageAlone::Stage(name) => stage::run(name, how, data, words),
        StageAlone::Souring => {
            Parameters::refuse(&how.parameters, name.key())?;
            souring::run(&how.set, &how.form, data, words)
        }
        StageAlone::Germs => {
            Parameters::refuse(&how.parameters, name.key())?;
            germs::run(&how.set, &how.form, data)
        }
    }
}
