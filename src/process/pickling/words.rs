//! What a maker must hear with the figures of a pickling.

use super::{PickleRun, STRONGEST_BUFFER, VinegarBath};
use crate::law::acidity::{LEAST_ML_PER_G, LEAST_VINEGAR, USUAL_VINEGAR};
use crate::law::growth::TABLE_B_PH;

/// Returns the cautions of a pickling, most weighty first.
///
/// # Source
/// Food Code, definition of time and temperature controlled food, table B; Code of Federal Regulations, title 21, part 114.
#[must_use]
pub fn cautions(run: &PickleRun, bath: &VinegarBath) -> Vec<String> {
    let mut said = vec![
        "A modelled pH is no proof. Measure with a pH meter, at the centre of a cheese and on a blended sample, before relying on the acid.".to_owned(),
        "This food is not heated in its package, and its water activity is above 0.92 unless measured otherwise: table B of the Food Code wants a pH below 4.2 throughout; 4.6 is not enough.".to_owned(),
    ];
    let sours = run.equilibrium_ph < TABLE_B_PH.value;
    if !sours {
        said.push(format!(
            "With this vinegar the cheese never comes below pH {:.2}, however long it lies: take more vinegar, or stronger.",
            run.equilibrium_ph
        ));
    }
    let sours_if_strong = run.strong_equilibrium_ph < TABLE_B_PH.value;
    if sours && !sours_if_strong {
        said.push(format!(
            "A cheese may take up {STRONGEST_BUFFER} times as much acid as was taken here; it then never comes below pH {:.2}: take more vinegar, or stronger.",
            run.strong_equilibrium_ph
        ));
    }
    // Weaker vinegar counts by the acid it brings.
    let counted_ml_per_g = run.vinegar_ml_per_g * bath.acid_g_per_100ml / USUAL_VINEGAR.value;
    let least_ml_per_g = LEAST_ML_PER_G.value;
    if counted_ml_per_g < least_ml_per_g {
        said.push(format!(
            "{:.2} mL of vinegar for each g of cheese brings as much acid as {counted_ml_per_g:.2} mL of 5 %; below {least_ml_per_g} mL of 5 % vinegar per g a cheese may never sour. Vinegar that just covers is about 1 mL per g.",
            run.vinegar_ml_per_g
        ));
    }
    let least = LEAST_VINEGAR.value;
    if bath.acid_g_per_100ml < least {
        said.push(format!(
            "{} g/100 mL is weaker than anything that may be sold as vinegar ({least} g/100 mL).",
            bath.acid_g_per_100ml
        ));
    }
    said.push("The hours are likely too short: in published trials with eggs the centre took twice as long as such a model says, and in weak vinegar up to four times. Keep the jar at 4 °C or below from the start until the measured pH is below 4.2, and after; keep the cheese submerged.".to_owned());
    said.push("Do not move a cheese into oil before the measured pH is below 4.2 all through. The centre stays unsoured for days, and oil keeps the air out: botulism from cheese is documented, and its toxin may give no sign.".to_owned());
    said.push("Local food codes and a licensed process come before anything said here.".to_owned());
    said
}
