//! The sheets of paper.

/// The sheets that a kitchen's printer takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Paper {
    /// ISO 216 A4, 210 × 297 mm.
    A4,
    /// Letter, 8.5 × 11 inches.
    Letter,
}

impl Paper {
    /// Every paper.
    pub const ALL: [Self; 2] = [Self::A4, Self::Letter];

    /// Returns its name.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::A4 => "A4",
            Self::Letter => "Letter",
        }
    }

    /// Returns its width in points of 1/72 inch.
    #[must_use]
    pub const fn width_pt(self) -> f32 {
        match self {
            Self::A4 => 595.28,
            Self::Letter => 612.0,
        }
    }

    /// Returns the name that the typesetter knows it by.
    #[cfg(feature = "paper")]
    pub(super) const fn sheet(self) -> &'static str {
        match self {
            Self::A4 => "a4",
            Self::Letter => "us-letter",
        }
    }
}
