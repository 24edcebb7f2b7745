//! What a file holds: a design, and the id that tells it from every other.

use crate::design::{Design, DesignId};

/// A design as a file holds it.
#[derive(Clone, Debug, PartialEq)]
pub struct DesignFile {
    /// Its id; none in a file of format 1 to 3, and in one written by hand.
    pub id: Option<DesignId>,
    /// What the maker chose.
    pub design: Design,
}
