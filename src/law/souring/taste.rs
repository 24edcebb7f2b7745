//! Taste and body of fresh cheese by its pH, in words.

crate::correlations! {
    /// Where one kind of taste turns into the next.
    TASTE_EDGES = { "pH at which taste and body of fresh cheese change", "from mild to soft, to short, to sour", [6.15, 5.3, 4.8], "1", (4.0, 7.0), "pH", CommonPractice, "mild at 6.5, soft from 5.8 to 5.4, short from 5.2 to 5.0, sour at 4.6; the edges lie half-way between", FromMemory }
}

/// Taste and body of a fresh cheese.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Taste {
    /// Hardly soured.
    #[default]
    Mild,
    /// A little soured.
    Soft,
    /// Soured.
    Short,
    /// Soured to the end.
    Sour,
}

impl Taste {
    /// Returns taste and body at a pH; what is no number counts as not soured.
    ///
    /// # Source
    /// [`TASTE_EDGES`].
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::souring::Taste;
    /// assert_eq!(Taste::at(5.1).words(), "mildly sour, short");
    /// ```
    #[must_use]
    pub fn at(ph: f64) -> Self {
        let [soft, short, sour] = TASTE_EDGES.coefficients;
        if ph <= sour {
            Self::Sour
        } else if ph <= short {
            Self::Short
        } else if ph <= soft {
            Self::Soft
        } else {
            Self::Mild
        }
    }

    /// Returns it in words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Mild => "mild, elastic, fries without melting",
            Self::Soft => "soft, melts",
            Self::Short => "mildly sour, short",
            Self::Sour => "sour, crumbly, does not melt",
        }
    }
}
