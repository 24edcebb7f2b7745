//! Hours in the moulds: chapters 1 and 3. The curd is in the moulds for one gap more than there are turns.

use super::{Row, hold};
use vatsketch::caution::Severity::{Caution, Note, Stop};

pub(super) const ROWS: &[Row] = &[
    Row {
        name: "draining at 10 °C",
        set: &["draining_temperature_c=10"],
        there: &[("cool_for_days", Stop)],
        gone: &["warm_draining"],
        why: "chapter 1, section 9: draining at 10 °C or less is offered; 6 gaps · 6 h = 36 h above 7 °C are more than the 24 h of the record, though",
    },
    Row {
        name: "draining at 11 °C",
        set: &["draining_temperature_c=11"],
        there: &[("warm_draining", Stop)],
        gone: &["cool_for_days"],
        why: "chapter 1, section 9: 11 °C is above 10, and 6 gaps · 6 h = 36 h are above 24 (record); said once, of the draining",
    },
    Row {
        name: "4 h of draining at 24 °C",
        set: &["draining_temperature_c=24", "turn_count=1", "salted_turns=1", "turn_gap_h=2"],
        there: &[("warm_in_all", Stop)],
        gone: &["warm_draining"],
        why: "chapter 3, section 5, time control: 4 h; 2 gaps · 2 h = 4 h, which is not more. With the vat's hour and a half it is 5.5 h above 21 °C (section 11)",
    },
    Row {
        name: "5 h of draining at 24 °C",
        set: &["draining_temperature_c=24", "turn_count=1", "salted_turns=1", "turn_gap_h=2.5"],
        there: &[("warm_draining", Stop)],
        gone: &[],
        why: "chapter 3, section 5: 2 gaps · 2.5 h = 5 h are above 4, and 24 °C is above 21",
    },
    Row {
        name: "5 h of draining at 21 °C",
        set: &["draining_temperature_c=21", "turn_count=1", "salted_turns=1", "turn_gap_h=2.5"],
        there: &[("warm_draining", Caution)],
        gone: &[],
        why: "chapter 3, section 5: 5 h are above 4; 21 °C is not above 21, and 5 h are not more than a day",
    },
    Row {
        name: "5 h of draining at 22 °C",
        set: &["draining_temperature_c=22", "turn_count=1", "salted_turns=1", "turn_gap_h=2.5"],
        there: &[("warm_draining", Stop)],
        gone: &[],
        why: "chapter 3, section 5: 5 h are above 4, and 22 °C is above 21",
    },
    Row {
        name: "24 h of draining at 16 °C",
        set: &["turn_count=3", "turn_gap_h=6"],
        there: &[("warm_draining", Caution)],
        gone: &[],
        why: "record: more than 24 h between 7 and 21 °C (our judgement, no source); 4 gaps · 6 h = 24 h, which is not more",
    },
    Row {
        name: "26 h of draining at 16 °C",
        set: &["turn_count=3", "turn_gap_h=6.5"],
        there: &[("warm_draining", Stop)],
        gone: &[],
        why: "record: more than 24 h between 7 and 21 °C (our judgement, no source); 4 gaps · 6.5 h = 26 h",
    },
    Row {
        name: "vat and 2 h at 24 °C",
        set: &["draining_temperature_c=24", "turn_count=1", "salted_turns=1", "turn_gap_h=1", "drying_h=0"],
        there: &[],
        gone: &["warm_in_all", "warm_draining", "warm_drying"],
        why: "chapter 3, section 11: rules of time are cumulative, 4 h above 21 °C; vat 0.4 + 52/60 + 20/60 = 1.6 h, moulds 2 gaps · 1 h: 3.6 h",
    },
    Row {
        name: "vat and 3 h at 24 °C",
        set: &["draining_temperature_c=24", "turn_count=1", "salted_turns=1", "turn_gap_h=1.5", "drying_h=0"],
        there: &[("warm_in_all", Stop)],
        gone: &["warm_draining", "warm_drying"],
        why: "chapter 3, section 11: vat 1.6 h and 2 gaps · 1.5 h = 3 h are 4.6 h above 21 °C, more than 4",
    },
    Row {
        name: "twice 3.5 h",
        set: &[
            "draining_temperature_c=24",
            "turn_count=1",
            "salted_turns=1",
            "turn_gap_h=1.75",
            "drying_h=3.5",
            "cabinet_temperature_c=40",
        ],
        there: &[("warm_in_all", Stop)],
        gone: &["warm_draining", "warm_drying"],
        why: "chapter 3, section 11: 3.5 h at 24 °C and 3.5 h at 40 °C are each under four; together 7 h are not",
    },
    Row {
        name: "20 h of draining at 9 °C",
        set: &["draining_temperature_c=9", "turn_count=3", "turn_gap_h=5"],
        there: &[],
        gone: &["warm_draining", "cool_for_days"],
        why: "record: 24 h between 7 and 21 °C (our judgement, no source); 4 gaps · 5 h = 20 h, with warming and drying at most an hour more",
    },
    Row {
        name: "30 h of draining at 9 °C",
        set: &["draining_temperature_c=9", "turn_count=5", "turn_gap_h=5"],
        there: &[("cool_for_days", Stop)],
        gone: &["warm_draining"],
        why: "record: 24 h between 7 and 21 °C (our judgement, no source); 6 gaps · 5 h = 30 h, one of them warmer",
    },
    Row {
        name: "36 h of draining at 6 °C",
        set: &["draining_temperature_c=6"],
        there: &[],
        gone: &["warm_draining", "cool_for_days"],
        why: "record: cool begins at 7 °C; chapter 2, section 6: from 35 to 7 in air of 6 °C takes ln 29 = 3.4 time constants of 454 g · 3.85/(10 · 0.022) = 2.2 h: 7.5 h, below 24",
    },
    Row {
        name: "36 h of draining at 7 °C",
        set: &["draining_temperature_c=7"],
        there: &[("cool_for_days", Stop)],
        gone: &["warm_draining"],
        why: "record: the hazard guide's band of two days is 7 to 10 °C, and curd that cools in air of 7 °C stays a hair above it: 36 h, less 2 h above 21 °C",
    },
    Row {
        name: "36 h of draining at 8 °C",
        set: &["draining_temperature_c=8"],
        there: &[("cool_for_days", Stop)],
        gone: &["warm_draining"],
        why: "record: cool begins at 7 °C; 6 gaps · 6 h = 36 h at 8 °C are more than 24",
    },
    Row {
        name: "2 h of drip at 16 °C",
        set: &["turn_count=1", "salted_turns=1", "turn_gap_h=1"],
        there: &[("drip_goes_on", Caution)],
        gone: &[],
        why: "chapter 1, section 7: 3 h near 21 °C, 100 kJ/mol: time constant 0.5 h at 35 °C, 1.0 at 29, 1.9 at 24; in 2 gaps · 1 h the curd cools through these: 1.5 + 0.8 = 2.3 of the 3.9 that leave 2 %",
    },
    Row {
        name: "30 h of drip at 16 °C",
        set: &["turn_count=4"],
        there: &[],
        gone: &["drip_goes_on"],
        why: "chapter 1, section 7: 3.9 · 6 h = 24 h at 16 °C, less for the warm hours; 5 gaps · 6 h = 30 h is longer",
    },
    Row {
        name: "cheeses of 9 mm",
        set: &["mould_count=33"],
        there: &[],
        gone: &["thin_cheese"],
        why: "chapter 1, section 4: 6.4 kg · 18 % = 1.15 kg of curd, 1.08 L; / 33 / 36.3 cm² = 9.0 mm; thin is below 8 mm (record, our judgement, no source)",
    },
    Row {
        name: "cheeses of 7 mm",
        set: &["mould_count=42"],
        there: &[("thin_cheese", Note)],
        gone: &[],
        why: "chapter 1, section 4: 1.08 L / 42 / 36.3 cm² = 7.1 mm, below 8 mm (record, our judgement, no source)",
    },
    Row {
        name: "four moulds",
        set: &["mould_count=4"],
        there: &[("stage_failed", Stop)],
        gone: &["drip_goes_on"],
        why: "chapter 1, section 4: 1.08 L of drained curd / 4 = 270 mL; a mould holds 36.3 · 7 = 254 mL, and less curd there is not",
    },
    Row {
        name: "five moulds",
        set: &["mould_count=5"],
        there: &[("top_up_moulds", Note)],
        gone: &["stage_failed"],
        why: "chapter 1, section 4: 1.08 L of drained curd / 5 = 217 mL fits into 254 mL, ladled curd of 5.5 L / 5 does not",
    },
    Row {
        name: "moulds for all the ladled curd",
        set: &["mould_count=25"],
        there: &[],
        gone: &["top_up_moulds"],
        why: "chapter 1, section 7: 20 min in the vat bring 0.6 · (1 − e^(−20/72)) = 15 % of 5.2 kg of whey; the rest and the curd are 5.5 L, / 25 = 219 mL, below 254",
    },
];

#[test]
fn warnings_about_draining_stand_where_the_chapters_put_them() {
    hold(ROWS);
}
