//! One unit to show quantities in: how it converts, and how finely a kitchen can read it.

use super::{LongTimes, Masses, Temperatures, Units, Volumes};
use crate::design::Unit;
use crate::law::legal_measures::{
    CUP_ML, FAHRENHEIT_DEGREES, FAHRENHEIT_FREEZING, FLUID_OUNCE_ML, IMPERIAL_FLUID_OUNCE_ML, IMPERIAL_PINT_ML, OUNCE_G, POUND,
    QUART_ML,
};

/// Hours from which a time is long.
pub(super) const LONG_H: f64 = 48.0;
/// Hours in a day.
pub(super) const DAY_H: f64 = 24.0;
/// Least step of a kitchen scale that shows ounces.
const OUNCE_STEP: f64 = 0.1;
/// Least step of a measuring jug in fluid ounces.
const FLUID_OUNCE_STEP: f64 = 0.25;

/// The steps in which a unit is shown.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Steps {
    /// As many decimals as the quantity has: the unit of the calculation.
    Own,
    /// Always this step.
    Always(f64),
    /// This step, twice it, four times it.
    Halves(f64),
    /// One, two or five times a power of ten, at least this.
    Tens(f64),
}

/// A unit in which a quantity is shown.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scale {
    /// Symbol that is written after a number.
    pub symbol: &'static str,
    /// How much of the calculation's unit makes one of this.
    per: f64,
    /// What this shows where the calculation has zero.
    zero: f64,
    steps: Steps,
}

impl Scale {
    /// Returns the unit of the calculation itself.
    #[must_use]
    pub const fn own(unit: Unit) -> Self {
        Self { symbol: unit.symbol(), per: 1.0, zero: 0.0, steps: Steps::Own }
    }

    const fn other(symbol: &'static str, per: f64, steps: Steps) -> Self {
        Self { symbol, per, zero: 0.0, steps }
    }

    /// Returns the unit of the calculation, but rounded to whole ones.
    pub(super) const fn whole(unit: Unit) -> Self {
        Self { steps: Steps::Always(1.0), ..Self::own(unit) }
    }

    /// Returns the same unit for a calculation's unit that is so many times larger.
    pub(super) fn of_larger(self, times: f64) -> Self {
        Self { per: self.per / times, ..self }
    }

    /// Returns whether this is the unit of the calculation.
    #[must_use]
    pub fn is_own(&self) -> bool {
        self.steps == Steps::Own
    }

    /// Returns a value of the calculation as this unit shows it.
    #[must_use]
    pub fn shown(&self, value: f64) -> f64 {
        if self.is_own() { value } else { value / self.per + self.zero }
    }

    /// Returns a shown value in the unit of the calculation.
    #[must_use]
    pub fn kept(&self, shown: f64) -> f64 {
        if self.is_own() { shown } else { (shown - self.zero) * self.per }
    }

    /// Returns a difference of two values as this unit shows it: a difference has no zero point.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::Unit, units::Units};
    /// let fahrenheit = Units::US.scale(Unit::Celsius, 35.0);
    /// assert_eq!((fahrenheit.shown(10.0), fahrenheit.apart(10.0)), (50.0, 18.0));
    /// ```
    #[must_use]
    pub fn apart(&self, difference: f64) -> f64 {
        if self.is_own() { difference } else { difference / self.per }
    }

    /// Returns a value in digits: rounded to what a kitchen can read, and to no more than its decimals in the unit of the calculation justify.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::Unit, units::Units};
    /// assert_eq!(Units::US.scale(Unit::Celsius, 35.0).digits(35.3, 1), "96");
    /// assert_eq!(Units::US.scale(Unit::Gram, 61.0).digits(61.0, 0), "2.2");
    /// ```
    #[must_use]
    pub fn digits(&self, value: f64, decimals: usize) -> String {
        self.written(self.shown(value), decimals)
    }

