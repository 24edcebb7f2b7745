//! What a design can be scaled to.

use crate::design::Unit;
use crate::units::Units;

/// What a design is scaled to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ScaleTo {
    /// So much milk to buy.
    Milk,
    /// A pot of this size, filled as far as leaves room to stir.
    Pot,
    /// So many moulds.
    Moulds,
    /// So many full jars.
    Jars,
}

impl ScaleTo {
    /// Every one, in the order in which they are offered.
    pub const ALL: [Self; 4] = [Self::Milk, Self::Pot, Self::Moulds, Self::Jars];

    /// Returns its name on the command line and in JSON.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Milk => "milk",
            Self::Pot => "pot",
            Self::Moulds => "moulds",
            Self::Jars => "jars",
        }
    }

    /// Returns its name in words.
    #[must_use]
    pub const fn label(self) -> &'static str {
        match self {
            Self::Milk => "Milk",
            Self::Pot => "Size of the pot",
            Self::Moulds => "Number of moulds",
            Self::Jars => "Number of full jars",
        }
    }

    /// Returns one sentence of help.
    #[must_use]
    pub const fn help(self) -> &'static str {
        match self {
            Self::Milk => "The milk you buy, before cream or skimmed milk is added.",
            Self::Pot => "What the pot holds to its rim; some of it stays free to stir.",
            Self::Moulds => "This number of moulds, each with as much curd as now.",
            Self::Jars => "As many cheeses as fill this number of your jars.",
        }
    }

    /// Returns what is written behind a number that is typed in a unit.
    #[must_use]
    pub fn behind(self, symbol: &str) -> String {
        match self {
            Self::Milk => format!("{symbol} of milk"),
            Self::Pot => format!("{symbol}: what the pot holds to its rim"),
            Self::Moulds => "moulds".to_owned(),
            Self::Jars => "full jars".to_owned(),
        }
    }

    /// Returns the unit of the amount.
    #[must_use]
    pub const fn unit(self) -> Unit {
        match self {
            Self::Milk | Self::Pot => Unit::Litre,
            Self::Moulds | Self::Jars => Unit::One,
        }
    }

    /// Returns whether it is counted, so whole.
    #[must_use]
    pub const fn is_counted(self) -> bool {
        matches!(self, Self::Moulds | Self::Jars)
    }

    /// Returns an amount of it that is in words already: "8 L of milk", "a pot of 12 L", "16 moulds".
    pub(super) fn of(self, amount: &str) -> String {
        match self {
            Self::Milk => format!("{amount} of milk"),
            Self::Pot => format!("a pot of {amount}"),
            Self::Moulds if amount == "1" => "1 mould".to_owned(),
            Self::Moulds => format!("{amount} moulds"),
            Self::Jars if amount == "1" => "1 full jar".to_owned(),
            Self::Jars => format!("{amount} full jars"),
        }
    }
}

/// What a design is scaled to, and how much of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ScaleGoal {
    /// What.
    pub to: ScaleTo,
    /// How much: litres, or how many.
    pub amount: f64,
}

impl ScaleGoal {
    /// Returns it in words: "8 L of milk", "a pot of 12 L", "16 moulds", "2 full jars".
    ///
    /// # Example
    /// ```
    /// use vatsketch::{analysis::{ScaleGoal, ScaleTo}, units::Units};
    /// let goal = |to, amount| ScaleGoal { to, amount };
    /// assert_eq!(goal(ScaleTo::Milk, 8.0).in_words(Units::METRIC), "8 L of milk");
    /// assert_eq!(goal(ScaleTo::Moulds, 1.0).in_words(Units::METRIC), "1 mould");
    /// assert_eq!(goal(ScaleTo::Milk, 6.0).in_words(Units::US), "6 qt 11 fl oz of milk");
    /// ```
    #[must_use]
    pub fn in_words(self, units: Units) -> String {
        let digits = digits(self.amount);
        let symbol = self.to.unit().symbol();
        let own = if symbol.is_empty() { digits } else { format!("{digits} {symbol}") };
        self.to.of(&units.text(self.to.unit(), self.amount, DECIMALS).unwrap_or(own))
    }
}

/// Decimals of litres.
const DECIMALS: usize = 2;

/// Returns a number of litres or a count without zeros at its end.
pub(super) fn digits(amount: f64) -> String {
    let text = format!("{amount:.DECIMALS$}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}
