//! What is printed of a plan: the two pages that hang in the kitchen, and what else is asked for.

use super::Paper;
use std::collections::BTreeSet;

/// What may be printed behind the two pages.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Part {
    /// What to buy, by where it stands in the shop.
    Shopping,
    /// What may go wrong, what to do then, and when to discard.
    Troubles,
    /// Labels for the jars, to cut out.
    Labels,
    /// The curves, and how far germs could grow.
    Curves,
    /// The cautions in full, the laws and their sources.
    Sources,
}

impl Part {
    /// Every part, in the order in which they are printed.
    pub const ALL: [Self; 5] = [Self::Shopping, Self::Troubles, Self::Labels, Self::Curves, Self::Sources];

    /// Returns its word on the command line.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Shopping => "shopping",
            Self::Troubles => "troubles",
            Self::Labels => "labels",
            Self::Curves => "curves",
            Self::Sources => "sources",
        }
    }

    /// Returns its name in the window.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::Shopping => "Shopping list",
            Self::Troubles => "Troubles",
            Self::Labels => "Jar labels",
            Self::Curves => "Curves",
            Self::Sources => "Cautions and sources",
        }
    }

    /// Returns what it holds, in a line.
    #[must_use]
    pub const fn help(self) -> &'static str {
        match self {
            Self::Shopping => "What to buy, with boxes, by where it stands in the shop",
            Self::Troubles => "What may go wrong, what to do, and when to discard untasted",
            Self::Labels => "Labels to cut out, one for each jar",
            Self::Curves => "Warming, drying and pH, and how far germs could grow",
            Self::Sources => "Every caution in full, what to expect, the laws and where they come from",
        }
    }
}

/// What is printed, and on which paper.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sheets {
    /// The paper.
    pub paper: Paper,
    /// What is printed behind the two pages.
    pub with: BTreeSet<Part>,
}

impl Sheets {
    /// Returns the two pages with all that can be printed behind them.
    #[must_use]
    pub fn all(paper: Paper) -> Self {
        Self { paper, with: Part::ALL.into() }
    }
}

impl From<Paper> for Sheets {
    /// Returns the two pages alone.
    fn from(paper: Paper) -> Self {
        Self { paper, with: BTreeSet::new() }
    }
}
