//! Keeping in the cold and in oil: chapter 3, and the days of the Food Code.

use super::{Row, hold};
use vatsketch::caution::Severity::{Caution, Stop};

pub(super) const ROWS: &[Row] = &[
    Row {
        name: "4 days in oil",
        set: &["kept_in=oil", "pickling_h=2000", "keeping_days=4"],
        there: &[("oil_is_untested", Stop)],
        gone: &["long_in_oil", "oil_before_acid"],
        why: "chapter 3, section 5: garlic or herbs in oil at most 4 days (NCHFP); 4 is not more. Sour below 4.2 after 2000 h, and untested still",
    },
    Row {
        name: "5 days in oil",
        set: &["kept_in=oil", "pickling_h=2000", "keeping_days=5"],
        there: &[("oil_is_untested", Stop), ("long_in_oil", Stop)],
        gone: &["oil_before_acid"],
        why: "chapter 3, section 5: at most 4 days in oil; 5 are more",
    },
    Row {
        name: "oil after a day of vinegar",
        set: &["kept_in=oil", "pickling_h=24", "keeping_days=3"],
        there: &[("oil_before_acid", Stop)],
        gone: &["oil_is_untested", "long_in_oil"],
        why: "chapter 3, section 0, item 5: a mean of 4.9 and 6.5 at the centre after 24 h; neither 4.6 nor 4.2",
    },
    Row {
        name: "oil at pH 4.6",
        set: &["kept_in=oil", "pickled=no", "cheese_ph_from=measured", "cheese_ph=4.6", "keeping_days=3"],
        there: &[("oil_before_acid", Stop)],
        gone: &["oil_is_untested"],
        why: "chapter 3, section 5: pH 4.6, but 4.2 is the target, for this is a food of table B; 4.6 is not below 4.2",
    },
    Row {
        name: "oil at pH 4.2",
        set: &["kept_in=oil", "pickled=no", "cheese_ph_from=measured", "cheese_ph=4.2", "keeping_days=3"],
        there: &[("oil_before_acid", Stop)],
        gone: &["oil_is_untested"],
        why: "chapter 3, section 5, table B: pH of 4.2 or more is assessed; 4.2 is not below 4.2",
    },
    Row {
        name: "kept at 4 °C",
        set: &["keeping_temperature_c=4"],
        there: &[],
        gone: &["warm_keeping"],
        why: "chapter 3, section 5: refrigerate at 4 °C or less; 4 is not above",
    },
    Row {
        name: "kept at 4.5 °C",
        set: &["keeping_temperature_c=4.5"],
        there: &[("warm_keeping", Stop)],
        gone: &[],
        why: "chapter 3, section 5: refrigerate at 4 °C or less; 4.5 is above",
    },
    Row {
        name: "kept at 5 °C",
        set: &["keeping_temperature_c=5"],
        there: &[("warm_keeping", Stop)],
        gone: &[],
        why: "chapter 3, section 5: 4 °C or less; the Food Code's own 5 °C (record, range 4 to 5) is the less cautious",
    },
    Row {
        name: "7 days bare",
        set: &["pickled=no", "kept_in=bare", "keeping_days=7"],
        there: &[("needs_cold", Caution)],
        gone: &["kept_long"],
        why: "record (Food Code 3-501.17, from memory): 7 days at 5 °C or colder; 7 are not more",
    },
    Row {
        name: "8 days bare",
        set: &["pickled=no", "kept_in=bare", "keeping_days=8"],
        there: &[("kept_long", Stop)],
        gone: &[],
        why: "record (Food Code 3-501.17, from memory): 7 days; 8 are more",
    },
    Row {
        name: "2 days of vinegar and 5 of keeping",
        set: &["pickling_h=48", "keeping_days=5"],
        there: &[("centre_not_sour", Stop)],
        gone: &["kept_long"],
        why: "record (Food Code 3-501.17): 48/24 + 5 = 7 days, not more than 7",
    },
    Row {
        name: "2 days of vinegar and 6 of keeping",
        set: &["pickling_h=48", "keeping_days=6"],
        there: &[("centre_not_sour", Stop), ("kept_long", Stop)],
        gone: &[],
        why: "record (Food Code 3-501.17): 48/24 + 6 = 8 days, more than 7; 48 h sour no centre (chapter 3, section 7)",
    },
    Row {
        name: "a year in vinegar, sour to the centre",
        set: &["pickling_h=2000", "keeping_days=365"],
        there: &[],
        gone: &["kept_long"],
        why: "record (Food Code 3-501.17): the 7 days are for food that needs the cold; below pH 4.2 table B asks for none (chapter 3, section 5)",
    },
];

#[test]
fn warnings_about_keeping_stand_where_the_chapter_puts_them() {
    hold(ROWS);
}
