//! Warming, rennet and setting: chapters 1 and 2. Clotting time in minutes is 2.5 + 600/(dose · fT · fCa) at pH 6.65; at 35 °C and 0.014 % of
//! calcium chloride fT is 86/74 and fCa 0.5^(1 − 14/15) = 0.955.

use super::{Row, hold};
use vatsketch::caution::Severity::{Caution, Note};

pub(super) const ROWS: &[Row] = &[
    Row {
        name: "curd that breaks clean within two hours",
        set: &["rennet_dose_imcu_kg=16", "first_test_min=90"],
        there: &[],
        gone: &["late_break", "late_test"],
        why: "chapter 1, section 6: 2.5 + 600/(16 · 1.162 · 0.955) = 36 min, · 3 = 109 min; record: late above 120 min (our judgement, no source); tests at 90, 102, 114: three",
    },
    Row {
        name: "curd that breaks clean after two hours",
        set: &["rennet_dose_imcu_kg=13", "first_test_min=120"],
        there: &[("late_break", Caution)],
        gone: &[],
        why: "chapter 1, section 6: 2.5 + 600/(13 · 1.162 · 0.955) = 44 min, · 3 = 132 min, above the 120 of the record (our judgement, no source)",
    },
    Row {
        name: "three tests of the curd",
        set: &["first_test_min=30"],
        there: &[],
        gone: &["late_break", "late_test"],
        why: "chapter 1, section 6: 2.5 + 600/(38 · 1.11) = 16.7 min, · 3 = 50 min; tests each 12 min (record, no source) at 30, 42, 54: three, which are few",
    },
    Row {
        name: "four tests of the curd",
        set: &["first_test_min=20"],
        there: &[("late_break", Note)],
        gone: &["late_test"],
        why: "chapter 1, section 6: clean at 50 min; tests at 20, 32, 44, 56 min (record, no source): four",
    },
    Row {
        name: "a first test 25 min after the clean break",
        set: &["first_test_min=75"],
        there: &[],
        gone: &["late_test", "late_break"],
        why: "chapter 1, section 6: clean at 50 min; 75 − 50 = 25, and late is above 30 (record, our judgement, no source)",
    },
    Row {
        name: "a first test 35 min after the clean break",
        set: &["first_test_min=85"],
        there: &[("late_test", Note)],
        gone: &["late_break"],
        why: "chapter 1, section 6: clean at 50 min; 85 − 50 = 35, above 30 (record, our judgement, no source)",
    },
    Row {
        name: "a clot after 6.2 min",
        set: &[
            "rennet_dose_imcu_kg=120",
            "rennet_temperature_c=41",
            "bath_set_temperature_c=42.5",
            "calcium_dose_percent=0.015",
            "ph_known=measured",
            "milk_ph=6.65",
        ],
        there: &[],
        gone: &["fast_clot"],
        why: "chapter 1, section 6 at 41 °C: 2.5 + 600/(120 · 100/74) = 6.2 min; fast is below 6 (record, our judgement, no source)",
    },
    Row {
        name: "a clot after 5.5 min",
        set: &[
            "rennet_dose_imcu_kg=120",
            "rennet_temperature_c=41",
            "bath_set_temperature_c=42.5",
            "calcium_dose_percent=0.015",
            "ph_known=measured",
            "milk_ph=6.55",
        ],
        there: &[("fast_clot", Note)],
        gone: &[],
        why: "chapter 1, section 6 at 41 °C and 0.1 of pH less: 2.5 + 600/(120 · 100/74 · 1.25) = 5.5 min, below 6 (record, no source)",
    },
    Row {
        name: "rennet at 20 °C",
        set: &["rennet_temperature_c=20", "bath_set_temperature_c=20.5", "bath_start_temperature_c=20", "first_test_min=200"],
        there: &[("late_break", Caution)],
        gone: &["stage_failed", "drifts_while_setting"],
        why: "chapter 1, section 6: no clot below 18 °C; at 20 it clots after 2.5 + 600/(38 · 18/74 · 0.955) = 70 min, · 3 = 211 min, above 120 (record)",
    },
    Row {
        name: "calcium with the rennet",
        set: &["calcium_temperature_c=35"],
        there: &[],
        gone: &["calcium_after_rennet"],
        why: "chapter 1, section 6: calcium doubles the rennet's activity, so it is in before it (common practice, no source); 35 and 35 °C",
    },
    Row {
        name: "calcium after the rennet",
        set: &["calcium_temperature_c=35.5"],
        there: &[("calcium_after_rennet", Caution)],
        gone: &[],
        why: "chapter 1, section 6, as above (common practice, no source): 35.5 °C is warmer than 35",
    },
    Row {
        name: "a bath 3.5 K warmer than the rennet",
        set: &["rennet_temperature_c=30", "bath_set_temperature_c=33.5"],
        there: &[],
        gone: &["drifts_while_setting"],
        why: "record: more than 4 K are worth a word (our judgement, no source); milk of 30 °C cannot pass a bath of 33.5 (chapter 2, section 2)",
    },
    Row {
        name: "a bath 5.5 K warmer than the rennet",
        set: &["rennet_temperature_c=30", "bath_set_temperature_c=35.5"],
        there: &[("drifts_while_setting", Caution)],
        gone: &[],
        why: "chapter 2, section 2: 6 L take 26 kJ/K, wall 36 W/K: time constant 12 min, so in 50 min the milk comes within 0.1 K of 35.5, 5.4 K away: above 4 (record)",
    },
    Row {
        name: "a bath that starts at 90 °C",
        set: &["bath_l=4", "bath_start_temperature_c=90"],
        there: &[],
        gone: &["hot_wall"],
        why: "chapter 2, sections 1 and 2: wall 5 + 247/430 · (90 − 5) = 53.8 °C, below 55 where deposits begin",
    },
    Row {
        name: "a bath that starts at 95 °C",
        set: &["bath_l=4", "bath_start_temperature_c=95"],
        there: &[("hot_wall", Note)],
        gone: &[],
        why: "chapter 2, sections 1 and 2: wall 5 + 247/430 · (95 − 5) = 56.7 °C, between 55 and 65",
    },
    Row {
        name: "a hob of 150 W",
        set: &["heating=hob", "heater_power_w=150", "heat_while_setting=no"],
        there: &[],
        gone: &["hot_wall"],
        why: "chapter 2, section 2: pot 0.234 m wide, base 0.0428 m²; wall 35 + 2 · 150/(0.0428 · 430) = 51 °C, below 55",
    },
    Row {
        name: "a hob of 230 W",
        set: &["heating=hob", "heater_power_w=230", "heat_while_setting=no"],
        there: &[("hot_wall", Note)],
        gone: &[],
        why: "chapter 2, section 2: wall 35 + 2 · 230/(0.0428 · 430) = 60 °C, between 55 and 65",
    },
    Row {
        name: "a hob of 350 W",
        set: &["heating=hob", "heater_power_w=350", "heat_while_setting=no"],
        there: &[("hot_wall", Caution)],
        gone: &[],
        why: "chapter 2, section 2: wall 35 + 2 · 350/(0.0428 · 430) = 73 °C, above 65",
    },
];

#[test]
fn warnings_about_the_vat_stand_where_the_chapters_put_them() {
    hold(ROWS);
}
