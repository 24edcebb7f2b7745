//! Whether the maker was welcomed, kept between two starts; no part of any design.

use super::kept::Keepable;
use serde::{Deserialize, Serialize};

/// Whether the maker was welcomed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Welcomed {
    /// Whether the welcome was shown once.
    pub once: bool,
}

impl Keepable for Welcomed {
    const FILE: &'static str = "welcomed.ron";

    /// Either will do.
    fn checked(self) -> Self {
        self
    }
}
