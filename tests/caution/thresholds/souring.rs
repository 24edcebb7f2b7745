//! Souring milk and curd: chapter 4.

use super::{Row, hold};
use vatsketch::caution::Severity::{Caution, Note, Stop};

pub(super) const ROWS: &[Row] = &[
    Row {
        name: "acid into milk of 10 °C",
        set: &["soured_by=acid", "fridge_temperature_c=10"],
        there: &[],
        gone: &["acid_into_warm_milk", "stage_failed"],
        why: "chapter 4, section 3: acid is stirred into cold milk, 10 °C or less; it is 10",
    },
    Row {
        name: "acid into milk of 10.5 °C",
        set: &["soured_by=acid", "fridge_temperature_c=10.5"],
        there: &[("acid_into_warm_milk", Caution)],
        gone: &["stage_failed"],
        why: "chapter 4, section 3: 10.5 °C is above 10",
    },
    Row {
        name: "acid to pH 5.25 in milk of 15 °C",
        set: &["soured_by=acid", "soured_milk_ph=5.25", "fridge_temperature_c=15"],
        there: &[("acid_into_warm_milk", Caution)],
        gone: &["stage_failed"],
        why: "chapter 4, section 3: above about 15 °C and below pH 5.3 it clots where it falls; 15 °C is not above 15",
    },
    Row {
        name: "acid to pH 5.25 in milk of 15.5 °C",
        set: &["soured_by=acid", "soured_milk_ph=5.25", "fridge_temperature_c=15.5"],
        there: &[("stage_failed", Stop)],
        gone: &["acid_into_warm_milk"],
        why: "chapter 4, section 3: above about 15 °C and below pH 5.3 it clots where it falls; 15.5 °C and 5.25 are both beyond",
    },
    Row {
        name: "acid to pH 5.3 in milk of 15.5 °C",
        set: &["soured_by=acid", "soured_milk_ph=5.3", "fridge_temperature_c=15.5"],
        there: &[("acid_into_warm_milk", Caution)],
        gone: &["stage_failed"],
        why: "chapter 4, section 3: above about 15 °C and below pH 5.3 it clots where it falls; pH 5.3 is not below 5.3",
    },
    Row {
        name: "a lactone that ends at pH 5.3",
        set: &["soured_by=lactone", "lactone_g_l=5"],
        there: &[],
        gone: &["partly_acid_gel", "stage_failed"],
        why: "chapter 4, section 3, table: 5.4 g/kg end at pH 5.3; 5 g/L (4.8 g/kg) stay above 5.2, where warm milk is an acid clot",
    },
    Row {
        name: "a lactone that passes pH 5.2 before the cut",
        set: &["soured_by=lactone", "lactone_g_l=15"],
        there: &[("partly_acid_gel", Note)],
        gone: &["stage_failed"],
        why: "chapter 4, section 3: 1.26/h at 35 °C (71 kJ/mol): in 40 min 57 % of 14.6 g/kg = 8.3 g/kg split; the table has 5.4 for pH 5.3 and 12.1 for 4.6: about 5.0, below 5.2",
    },
    Row {
        name: "pH 4.8 before warm drying",
        set: &["soured_by=culture", "unmoulded_ph_from=measured", "unmoulded_ph=4.8"],
        there: &[],
        gone: &["warm_before_sour"],
        why: "chapter 4, section 5: pH above 4.8 when drying above 15 °C begins; 4.8 is not above it",
    },
    Row {
        name: "pH 4.85 before warm drying",
        set: &["soured_by=culture", "unmoulded_ph_from=measured", "unmoulded_ph=4.85"],
        there: &[("warm_before_sour", Stop)],
        gone: &[],
        why: "chapter 4, section 5: pH 4.85 is above 4.8, and 43 °C above 15",
    },
    Row {
        name: "pH 4.85 before drying at 15 °C",
        set: &[
            "soured_by=culture",
            "unmoulded_ph_from=measured",
            "unmoulded_ph=4.85",
            "drying_place=open_air",
            "day_temperature_c=15",
            "night_temperature_c=15",
        ],
        there: &[],
        gone: &["warm_before_sour"],
        why: "chapter 4, section 5: pH above 4.8 when drying above 15 °C begins; air of 15 °C is not above it",
    },
    Row {
        name: "pH 4.85 before drying at 15.5 °C",
        set: &[
            "soured_by=culture",
            "unmoulded_ph_from=measured",
            "unmoulded_ph=4.85",
            "drying_place=open_air",
            "day_temperature_c=15.5",
            "night_temperature_c=15",
        ],
        there: &[("warm_before_sour", Stop)],
        gone: &[],
        why: "chapter 4, section 5: the day of 15.5 °C is above 15, pH 4.85 above 4.8",
    },
    Row {
        name: "a strong culture after six hours",
        set: &["soured_by=culture", "culture_by=cells", "culture_cells_million_g=100"],
        there: &[],
        gone: &["not_sour_in_time"],
        why: "chapter 4, sections 3 and 5: pH above 5.8 at 6 h; 5 % of bulk starter (50 million cells/g) come to 4.8 at 32 °C in 4.3 h, and 100 are twice that",
    },
    Row {
        name: "a weak culture after six hours",
        set: &["soured_by=culture", "culture_by=cells", "culture_cells_million_g=0.1"],
        there: &[("not_sour_in_time", Caution)],
        gone: &[],
        why: "chapter 4, sections 3 and 5: pH above 5.8 at 6 h; 10 million cells take 10.5 h to 4.8 at 22 °C, a hundredth of them ln 100/1.15 = 4 h longer at best",
    },
    Row {
        name: "a culture that has done its work before the heat",
        set: &[
            "soured_by=culture",
            "draining_temperature_c=4",
            "unmoulded_ph_from=measured",
            "unmoulded_ph=5.2",
            "cabinet_temperature_c=60",
        ],
        there: &[],
        gone: &["culture_stops"],
        why: "chapter 4, section 3: none grows above 40.5 °C; by the record (our judgement, no source) it is done at pH 5.2, where it begins",
    },
    Row {
        name: "a culture that meets the heat too early",
        set: &[
            "soured_by=culture",
            "draining_temperature_c=4",
            "unmoulded_ph_from=measured",
            "unmoulded_ph=6.2",
            "cabinet_temperature_c=60",
        ],
        there: &[("culture_stops", Caution)],
        gone: &[],
        why: "chapter 4, section 3: none grows above 40.5 °C; a cheese of pH 6.2 in air of 60 °C is that warm within hours, which 5.2 (record) takes as well",
    },
];

#[test]
fn warnings_about_souring_stand_where_the_chapter_puts_them() {
    hold(ROWS);
}
