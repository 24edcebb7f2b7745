//! Choices that are moved together, because one of them alone does nothing: a culture wants time and warmth, a soak wants
//! vinegar, cold and time, and a quick vat wants several things done sooner.

use super::causes::Toward;
use crate::caution::{Caution, CautionKind, GermDanger};
use crate::design::{Design, SouredBy, Stage, Value};
use crate::law::growth::COLD_ENOUGH;

crate::constants! {
    /// Longest ripening of a set.
    LONGEST_RIPENING = { "Longest ripening that is offered with a culture", 4.0, "h", (2.0, 6.0), Ourselves, "germs grow in the warm milk as well", Judged }
    /// Most culture of a set.
    MOST_CULTURE = { "Most packets that are offered, over those of the label", 3.0, "1", (1.0, 4.0), Ourselves, "the soured example has three times the dose of its label", Judged }
    /// Most bulk starter of a set.
    MOST_BULK = { "Most bulk starter that is offered", 3.0, "%", (2.0, 5.0), Ourselves, "one to two per cent are usual", Judged }
    /// Most cells of a set.
    MOST_CELLS = { "Most living cells that are offered, millions in a gram", 30.0, "1", (10.0, 50.0), Ourselves, "three times the usual", Judged }
    /// Warmest draining of a set.
    WARMEST_CURD = { "Warmest draining that is offered to a curd that sours", 24.0, "°C", (20.0, 28.0), Ourselves, "a warm room; the culture is quicker there than the germs are", Judged }
    /// Longest wait between turns of a set.
    LONGEST_GAP = { "Longest wait between turns that is offered to a curd that sours", 8.0, "h", (6.0, 12.0), Ourselves, "a night", Judged }
    /// Most vinegar of a set.
    MOST_VINEGAR = { "Most vinegar that is offered for each gram of cheese", 5.0, "mL/g", (4.0, 6.0), Ourselves, "more does not sour much quicker, and wants a large jar", Judged }
    /// Strongest vinegar of a set.
    STRONGEST_VINEGAR = { "Strongest vinegar that is offered, g in 100 mL", 8.0, "1", (5.0, 10.0), Ourselves, "stronger is rarely sold", Judged }
    /// Earliest first test of a set.
    EARLIEST_TEST = { "Earliest first test of the curd that is offered", 20.0, "min", (15.0, 30.0), Ourselves, "half of the usual", Judged }
    /// Softest cut of a set.
    SOFTEST_CUT = { "Softest cut that is offered, over the clotting time", 2.0, "1", (2.0, 3.0), Ourselves, "the least that the slider has; softer curd loses its fat", Judged }
    /// Shortest rest of a set.
    SHORTEST_REST = { "Shortest rest of the cut curd that is offered", 5.0, "min", (0.0, 10.0), Ourselves, "long enough for the cut faces to close", Judged }
    /// Most rennet of a set.
    MOST_RENNET = { "Most rennet that is offered, over what is chosen", 2.0, "1", (1.5, 3.0), Ourselves, "more makes cheese bitter", Judged }
    /// What is left at least of a time that is cut short.
    LEAST_LEFT = { "Share of a drying or of a wait between turns that is left at least", 0.5, "1", (0.3, 0.7), Ourselves, "with less it is another cheese", Judged }
    /// What another value of a list counts as.
    ANOTHER_VALUE = { "Share of a number's range that another value of a list counts as", 0.25, "1", (0.1, 0.5), Ourselves, "another thing to buy or to do is more than a nudge of a slider, and less than the whole of one", Judged }
}

/// A number of a set, and the farthest that it is moved to in this design.
pub(super) struct Reach {
    pub(super) key: &'static str,
    /// Which way it is moved; one that is beyond the farthest already is left there.
    pub(super) toward: Toward,
    pub(super) farthest: fn(&Design) -> f64,
}

