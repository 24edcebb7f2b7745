//! The course of the warming as it is shown: its points, and what is done or happens on the way.

/// One point of the warming curve.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct WarmingPoint {
    /// Minutes from the start of warming.
    pub at_min: f64,
    /// Temperature of the bath (of the pot's base on a hob; of the steam in a double boiler).
    pub bath_c: f64,
    /// Temperature of the milk.
    pub milk_c: f64,
    /// Temperature of the wall on the milk's side, at its hottest.
    pub wall_c: f64,
}

/// What is done, or happens, between the cold milk and the ladle.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WarmingEvent {
    /// The heat goes on; an acid is in the cold milk by then.
    Start,
    /// All of the milk is as hot as it is held to pasteurise it.
    HoldBegins,
    /// It has been held long enough, and is cooled.
    HoldEnds,
    /// It is cool enough to go on.
    Cooled,
    /// The culture goes in.
    Culture,
    /// The calcium goes in.
    Calcium,
    /// The rennet goes in.
    Rennet,
    /// The milk has clotted.
    Clotted,
    /// The curd breaks cleanly.
    CleanBreak,
    /// The curd is cut.
    Cut,
    /// The curd is ladled.
    Ladle,
}

impl WarmingEvent {
    /// Returns the event in a word or two, as curves, tables and exports name it.
    ///
    /// # Example
    /// ```
    /// assert_eq!(vatsketch::process::WarmingEvent::CleanBreak.words(), "clean break");
    /// ```
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Start => "start",
            Self::HoldBegins => "hold begins",
            Self::HoldEnds => "hold ends",
            Self::Cooled => "cooled",
            Self::Culture => "culture",
            Self::Calcium => "calcium",
            Self::Rennet => "rennet",
            Self::Clotted => "clotted",
            Self::CleanBreak => "clean break",
            Self::Cut => "cut",
            Self::Ladle => "ladle",
        }
    }
}

/// An event with its time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WarmingMark {
    /// What is done or happens.
    pub event: WarmingEvent,
    /// Minutes from the start of warming.
    pub at_min: f64,
    /// Temperature of the milk at that moment.
    pub milk_c: f64,
}
