//! From where hours count.

/// The moment from which the hours of a curve or the minutes of a figure count.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Anchor {
    /// Warming begins.
    Start,
    /// The rennet goes in.
    Rennet,
    /// The curd goes into the moulds.
    Ladling,
    /// The cheeses go to the air.
    Air,
    /// The cheeses go into the vinegar.
    Vinegar,
}

impl Anchor {
    /// Returns what has to be written down for it, in the middle of a sentence.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Start => "when warming began",
            Self::Rennet => "when the rennet went in",
            Self::Ladling => "when the curd was ladled",
            Self::Air => "when the cheeses were laid out to dry",
            Self::Vinegar => "when the vinegar was poured",
        }
    }
}
