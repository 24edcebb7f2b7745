//! Amounts as a kitchen measures them.

use vatsketch::design::{Unit, Value, field};
use vatsketch::report::{Amount, Target};
use vatsketch::units::{LongTimes, Masses, Temperatures, Units, Volumes};

/// By the definitions: 6 L are 6.340 quarts, 25.36 cups or 10.559 imperial pints; a pound is 453.59 g.
#[test]
fn amounts_are_said_in_what_a_kitchen_measures() {
    let cups = Units { volumes: Volumes::UsCups, ..Units::METRIC };
    for (units, unit, value, decimals, words) in [
        (Units::US, Unit::Litre, 6.0, 2, Some("6 qt 11 fl oz")),
        (cups, Unit::Litre, 6.0, 2, Some("25 cups 3 fl oz")),
        (cups, Unit::Litre, 0.24, 2, Some("1 cup")),
        (Units::IMPERIAL, Unit::Litre, 6.0, 2, Some("10 pt 11¼ fl oz")),
        (Units::US, Unit::Millilitre, 38.0, 0, Some("1¼ fl oz")),
        (Units::US, Unit::Millilitre, 946.0, 0, Some("32 fl oz")),
        (Units::US, Unit::Millilitre, 2500.0, 0, Some("2 qt 20½ fl oz")),
        (Units::US, Unit::Millilitre, 7.0, 0, None),
        (Units::US, Unit::Gram, 1021.0, 0, Some("2 lb 4 oz")),
        (Units::US, Unit::Kilogram, 6.18, 2, Some("13 lb 10 oz")),
        (Units::US, Unit::Gram, 61.0, 0, Some("2.2 oz")),
        (Units::US, Unit::Gram, 20.0, 0, None),
        (Units::US, Unit::Celsius, 4.0, 0, Some("39 °F")),
        (Units::US, Unit::Celsius, -1.0, 1, Some("30 °F")),
        (Units::IMPERIAL, Unit::Celsius, 4.0, 0, None),
        (Units::US, Unit::Millimetre, 25.4, 0, None),
        (Units::METRIC, Unit::Litre, 6.0, 2, None),
    ] {
        assert_eq!(units.text(unit, value, decimals).as_deref(), words, "{value} {unit:?}");
    }
}

/// 31.9 fl oz of 32 are a quart, and 15.96 oz of 16 a pound: a rest is never a whole large unit.
#[test]
fn no_rest_is_a_whole_unit() {
    assert_eq!(Units::US.text(Unit::Litre, 1.891, 2).as_deref(), Some("2 qt"));
    assert_eq!(Units::US.text(Unit::Gram, 907.0, 0).as_deref(), Some("2 lb"));
    let days = Units { long_times: LongTimes::Days, ..Units::METRIC };
    assert_eq!(days.text(Unit::Hour, 71.8, 0).as_deref(), Some("3 d"));
}

#[test]
fn long_times_are_days_or_hours_as_chosen() {
    let days = Units { long_times: LongTimes::Days, ..Units::METRIC };
    let hours = Units { long_times: LongTimes::Hours, ..Units::METRIC };
    assert_eq!(days.text(Unit::Hour, 60.0, 0).as_deref(), Some("2 d 12 h"));
    assert_eq!((days.text(Unit::Hour, 30.0, 0), days.text(Unit::Day, 3.0, 0)), (None, None));
    assert_eq!(hours.text(Unit::Day, 3.0, 0).as_deref(), Some("72 h"));
    assert_eq!(hours.text(Unit::Hour, 60.0, 0), None);
}

/// A tolerance is a difference: ±0.5 °C is ±0.9 °F, of which a thermometer shows 1; ±1 °C is ±1.8 °F, which shows as 2.
#[test]
fn tolerances_are_converted_without_a_zero_point() {
    let shown = |value, unit, decimals, spread| {
        let target = Target::near("x", Amount::new(value, unit, decimals).shown_in(Units::US), spread);
        format!("{} {}", target.amount, target.tolerance().unwrap()).replace('\u{a0}', " ")
    };
    assert_eq!(shown(35.0, Unit::Celsius, 1, 0.5), "95 °F ± 1");
    assert_eq!(shown(38.0, Unit::Celsius, 1, 1.0), "100 °F ± 2");
    assert_eq!(shown(6.0, Unit::Litre, 2, 0.06), "6 qt 11 fl oz ± 2 fl oz");
    assert_eq!(shown(61.0, Unit::Gram, 0, 5.0), "2.2 oz ± 0.2");
    assert_eq!(shown(61.0, Unit::Gram, 0, 0.1), "2.2 oz ± 0.1", "no tolerance is less than a scale shows");
    let uneven = Target { within: Some((39.0, 54.0)), ..Target::exact("x", Amount::new(47.0, Unit::Gram, 0).shown_in(Units::US)) };
    assert_eq!(uneven.tolerance().unwrap().replace('\u{a0}', " "), "1.4–1.9 oz");
}

#[test]
fn a_column_has_one_unit_whatever_it_holds() {
    let scale = Units::US.scale(Unit::Kilogram, 6.18);
    assert_eq!((scale.symbol, scale.digits(6.18, 2).as_str(), scale.digits(0.1, 2).as_str()), ("lb", "13.62", "0.22"));
    let scale = Units::US.shelf_scale(Unit::Millilitre, 6000.0);
    assert_eq!((scale.symbol, scale.digits(946.35, 0).as_str()), ("qt", "1.00"));
    assert_eq!(Units::US.shelf_scale(Unit::Millilitre, 1.2).symbol, "mL");
}

#[test]
fn inputs_have_one_unit_over_their_whole_range() {
    let fahrenheit = Units { temperatures: Temperatures::Fahrenheit, masses: Masses::Pounds, ..Units::METRIC };
    let text = |units: Units, key, value| units.choice_text(field(key).unwrap(), Value::Number(value));
    assert_eq!(text(fahrenheit, "rennet_temperature_c", 32.5), "90.5 °F");
    assert_eq!(text(fahrenheit, "milk_l", 6.0), "6 L");
    assert_eq!(text(Units::IMPERIAL, "milk_l", 0.568_261_25), "1 pt");
    assert_eq!(text(Units::METRIC, "rennet_temperature_c", 32.5), "32.5 °C");
    let days = Units { long_times: LongTimes::Days, ..Units::METRIC };
    assert_eq!(text(days, "drying_h", 36.0), "1.5 d");
    assert_eq!(days.step_text(field("drying_h").unwrap(), 1.0), "0.04 d");
}
