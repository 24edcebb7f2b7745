//! Salt and pepper: chapters 1 and 3. Of the salt 12 % runs off, and the curd is 61 % moist: salt in moisture is 0.88/0.61 = 1.44 times the salt.

use super::{Row, hold};
use vatsketch::caution::Severity::{Note, Stop};

pub(super) const ROWS: &[Row] = &[
    Row {
        name: "salt of 1.6 %",
        set: &["salt_percent=1.6"],
        there: &[("little_salt", Note)],
        gone: &["much_salt"],
        why: "chapter 1, section 8: salt in moisture 2.5 to 4 for fresh cheese; 1.44 · 1.6 = 2.3 is below 2.5",
    },
    Row {
        name: "salt of 1.9 %",
        set: &["salt_percent=1.9"],
        there: &[],
        gone: &["little_salt", "much_salt"],
        why: "chapter 1, section 8: 1.44 · 1.9 = 2.7 is above 2.5",
    },
    Row {
        name: "salt of 3.9 %",
        set: &["salt_percent=3.9"],
        there: &[],
        gone: &["little_salt", "much_salt"],
        why: "record: very salty above 6 (our judgement, no source); 1.44 · 3.9 = 5.6",
    },
    Row {
        name: "salt of 4.5 %",
        set: &["salt_percent=4.5"],
        there: &[("much_salt", Note)],
        gone: &["little_salt"],
        why: "record: very salty above 6 (our judgement, no source); 1.44 · 4.5 = 6.5",
    },
    Row {
        name: "no untreated pepper",
        set: &["pepper_treated=no", "pepper_g_dm2=0"],
        there: &[],
        gone: &["untreated_pepper"],
        why: "chapter 3, section 5: bacilli in 87 % of 200 spices; without pepper, 0 g, there is none",
    },
    Row {
        name: "a little untreated pepper",
        set: &["pepper_treated=no", "pepper_g_dm2=0.1"],
        there: &[("untreated_pepper", Stop)],
        gone: &[],
        why: "chapter 3, section 5: use treated or heated pepper; 0.1 g/dm² is pepper",
    },
];

#[test]
fn warnings_about_salt_and_pepper_stand_where_the_chapters_put_them() {
    hold(ROWS);
}
