//! How far germs could grow: chapter 4. What is judged is the growth that nine of ten draws stay below; rates are drawn in their logarithm, peaked at
//! the middle, so nine of ten stay below the middle times (most/middle)^(1 − √0.2): 1.26 times for staphylococci, 1.36 times for Listeria.

use super::{Row, hold};
use vatsketch::caution::Severity::{Caution, Stop};

pub(super) const ROWS: &[Row] = &[
    Row {
        name: "staphylococci in moulds of 6 °C",
        set: &["draining_temperature_c=6", "whey_rest_min=0"],
        there: &[("toxin_could_form:drying", Stop)],
        gone: &["toxin_could_form:draining"],
        why: "chapter 4, sections 2 and 5: none grow below 7.7 °C; 1.1 log in the vat (1.3 h at 0.83/h) and 1.3 while the curd cools are below the 3 that lead from 2 to 5; 34 h at 43 °C are not",
    },
    Row {
        name: "staphylococci in moulds of 12 °C",
        set: &["draining_temperature_c=12"],
        there: &[("toxin_could_form:draining", Stop)],
        gone: &["toxin_could_form:drying"],
        why: "chapter 4, sections 1 and 2: 1.4 log in the vat, 1.5 while the curd cools with a time constant of 2.2 h (chapter 2, section 6), 0.024/h · 30 h = 0.7 at 12 °C: 3.6, above 3",
    },
    Row {
        name: "staphylococci in moulds of 16 °C",
        set: &[],
        there: &[("toxin_could_form:draining", Stop)],
        gone: &["toxin_could_form:drying"],
        why: "chapter 4, sections 1 and 2: 1.97 · 0.0906 · 0.97 · 0.94 = 0.163/h at 16 °C, 0.089 log/h at 1.26 times: 3.2 log in 36 h, above 3, without those of the vat",
    },
    Row {
        name: "staphylococci in moulds of 21 °C",
        set: &["draining_temperature_c=21"],
        there: &[("toxin_could_form:draining", Stop)],
        gone: &["toxin_could_form:drying"],
        why: "chapter 4, section 0: +7.6 log in vat and 36 h at 21 °C, above 3",
    },
    Row {
        name: "Listeria in a day of cold",
        set: &["pickled=no", "kept_in=bare", "keeping_days=1"],
        there: &[],
        gone: &["germs_could_grow:keeping"],
        why: "chapter 4, sections 1 and 2: 0.742 · 0.0335 · 0.95 · 0.64 = 0.0151/h at 4 °C, 0.21 log a day at 1.36 times: below 0.5 (EU, from memory)",
    },
    Row {
        name: "Listeria in three days of cold",
        set: &["pickled=no", "kept_in=bare", "keeping_days=3"],
        there: &[("germs_could_grow:keeping", Caution)],
        gone: &[],
        why: "chapter 4, sections 1 and 2: 0.21 log a day at 4 °C as above: 0.64 log, above 0.5 (EU, from memory); Bacillus cereus has 2 · (4/37)² · 0.6 · 1.77/2.3 · 24 = 0.26 a day at most, below its 1",
    },
    Row {
        name: "warm drying from pH 5.2",
        set: &[
            "soured_by=acid",
            "milk_acid=lactic",
            "turn_count=1",
            "salted_turns=1",
            "draining_temperature_c=6",
            "unmoulded_ph_from=measured",
            "unmoulded_ph=5.2",
            "cabinet_temperature_c=40",
            "drying_h=48",
        ],
        there: &[("toxin_could_form:drying", Stop)],
        gone: &["toxin_if_lactic_fails:drying"],
        why: "chapter 4, section 0, item 6: 48 h at 40 °C from pH 5.2, soured with lactic acid: staphylococci +15, above 3",
    },
    Row {
        name: "warm drying from pH 5",
        set: &[
            "soured_by=acid",
            "milk_acid=lactic",
            "turn_count=1",
            "salted_turns=1",
            "draining_temperature_c=6",
            "unmoulded_ph_from=measured",
            "unmoulded_ph=5",
            "cabinet_temperature_c=40",
            "drying_h=48",
        ],
        there: &[("toxin_could_form:drying", Stop)],
        gone: &["toxin_if_lactic_fails:drying"],
        why: "chapter 4, section 0, item 6: 48 h at 40 °C from pH 5.0: staphylococci +6, above 3",
    },
    Row {
        name: "warm drying of curd that its culture sours on",
        set: &[
            "soured_by=culture",
            "ripening_h=0",
            "turn_count=1",
            "salted_turns=1",
            "draining_temperature_c=6",
            "whey_rest_min=0",
            "unmoulded_ph_from=measured",
            "unmoulded_ph=4.8",
            "cabinet_temperature_c=35",
            "drying_h=48",
        ],
        there: &[],
        gone: &["toxin_could_form:drying", "toxin_if_lactic_fails:drying", "warm_before_sour"],
        why: "chapter 4, section 3: a mesophilic culture grows up to 40.5 °C and sours on from pH 4.8 to 4.2; in 3 to 4 h at 33 °C it is near 4.3, where staphylococci (least 4.0) hardly grow",
    },
    Row {
        name: "warm drying from pH 4.6",
        set: &[
            "soured_by=acid",
            "milk_acid=lactic",
            "turn_count=1",
            "salted_turns=1",
            "draining_temperature_c=6",
            "unmoulded_ph_from=measured",
            "unmoulded_ph=4.6",
            "cabinet_temperature_c=40",
            "drying_h=48",
        ],
        there: &[("toxin_if_lactic_fails:drying", Caution)],
        gone: &["toxin_could_form:drying"],
        why: "chapter 4, section 0, item 6: from pH 4.8 on down staphylococci 0, but +12 at 4.6 without the judged amount of lactic acid: above 3",
    },
    Row {
        name: "drying cold and short",
        set: &["draining_temperature_c=6", "cabinet_temperature_c=20", "room_air_temperature_c=6", "drying_h=1"],
        there: &[],
        gone: &["toxin_could_form:drying", "germs_could_grow:drying"],
        why: "chapter 4, section 1: an hour at 20 °C at most gives Listeria 1.0 · 0.4/2.3 = 0.2 log, below 0.5, the others below 1",
    },
];

#[test]
fn warnings_about_germs_stand_where_the_chapter_puts_them() {
    hold(ROWS);
}
