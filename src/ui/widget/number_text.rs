//! Reading a number as a maker writes it: `2.5`, `2,5`, `2½`, `1/2`, `1 1/2`, `2.5 l`, `10 cups`, `95.9F`, `2 lb 4 oz`.

use crate::design::Unit;
use crate::law::legal_measures::{FAHRENHEIT_DEGREES, FAHRENHEIT_FREEZING};
use crate::ui::widget::spelling::{Worth, wanted, worth};
use crate::units::Units;

/// A number that was understood.
#[derive(Clone, Debug, PartialEq)]
pub struct Understood {
    /// The value in the input's own unit; of a number without a unit the number itself.
    pub value: f64,
    /// Whether it was written without a unit.
    pub bare: bool,
    /// How it was understood, where that needs saying: "10 cups = 2.366 L".
    pub said: Option<String>,
}

/// A text that was not understood.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Misread {
    /// No number at its beginning.
    #[error("write a number, as in 2.5, 2,5, 2½ or 1/2")]
    NoNumber,
    /// Several points or commas in one number.
    #[error("“{given}” has more than one decimal point or comma; write one number, as in 2.5 or 2,5")]
    SeveralPoints {
        /// What was written.
        given: String,
    },
    /// A number that is too large to be one.
    #[error("“{given}” is too large a number; write a smaller one")]
    TooLarge {
        /// What was written, or its beginning.
        given: String,
    },
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
    #[error("“{given}” cannot be used here; write {}", if wanted.is_empty() { "the number alone".to_owned() } else { format!("{wanted}, or the number alone") })]
    WrongUnit {
        /// What was written.
        given: String,
        /// What may be written.
        wanted: String,
    },
    /// A measure of which there are two.
    #[error("“{given}” can mean {us} (US) or {imperial} (imperial); write “US” or “imperial” before the unit")]
    TwoMeasures {
        /// What was written.
        given: String,
        /// Read as a measure of the United States.
        us: String,
        /// Read as an imperial measure.
        imperial: String,
    },
    /// Several numbers, and one of them without a unit.
    #[error("“{given}” has several numbers; write a unit behind each, as in 2 lb 4 oz, or one number alone")]
    UnitMissing {
        /// What was written.
        given: String,
    },
}

/// Reads a number, with or without a unit, or several that add up, into the unit of an input.
///
/// # Arguments
/// * `units`: those that are shown; they decide which of two measures of one name is meant, and how it is said
///
/// # Errors
/// [`Misread`], which says what may be written.
///
/// # Example
/// ```
/// use vatsketch::{design::Unit, ui::read_number, units::Units};
/// let read = |text, unit| read_number(text, unit, Units::METRIC);
/// assert_eq!(read("2½", Unit::Litre)?.value, 2.5);
/// assert!((read("95.9F", Unit::Celsius)?.value - 35.5).abs() < 0.01);
/// assert!((read("2 lb 4 oz", Unit::Gram)?.value - 1020.58).abs() < 0.01);
/// assert!(read("10 cups", Unit::Celsius).is_err() && read("2 pints", Unit::Litre).is_err());
/// assert!((read_number("2 pints", Unit::Litre, Units::IMPERIAL)?.value - 1.1365).abs() < 1e-4);
/// # Ok::<(), vatsketch::ui::Misread>(())
/// ```
pub fn read_number(text: &str, unit: Unit, units: Units) -> Result<Understood, Misread> {
    let given = text.trim();
    let plain = given.replace('−', "-");
    let pairs = pairs(&plain);
    let several = pairs.len() > 1;
    if several && pairs.iter().any(|(_, written)| written.is_empty()) {
        return Err(Misread::UnitMissing { given: given.to_owned() });
    }
    let mut value = 0.0;
    for (number, written) in &pairs {
        let own = number_of(number)?;
        if written.is_empty() {
            return Ok(Understood { value: own, bare: true, said: None });
        }
        let worth =
            worth(written, unit, units).ok_or_else(|| Misread::WrongUnit { given: (*written).to_owned(), wanted: wanted(unit) })?;
        value += match worth {
            Worth::Times(times) => own * times,
            Worth::Fahrenheit if several => return Err(Misread::SeveralPoints { given: given.to_owned() }),
            Worth::Fahrenheit => (own - FAHRENHEIT_FREEZING.value) / FAHRENHEIT_DEGREES.value,
            Worth::Either(us, imperial) => {
                let said = |times: f64| format!("{} {}", trimmed(own * times), unit.symbol());
                return Err(Misread::TwoMeasures { given: given.to_owned(), us: said(us), imperial: said(imperial) });
            }
        };
    }
    if pairs.is_empty() {
        return Err(Misread::NoNumber);
    }
    let as_shown = units.text(unit, value, SHOWN_DECIMALS).unwrap_or_else(|| format!("{} {}", trimmed(value), unit.symbol()));
    let said = (!alike(given, &as_shown)).then(|| format!("{given} = {as_shown}"));
    // A litre is a litre, however it is spelled.
    let own = units.text(unit, value, SHOWN_DECIMALS).is_none()
        && pairs.first().is_some_and(|(number, _)| number_of(number).is_ok_and(|number| (number - value).abs() < 1e-12));
    Ok(Understood { value, bare: false, said: said.filter(|_| !own) })
}

