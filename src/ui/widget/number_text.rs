//! Reading a number as a maker writes it: `2.5`, `2,5`, `2½`, `1/2`, `1 1/2`, `2.5 l`, `10 cups`, `95.9F`.

use crate::design::Unit;
use crate::law::kitchen::{CUP, GALLON, METRIC_TABLESPOON, METRIC_TEASPOON};

/// A number that was understood.
#[derive(Clone, Debug, PartialEq)]
pub struct Understood {
    /// The value in the input's own unit.
    pub value: f64,
    /// Whether it was written without a unit.
    pub bare: bool,
    /// How it was understood, where that needs saying: "10 cups = 2.37 L".
    pub said: Option<String>,
}

/// A text that was not understood.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Misread {
    /// No number at its beginning.
    #[error("write a number, as in 2.5, 2,5, 2½ or 1/2")]
    NoNumber,
    /// A comma that may part decimals or thousands.
    #[error("“{given}” can mean {decimal} or {thousands}; write one of them")]
    TwoWays {
        /// What was written.
        given: String,
        /// Read with a decimal comma.
        decimal: String,
        /// Read with a comma between thousands.
        thousands: String,
    },
    /// A unit that does not belong here.
    #[error("“{given}” is no unit for this; leave it out{}", if wanted.is_empty() { String::new() } else { format!(" or write {wanted}") })]
    WrongUnit {
        /// What was written.
        given: String,
        /// What may be written.
        wanted: String,
    },
}

