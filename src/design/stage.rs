//! The stages.

/// The stages, in the trade's order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Stage {
    /// Milk, cream, calcium and rennet.
    Milk,
    /// Warming, setting and cutting.
    Vat,
    /// Draining in the moulds.
    Draining,
    /// Salting between the turns.
    Salting,
    /// Drying in a cabinet or in the open air.
    Drying,
    /// Souring in vinegar.
    Pickling,
    /// The jar, and how long it may stand.
    Keeping,
}

impl Stage {
    /// Every stage, in the trade's order.
    pub const ALL: [Self; 7] = [Self::Milk, Self::Vat, Self::Draining, Self::Salting, Self::Drying, Self::Pickling, Self::Keeping];

    /// Returns the word used as a key on the command line and in JSON.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Milk => "milk",
            Self::Vat => "vat",
            Self::Draining => "draining",
            Self::Salting => "salting",
            Self::Drying => "drying",
            Self::Pickling => "pickling",
            Self::Keeping => "keeping",
        }
    }

    /// Returns the heading in a word or two, where there is little room.
    #[must_use]
    pub const fn short_title(self) -> &'static str {
        match self {
            Self::Draining => "Moulds",
            Self::Salting => "Salt",
            Self::Keeping => "Jar",
            _ => self.title(),
        }
    }

    /// Returns the stage as it is named within a sentence: "more about the vat".
    #[must_use]
    pub const fn in_a_sentence(self) -> &'static str {
        match self {
            Self::Milk => "the milk",
            Self::Vat => "the vat",
            Self::Draining => "moulds and draining",
            Self::Salting => "salt and pepper",
            Self::Drying => "drying",
            Self::Pickling => "the vinegar",
            Self::Keeping => "jar and keeping",
        }
    }

    /// Returns the heading of the stage.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::Milk => "Milk",
            Self::Vat => "Vat",
            Self::Draining => "Moulds and draining",
            Self::Salting => "Salt and pepper",
            Self::Drying => "Drying",
            Self::Pickling => "Vinegar",
            Self::Keeping => "Jar and keeping",
        }
    }
}
