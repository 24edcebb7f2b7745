//! What goes into a stage and what comes out, for the mass balance.

use crate::law::Matter;

/// One stream over the edge of a stage.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stream {
    /// What it is, in the trade's words: "cream", "whey", "vapour".
    pub name: &'static str,
    /// How much of each component.
    pub matter: Matter,
}

/// Everything that crosses the edge of a stage.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct StageBalance {
    /// What came from the stage before.
    pub came: Matter,
    /// What was added here.
    pub added: Vec<Stream>,
    /// What left here and does not go on.
    pub left: Vec<Stream>,
    /// What goes on to the next stage.
    pub goes_on: Matter,
}

impl StageBalance {
    /// Returns came + added − left − goes on; all components zero if the stage loses and makes nothing.
    #[must_use]
    pub fn residual(&self) -> Matter {
        let added: Matter = self.added.iter().map(|stream| stream.matter).sum();
        let left: Matter = self.left.iter().map(|stream| stream.matter).sum();
        self.came + added - left - self.goes_on
    }
}
