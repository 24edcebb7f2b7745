//! Cautions in few words, for the page that hangs beside the vat. In full they stand behind it.

use crate::caution::Caution;

/// Returns a caution in at most seventy letters; one without a short form is said in full rather than not at all.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, caution::cautions, design::Design, report::brief};
/// let batch = batch(&Design::default())?;
/// let said = cautions(&batch).iter().find(|caution| caution.key == "no_acid").map(brief);
/// assert!(said.is_some_and(|words| words.contains("Listeria")));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn brief(caution: &Caution) -> &str {
    match caution.key {
        "no_acid" => "Made without acid: Listeria grows in it, salted and cold.",
        "warm_draining" => "Germs grow: drain at 10 °C or colder.",
        "drip_goes_on" => "Whey still drips when they are unmoulded.",
        "top_up_moulds" => "Not all curd goes in at once: top up.",
        "thin_cheese" => "So thin that they break when turned.",
        "raw_milk" => "Raw milk may carry Listeria and Salmonella: use pasteurised milk.",
        "ultra_heated_milk" => "Ultra-heated milk hardly sets: use another.",
        "homogenised_milk" => "The curd is soft: cut late, ladle gently.",
        "calcium_above_limit" => "More calcium than several food laws allow.",
        "unlikely_milk" => "No milk is so heavy or light: read the carton again.",
        "little_salt" => "Little salt for a fresh cheese.",
        "much_salt" => "Will taste very salty.",
        "hot_wall" => "The base gets very hot: less power, stir without pause.",
        "calcium_after_rennet" => "Calcium goes in before the rennet.",
        "fast_clot" => "Clots quickly: stir the rennet in at once.",
        "late_break" => "May take long to set.",
        "late_test" => "The first test comes late: test earlier.",
        "drifts_while_setting" => "The milk drifts in temperature while it sets.",
        "salt_on_faces" => "Some salt falls off at unmoulding.",
        "untreated_pepper" => "Untreated pepper brings germs: buy treated, or leave it off.",
        "warm_drying" => "Warm for hours: germs can grow. Dry cool and for fewer hours.",
        "trays_do_not_fit" => "The cheeses do not fit on the trays: two rounds.",
        "damp_air" => "The air is too damp to dry.",
        "cabinet_below_room" => "The cabinet cannot be cooler than the room.",
        "salt_crystals" => "Salt comes out as crystals.",
        "wet_centre" => "Wet inside: rest a day.",
        "model_uncertainty" => "Drying may take half or twice the time: weigh every few hours.",
        "not_kept_by_dryness" => "Dryness does not keep it: cold, eat within days.",
        "dryness_is_estimated" => "That it is dry enough is only estimated: keep it cold.",
        "never_sour" => "This vinegar never sours the centre: take more, or stronger.",
        "may_never_sour" => "This vinegar may never sour the centre: measure.",
        "weak_vinegar" => "Weaker than vinegar may be: take 5 g/100 mL or more.",
        "little_vinegar" => "Too little acid: 3 mL/g or more of 5 g/100 mL vinegar; weaker: more.",
        "centre_not_sour" => "The centre is not sour yet at the end: soak longer, measure.",
        "centre_may_not_be_sour" => "The centre may not be sour yet: go by a pH meter.",
        "warm_pickling" => "Too warm before it is sour: 4 °C or colder.",
        "not_submerged" => "Cheeses stick out and do not sour: cover them.",
        "measure_the_ph" => "A modelled pH is no proof: measure it.",
        "in_the_jar" => "Swells, fizzes, smells: throw away untasted.",
        "no_vinegar_to_keep_in" => "Not soured: there is no vinegar to keep them in.",
        "oil_is_untested" => "Oil is untested: only after a measured pH; cold; eat within days.",
        "oil_before_acid" => "Not sour: botulism. Do not put it under oil.",
        "long_in_oil" => "Too many days in oil.",
        "warm_keeping" => "Too warm: keep at 4 °C or colder.",
        "needs_cold" => "Needs cold: 4 °C or colder, eat within days.",
        "class_is_no_proof" => "Its class in the food code is modelled: no proof.",
        "stage_failed" => "A stage cannot be worked out; the plan ends there.",
        _ => &caution.what,
    }
}
