//! The first minute: what the program is, what one may start from, and what an example comes to.

use super::caution::counted;
use super::plan_end::end_words;
use crate::analysis::Summary;
use crate::caution::Severity;
use crate::design::Unit;
use crate::units::Units;

/// What the program is, for somebody who sees it for the first time; the sentence of every output follows it.
pub const WELCOME: &str = "Plan a vat of small fresh rennet cheeses before you buy anything: how much milk and cream, how many cheeses, when each step is due, and some of what can go wrong.";

/// One thing to start from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Start {
    /// What it is.
    pub title: &'static str,
    /// What comes then.
    pub says: &'static str,
}

/// Starting from the milk that can be bought.
pub const START_FROM_MILK: Start = Start {
    title: "The milk in my shop",
    says: "Say how much milk you get and how much fat you want, and see how much cream to buy.",
};

/// Starting from nothing.
pub const START_EMPTY: Start =
    Start { title: "An empty design", says: "Every choice starts at a usual value. Change what you like." };

/// Starting with the guide.
pub const GUIDE_START: Start =
    Start { title: "A short guide", says: "A few steps through the window. Leave it whenever you like." };

/// What the tiles of the examples show.
pub const TILES_SHOW: &str = "All cheeses are drawn to one scale: dashed, as they leave the mould; filled, when dried, in layers of water, fat, curd and salt. All examples are invented.";

/// What is said of an example while it is not calculated.
pub const NOT_CALCULATED: &str = "Not calculated yet";

/// Returns what an example comes to, a line each: cheeses, and how its plan ends.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, analysis::summary, design::Design, units::Units, words::tile_lines};
/// assert!(tile_lines(&summary(&batch(&Design::default())?), Units::METRIC)[0].starts_with("12 cheeses of "));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn tile_lines(summary: &Summary, units: Units) -> Vec<String> {
    let each = summary.dried_cheese_g.map(|grams| units.text(Unit::Gram, grams, 0).unwrap_or_else(|| format!("{grams:.0} g")));
    let cheeses = summary.cheese_count.map(|count| {
        let of_each = each.map_or_else(String::new, |each| format!(" of {each}"));
        format!("{count} {}{of_each}", if count == 1 { "cheese" } else { "cheeses" })
    });
    let end = summary.end.map(|end| {
        let end = end_words(&end, units);
        format!("{} {}", end.label, end.text)
    });
    cheeses.into_iter().chain(end).collect()
}

/// Returns how many serious warnings and cautions an example has, those that it has none of left out.
///
/// # Example
/// ```
/// use vatsketch::{analysis::Summary, words::tile_counts};
/// let summary = Summary { cautions: [1, 0, 4], ..Summary::default() };
/// assert_eq!(tile_counts(&summary)[0].1, "1 serious warning");
/// ```
#[must_use]
pub fn tile_counts(summary: &Summary) -> Vec<(Severity, String)> {
    let [stops, cautions, _] = summary.cautions;
    let counts = [(Severity::Stop, stops), (Severity::Caution, cautions)];
    counts.into_iter().filter(|(_, count)| *count > 0).map(|(severity, count)| (severity, counted(severity, count))).collect()
}
