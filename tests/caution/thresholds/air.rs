//! Drying: chapter 3.

use super::{Row, hold};
use vatsketch::caution::Severity::{Caution, Note, Stop};

pub(super) const ROWS: &[Row] = &[
    Row {
        name: "4 h of warm drying",
        set: &["drying_h=4"],
        there: &[("warm_in_all", Stop)],
        gone: &["warm_drying"],
        why: "chapter 3, section 5, time control: 4 h; 4 h at 43 °C are not more. With the vat's hour and a half they are, together",
    },
    Row {
        name: "4.5 h of warm drying",
        set: &["drying_h=4.5"],
        there: &[("warm_drying", Stop)],
        gone: &[],
        why: "chapter 3, section 5: 4.5 h at 43 °C, which is above 21, are more than 4",
    },
    Row {
        name: "drying at 21 °C",
        set: &["cabinet_temperature_c=21"],
        there: &[],
        gone: &["warm_drying"],
        why: "chapter 3, section 5: above 21.1 °C (record 21); 21 °C is not above it",
    },
    Row {
        name: "drying at 21.5 °C",
        set: &["cabinet_temperature_c=21.5"],
        there: &[("warm_drying", Stop)],
        gone: &[],
        why: "chapter 3, section 5: 34 h at 21.5 °C, which is above 21.1, are more than 4",
    },
    Row {
        name: "open air of 21 °C by day, 22 °C by night",
        set: &["drying_place=open_air", "day_temperature_c=21", "night_temperature_c=22"],
        there: &[("warm_drying", Stop)],
        gone: &[],
        why: "chapter 3, section 5: the night of 22 °C is above 21, 34 h are more than 4",
    },
    Row {
        name: "open air of 21 °C by day, 20 °C by night",
        set: &["drying_place=open_air", "day_temperature_c=21", "night_temperature_c=20"],
        there: &[],
        gone: &["warm_drying"],
        why: "chapter 3, section 5: neither 21 nor 20 °C is above 21",
    },
    Row {
        name: "a cabinet as warm as the room",
        set: &["cabinet_temperature_c=25", "room_air_temperature_c=25"],
        there: &[],
        gone: &["cabinet_below_room"],
        why: "no source: a cabinet that only warms cannot be cooler than its room; 25 °C is not below 25",
    },
    Row {
        name: "a cabinet cooler than the room",
        set: &["cabinet_temperature_c=24.5", "room_air_temperature_c=25"],
        there: &[("cabinet_below_room", Caution)],
        gone: &[],
        why: "no source: a cabinet that only warms cannot be cooler than its room; 24.5 °C is below 25",
    },
    Row {
        name: "salty cheese in air of 92 %",
        set: &[
            "salt_percent=6",
            "drying_place=open_air",
            "day_temperature_c=16",
            "night_temperature_c=16",
            "day_humidity_percent=92",
            "night_humidity_percent=92",
        ],
        there: &[],
        gone: &["damp_air"],
        why: "chapter 3, section 3: 1.44 · 6 = 8.7 g of salt in 100 g of moisture, as 1.5 mol/kg: water activity 0.95; air of 0.92 is drier",
    },
    Row {
        name: "salty cheese in air of 98 %",
        set: &[
            "salt_percent=6",
            "drying_place=open_air",
            "day_temperature_c=16",
            "night_temperature_c=16",
            "day_humidity_percent=98",
            "night_humidity_percent=98",
        ],
        there: &[("damp_air", Caution)],
        gone: &[],
        why: "chapter 3, section 3: water activity 0.95 as above; air of 0.98 is damper and wets it",
    },
    Row {
        name: "a wet centre",
        set: &[
            "mould_count=21",
            "mould_diameter_mm=60",
            "drip_end_moisture_percent=60",
            "drying_h=48",
            "cabinet_temperature_c=40",
            "underside_open_percent=100",
        ],
        there: &[("wet_centre", Note)],
        gone: &[],
        why: "chapter 3, section 7, D01, discs of 60 × 18 mm: centre 45.4 %, mean 35.2 %: 10 % apart, more than 8 (record, by feel, no source)",
    },
    Row {
        name: "a centre that is hardly wetter",
        set: &[
            "mould_count=86",
            "mould_diameter_mm=40",
            "drip_end_moisture_percent=60",
            "drying_h=48",
            "cabinet_temperature_c=40",
            "underside_open_percent=100",
        ],
        there: &[],
        gone: &["wet_centre"],
        why: "chapter 3, section 7, D11, discs of 40 × 10 mm: centre 29.4 %, mean 22.0 %: 7.4 % apart, less than 8 (record, by feel, no source)",
    },
];

#[test]
fn warnings_about_drying_stand_where_the_chapter_puts_them() {
    hold(ROWS);
}