/// Decimals to which a value that was understood is said.
const SHOWN_DECIMALS: usize = 3;

/// Returns whether two texts are the same but for spaces, capitals and the sign of a degree.
fn alike(one: &str, other: &str) -> bool {
    let bare = |text: &str| text.to_lowercase().replace([' ', '°'], "");
    bare(one) == bare(other)
}

/// Parts a text into numbers, each with the unit behind it; nothing in front of the first number is passed over.
fn pairs(text: &str) -> Vec<(&str, &str)> {
    let of_number =
        |letter: char| letter.is_ascii_digit() || ".,/-+ ".contains(letter) || SIGNS.iter().any(|(sign, _)| *sign == letter);
    let begins_number = |letter: char| letter.is_ascii_digit() || SIGNS.iter().any(|(sign, _)| *sign == letter);
    let mut found = Vec::new();
    let mut rest = text;
    while !rest.trim().is_empty() {
        let end = rest.find(|letter| !of_number(letter)).unwrap_or(rest.len());
        let (number, after) = rest.split_at(end);
        // The hundred of “g/100 mL” belongs to the unit.
        let of_unit = after.find('/').map_or(0, |slash| slash + 1 + after.get(slash + 1..).map_or(0, digits_at_start));
        let tail = after.get(of_unit..).unwrap_or_default();
        let unit_end = of_unit + tail.find(begins_number).unwrap_or(tail.len());
        let (unit, next) = after.split_at(unit_end);
        found.push((number.trim(), unit.trim()));
        rest = next;
    }
    found
}

fn digits_at_start(text: &str) -> usize {
    text.find(|letter: char| !letter.is_ascii_digit()).unwrap_or(text.len())
}

/// Returns a number without a tail of zeros.
pub(in crate::ui) fn trimmed(value: f64) -> String {
    let text = format!("{value:.3}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// Reads `2.5`, `2,5`, `2½`, `½`, `1/2` and `1 1/2`.
fn number_of(text: &str) -> Result<f64, Misread> {
    let points = |part: &str| part.matches(['.', ',']).count();
    if text.split_whitespace().flat_map(|part| part.split('/')).any(|part| points(part) > 1) {
        return Err(Misread::SeveralPoints { given: text.to_owned() });
    }
    let (sign, bare) = text.strip_prefix('-').map_or((1.0, text), |rest| (-1.0, rest));
    let value = sum_of(bare).ok_or(Misread::NoNumber)?;
    if !value.is_finite() {
        return Err(Misread::TooLarge { given: format!("{}…", text.chars().take(SHOWN_LETTERS).collect::<String>()) });
    }
    if parts_thousands(bare) {
        let thousands = bare.replace(',', "");
        return Err(Misread::TwoWays { given: text.to_owned(), decimal: trimmed(sign * value), thousands });
    }
    Ok(sign * value)
}

/// Letters of a number that is too large that are said.
const SHOWN_LETTERS: usize = 12;

fn sum_of(text: &str) -> Option<f64> {
    let mut parts = text.split_whitespace();
    let first = part_of(parts.next()?)?;
    let sum = match parts.next() {
        None => first,
        Some(second) if second.contains('/') || !second.is_ascii() => first + part_of(second)?,
        Some(_) => return None,
    };
    parts.next().is_none().then_some(sum)
}

/// Returns whether a comma in a number may as well part thousands: one to three digits before it, not all of them zeros, three after it.
fn parts_thousands(number: &str) -> bool {
    number.split_once(',').is_some_and(|(before, after)| {
        let digits = |text: &str| text.chars().all(|digit| digit.is_ascii_digit());
        let group = (1..=3).contains(&before.len()) && !before.starts_with('0') && digits(before);
        group && after.len() == 3 && digits(after)
    })
}

/// Fraction signs.
const SIGNS: [(char, f64); 9] = [
    ('½', 0.5),
    ('¼', 0.25),
    ('¾', 0.75),
    ('⅓', 1.0 / 3.0),
    ('⅔', 2.0 / 3.0),
    ('⅛', 0.125),
    ('⅜', 0.375),
    ('⅝', 0.625),
    ('⅞', 0.875),
];

/// Reads one part: a decimal number, a fraction, or a number with a fraction sign behind it.
fn part_of(text: &str) -> Option<f64> {
    let number = |text: &str| text.replace(',', ".").parse::<f64>().ok();
    if let Some((above, below)) = text.split_once('/') {
        let (above, below) = (number(above)?, number(below)?);
        return (below != 0.0).then_some(above / below);
    }
    for (sign, value) in SIGNS {
        if let Some(whole) = text.strip_suffix(sign) {
            return if whole.is_empty() { Some(value) } else { Some(whole.parse::<u32>().ok().map(f64::from)? + value) };
        }
    }
    number(text)
}