/// A unit that may be written, with what it does to a number.
type Spelled = (&'static str, fn(f64) -> f64);

/// Returns the spellings that are understood for a unit; the first is its own.
fn spellings(unit: Unit) -> Vec<Spelled> {
    let same: fn(f64) -> f64 = |x| x;
    let own: Vec<Spelled> = vec![(unit.symbol(), same)];
    let more: &[Spelled] = match unit {
        Unit::Litre => &[
            ("litre", |x| x),
            ("litres", |x| x),
            ("ml", |x| 0.001 * x),
            ("cup", |x| 0.001 * CUP.value * x),
            ("cups", |x| 0.001 * CUP.value * x),
            ("gal", |x| 0.001 * GALLON.value * x),
        ],
        Unit::Millilitre => &[
            ("l", |x| 1000.0 * x),
            ("cup", |x| CUP.value * x),
            ("cups", |x| CUP.value * x),
            ("tbsp", |x| METRIC_TABLESPOON.value * x),
            ("tsp", |x| METRIC_TEASPOON.value * x),
        ],
        Unit::Celsius => &[("c", |x| x), ("f", |x| (x - 32.0) / 1.8), ("°f", |x| (x - 32.0) / 1.8)],
        Unit::Hour => {
            &[("hours", |x| x), ("min", |x| x / 60.0), ("d", |x| 24.0 * x), ("days", |x| 24.0 * x), ("weeks", |x| 168.0 * x)]
        }
        Unit::Day => &[("day", |x| x), ("days", |x| x), ("weeks", |x| 7.0 * x), ("h", |x| x / 24.0)],
        // Labels of vinegar say per cent and mean this.
        Unit::GramIn100Millilitre => &[("%", |x| x)],
        Unit::Minute => &[("minutes", |x| x), ("h", |x| 60.0 * x)],
        Unit::Millimetre => &[("cm", |x| 10.0 * x), ("in", |x| 25.4 * x)],
        Unit::Watt => &[("kw", |x| 1000.0 * x)],
        Unit::Gram => &[("kg", |x| 1000.0 * x)],
        Unit::Kilogram => &[("g", |x| 0.001 * x)],
        _ => &[],
    };
    own.into_iter().chain(more.iter().copied()).collect()
}

/// Reads a number, with or without a unit, into the unit of an input.
///
/// # Errors
/// [`Misread`], which says what may be written.
///
/// # Example
/// ```
/// use vatsketch::{design::Unit, ui::read_number};
/// assert_eq!(read_number("2½", Unit::Litre)?.value, 2.5);
/// assert!((read_number("95.9F", Unit::Celsius)?.value - 35.5).abs() < 0.01);
/// assert!(read_number("10 cups", Unit::Celsius).is_err());
/// # Ok::<(), vatsketch::ui::Misread>(())
/// ```
pub fn read_number(text: &str, unit: Unit) -> Result<Understood, Misread> {
    let text = text.trim().replace('−', "-");
    let end = text.find(|letter: char| !(letter.is_ascii_digit() || ".,/-+½¼¾⅓⅔⅛ ".contains(letter))).unwrap_or(text.len());
    let (number, written) = text.split_at(end);
    let number = number.trim();
    let value = number_of(number).ok_or(Misread::NoNumber)?;
    if parts_thousands(number) {
        let (given, thousands) = (number.to_owned(), number.replace(',', ""));
        return Err(Misread::TwoWays { given, decimal: trimmed(value), thousands });
    }
    let written = written.trim();
    if written.is_empty() {
        return Ok(Understood { value, bare: true, said: None });
    }
    let known = spellings(unit);
    let wanted =
        || known.iter().map(|(spelling, _)| *spelling).filter(|spelling| !spelling.is_empty()).collect::<Vec<_>>().join(", ");
    let found = known.iter().find(|(spelling, _)| spelling.to_lowercase() == written.to_lowercase());
    let (spelling, convert) = found.ok_or_else(|| Misread::WrongUnit { given: written.to_owned(), wanted: wanted() })?;
    let own = spelling.to_lowercase() == unit.symbol().to_lowercase();
    let converted = convert(value);
    let said = (!own && (converted - value).abs() > 1e-12).then(|| format!("{text} = {} {}", trimmed(converted), unit.symbol()));
    Ok(Understood { value: converted, bare: false, said })
}

/// Returns whether a comma in a number may as well part thousands: one to three digits before it, not all of them zeros, three after it.
fn parts_thousands(number: &str) -> bool {
    number.split_once(',').is_some_and(|(before, after)| {
        let digits = |text: &str| text.chars().all(|digit| digit.is_ascii_digit());
        let group = (1..=3).contains(&before.len()) && !before.starts_with('0') && digits(before);
        group && after.len() == 3 && digits(after)
    })
}

/// Returns a number without a tail of zeros.
pub(in crate::ui) fn trimmed(value: f64) -> String {
    let text = format!("{value:.3}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// Reads `2.5`, `2,5`, `2½`, `½`, `1/2` and `1 1/2`.
fn number_of(text: &str) -> Option<f64> {
    let (sign, text) = text.strip_prefix('-').map_or((1.0, text), |rest| (-1.0, rest));
    let mut parts = text.split_whitespace();
    let first = part_of(parts.next()?)?;
    let sum = match parts.next() {
        None => first,
        Some(second) if second.contains('/') || !second.is_ascii() => first + part_of(second)?,
        Some(_) => return None,
    };
    (parts.next().is_none() && sum.is_finite()).then_some(sign * sum)
}

/// Fraction signs.
const SIGNS: [(char, f64); 6] = [('½', 0.5), ('¼', 0.25), ('¾', 0.75), ('⅓', 1.0 / 3.0), ('⅔', 2.0 / 3.0), ('⅛', 0.125)];

/// Reads one part: a decimal number, a fraction, or a number with a fraction sign behind it.
fn part_of(text: &str) -> Option<f64> {
    if let Some((above, below)) = text.split_once('/') {
        let (above, below): (f64, f64) = (above.parse().ok()?, below.parse().ok()?);
        return (below != 0.0).then_some(above / below);
    }
    for (sign, value) in SIGNS {
        if let Some(whole) = text.strip_suffix(sign) {
            return if whole.is_empty() { Some(value) } else { Some(whole.parse::<u32>().ok().map(f64::from)? + value) };
        }
    }
    text.replace(',', ".").parse().ok()
}
