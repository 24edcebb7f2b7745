//! What is said beside a course of souring.

use super::settings::Settings;
use crate::law::souring::{
    ACID_CLOT_C, ACID_CLOT_PH, BULK_STARTER_CELLS, Beyond, PACKET_CELLS, SOURING_PH_LEAST, SOURING_WARMEST, STIR_ACID_BELOW_C,
    SouringPoint, clots_where_it_falls,
};

/// Said with every course.
pub(super) const MEASURE: &str = "A model, not a measurement: measure the pH with a pH meter; a culture may fail.";

/// Returns the sentences about a course.
pub(super) fn notes(settings: &Settings, points: &[SouringPoint]) -> Vec<String> {
    let mut notes = vec![MEASURE.to_owned()];
    let unsoured = settings.start.acids.is_none() && settings.lactone_mol_kg <= 0.0;
    if settings.culture.is_none() && unsoured {
        notes.push("Nothing sours it: set a culture, or an acid that is stirred in.".to_owned());
    }
    if settings.culture.is_some() && !settings.cells_said {
        let (least, most) = PACKET_CELLS.range;
        notes.push(format!(
            "{:e} cells in each g are assumed, about 1 % of bulk starter in milk; a packet brings {least:e} to {most:e}, and curd holds some six times what the milk had.",
            BULK_STARTER_CELLS.value
        ));
    }
    let now_ph = points.first().map_or(f64::NAN, |point| point.ph);
    if !settings.start.acids.is_none() && clots_where_it_falls(settings.temperature_c, now_ph) {
        notes.push(format!(
            "Acid for a pH below {} clots milk above {} °C where it falls; it is stirred into milk of {} °C or less.",
            ACID_CLOT_PH.value, ACID_CLOT_C.value, STIR_ACID_BELOW_C.value
        ));
    }
    let any = |beyond: Beyond| settings.culture.is_some() && points.iter().any(|point| point.beyond == Some(beyond));
    if any(Beyond::TooSour) {
        notes.push(format!("Below pH {0} the law does not hold; the rate at pH {0} stands there.", SOURING_PH_LEAST.value));
    }
    if any(Beyond::TooHot) {
        notes.push(format!("Above {0} °C the law does not hold; the rate at {0} °C stands there.", SOURING_WARMEST.value));
    }
    notes
}
