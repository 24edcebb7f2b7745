//! The pages of the window, and what the menu of help shows in front of them.

/// A page of the window.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Page {
    /// Choices, curves and results.
    #[default]
    Design,
    /// The week, what to buy, and the plan on paper.
    Plan,
    /// What really happened.
    Log,
    /// Every constant with its source.
    Sources,
}

impl Page {
    /// Every page.
    pub const ALL: [Self; 4] = [Self::Design, Self::Plan, Self::Log, Self::Sources];

    /// Returns its name.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::Design => "Design",
            Self::Plan => "Plan",
            Self::Log => "Log",
            Self::Sources => "Sources",
        }
    }
}

/// What the menu of help shows in front of the window.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HelpCard {
    /// The keys.
    Keys,
    /// The words that are explained.
    Words,
    /// What is new in the program.
    Changes,
    /// What the program is, and what one may start from.
    Welcome,
}

/// A part of the page of the plan.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum PlanPart {
    /// When everything is done.
    #[default]
    Week,
    /// What is at home, and what to buy.
    Shopping,
    /// The plan on paper.
    Paper,
}

impl PlanPart {
    /// Every part.
    pub const ALL: [Self; 3] = [Self::Week, Self::Shopping, Self::Paper];

    /// Returns its name.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::Week => "Week",
            Self::Shopping => "Shopping",
            Self::Paper => "Paper",
        }
    }
}
