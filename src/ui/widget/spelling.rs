//! The units that a maker may write behind a number, and what each is worth.

use crate::design::Unit;
use crate::law::kitchen::{METRIC_TABLESPOON, METRIC_TEASPOON};
use crate::law::legal_measures::{
    CUP_ML, FLUID_OUNCE_ML, GALLON, IMPERIAL_FLUID_OUNCE_ML, IMPERIAL_GALLON, IMPERIAL_PINT_ML, IMPERIAL_QUART_ML, OUNCE_G,
    PINT_ML, POUND, QUART_ML,
};
use crate::units::{Units, Volumes};

/// Millimetres in an inch, by definition.
const INCH_MM: f64 = 25.4;

/// What is meant by a unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Worth {
    /// So much of the input's own unit.
    Times(f64),
    /// Degrees Fahrenheit.
    Fahrenheit,
    /// A measure of which there are two: that of the United States, and the imperial one.
    Either(f64, f64),
}

/// Words for a unit, the first being the one to show, and what they are worth.
pub(super) type Spelled = (&'static [&'static str], Worth);

use Worth::{Either, Fahrenheit, Times};

/// Volumes, in millilitres.
const VOLUMES: [Spelled; 9] = [
    (&["L", "l", "litre", "litres", "liter", "liters"], Times(1000.0)),
    (&["mL", "ml", "millilitre", "millilitres", "milliliter", "milliliters"], Times(1.0)),
    (&["cups", "cup"], Times(CUP_ML)),
    (&["gal", "gallon", "gallons"], Either(GALLON.value, IMPERIAL_GALLON.value)),
    (&["qt", "quart", "quarts"], Either(QUART_ML, IMPERIAL_QUART_ML)),
    (&["pt", "pint", "pints"], Either(PINT_ML, IMPERIAL_PINT_ML)),
    (&["fl oz", "fluid ounce", "fluid ounces"], Either(FLUID_OUNCE_ML, IMPERIAL_FLUID_OUNCE_ML)),
    (&["tbsp", "tablespoon", "tablespoons"], Times(METRIC_TABLESPOON.value)),
    (&["tsp", "teaspoon", "teaspoons"], Times(METRIC_TEASPOON.value)),
];

/// Masses, in grams.
const MASSES: [Spelled; 4] = [
    (&["kg", "kilo", "kilos", "kilogram", "kilograms"], Times(1000.0)),
    (&["g", "gram", "grams"], Times(1.0)),
    (&["lb", "lbs", "pound", "pounds"], Times(POUND.value)),
    (&["oz", "ounce", "ounces"], Times(OUNCE_G)),
];

/// Temperatures.
const TEMPERATURES: [Spelled; 2] = [(&["°C", "c", "celsius"], Times(1.0)), (&["°F", "f", "fahrenheit"], Fahrenheit)];

/// Times, in minutes.
const TIMES: [Spelled; 4] = [
    (&["h", "hour", "hours"], Times(60.0)),
    (&["min", "minute", "minutes"], Times(1.0)),
    (&["d", "day", "days"], Times(1440.0)),
    (&["weeks", "week"], Times(10_080.0)),
];

/// Lengths, in millimetres.
const LENGTHS: [Spelled; 3] = [(&["mm"], Times(1.0)), (&["cm"], Times(10.0)), (&["in", "inch", "inches"], Times(INCH_MM))];

/// Which of two measures of one name is meant, where that is said.
const WHOSE: [(&str, bool); 4] = [("us ", true), ("imperial ", false), ("imp ", false), ("uk ", false)];

/// Returns the units that may be written for an input, and of what size its own unit is in that list.
fn known(unit: Unit) -> (&'static [Spelled], f64) {
    match unit {
        Unit::Litre => (&VOLUMES, 1000.0),
        Unit::Millilitre => (&VOLUMES, 1.0),
        Unit::Kilogram => (&MASSES, 1000.0),
        Unit::Gram => (&MASSES, 1.0),
        Unit::Celsius => (&TEMPERATURES, 1.0),
        Unit::Minute => (&TIMES, 1.0),
        Unit::Hour => (&TIMES, 60.0),
        Unit::Day => (&TIMES, 1440.0),
        Unit::Millimetre => (&LENGTHS, 1.0),
        Unit::Watt => (&[(&["W"], Times(1.0)), (&["kW"], Times(1000.0))], 1.0),
        // Labels of vinegar say per cent and mean this.
        Unit::GramPerLitre => (&[(&["g/L"], Times(1.0))], 1.0),
        Unit::MillionPerGram => (&[(&["million/g", "M/g"], Times(1.0))], 1.0),
        Unit::GramIn100Millilitre => (&[(&["g/100 mL"], Times(1.0)), (&["%"], Times(1.0))], 1.0),
        _ => (&[], 1.0),
    }
}

/// Returns the spelling that a maker may use, the own unit first; nothing where only a bare number makes sense.
pub(super) fn wanted(unit: Unit) -> String {
    let (spellings, _) = known(unit);
    let others = spellings.iter().filter_map(|(words, _)| words.first().copied()).filter(|word| *word != unit.symbol());
    std::iter::once(unit.symbol()).filter(|symbol| !symbol.is_empty()).chain(others).collect::<Vec<_>>().join(", ")
}

/// Returns what a written unit is worth in an input's own unit; nothing for one that does not belong there.
///
/// # Arguments
/// * `units`: those that are shown: a pint is an imperial one where those are
pub(super) fn worth(written: &str, unit: Unit, units: Units) -> Option<Worth> {
    let written = written.trim().trim_end_matches('.').to_lowercase().replace(". ", " ").replace("° ", "°");
    let (whose, word) = WHOSE
        .iter()
        .find_map(|(prefix, of_us)| Some((Some(*of_us), written.strip_prefix(prefix)?)))
        .unwrap_or((None, written.as_str()));
    if word == unit.symbol().to_lowercase() && !word.is_empty() {
        return Some(Times(1.0)).filter(|_| whose.is_none());
    }
    let (spellings, own) = known(unit);
    let (_, worth) = spellings.iter().find(|(words, _)| words.iter().any(|known| known.to_lowercase() == word))?;
    let of_us = whose.or(match units.volumes {
        Volumes::Litres => None,
        Volumes::UsCups | Volumes::UsQuarts => Some(true),
        Volumes::ImperialPints => Some(false),
    });
    Some(match (*worth, of_us) {
        (Either(us, _), Some(true)) => Times(us / own),
        (Either(_, imperial), Some(false)) => Times(imperial / own),
        (Either(us, imperial), None) => Either(us / own, imperial / own),
        // Only what there are two of is said to be the one or the other; the cup is none of the imperial ones.
        (Times(_), _) if whose == Some(false) => return None,
        (Times(times), _) => Times(times / own),
        (Fahrenheit, _) => Fahrenheit,
    })
}
