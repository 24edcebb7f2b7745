//! The id that a design has, and what saving does with it.

use crate::design::DesignId;
use uuid::Uuid;

/// What saving did with the id of a design.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Saved {
    /// The design had an id: the file has it too, or, under another name, a new one.
    Named,
    /// The design came from a file without an id, and now has its first one.
    NamedFirst,
    /// The file held this design already, so it was not written again.
    Unchanged,
}

impl Saved {
    /// Returns what the maker must know of it, once.
    #[must_use]
    pub const fn notice(self) -> Option<&'static str> {
        match self {
            Self::Named | Self::Unchanged => None,
            Self::NamedFirst => Some(
                "Saved. The design now has an id, and the events of its calendar go by it. A calendar that already holds its events may show them twice: delete the old ones there.",
            ),
        }
    }
}

/// Returns an id that no other design has: here alone the house asks for chance.
pub(super) fn drawn_id() -> DesignId {
    DesignId::from_random_bits(Uuid::new_v4().as_u128())
}
