//! The soak in vinegar: chapter 3.

use super::{Row, hold};
use vatsketch::caution::Severity::{Caution, Note, Stop};

pub(super) const ROWS: &[Row] = &[
    Row {
        name: "vinegar of 3.5 g",
        set: &["acid_g_per_100ml=3.5"],
        there: &[("weak_vinegar", Stop)],
        gone: &[],
        why: "chapter 3, section 4: vinegar has 4 g of acetic acid in 100 mL (FDA CPG 525.825); 3.5 is below",
    },
    Row {
        name: "vinegar of 4 g",
        set: &["acid_g_per_100ml=4"],
        there: &[],
        gone: &["weak_vinegar"],
        why: "chapter 3, section 4: never below 4 g in 100 mL; 4 is not below",
    },
    Row {
        name: "1.9 mL of 5 g",
        set: &["acid_g_per_100ml=5", "vinegar_ml_per_g=1.9"],
        there: &[("little_vinegar", Stop)],
        gone: &["weak_vinegar"],
        why: "chapter 3, section 0: at least 2 mL of 5 % for each g of dried cheese; 1.9 is less",
    },
    Row {
        name: "2 mL of 5 g",
        set: &["acid_g_per_100ml=5", "vinegar_ml_per_g=2"],
        there: &[],
        gone: &["little_vinegar", "weak_vinegar", "never_sour"],
        why: "chapter 3, section 0: at least 2 mL of 5 %, which come to pH 4.17 in a drier cheese than this one (35 % of moisture, not 44): below 4.2",
    },
    Row {
        name: "2.2 mL of 5 g for the chapter's own cheese",
        set: &[
            "fat_target_percent=2.9",
            "mould_count=16",
            "mould_diameter_mm=60",
            "drip_end_moisture_percent=60",
            "drying_h=48",
            "cabinet_temperature_c=40",
            "underside_open_percent=100",
            "acid_g_per_100ml=5",
            "vinegar_ml_per_g=2.2",
        ],
        there: &[("may_never_sour", Stop)],
        gone: &["never_sour", "little_vinegar"],
        why: "chapter 3, sections 0 and 7: 4.17 at 2 mL, 3.89 at 3.67 mL, so 4.13 here, below 4.2; 1.4 times the buffer, which nine of ten draws stay below (1.8^0.55), adds 0.16: 4.29",
    },
    Row {
        name: "2.4 mL of 4 g",
        set: &["acid_g_per_100ml=4", "vinegar_ml_per_g=2.4"],
        there: &[("little_vinegar", Stop)],
        gone: &["weak_vinegar"],
        why: "chapter 3, section 0: 2 mL of 5 %; 2.4 · 4/5 = 1.92",
    },
    Row {
        name: "2.5 mL of 4 g",
        set: &["acid_g_per_100ml=4", "vinegar_ml_per_g=2.5"],
        there: &[],
        gone: &["little_vinegar", "weak_vinegar"],
        why: "chapter 3, section 0: 2 mL of 5 %; 2.5 · 4/5 = 2.00",
    },
    Row {
        name: "1.6 mL of 6 g",
        set: &["vinegar_ml_per_g=1.6"],
        there: &[("little_vinegar", Stop)],
        gone: &[],
        why: "chapter 3, section 0: 2 mL of 5 %; 1.6 · 6/5 = 1.92",
    },
    Row {
        name: "1.7 mL of 6 g",
        set: &["vinegar_ml_per_g=1.7"],
        there: &[],
        gone: &["little_vinegar"],
        why: "chapter 3, section 0: 2 mL of 5 %; 1.7 · 6/5 = 2.04",
    },
    Row {
        name: "1 mL of 5 g",
        set: &["acid_g_per_100ml=5", "vinegar_ml_per_g=1"],
        there: &[("never_sour", Stop), ("little_vinegar", Stop), ("centre_not_sour", Stop)],
        gone: &["may_never_sour"],
        why: "chapter 3, section 0: about 1 mL/g comes to pH 4.51, not below 4.2",
    },
    Row {
        name: "6 mL of 5 g",
        set: &["acid_g_per_100ml=5", "vinegar_ml_per_g=6"],
        there: &[],
        gone: &["never_sour", "may_never_sour", "little_vinegar", "not_submerged"],
        why: "chapter 3, section 7: 3.67 mL/g (K03) come to pH 3.89; 1.8 times the buffer in 6 mL is as 6/1.8 = 3.3 mL for one: about 3.95, below 4.2",
    },
    Row {
        name: "a soak of a day",
        set: &["pickling_h=24"],
        there: &[("centre_not_sour", Stop), ("not_kept_by_dryness", Stop), ("needs_cold", Caution)],
        gone: &["centre_may_not_be_sour", "class_is_no_proof"],
        why: "chapter 3, section 0: 24 h sour a shell of 2 mm, the centre is at 6.5 still, above 4.2",
    },
    Row {
        name: "a soak of twelve weeks",
        set: &["pickling_h=2000"],
        there: &[("not_kept_by_dryness", Note), ("class_is_no_proof", Note)],
        gone: &["centre_not_sour", "centre_may_not_be_sour", "needs_cold"],
        why: "chapter 3, section 7: in 3.67 mL/g centre 4.55 after 168 h at 21 °C, at 4 °C 1.7 times that; half the diffusivity doubles it: well below 2000 h, and 3.2 mL of 6 % settle below 4.2 at 1.8 times the buffer",
    },
    Row {
        name: "a jar of 4 °C",
        set: &["pickling_temperature_c=4"],
        there: &[],
        gone: &["warm_pickling"],
        why: "chapter 3, section 5: 4 °C or less from the start of pickling; 4 is not above",
    },
    Row {
        name: "a jar of 4.5 °C",
        set: &["pickling_temperature_c=4.5"],
        there: &[("warm_pickling", Stop)],
        gone: &[],
        why: "chapter 3, section 5: 4 °C or less from the start of pickling; 4.5 is above",
    },
    Row {
        name: "cheeses that stick out",
        set: &["vinegar_ml_per_g=0.8"],
        there: &[("not_submerged", Stop)],
        gone: &[],
        why: "chapter 3, sections 5 and 6: keep submerged; 6 discs of about 58 × 21 mm (60 g) in 69 cm² of jar leave 91 mL each: 1.5 mL/g cover, 0.8 does not",
    },
    Row {
        name: "cheeses that are covered",
        set: &["vinegar_ml_per_g=2.2"],
        there: &[],
        gone: &["not_submerged"],
        why: "chapter 3, sections 5 and 6: about 1.5 mL/g cover the discs in this jar; 2.2 do",
    },
    Row {
        name: "no vinegar",
        set: &["pickled=no", "kept_in=bare"],
        there: &[("needs_cold", Caution)],
        gone: &["measure_the_ph", "in_the_jar", "never_sour", "centre_not_sour", "little_vinegar"],
        why: "chapter 3, section 5: 0 mL; what a meter must say of a soak is not said without one",
    },
];

#[test]
fn warnings_about_the_vinegar_stand_where_the_chapter_puts_them() {
    hold(ROWS);
}
