//! Milk, calcium, the heat step of raw milk, and acid at unmoulding: chapter 1.

use super::{Row, hold};
use vatsketch::caution::Severity::{Caution, Note, Stop};

pub(super) const ROWS: &[Row] = &[
    Row {
        name: "calcium below the limit",
        set: &["calcium_dose_percent=0.019"],
        there: &[],
        gone: &["calcium_above_limit"],
        why: "chapter 1, section 5: 0.02 % of the milk as anhydrous salt (21 CFR 133.113); 0.019 is below",
    },
    Row {
        name: "calcium at the limit",
        set: &["calcium_dose_percent=0.02"],
        there: &[],
        gone: &["calcium_above_limit"],
        why: "chapter 1, section 5: warn above 0.02 %; 0.02 itself is allowed",
    },
    Row {
        name: "calcium above the limit",
        set: &["calcium_dose_percent=0.021"],
        there: &[("calcium_above_limit", Caution)],
        gone: &[],
        why: "chapter 1, section 5: 0.021 % is above 0.02 %",
    },
    Row {
        name: "raw milk",
        set: &["milk_treatment=raw"],
        there: &[("raw_milk", Stop)],
        gone: &["pasteurised_in_vat"],
        why: "chapter 1, section 9: pasteurised at 63 °C for 30 min or 72 °C for 15 s (21 CFR 1240.61), or aged 60 days; 5 °C milk had neither",
    },
    Row {
        name: "raw milk at 63 °C",
        set: &["milk_treatment=raw", "pasteurised_in_vat=yes", "pasteurising_temperature_c=63"],
        there: &[("pasteurised_in_vat", Stop)],
        gone: &["raw_milk", "stage_failed"],
        why: "chapter 1, section 9: 63 °C is the least of the rules, held 30 min; the design lies at it",
    },
    Row {
        name: "raw milk at 72 °C",
        set: &[
            "milk_treatment=raw",
            "pasteurised_in_vat=yes",
            "pasteurising_temperature_c=72",
            "pasteurising_bath_temperature_c=85",
        ],
        there: &[("pasteurised_in_vat", Stop)],
        gone: &["raw_milk", "stage_failed"],
        why: "chapter 1, section 9: 72 °C for 15 s; the design lies at it, in a bath of 85 °C",
    },
    Row {
        name: "milk that is not rich, at 63 °C",
        set: &["milk_treatment=raw", "pasteurised_in_vat=yes", "fat_target_percent=9.5"],
        there: &[("pasteurised_in_vat", Stop)],
        gone: &["raw_milk", "stage_failed"],
        why: "record (21 CFR 1240.61, note 1): 3 K hotter from 10 % of fat or 18 % of solids on; fat 9.5, solids 9.5 + 0.089 · 90.5 (chapter 1, section 1) = 17.6 %: 63 °C will do",
    },
    Row {
        name: "rich milk at 63 °C",
        set: &["milk_treatment=raw", "pasteurised_in_vat=yes", "fat_target_percent=10"],
        there: &[("stage_failed", Stop), ("raw_milk", Stop)],
        gone: &["pasteurised_in_vat"],
        why: "record (21 CFR 1240.61, note 1): fat of 10 % is rich, its least is 63 + 3 = 66 °C; at 63 °C it is raw milk still",
    },
    Row {
        name: "rich milk at 66 °C",
        set: &[
            "milk_treatment=raw",
            "pasteurised_in_vat=yes",
            "fat_target_percent=10",
            "pasteurising_temperature_c=66",
            "pasteurising_bath_temperature_c=75",
        ],
        there: &[("pasteurised_in_vat", Stop)],
        gone: &["raw_milk", "stage_failed"],
        why: "record (21 CFR 1240.61, note 1): 66 °C is the least for fat of 10 %; the design lies at it",
    },
    Row {
        name: "ultra-heated milk",
        set: &["milk_treatment=ultra_heated"],
        there: &[("ultra_heated_milk", Stop)],
        gone: &["homogenised_milk", "raw_milk"],
        why: "chapter 1, section 6: unsuitable, say so; no figure, 1 of 4 treatments",
    },
    Row {
        name: "milk of 5.2 % of protein",
        set: &["milk_kind=label", "label_fat_percent=3.6", "label_protein_percent=5.2"],
        there: &[],
        gone: &["unlikely_milk"],
        why: "record: unlikely above 1.043 kg/L (our judgement, no source); chapter 1, section 2 at 5 °C, F 3.6, N 5.2 + 5.5 = 10.7: 100/95.98 = 1.0419",
    },
    Row {
        name: "milk of 5.9 % of protein",
        set: &["milk_kind=label", "label_fat_percent=3.6", "label_protein_percent=5.9"],
        there: &[("unlikely_milk", Note)],
        gone: &[],
        why: "record: unlikely above 1.043 kg/L (our judgement, no source); chapter 1, section 2 at 5 °C, F 3.6, N 5.9 + 5.5 = 11.4: 100/95.70 = 1.0449",
    },
    Row {
        name: "unmoulded at pH 6.3",
        set: &["unmoulded_ph_from=measured", "unmoulded_ph=6.3"],
        there: &[("no_acid", Stop), ("warm_drying", Stop)],
        gone: &["acid_is_foreseen"],
        why: "chapter 1, section 9: pH near 6.5 without a starter, by the record 6.3 to 6.7 (common practice, no source); 6.3 is among them",
    },
    Row {
        name: "unmoulded at pH 6.25",
        set: &["unmoulded_ph_from=measured", "unmoulded_ph=6.25"],
        there: &[("acid_is_foreseen", Stop)],
        gone: &["no_acid", "warm_drying"],
        why: "chapter 1, section 9: pH near 6.5 without a starter, by the record 6.3 to 6.7; 6.25 is sourer than any of them, and its hours are judged by germs",
    },
    Row {
        name: "unmoulded at pH 4.4",
        set: &["unmoulded_ph_from=measured", "unmoulded_ph=4.4"],
        there: &[("acid_is_foreseen", Stop)],
        gone: &["no_acid"],
        why: "chapter 4, section 2: Listeria unsupported at pH 4.4 or below (EU 2073/2005, note 8); it is told as gravely, for a model is no proof",
    },
];

#[test]
fn warnings_about_milk_stand_where_the_chapter_puts_them() {
    hold(ROWS);
}
