//! The open card of a figure.

use crate::analysis::Goal;

/// What the window keeps of an open card.
#[derive(Clone, Debug, PartialEq)]
pub struct CardView {
    /// The figure.
    pub figure: &'static str,
    /// What it is to be, as it is typed.
    pub wanted: String,
    /// The choice that may move.
    pub choice: Option<&'static str>,
    /// The target to which the ways are compared.
    pub goal: Option<Goal>,
    /// What came of the last aim.
    pub told: Option<Told>,
}

/// What came of an aim.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Told {
    /// It was reached.
    Reached(String),
    /// It was not, or could not be looked for.
    Not(String),
}

impl CardView {
    /// Returns a card that was just opened.
    #[must_use]
    pub const fn of(figure: &'static str) -> Self {
        Self { figure, wanted: String::new(), choice: None, goal: None, told: None }
    }
}
