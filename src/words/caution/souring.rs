//! Cautions about souring, in words.

use crate::caution::SouringCaution;
use crate::design::CultureBy;
use crate::law::growth::{SOUR_BEFORE_DRYING_PH, SOURED_IN_TIME_H, SOURED_IN_TIME_PH, WARM_DRYING};
use crate::law::souring::{BULK_STARTER_CELLS, PACKET_CELLS, STIR_ACID_BELOW_C, WARM_ACID_CLOT_PH};
use crate::words::number::{quantity, range_words, value};
use crate::words::said::{CautionWords, said};

pub(super) fn words(caution: &SouringCaution) -> CautionWords {
    match caution {
        SouringCaution::NotSourInTime { ph, .. } => late(*ph),
        SouringCaution::WarmBeforeSour { ph, temperature_c, .. } => said(
            format!(
                "Drying in air of {temperature_c:.0} °C begins when the cheese is foreseen at pH {ph:.2}. In air above {} the model has germs grow at any pH above {}; a lower one is no proof against them.",
                quantity(&WARM_DRYING),
                value(&SOUR_BEFORE_DRYING_PH)
            ),
            format!(
                "With a culture, use more of it or a longer, warmer time in the moulds; an acid stirred in cannot sour so far. Or dry at {} or cooler. Measure the pH before the cheeses go into the air.",
                quantity(&WARM_DRYING)
            ),
            format!("Warm drying before pH {}: germs grow.", value(&SOUR_BEFORE_DRYING_PH)),
        ),
        SouringCaution::CultureStops { ph, temperature_c, most_c, .. } => said(
            format!(
                "At {temperature_c:.0} °C it is too hot for the culture, which stops at pH {ph:.2}: above {most_c:.1} °C it does not grow, or this model cannot tell."
            ),
            "Keep the milk and the cheese cooler until the cheese is sour, or choose a kind of culture that likes more warmth.",
            "Too hot for the culture: it stops before the cheese is sour.",
        ),
        SouringCaution::CellsAssumed { cells_per_g, by } => assumed(*cells_per_g, *by),
        SouringCaution::AcidIntoWarmMilk { milk_c } => said(
            format!(
                "The acid goes into milk of {milk_c:.1} °C. It is stirred into milk of {} or colder, or it may clot the milk where it falls.",
                quantity(&STIR_ACID_BELOW_C)
            ),
            "Chill the milk first, dilute the acid and stir it in slowly.",
            format!("Acid goes into milk of {} or colder.", quantity(&STIR_ACID_BELOW_C)),
        ),
        SouringCaution::PartlyAcidGel { ph, .. } => said(
            format!(
                "The milk is foreseen at pH {ph:.2} when it is cut. Below pH {} it is partly an acid curd: softer and more brittle, with less calcium, and it drips slower than is calculated here.",
                value(&WARM_ACID_CLOT_PH)
            ),
            "Use less of what sours the milk, or ripen it for a shorter time; or ladle it gently.",
            "Partly an acid curd: ladle gently.",
        ),
    }
}

fn late(ph: f64) -> CautionWords {
    let (hours, wanted) = (quantity(&SOURED_IN_TIME_H), value(&SOURED_IN_TIME_PH));
    said(
        format!(
            "{hours} after the culture the pH is foreseen at {ph:.2}. Published advice for one raw-milk cheese is {wanted} or less by then, since germs grow until it is sour."
        ),
        format!(
            "Use more culture, or ripen the milk longer or nearer to the warmth that the culture likes; draining warmer helps only a culture that works. Measure the pH {hours} after the culture: if your meter shows more than {wanted}, count this as a cheese without acid."
        ),
        format!("Slow souring: above pH {wanted} after {hours}."),
    )
}

fn assumed(cells_per_g: f64, by: CultureBy) -> CautionWords {
    let (what, likely) = match by {
        CultureBy::Packet => ("a packet of dried culture", range_words(&PACKET_CELLS)),
        CultureBy::Bulk | CultureBy::Cells => ("bulk starter", range_words(&BULK_STARTER_CELLS)),
    };
    said(
        format!(
            "The cells of the culture were not counted. {:.1} million in each gram of milk are assumed from common practice for {what}, which for the usual dose gives {likely}. A culture may also fail: old, cold, or with a virus or an antibiotic in the milk.",
            1e-6 * cells_per_g
        ),
        "Measure the pH as it sours, and go by your meter and not by the curve.",
        "Living cells are assumed: measure the pH as it sours.",
    )
}
