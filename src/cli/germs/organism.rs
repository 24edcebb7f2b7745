//! Whose growth is asked for, by name.

use crate::design::{DesignError, nearest};
use crate::law::growth::{
    Chilled, Conditions, Germ, GrowthLaw, LISTERIA_LOW_ACETIC, LISTERIA_LOW_LACTIC, mejlholm_dalgaard, yeast_rate_per_h,
};

/// The law of an organism.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Law {
    Germ(GrowthLaw),
    Chilled(Chilled),
    Yeast,
    Mould,
}

/// An organism that may be asked for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Organism {
    pub(super) key: &'static str,
    pub(super) name: &'static str,
    pub(super) law: Law,
}

/// Returns every organism, the six germs of the program first.
pub(super) fn organisms() -> Vec<Organism> {
    let germs = Germ::ALL.map(|germ| Organism { key: germ.key(), name: germ.name(), law: Law::Germ(GrowthLaw::of(germ)) });
    let low = GrowthLaw::of(Germ::Listeria).inhibited_at(LISTERIA_LOW_LACTIC.value, LISTERIA_LOW_ACETIC.value);
    let others = [
        ("listeria_low", "Listeria monocytogenes, low inhibiting amounts of acid", Law::Germ(low)),
        ("md_listeria", "Listeria monocytogenes in chilled food, whole model", Law::Chilled(Chilled::Listeria)),
        ("md_lab", "Lactic acid bacteria in chilled food, whole model", Law::Chilled(Chilled::LacticBacteria)),
        ("yeast", "Dairy yeasts", Law::Yeast),
        ("mould", "Blue mould", Law::Mould),
    ];
    germs.into_iter().chain(others.map(|(key, name, law)| Organism { key, name, law })).collect()
}

/// Returns the keys of all organisms, with commas.
pub(super) fn keys() -> String {
    organisms().iter().map(|organism| organism.key).collect::<Vec<_>>().join(", ")
}

impl Organism {
    /// Reads the key of an organism.
    pub(super) fn read(text: &str) -> Result<Self, DesignError> {
        let all = organisms();
        let found = all.iter().find(|organism| organism.key == text).copied();
        found.ok_or_else(|| DesignError::NotAChoice {
            label: "Organism",
            key: "organism",
            given: text.to_owned(),
            options: keys(),
            nearest: nearest(text, all.iter().map(|organism| organism.key)),
        })
    }

    /// Returns the rate of growth, ln per hour; none where its law says nothing, as for the radius of a mould.
    ///
    /// # Arguments
    /// * `citric_mm`: all forms, mmol per kg of water; counts for the whole models only
    pub(super) fn rate_per_h(&self, at: &Conditions, citric_mm: f64) -> Option<f64> {
        match self.law {
            Law::Germ(law) => Some(law.rate_per_h(at)),
            Law::Chilled(whose) => Some(mejlholm_dalgaard(whose, at, citric_mm)),
            Law::Yeast => yeast_rate_per_h(at.temperature_c, at.ph, at.water_activity),
            Law::Mould => None,
        }
    }

    /// Returns the germ, if it is one whose lag and greatest density are known.
    pub(super) const fn germ(&self) -> Option<Germ> {
        match self.law {
            Law::Germ(law) => Some(law.germ),
            Law::Chilled(_) | Law::Yeast | Law::Mould => None,
        }
    }
}
