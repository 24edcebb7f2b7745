//! What `vatsketch stage` calculates alone: a stage of the trade, or a law that holds in all of them.

use super::ending::{CliError, Ending};
use super::options::{FormOptions, StageOptions};
use super::parameters::Parameters;
use super::{germs, souring, stage};
use crate::design::Stage;
use std::io::Write;

/// What is calculated alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StageAlone {
    /// A stage of the trade.
    Stage(Stage),
    /// How milk or curd sours.
    Souring,
    /// How fast germs could grow.
    Germs,
}

impl StageAlone {
    /// The laws that are no stage.
    const LAWS: [Self; 2] = [Self::Souring, Self::Germs];

    /// Returns everything that is calculated alone, the stages first.
    pub(super) fn all() -> impl Iterator<Item = Self> {
        Stage::ALL.into_iter().map(Self::Stage).chain(Self::LAWS)
    }

    /// Returns the name on the command line.
    pub(super) const fn key(self) -> &'static str {
        match self {
            Self::Stage(stage) => stage.key(),
            Self::Souring => "souring",
            Self::Germs => "germs",
        }
    }

    /// Returns the explanation next to the name.
    pub(super) const fn title(self) -> &'static str {
        match self {
            Self::Stage(stage) => stage.title(),
            Self::Souring => "How milk or curd sours",
            Self::Germs => "How far germs could grow",
        }
    }
}

/// Calculates it.
pub(super) fn run(
    name: StageAlone,
    set: &[String],
    how: &StageOptions,
    form: &FormOptions,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let follows_a_cheese = matches!(name, StageAlone::Stage(Stage::Drying | Stage::Pickling));
    if how.fine && !follows_a_cheese {
        return Err(CliError::Arguments(format!(
            "`--fine` has no effect on `vatsketch stage {}`: only drying and pickling cut a cheese into rings; leave it out",
            name.key()
        )));
    }
    match name {
        StageAlone::Stage(name) => stage::run(name, set, how, form, data, words),
        StageAlone::Souring => {
            Parameters::refuse(&how.parameters, name.key())?;
            souring::run(set, form, data, words)
        }
        StageAlone::Germs => {
            Parameters::refuse(&how.parameters, name.key())?;
            germs::run(set, form, data)
        }
    }
}