    /// Returns a difference in digits, as [`Scale::digits`] rounds.
    #[must_use]
    pub fn apart_digits(&self, difference: f64, decimals: usize) -> String {
        self.written(self.apart(difference), decimals)
    }

    /// Returns how near is near enough, in digits: at least one step, for nobody holds a tolerance that no kitchen can read.
    pub(super) fn spread_digits(&self, spread: f64, decimals: usize) -> String {
        let step = self.step(decimals);
        self.written(self.apart(spread).max(step), decimals)
    }

    /// Returns the step that numbers are rounded to.
    pub(super) fn step(&self, decimals: usize) -> f64 {
        let own = 10.0_f64.powi(-i32::try_from(decimals).unwrap_or(0));
        // Nearest to what the last decimal of the calculation's unit is worth here.
        let worth = 0.5 * own / self.per;
        match self.steps {
            Steps::Own => own,
            Steps::Always(step) => step,
            Steps::Halves(least) => least * 2.0_f64.powf((worth / least).log2().ceil().max(0.0)),
            Steps::Tens(least) => tens_at_least(worth).max(least),
        }
    }

    fn written(&self, shown: f64, decimals: usize) -> String {
        if self.is_own() {
            return plain(shown, decimals);
        }
        let step = self.step(decimals);
        let rounded = (shown / step).round() * step;
        match self.steps {
            Steps::Halves(_) => with_quarters(rounded),
            Steps::Own | Steps::Always(_) | Steps::Tens(_) => plain(rounded, (-step.log10() - 1e-9).ceil().max(0.0) as usize),
        }
    }

    /// Returns a limit of an axis, and with it everything between, as this unit shows it: the next round number outside.
    #[must_use]
    pub fn axis_limit(&self, limit: f64, up: bool) -> f64 {
        if self.is_own() {
            return limit;
        }
        let shown = self.shown(limit);
        if shown == 0.0 {
            return shown;
        }
        // Twenty steps of a round number, so that marks stand on it.
        let step = tens_at_least(shown.abs() / 20.0);
        if up { (shown / step - 1e-9).ceil() * step } else { (shown / step + 1e-9).floor() * step }
    }
}

/// Returns the least of 1, 2, 5, 10, 20 and so on that is at least a number.
fn tens_at_least(number: f64) -> f64 {
    let decade = 10.0_f64.powf(number.log10().floor());
    let least = number * (1.0 - 1e-9);
    [1.0, 2.0, 5.0].into_iter().map(|times| times * decade).find(|step| *step >= least).unwrap_or(10.0 * decade)
}

/// Returns a number to its decimals; one that rounds to zero from below has no sign.
fn plain(number: f64, decimals: usize) -> String {
    let rounded = format!("{number:.decimals$}");
    let bare = rounded.trim_start_matches('-');
    if bare.chars().all(|digit| digit == '0' || digit == '.') { bare.to_owned() } else { rounded }
}

/// Returns a number of quarters as a cook reads it off a jug: `5¼`.
fn with_quarters(number: f64) -> String {
    let quarters = (number.abs() * 4.0).round();
    let (whole, rest) = ((quarters / 4.0).floor(), quarters % 4.0);
    let sign = if number < 0.0 && quarters > 0.0 { "-" } else { "" };
    let part = match rest {
        rest if rest > 2.5 => "¾",
        rest if rest > 1.5 => "½",
        rest if rest > 0.5 => "¼",
        _ => "",
    };
    if whole < 0.5 && !part.is_empty() { format!("{sign}{part}") } else { format!("{sign}{whole:.0}{part}") }
}

