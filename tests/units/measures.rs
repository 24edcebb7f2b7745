//! The measures against their legal definitions, and the way there and back.

use proptest::prelude::*;
use vatsketch::design::Unit;
use vatsketch::law::legal_measures::{
    CUP_ML, FAHRENHEIT_DEGREES, FAHRENHEIT_FREEZING, FLUID_OUNCE_ML, GALLON, IMPERIAL_FLUID_OUNCE_ML, IMPERIAL_GALLON,
    IMPERIAL_PINT_ML, OUNCE_G, PINT_ML, POUND, QUART_ML,
};
use vatsketch::units::{Clock, LongTimes, Masses, Temperatures, Units, Volumes};

fn near(got: f64, wanted: f64) {
    assert!((got / wanted - 1.0).abs() < 1e-12, "{got} for {wanted}");
}

/// NIST Handbook 44, appendix C: a gallon is 231 cubic inches of 2.54 cm, exactly; it has 4 quarts, 8 pints, 16 cups, 128 fluid ounces.
#[test]
fn united_states_measures_are_parts_of_the_gallon() {
    let gallon_ml = 231.0 * 2.54_f64.powi(3);
    near(GALLON.value, gallon_ml);
    for (measure_ml, parts) in [(QUART_ML, 4.0), (PINT_ML, 8.0), (CUP_ML, 16.0), (FLUID_OUNCE_ML, 128.0)] {
        near(measure_ml * parts, gallon_ml);
    }
}

/// Weights and Measures Act 1985, schedule 1: the gallon of 4.546 09 cubic decimetres has 8 pints of 20 fluid ounces; the pound of
/// 0.453 592 37 kilogram has 16 ounces.
#[test]
fn imperial_measures_are_parts_of_the_gallon_and_the_pound() {
    near(IMPERIAL_GALLON.value, 4546.09);
    near(IMPERIAL_PINT_ML * 8.0, 4546.09);
    near(IMPERIAL_FLUID_OUNCE_ML * 160.0, 4546.09);
    near(POUND.value, 453.592_37);
    near(OUNCE_G, 28.349_523_125);
}

/// Two fixed points that every thermometer shows, from memory: water freezes at 32 °F and boils at 212 °F.
#[test]
fn fahrenheit_has_its_fixed_points() {
    let units = Units { temperatures: Temperatures::Fahrenheit, ..Units::METRIC };
    let scale = units.scale(Unit::Celsius, 0.0);
    assert_eq!((scale.shown(0.0), scale.shown(100.0)), (32.0, 212.0));
    assert_eq!((FAHRENHEIT_FREEZING.value, 100.0 * FAHRENHEIT_DEGREES.value), (32.0, 180.0));
    assert!((scale.shown(-40.0) + 40.0).abs() < 1e-12, "the two scales meet at 40 below zero");
}

fn any_units() -> impl Strategy<Value = Units> {
    let temperatures = prop_oneof![Just(Temperatures::Celsius), Just(Temperatures::Fahrenheit)];
    let volumes = prop_oneof![Just(Volumes::Litres), Just(Volumes::UsCups), Just(Volumes::UsQuarts), Just(Volumes::ImperialPints)];
    let masses = prop_oneof![Just(Masses::Kilograms), Just(Masses::Pounds)];
    let long_times = prop_oneof![Just(LongTimes::Usual), Just(LongTimes::Days), Just(LongTimes::Hours)];
    let clock = prop_oneof![Just(Clock::Hours24), Just(Clock::Hours12)];
    (temperatures, volumes, masses, long_times, clock).prop_map(|(temperatures, volumes, masses, long_times, clock)| Units {
        temperatures,
        volumes,
        masses,
        long_times,
        clock,
    })
}

const UNITS: [Unit; 8] =
    [Unit::Celsius, Unit::Litre, Unit::Millilitre, Unit::Kilogram, Unit::Gram, Unit::Hour, Unit::Day, Unit::Millimetre];

proptest! {
    #[test]
    fn what_is_shown_comes_back(units in any_units(), unit in prop::sample::select(UNITS.to_vec()), value in 0.001..5000.0) {
        let scale = units.scale(unit, value);
        prop_assert!((scale.kept(scale.shown(value)) / value - 1.0).abs() < 1e-9);
        // A difference has no zero point.
        prop_assert!((scale.apart(value) - (scale.shown(2.0 * value) - scale.shown(value))).abs() < 1e-9 * value.max(1.0) * 2000.0);
    }

    /// The number that is read off the words is the value, to the step that it may be rounded to.
    #[test]
    fn the_words_of_an_amount_say_its_value(units in any_units(), value in 0.05..40.0) {
        let words = units.text(Unit::Litre, value, 2);
        if let Some(words) = words {
            let read = vatsketch_read(&words, units);
            // A hundredth of a litre, or a quarter of a fluid ounce, whichever is coarser; half of it to either side.
            prop_assert!((read - value).abs() <= 0.0075, "{words} for {value}");
        }
    }
}

/// Reads an amount of a volume back, by the definitions.
fn vatsketch_read(words: &str, units: Units) -> f64 {
    let (large_ml, ounce_ml) = match units.volumes {
        Volumes::Litres => (1000.0, 1.0),
        Volumes::UsCups => (231.0 * 2.54_f64.powi(3) / 16.0, 231.0 * 2.54_f64.powi(3) / 128.0),
        Volumes::UsQuarts => (231.0 * 2.54_f64.powi(3) / 4.0, 231.0 * 2.54_f64.powi(3) / 128.0),
        Volumes::ImperialPints => (4546.09 / 8.0, 4546.09 / 160.0),
    };
    let mut sum_ml = 0.0;
    let mut number = 0.0;
    for word in words.split(' ') {
        match word {
            "qt" | "pt" | "cup" | "cups" => sum_ml += number * large_ml,
            "fl" => sum_ml += number * ounce_ml,
            "oz" => {}
            digits => {
                let parts = [("¼", 0.25), ("½", 0.5), ("¾", 0.75)];
                let part = parts.iter().find(|(sign, _)| digits.ends_with(sign)).map_or(0.0, |(_, part)| *part);
                let whole = digits.trim_end_matches(['¼', '½', '¾']);
                number = part + if whole.is_empty() { 0.0 } else { whole.parse::<f64>().unwrap() };
            }
        }
    }
    0.001 * sum_ml
}
