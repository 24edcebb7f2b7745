//! The few figures that are always in sight.

use super::{Batch, Severity};

/// What the foot of the window says of a batch.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Summary {
    /// Cheeses, if the batch came that far.
    pub cheese_count: Option<u32>,
    /// Mass of a dried cheese.
    pub dried_cheese_g: Option<f64>,
    /// Hours from the start of warming to the last air, and to the end of the soak where there is one.
    pub ready_h: Option<f64>,
    /// Stops, cautions and notes.
    pub cautions: [usize; 3],
}

/// Returns the few figures that are always in sight.
///
/// # Example
/// ```
/// use vatsketch::{batch::{batch, summary}, design::Design};
/// let summary = summary(&batch(&Design::default())?);
/// assert_eq!(summary.cheese_count, Some(12));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn summary(batch: &Batch) -> Summary {
    let count = |severity| batch.cautions.iter().filter(|caution| caution.severity == severity).count();
    Summary {
        cheese_count: batch.draining.done().map(|drained| drained.cheese_count),
        dried_cheese_g: batch.drying.done().map(|dried| dried.end.cheese_g),
        ready_h: soaked_min(batch).map(|minutes| minutes / 60.0),
        cautions: [count(Severity::Stop), count(Severity::Caution), count(Severity::Note)],
    }
}

/// Returns the minutes from the start of warming to the last air; none if the batch did not come so far.
#[must_use]
pub fn dried_min(batch: &Batch) -> Option<f64> {
    batch.drying.done()?;
    let unmoulded_min = batch.vat.done()?.to_ladle_min + 60.0 * batch.draining.done()?.draining_h;
    Some(unmoulded_min + 60.0 * batch.design.drying.drying_h)
}

/// Returns the minutes from the start of warming to the end of the soak, or to the last air where there is no vinegar.
#[must_use]
pub fn soaked_min(batch: &Batch) -> Option<f64> {
    let soak_h = if batch.pickling.done()?.pickled { batch.design.pickling.pickling_h } else { 0.0 };
    Some(dried_min(batch)? + 60.0 * soak_h)
}

/// Returns hours as a maker says them: "2 h 15 min", "3 days 4 h".
///
/// # Example
/// ```
/// use vatsketch::batch::hours_in_words;
/// assert_eq!(hours_in_words(2.25), "2 h 15 min");
/// assert_eq!(hours_in_words(76.2), "3 days 4 h");
/// assert_eq!(hours_in_words(500.0), "21 days");
/// ```
#[must_use]
pub fn hours_in_words(hours: f64) -> String {
    let minutes = (hours * 60.0).round().max(0.0);
    if minutes < 60.0 {
        return format!("{minutes:.0} min");
    }
    if minutes < 48.0 * 60.0 {
        let (whole, rest) = ((minutes / 60.0).floor(), minutes % 60.0);
        return if rest < 0.5 { format!("{whole:.0} h") } else { format!("{whole:.0} h {rest:.0} min") };
    }
    let rounded = hours.round();
    let (days, rest) = ((rounded / 24.0).floor(), rounded % 24.0);
    // Hours say nothing where the days themselves are uncertain.
    if days >= 7.0 {
        return format!("{:.0} days", (rounded / 24.0).round());
    }
    if rest < 0.5 { format!("{days:.0} days") } else { format!("{days:.0} days {rest:.0} h") }
}
