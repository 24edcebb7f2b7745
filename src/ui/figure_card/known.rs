//! What is known about the figure of a card.

use crate::analysis::{Effect, LikelyFigure, Why, why};
use crate::figure::Figure;
use crate::session::{Session, TargetChoice};
use crate::ui::figure_card::ways::WaysKnown;

/// What is known about the figure of a card: asked once for each change of the design, not for each drawing.
#[derive(Clone, Debug)]
pub(in crate::ui) struct Card {
    pub(in crate::ui) figure: Figure,
    pub(super) why: Why,
    pub(in crate::ui) ways: Vec<TargetChoice>,
}

impl Card {
    /// Returns what is known about a figure; nothing where the design does not have it.
    pub(in crate::ui) fn of(session: &Session, key: &str) -> Option<Self> {
        let why = why(session.batch(), key).ok()?;
        Some(Self { figure: why.figure.clone(), ways: session.ways_to(key), why })
    }
}

/// What can be shown on a card.
#[derive(Clone, Copy)]
pub(in crate::ui) struct Known<'a> {
    /// The chain of the figure; nothing where the design does not have it.
    pub(in crate::ui) card: Option<&'a Card>,
    /// What matters, once that is calculated, or in words why nothing can be said.
    pub(in crate::ui) effects: Option<&'a Effects>,
    /// The ways to the target that was asked for.
    pub(in crate::ui) ways: WaysKnown<'a>,
    /// Between what it likely lies, once that is calculated.
    pub(in crate::ui) likely: Option<&'a LikelyFigure>,
    /// Whether that could not be calculated.
    pub(in crate::ui) spread_failed: bool,
}

/// What matters to a figure, or in words why nothing can be said.
pub(in crate::ui) struct Effects {
    pub(in crate::ui) of: Result<Vec<Effect>, String>,
    /// Whether it is from before the last change.
    pub(in crate::ui) old: bool,
}
