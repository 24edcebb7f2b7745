//! What a kind of entry may hold, and what of the plan it is laid beside.

use super::Anchor;
use crate::design::Unit;

/// What is written down.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Holds {
    /// A number.
    Number {
        /// Its unit.
        unit: Unit,
        /// Least that is believed; less is a slip of the pen.
        least: f64,
        /// Greatest that is believed.
        most: f64,
        /// Decimals that a kitchen reads.
        decimals: usize,
        /// How near it is read, in its unit: what is apart by no more is not apart.
        reads_to: f64,
    },
    /// Nothing but the time at which it was done.
    Done,
    /// The maker's own words.
    Words,
    /// The key of a task of the plan, such as `turn_3`.
    Task,
    /// A picture, by the path of its file.
    Photo,
}

impl Holds {
    /// Returns the unit of what is written down; none of words and times.
    #[must_use]
    pub const fn unit(self) -> Unit {
        match self {
            Self::Number { unit, .. } => unit,
            Self::Done | Self::Words | Self::Task | Self::Photo => Unit::One,
        }
    }
}

/// A line of the plan's curves.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Line {
    /// Temperature of the milk.
    Milk,
    /// Temperature of the bath, of the steam or of the hot spot.
    Bath,
    /// Whey from all moulds so far.
    Whey,
    /// Weight of one cheese while it dries.
    CheeseWeight,
    /// pH of milk, curd and cheese before the vinegar.
    CurdPh,
    /// pH at the centre in the vinegar.
    CentrePh,
    /// pH of a blended sample in the vinegar.
    BlendedPh,
}

impl Line {
    /// Returns from where its hours count.
    #[must_use]
    pub const fn anchor(self) -> Anchor {
        match self {
            Self::Milk | Self::Bath | Self::CurdPh => Anchor::Start,
            Self::Whey => Anchor::Ladling,
            Self::CheeseWeight => Anchor::Air,
            Self::CentrePh | Self::BlendedPh => Anchor::Vinegar,
        }
    }
}

/// What of the plan an entry is laid beside.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Beside {
    /// A line of a curve, at its hour.
    Line(Line),
    /// A figure, by its key.
    Figure(&'static str),
    /// A figure that counts minutes, by its key: the entry says when it was done.
    Minutes(Anchor, &'static str),
    /// A choice, by its key.
    Choice(&'static str),
    /// Nothing: the plan does not say it.
    Nothing,
}
