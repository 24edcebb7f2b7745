//! What `vatsketch stage` calculates alone: a stage of the trade, or a law that holds in all of them.

use crate::design::Stage;

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
