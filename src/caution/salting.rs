//! Cautions about salt on the faces and about pepper.

use super::caution::{Caution, Severity};
use crate::batch::Batch;
use crate::source::SourceId;

crate::constants! {
    /// Spices with bacilli.
    SPICES_WITH_BACILLI = { "Share of spices in which bacilli were found", 87.0, "%", (87.0, 87.0), SpiceBacilli, "200 samples, 61 of them pepper; 4 % of all held Bacillus cereus, up to 800 000 in a gram of white pepper", Secondhand }
    /// Spices with Bacillus cereus.
    SPICES_WITH_CEREUS = { "Share of processed spices in which Bacillus cereus was found", 53.0, "%", (53.0, 53.0), Powers1976, "110 samples, 50 to 8500 in a gram", Secondhand }
}

pub(super) fn cautions(batch: &Batch, all: &mut Vec<Caution>) {
    salt(batch, all);
    pepper(batch, all);
}

fn salt(batch: &Batch, all: &mut Vec<Caution>) {
    if let Some(salted) = batch.salting.done().filter(|salted| salted.salt_lies_on_faces) {
        all.push(Caution::new(
            "salt_on_faces",
            Severity::Note,
            Some("salted_turns"),
            SourceId::Ourselves,
            format!(
                "When the cheeses leave the moulds {:.1} g of salt still lie on each; what falls off is missing from the salt worked out here.",
                salted.unmoulded.undissolved_g
            ),
            "Salt at fewer turns, so that the last salt has longer, or salt less.",
        ));
    }
}

fn pepper(batch: &Batch, all: &mut Vec<Caution>) {
    let design = &batch.design.salting;
    if design.pepper_g_dm2 > 0.0 && !design.pepper_treated {
        all.push(Caution::new(
            "untreated_pepper",
            Severity::Stop,
            Some("pepper_treated"),
            SourceId::SpiceRiskProfile,
            format!(
                "Pepper that was not treated brings germs onto the cheese: Salmonella is the germ that most often makes people ill from spices, and surveys found bacilli in {:.0} % of 200 spices and Bacillus cereus in {:.0} % of 110.",
                SPICES_WITH_BACILLI.value, SPICES_WITH_CEREUS.value
            ),
            "Buy pepper that was steamed or otherwise treated against germs, or leave it off; heat in a pan does not end all spores.",
        ));
    }
}