/// Choices that are moved together.
pub(super) struct Set {
    /// Values of lists, in the order in which they are taken.
    pub(super) taken: &'static [(&'static str, Value)],
    /// Numbers, those first that are moved back first as far as the warning allows.
    pub(super) moved: &'static [Reach],
}

const fn more(key: &'static str, farthest: fn(&Design) -> f64) -> Reach {
    Reach { key, toward: Toward::More, farthest }
}

const fn less(key: &'static str, farthest: fn(&Design) -> f64) -> Reach {
    Reach { key, toward: Toward::Less, farthest }
}

/// What makes any culture sour more.
const SOURER: [Reach; 6] = [
    more("draining_temperature_c", |_| WARMEST_CURD.value),
    more("turn_gap_h", |_| LONGEST_GAP.value),
    more("ripening_h", |_| LONGEST_RIPENING.value),
    more("culture_packets", |design| MOST_CULTURE.value * design.milk.milk_l / design.milk.culture_packet_l),
    more("culture_bulk_percent", |_| MOST_BULK.value),
    more("culture_cells_million_g", |_| MOST_CELLS.value),
];

/// A culture in milk that has none.
const CULTURE: Set = Set {
    taken: &[
        ("soured_by", Value::Choice("culture")),
        ("culture_kind", Value::Choice("mesophilic")),
        ("culture_by", Value::Choice("packet")),
    ],
    moved: &SOURER,
};

/// More of the culture that there is.
const MORE_CULTURE: Set = Set { taken: &[], moved: &SOURER };

/// Less time in the warm vat.
const QUICK: Set = Set {
    taken: &[],
    moved: &[
        more("rennet_dose_imcu_kg", |design| MOST_RENNET.value * design.milk.rennet_dose_imcu_kg),
        less("ripening_h", |_| 0.0),
        less("firmness_multiple", |_| SOFTEST_CUT.value),
        less("first_test_min", |_| EARLIEST_TEST.value),
        less("whey_rest_min", |_| SHORTEST_REST.value),
    ],
};

/// A soak in cold vinegar that is long enough.
const SOAK: Set = Set {
    taken: &[("pickled", Value::Switch(true)), ("vinegar_by", Value::Choice("per_gram"))],
    moved: &[
        more("acid_g_per_100ml", |_| STRONGEST_VINEGAR.value),
        less("keeping_temperature_c", |_| COLD_ENOUGH.value),
        more("vinegar_ml_per_g", |_| MOST_VINEGAR.value),
        less("pickling_temperature_c", |_| COLD_ENOUGH.value),
        more("pickling_h", |_| f64::INFINITY),
    ],
};

/// Returns the choices that are moved together against a caution in this design.
pub(super) fn set_for(caution: &Caution, design: &Design) -> Option<&'static Set> {
    let sourer = if design.milk.soured_by == SouredBy::Culture { &MORE_CULTURE } else { &CULTURE };
    if let CautionKind::Germs(germs) = &caution.kind {
        let quick = germs.stage == Stage::Vat && germs.danger == GermDanger::Grows;
        let warm = if quick { &QUICK } else { sourer };
        return Some(if germs.stage < Stage::Pickling { warm } else { &SOAK });
    }
    match caution.key {
        "no_acid" | "acid_is_foreseen" | "warm_draining" | "warm_drying" | "warm_before_sour" | "not_sour_in_time"
        | "culture_stops" | "warm_in_all" | "cool_for_days" => Some(sourer),
        "not_kept_by_dryness"
        | "dryness_is_estimated"
        | "never_sour"
        | "may_never_sour"
        | "little_vinegar"
        | "weak_vinegar"
        | "centre_not_sour"
        | "centre_may_not_be_sour"
        | "warm_pickling"
        | "not_submerged"
        | "warm_keeping"
        | "needs_cold"
        | "no_vinegar_to_keep_in"
        | "kept_long" => Some(&SOAK),
        _ => None,
    }
}