impl Units {
    /// Returns the unit in which quantities of a size are shown, for boxes, axes, columns and ranges, which have one unit for all of theirs.
    ///
    /// What is less than an ounce or a fluid ounce stays in grams and millilitres: no kitchen measures it in those, and it is dosed with a
    /// syringe or a fine scale.
    ///
    /// # Arguments
    /// * `size`: of the greatest of them, in `unit`
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::Unit, units::Units};
    /// assert_eq!(Units::US.scale(Unit::Litre, 6.0).symbol, "qt");
    /// assert_eq!(Units::US.scale(Unit::Gram, 61.0).symbol, "oz");
    /// assert_eq!(Units::US.scale(Unit::Gram, 0.4).symbol, "g");
    /// assert_eq!(Units::default().scale(Unit::Litre, 6.0).symbol, "L");
    /// ```
    #[must_use]
    pub fn scale(self, unit: Unit, size: f64) -> Scale {
        let size = size.abs();
        match unit {
            Unit::Celsius if self.temperatures == Temperatures::Fahrenheit => Scale {
                symbol: "°F",
                per: 1.0 / FAHRENHEIT_DEGREES.value,
                zero: FAHRENHEIT_FREEZING.value,
                steps: Steps::Always(1.0),
            },
            Unit::Litre | Unit::Millilitre => self.volume(unit, size).unwrap_or(Scale::own(unit)),
            Unit::Kilogram | Unit::Gram if self.masses == Masses::Pounds => mass(unit, size),
            Unit::Hour if self.long_times == LongTimes::Days && size >= LONG_H => Scale::other("d", DAY_H, Steps::Tens(0.1)),
            Unit::Day if self.long_times == LongTimes::Hours => Scale::other("h", 1.0 / DAY_H, Steps::Always(1.0)),
            _ => Scale::own(unit),
        }
    }

    /// Returns the unit in which amounts of something that is bought are shown: of what is needed by the quart in quarts.
    #[must_use]
    pub fn shelf_scale(self, unit: Unit, needed: f64) -> Scale {
        match unit {
            Unit::Millilitre => {
                let litres = self.scale(Unit::Litre, 0.001 * needed);
                if litres.is_own() { Scale::own(unit) } else { litres.of_larger(0.001) }
            }
            Unit::Gram => {
                let kilograms = self.scale(Unit::Kilogram, 0.001 * needed);
                if kilograms.is_own() { Scale::own(unit) } else { kilograms.of_larger(0.001) }
            }
            _ => self.scale(unit, needed),
        }
    }

    fn volume(self, unit: Unit, size: f64) -> Option<Scale> {
        let in_ml = if unit == Unit::Litre { 1000.0 } else { 1.0 };
        let (large, fluid_ounce) = self.volumes.measures()?;
        let ounces = Scale::other(fluid_ounce.0, fluid_ounce.1 / in_ml, Steps::Halves(FLUID_OUNCE_STEP));
        match unit {
            Unit::Litre if size >= large.1 / in_ml => Some(Scale::other(large.0, large.1 / in_ml, Steps::Tens(0.01))),
            _ => (size >= ounces.per).then_some(ounces),
        }
    }
}

/// A measure of volume: its symbol, and the millilitres that it holds.
pub(super) type Measure = (&'static str, f64);

impl Volumes {
    /// Returns the large measure and the fluid ounce.
    pub(super) const fn measures(self) -> Option<(Measure, Measure)> {
        match self {
            Self::Litres => None,
            Self::UsCups => Some((("cups", CUP_ML), ("fl oz", FLUID_OUNCE_ML))),
            Self::UsQuarts => Some((("qt", QUART_ML), ("fl oz", FLUID_OUNCE_ML))),
            Self::ImperialPints => Some((("pt", IMPERIAL_PINT_ML), ("fl oz", IMPERIAL_FLUID_OUNCE_ML))),
        }
    }
}

fn mass(unit: Unit, size: f64) -> Scale {
    let in_g = if unit == Unit::Kilogram { 1000.0 } else { 1.0 };
    let (pound, ounce) = (POUND.value / in_g, OUNCE_G / in_g);
    match unit {
        Unit::Kilogram if size >= pound => Scale::other("lb", pound, Steps::Tens(0.01)),
        _ if size >= ounce => Scale::other("oz", ounce, Steps::Tens(OUNCE_STEP)),
        _ => Scale::own(unit),
    }
}
