//! What stands outside, law by law, beside what we have: one list that is held to its tolerances and printed as a table for developers.
//!
//! The rows are those of `tests/reference` that somebody else published, measured or computed; those in which a source disagrees are kept.

use super::brine::measured_rows;
use super::density::density_rows;
use super::growth::germ_rows;
use super::moist_air::real_air_rows;
use super::moisture_diffusion::drying_rows;
use super::soaking::salt_rows;
use super::sorption::dry_end_rows;
use super::souring::souring_rows;
use super::tables::{Standardising, rows};
use crate::process::{brined_rows, egg_rows};
use std::fmt::Write;
use vatsketch::law::blending::addition_kg;
use vatsketch::law::calcium::solution_kg_l;
use vatsketch::law::yields::van_slyke_percent;

/// Where the table is; `OUTSIDE_CHECKS=write cargo test outside` writes it anew.
const TABLE: &str = "tests/reference/outside-checks.md";

/// One thing that somebody else says, and what we say.
pub struct Outside {
    /// Of which law.
    pub law: String,
    /// In which case.
    pub case: String,
    /// Who says so.
    pub source: String,
    /// What they say, as a number.
    pub expected: f64,
    /// What we say.
    pub ours: f64,
    /// How far they may differ; none where the source is known to disagree, or measures something else as well.
    pub tolerance: Option<f64>,
    /// Why.
    pub why: String,
}

impl Outside {
    /// Returns a row in plain words.
    pub fn new(law: &str, case: String, source: &str, (expected, ours): (f64, f64), tolerance: Option<f64>, why: &str) -> Self {
        Self { law: law.to_owned(), case, source: source.to_owned(), expected, ours, tolerance, why: why.to_owned() }
    }
}

#[derive(serde::Deserialize)]
struct Solution {
    percent: f64,
    density: f64,
}

/// Returns every row, law by law in the order of the stages.
fn all() -> Vec<Outside> {
    let mut all = density_rows();
    all.extend(rows::<Standardising>("standardising").into_iter().map(|row| {
        let case = format!("{} of {} % with {} % to {} %", row.base, row.base_fat, row.add_fat, row.target);
        let ours = addition_kg(row.base, row.base_fat, row.add_fat, row.target).unwrap();
        Outside::new(
            "standardising",
            case,
            &row.source,
            (row.expected_add, ours),
            Some(1e-3 * row.expected_add),
            "rounding of the example",
        )
    }));
    // What is left blended with what is taken is the milk.
    let cream = addition_kg(1.0, 2.0, 40.0, 3.8).unwrap();
    let taken = 1000.0 * cream / (1.0 + cream);
    let note = "45 in the note; the exact answer is 47.37";
    all.push(Outside::new(
        "standardising",
        "40 % cream out of 1000 of 3.8 % to leave 2 %".to_owned(),
        "a published note",
        (45.0, taken),
        None,
        note,
    ));
    all.extend(rows::<Solution>("cacl2_density").into_iter().map(|row| {
        let pair = (row.density, solution_kg_l(row.percent));
        Outside::new(
            "calcium chloride",
            format!("{} %, kg/L", row.percent),
            "CRC Handbook",
            pair,
            Some(1e-12),
            "the curve goes through the points",
        )
    }));
    let yields = (9.945, van_slyke_percent(3.6, 2.5, 37.0));
    all.push(Outside::new(
        "yield",
        "fat 3.6, casein 2.5, moisture 37 %".to_owned(),
        "University of Guelph notes",
        yields,
        Some(0.005),
        "half of the last digit",
    ));
    all.extend(souring_rows());
    all.extend(real_air_rows());
    all.extend(measured_rows());
    all.extend(drying_rows());
    all.extend(dry_end_rows());
    all.extend(salt_rows());
    all.extend(brined_rows());
    all.extend(egg_rows());
    all.extend(germ_rows());
    all
}

/// Returns a number with four digits.
fn digits(number: f64) -> String {
    if number == 0.0 {
        return "0".to_owned();
    }
    let places = (3 - number.abs().log10().floor() as i32).clamp(0, 12) as usize;
    let text = format!("{number:.places$}");
    if (1e-4..1e6).contains(&number.abs()) { text } else { format!("{number:.3e}") }
}

/// Returns the table as Markdown.
fn table() -> String {
    let mut text = "# Outside checks\n\nWhat somebody else published, measured or computed, and what the program has. Written by a test \
        (`tests/law/outside.rs`), which fails when it is stale; `OUTSIDE_CHECKS=write cargo test outside` writes it anew. A row without a \
        tolerance is information: the source disagrees, is another law, or measures more than the law knows.\n\n\
        | law | case | source | expected | ours | tolerance | why |\n|---|---|---|---|---|---|---|\n"
        .to_owned();
    for row in all() {
        let plain = |words: &str| words.replace('|', "/");
        let tolerance = row.tolerance.map_or_else(|| "none".to_owned(), digits);
        let (expected, ours) = (digits(row.expected), digits(row.ours));
        let Outside { law, case, source, why, .. } = &row;
        writeln!(text, "| {law} | {} | {} | {expected} | {ours} | {tolerance} | {} |", plain(case), plain(source), plain(why))
            .unwrap();
    }
    text
}

#[test]
fn what_stands_outside_is_met_within_its_tolerance() {
    let all = all();
    assert!(all.len() > 200);
    for row in all {
        let within = row.tolerance.is_none_or(|tolerance| (row.ours - row.expected).abs() <= tolerance);
        assert!(within, "{}, {}: {} against {} of {}", row.law, row.case, row.ours, row.expected, row.source);
    }
}

#[test]
fn the_table_of_outside_checks_is_as_it_would_be_written() {
    let path = format!("{}/{TABLE}", env!("CARGO_MANIFEST_DIR"));
    let now = table();
    if std::env::var_os("OUTSIDE_CHECKS").is_some_and(|what| what == "write") {
        std::fs::write(&path, &now).unwrap();
    }
    let there = std::fs::read_to_string(&path).unwrap_or_default();
    for (there, now) in there.lines().zip(now.lines()) {
        assert_eq!(there, now, "the table is stale: OUTSIDE_CHECKS=write cargo test outside");
    }
    assert_eq!(there.lines().count(), now.lines().count(), "the table is stale: OUTSIDE_CHECKS=write cargo test outside");
}
