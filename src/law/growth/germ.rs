//! The germs whose growth is calculated.

use super::germ_numbers::{
    BOTULINUM_LAG_WORK, BOTULINUM_MOST, CEREUS_LAG_WORK, CEREUS_MOST, LISTERIA_MOST, STAPHYLOCOCCUS_LAG_WORK, USUAL_LAG_WORK,
    USUAL_MOST,
};
use crate::source::Constant;

/// A germ whose growth is calculated.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Germ {
    /// The germ that cold does not stop.
    Listeria,
    /// The toxin former of hands and udders.
    Staphylococcus,
    /// A germ of raw milk, eggs and spice.
    Salmonella,
    /// The kinds of it that make ill.
    Coli,
    /// A spore former of spice and milk.
    Cereus,
    /// The spore former that grows in the cold without air.
    ColdBotulinum,
}

impl Germ {
    /// Every germ, in the order in which they are shown.
    pub const ALL: [Self; 6] =
        [Self::Listeria, Self::Staphylococcus, Self::Salmonella, Self::Coli, Self::Cereus, Self::ColdBotulinum];

    /// Returns the key by which scripts know it; it never changes.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Listeria => "listeria",
            Self::Staphylococcus => "staphylococcus",
            Self::Salmonella => "salmonella",
            Self::Coli => "coli",
            Self::Cereus => "cereus",
            Self::ColdBotulinum => "cold_botulinum",
        }
    }

    /// Returns its name.
    ///
    /// # Example
    /// ```
    /// assert_eq!(vatsketch::law::growth::Germ::Coli.name(), "Escherichia coli, pathogenic");
    /// ```
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Listeria => "Listeria monocytogenes",
            Self::Staphylococcus => "Staphylococcus aureus",
            Self::Salmonella => "Salmonella",
            Self::Coli => "Escherichia coli, pathogenic",
            Self::Cereus => "Bacillus cereus, cold-loving",
            Self::ColdBotulinum => "Clostridium botulinum, cold type",
        }
    }

    /// Returns the record of the greatest density that it reaches, log₁₀ per gram.
    #[must_use]
    pub const fn most_record(self) -> Constant {
        match self {
            Self::Listeria => LISTERIA_MOST,
            Self::Staphylococcus | Self::Salmonella | Self::Coli => USUAL_MOST,
            Self::Cereus => CEREUS_MOST,
            Self::ColdBotulinum => BOTULINUM_MOST,
        }
    }

    /// Returns the greatest density that it reaches, log₁₀ per gram.
    #[must_use]
    pub const fn most_log(self) -> f64 {
        self.most_record().value
    }

    /// Returns the record of the work of its lag.
    #[must_use]
    pub const fn lag_record(self) -> Constant {
        match self {
            Self::Staphylococcus => STAPHYLOCOCCUS_LAG_WORK,
            Self::Listeria | Self::Salmonella | Self::Coli => USUAL_LAG_WORK,
            Self::Cereus => CEREUS_LAG_WORK,
            Self::ColdBotulinum => BOTULINUM_LAG_WORK,
        }
    }

    /// Returns h0, the work of its lag: rate times lag, the dose that goes by before it grows. Cells that grow already have none.
    #[must_use]
    pub const fn h0(self) -> f64 {
        self.lag_record().value
    }
}
