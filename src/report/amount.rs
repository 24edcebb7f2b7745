//! Numbers as they are written on paper: with their unit, rounded to what a kitchen can measure.

use crate::design::Unit;
use crate::units::{LongTimes, Units};
use std::fmt;

/// One number with its unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Amount {
    /// The number, in `unit`.
    pub value: f64,
    /// Its unit.
    pub unit: Unit,
    /// Decimals that are written in that unit.
    pub decimals: usize,
    /// The units that it is shown in.
    pub units: Units,
}

impl Amount {
    /// Returns a number with its unit, shown in it.
    #[must_use]
    pub const fn new(value: f64, unit: Unit, decimals: usize) -> Self {
        Self { value, unit, decimals, units: Units::METRIC }
    }

    /// Returns the same number, shown in other units.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::Unit, report::Amount, units::Units};
    /// assert_eq!(Amount::new(35.0, Unit::Celsius, 1).shown_in(Units::US).to_string(), "95\u{a0}°F");
    /// ```
    #[must_use]
    pub const fn shown_in(self, units: Units) -> Self {
        Self { units, ..self }
    }
}

impl fmt::Display for Amount {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(other) = self.units.text(self.unit, self.value, self.decimals) {
            return f.write_str(&unparted(&other));
        }
        write!(f, "{:.*}", self.decimals, positive_zero(self.value, self.decimals))?;
        let symbol = self.unit.symbol();
        // A no-break space: number and unit never part at the end of a line.
        if symbol.is_empty() { Ok(()) } else { write!(f, "\u{a0}{symbol}") }
    }
}

/// Returns words that never part at the end of a line.
fn unparted(words: &str) -> String {
    words.replace(' ', "\u{a0}")
}

/// Returns zero without its sign where rounding leaves nothing but zero.
fn positive_zero(value: f64, decimals: usize) -> f64 {
    let least = 0.5 * 10_f64.powi(-i32::try_from(decimals).unwrap_or(0));
    if value.abs() < least { 0.0 } else { value }
}

/// What is to be reached, how near is near enough, and how far it may well be off.
#[derive(Clone, Debug, PartialEq)]
pub struct Target {
    /// What it is.
    pub label: String,
    /// The target.
    pub amount: Amount,
    /// Least and greatest value that still counts as reached.
    pub within: Option<(f64, f64)>,
    /// The same in kitchen measures, where that helps.
    pub kitchen: Option<String>,
}

impl Target {
    /// Returns a target that is met exactly, such as a count.
    #[must_use]
    pub fn exact(label: impl Into<String>, amount: Amount) -> Self {
        Self { label: label.into(), amount, within: None, kitchen: None }
    }

    /// Returns the same with another value, its range as far about it as before.
    pub(super) fn moved(&self, to: f64) -> Self {
        let by = to - self.amount.value;
        let within = self.within.map(|(least, most)| (least + by, most + by));
        Self { amount: Amount { value: to, ..self.amount }, within, ..self.clone() }
    }

    /// Returns the same with value and range so many times as large.
    pub(super) fn scaled(&self, factor: f64) -> Self {
        let within = self.within.map(|(least, most)| (factor * least, factor * most));
        Self { amount: Amount { value: factor * self.amount.value, ..self.amount }, within, ..self.clone() }
    }

    /// Returns a target that is met within `spread` to either side.
    #[must_use]
    pub fn near(label: impl Into<String>, amount: Amount, spread: f64) -> Self {
        Self { within: Some((amount.value - spread, amount.value + spread)), ..Self::exact(label, amount) }
    }

    /// Returns what is to be reached, with its amount: `milk: 35 °C ± 0.5`.
    #[must_use]
    pub fn words(&self) -> String {
        format!("{}: {}", self.label, self.amount_words())
    }

    /// Returns its amount with how near is near enough, and its kitchen measure.
    #[must_use]
    pub fn amount_words(&self) -> String {
        let tolerance = match self.tolerance() {
            Some(around) if around.starts_with('±') => format!(" {around}"),
            Some(range) => format!(" ({range})"),
            None => String::new(),
        };
        let kitchen = self.kitchen.as_ref().map(|kitchen| format!(" ({kitchen})")).unwrap_or_default();
        format!("{}{tolerance}{kitchen}", self.amount)
    }

    /// Returns the tolerance in words, such as `± 0.5` or `31 to 42`; nothing where there is none.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::Unit, report::{Amount, Target}};
    /// let target = Target::near("milk", Amount::new(35.0, Unit::Celsius, 1), 0.5);
    /// assert_eq!(target.tolerance().as_deref(), Some("±\u{a0}0.5"));
    /// ```
    #[must_use]
    pub fn tolerance(&self) -> Option<String> {
        let (least, most) = self.within?;
        let decimals = self.amount.decimals;
        let (below, above) = (self.amount.value - least, most - self.amount.value);
        let rounding = 0.5 * 10_f64.powi(-i32::try_from(decimals).unwrap_or(0));
        let Amount { value, unit, units, .. } = self.amount;
        if (below - above).abs() < rounding {
            if let Some(spread) = units.spread(unit, value, above, decimals) {
                return Some(unparted(&format!("± {spread}")));
            }
            let decimals = if above < 2.0 * rounding { decimals + 1 } else { decimals };
            Some(format!("±\u{a0}{above:.decimals$}"))
        } else if let Some(range) = units.range(unit, (least, most), decimals) {
            Some(unparted(&range))
        } else {
            Some(format!("{least:.decimals$}–{most:.decimals$}"))
        }
    }
}

const TWO_HOURS_MIN: f64 = 120.0;
const TWO_DAYS_MIN: f64 = 2.0 * 24.0 * 60.0;

/// Returns minutes as a length of time: `35 min`, `2 h 5 min`, `30 h`.
///
/// # Example
/// ```
/// use vatsketch::{report::duration, units::Units};
/// let duration = |minutes| duration(minutes, Units::default());
/// assert_eq!(duration(125.0), "2\u{a0}h\u{a0}5\u{a0}min");
/// assert_eq!(duration(35.2), "35\u{a0}min");
/// assert_eq!(duration(1800.0), "30\u{a0}h");
/// ```
#[must_use]
pub fn duration(minutes: f64, units: Units) -> String {
    if let Some(days) = units.in_days(minutes) {
        return unparted(&days);
    }
    // Times may be a third off: from two hours on a plan names no single minutes, from two days on no minutes at all.
    let step = match minutes {
        _ if minutes < TWO_HOURS_MIN => 1.0,
        _ if minutes < TWO_DAYS_MIN => 5.0,
        _ => 60.0,
    };
    let all = (step * (minutes / step).round()).max(0.0);
    let (hours, rest) = ((all / 60.0).floor(), all % 60.0);
    if hours < 1.0 {
        format!("{rest:.0}\u{a0}min")
    } else if rest < 1.0 {
        format!("{hours:.0}\u{a0}h")
    } else {
        format!("{hours:.0}\u{a0}h\u{a0}{rest:.0}\u{a0}min")
    }
}

/// Returns minutes from the start as they are shown next to a step: `start`, `+35 min`, `+2 h 5 min`, `+24 d 8 h`.
#[must_use]
pub fn elapsed(minutes: f64, units: Units) -> String {
    if minutes.round() < 1.0 {
        return "start".to_owned();
    }
    // Weeks in hours are hard to count, unless the maker wants hours.
    let in_days = if units.long_times == LongTimes::Hours { units } else { Units { long_times: LongTimes::Days, ..units } };
    format!("+{}", duration(minutes, in_days))
}
