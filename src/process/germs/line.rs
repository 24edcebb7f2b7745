//! Whose growth is followed: the germs, and the one whose law rests on a judged amount once more without it.

use crate::law::growth::{Germ, GrowthLaw};
use crate::process::UncertainParameters;

/// One line of growth.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum GermLine {
    /// Listeria monocytogenes.
    Listeria,
    /// Staphylococcus aureus.
    Staphylococcus,
    /// The same as if lactic acid did nothing beside its pH: no published amount was found that stops it.
    StaphylococcusWithoutLactic,
    /// Salmonella.
    Salmonella,
    /// Pathogenic Escherichia coli.
    Coli,
    /// Bacillus cereus.
    Cereus,
    /// Clostridium botulinum that grows in the cold, where there is no air.
    ColdBotulinum,
}

impl GermLine {
    /// Every line, in the order in which they are shown.
    pub const ALL: [Self; 7] = [
        Self::Listeria,
        Self::Staphylococcus,
        Self::StaphylococcusWithoutLactic,
        Self::Salmonella,
        Self::Coli,
        Self::Cereus,
        Self::ColdBotulinum,
    ];

    /// Returns the germ.
    #[must_use]
    pub const fn germ(self) -> Germ {
        match self {
            Self::Listeria => Germ::Listeria,
            Self::Staphylococcus | Self::StaphylococcusWithoutLactic => Germ::Staphylococcus,
            Self::Salmonella => Germ::Salmonella,
            Self::Coli => Germ::Coli,
            Self::Cereus => Germ::Cereus,
            Self::ColdBotulinum => Germ::ColdBotulinum,
        }
    }

    /// Returns the word for scripts, which never changes.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::StaphylococcusWithoutLactic => "staphylococcus_without_lactic",
            _ => self.germ().key(),
        }
    }

    /// Returns its name in a few words.
    ///
    /// # Example
    /// ```
    /// use vatsketch::process::GermLine;
    /// assert_eq!(GermLine::StaphylococcusWithoutLactic.name(), "Staphylococcus aureus, lactic acid not counted");
    /// ```
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::StaphylococcusWithoutLactic => "Staphylococcus aureus, lactic acid not counted",
            _ => self.germ().name(),
        }
    }

    /// Returns its name where there is little room.
    #[must_use]
    pub const fn short_name(self) -> &'static str {
        match self {
            Self::Listeria => "Listeria",
            Self::Staphylococcus => "S. aureus",
            Self::StaphylococcusWithoutLactic => "S. aureus, lactic acid not counted",
            Self::Salmonella => "Salmonella",
            Self::Coli => "E. coli",
            Self::Cereus => "B. cereus",
            Self::ColdBotulinum => "Cold-type botulinum",
        }
    }

    /// Returns whether it grows only without air: inside a cheese, in the jar, under oil.
    #[must_use]
    pub const fn wants_no_air(self) -> bool {
        matches!(self, Self::ColdBotulinum)
    }

    /// Returns its law under some parameters.
    pub(super) fn law(self, parameters: &UncertainParameters) -> GrowthLaw {
        let law = GrowthLaw::of(self.germ());
        let times = match self {
            Self::Listeria => parameters.listeria_rate,
            Self::Staphylococcus | Self::StaphylococcusWithoutLactic => parameters.staphylococcus_rate,
            Self::Salmonella => parameters.salmonella_rate,
            Self::Coli => parameters.coli_rate,
            Self::Cereus => parameters.cereus_rate,
            Self::ColdBotulinum => 1.0,
        };
        let law = match (law.lactic_mm, law.acetic_mm) {
            (Some(lactic_mm), Some(acetic_mm)) => {
                law.faster(times).inhibited_at(parameters.lactic_inhibits * lactic_mm, parameters.acetic_inhibits * acetic_mm)
            }
            _ => law.faster(times),
        };
        if self == Self::StaphylococcusWithoutLactic { law.without_lactic() } else { law }
    }
}
