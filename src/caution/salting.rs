//! Cautions about salt, and about pepper.

use super::facts::{Facts, Severity};
use crate::batch::Batch;
use crate::source::SourceId;

crate::constants! {
    /// Little salt.
    SALT_LITTLE = { "Salt in moisture below which fresh cheese is little salted", 2.5, "%", (2.0, 3.0), Ourselves, "targets of 2.5 to 4 % for fresh cheese", Judged }
    /// Usual salt.
    SALT_USUAL = { "Salt in moisture up to which fresh cheese is usually salted", 4.0, "%", (3.5, 5.0), Ourselves, "targets of 2.5 to 4 % for fresh cheese, 5 % for firmer", Judged }
    /// Much salt.
    SALT_MUCH = { "Salt in moisture above which fresh cheese is very salty", 6.0, "%", (5.0, 7.0), Ourselves, "targets of 2.5 to 4 % for fresh cheese, 5 % for firmer", Judged }
    /// Spices with bacilli.
    SPICES_WITH_BACILLI = { "Share of spices in which bacilli were found", 87.0, "%", (87.0, 87.0), SpiceBacilli, "200 samples, 61 of them pepper; 4 % of all held Bacillus cereus, up to 800 000 in a gram of white pepper", Secondhand }
    /// Spices with Bacillus cereus.
    SPICES_WITH_CEREUS = { "Share of processed spices in which Bacillus cereus was found", 53.0, "%", (53.0, 53.0), Powers1976, "110 samples, 50 to 8500 in a gram", Secondhand }
}

/// A caution about salt or pepper.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SaltingCaution {
    /// Little salt.
    LittleSalt {
        /// Salt in moisture.
        salt_percent: f64,
    },
    /// Much salt.
    MuchSalt {
        /// Salt in moisture.
        salt_percent: f64,
    },
    /// Salt still on the faces when the cheeses leave the moulds.
    SaltOnFaces {
        /// How much on each.
        salt_g: f64,
    },
    /// Pepper that was not treated against germs.
    UntreatedPepper,
}

impl SaltingCaution {
    pub(super) const fn facts(&self) -> Facts {
        use Severity::{Note, Stop};
        match self {
            Self::LittleSalt { .. } => Facts::caused("little_salt", Note, "salt_percent", SourceId::Ourselves),
            Self::MuchSalt { .. } => Facts::caused("much_salt", Note, "salt_percent", SourceId::Ourselves),
            Self::SaltOnFaces { .. } => Facts::caused("salt_on_faces", Note, "salted_turns", SourceId::Ourselves),
            Self::UntreatedPepper => Facts::caused("untreated_pepper", Stop, "pepper_treated", SourceId::SpiceRiskProfile),
        }
    }
}

pub(super) fn cautions(batch: &Batch) -> Vec<SaltingCaution> {
    let mut all = Vec::new();
    if let Some(salted) = batch.salting.done() {
        let salt_percent = salted.salt_in_moisture_percent;
        if salt_percent < SALT_LITTLE.value {
            all.push(SaltingCaution::LittleSalt { salt_percent });
        } else if salt_percent > SALT_MUCH.value {
            all.push(SaltingCaution::MuchSalt { salt_percent });
        }
        if salted.salt_lies_on_faces {
            all.push(SaltingCaution::SaltOnFaces { salt_g: salted.unmoulded.undissolved_g });
        }
    }
    let design = &batch.design.salting;
    if design.pepper_g_dm2 > 0.0 && !design.pepper_treated {
        all.push(SaltingCaution::UntreatedPepper);
    }
    all
}
