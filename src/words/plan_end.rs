//! How a plan ends, in words: never finished before a slow cheese is sour.

use super::number::value;
use crate::caution::{PlanEnd, SourAfter};
use crate::design::hours_in_words;
use crate::law::growth::TABLE_B_PH;
use crate::units::Units;

/// How a plan ends.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct EndWords {
    /// What the time is, before it: "finished after".
    pub label: &'static str,
    /// The time, and more where the cheeses are not sour by then.
    pub text: String,
    /// What the day is, before the day and hour on which the plan ends: "finished".
    pub by_clock: &'static str,
    /// When the cheeses are sour, as a sentence; nothing where they are by then, or where there is no vinegar.
    pub sour: Option<String>,
}

/// Returns how a plan ends, in words.
///
/// # Example
/// ```
/// use vatsketch::{caution::{PlanEnd, SourAfter}, units::Units, words::end_words};
/// let end = PlanEnd::NotSour { at_h: 560.0, middle: SourAfter::Hours(1140.0), slow: SourAfter::Hours(1500.0) };
/// let words = end_words(&end, Units::METRIC);
/// assert_eq!(format!("{} {}", words.label, words.text), "not sour by day 24: day 48 (slow cheese: day 63)");
/// let soon = PlanEnd::NotSour { at_h: 560.0, middle: SourAfter::Hours(550.0), slow: SourAfter::Hours(565.0) };
/// assert_eq!(end_words(&soon, Units::METRIC).text, "day 24 (slow cheese: later that day)");
/// let never = PlanEnd::NotSour { at_h: 560.0, middle: SourAfter::Never, slow: SourAfter::Never };
/// assert_eq!(end_words(&never, Units::METRIC).text, "day 24, nor later");
/// ```
#[must_use]
pub fn end_words(end: &PlanEnd, units: Units) -> EndWords {
    match *end {
        PlanEnd::Finished { at_h } => {
            EndWords { label: "finished after", text: after(at_h, units), by_clock: "finished", sour: None }
        }
        PlanEnd::WithoutVinegar { at_h } => {
            EndWords { label: "ends after", text: after(at_h, units), by_clock: "ends", sour: None }
        }
        PlanEnd::NotSour { at_h, middle, slow } => {
            let in_time = matches!(middle, SourAfter::Hours(hours) if hours < at_h);
            EndWords {
                label: if in_time { "may not be sour by" } else { "not sour by" },
                text: match middle {
                    // A slow cheese is never sour either.
                    SourAfter::Never => format!("day {}, nor later", day(at_h)),
                    _ if in_time => format!("day {} (slow cheese: {})", day(at_h), beside(slow, at_h)),
                    _ => format!("day {}: {} (slow cheese: {})", day(at_h), beside(middle, at_h), beside(slow, at_h)),
                },
                by_clock: if in_time { "soak ends, perhaps not sour" } else { "soak ends, not sour" },
                sour: Some(format!(
                    "The model expects the centre below pH {}: {}; in a slow cheese: {}. The day of warming is the first. Only a pH meter can tell.",
                    value(&TABLE_B_PH),
                    on(middle),
                    on(slow)
                )),
            }
        }
    }
}

/// Returns when the cheeses are sour: a day, not by the last that is calculated, or never.
fn on(after: SourAfter) -> String {
    match after {
        SourAfter::Hours(hours) => format!("day {}", day(hours)),
        SourAfter::Beyond(hours) => format!("not by day {}", day(hours)),
        SourAfter::Never => "never".to_owned(),
    }
}

/// Returns the same beside the day on which a plan ends: the same day is not named twice.
fn beside(after: SourAfter, at_h: f64) -> String {
    match after {
        SourAfter::Hours(hours) if day(hours) == day(at_h) => "later that day".to_owned(),
        SourAfter::Hours(_) | SourAfter::Beyond(_) | SourAfter::Never => on(after),
    }
}

/// Returns the day in which an hour lies; the first day is that of the warming.
fn day(at_h: f64) -> u32 {
    const HOURS_IN_A_DAY: f64 = 24.0;
    (at_h / HOURS_IN_A_DAY).floor().max(0.0) as u32 + 1
}

/// Returns a length of time in words.
fn after(hours: f64, units: Units) -> String {
    units.told(&hours_in_words(hours))
}
