//! Rules as numbers, as the chapter quotes them.

use vatsketch::law::growth::{
    AIRLESS_DAYS, AIRLESS_PH, AIRLESS_WATER, LISTERIA_ALLOWED, LISTERIA_GREW, LISTERIA_STOPS_PH, LISTERIA_STOPS_PH_TOO,
    LISTERIA_STOPS_WATER, LISTERIA_STOPS_WATER_TOO, SOUR_BEFORE_DRYING_PH, SOURED_IN_TIME_H, SOURED_IN_TIME_PH, STAPHYLOCOCCI_GOOD,
    STAPHYLOCOCCI_MOST, STAPHYLOCOCCI_TEST, TOXIN_DENSITY, TOXIN_LIMITS,
};

/// Regulation (EC) 2073/2005, note 8 and criteria 2.2.3 to 2.2.7, as quoted; J. Food Prot. 69:2161; table 7.8 of Adams and Moss.
#[test]
fn the_numbers_are_those_of_the_rules() {
    let pairs = [
        (LISTERIA_GREW, 0.5),
        (LISTERIA_STOPS_PH, 4.4),
        (LISTERIA_STOPS_WATER, 0.92),
        (LISTERIA_STOPS_PH_TOO, 5.0),
        (LISTERIA_STOPS_WATER_TOO, 0.94),
        (LISTERIA_ALLOWED, 100.0),
        (STAPHYLOCOCCI_GOOD, 10.0),
        (STAPHYLOCOCCI_MOST, 100.0),
        (SOURED_IN_TIME_PH, 5.8),
        (SOURED_IN_TIME_H, 6.0),
        (SOUR_BEFORE_DRYING_PH, 4.8),
        (AIRLESS_PH, 5.0),
        (AIRLESS_WATER, 0.97),
        (AIRLESS_DAYS, 10.0),
    ];
    for (record, value) in pairs {
        assert!((record.value - value).abs() < 1e-12, "{}", record.name);
    }
    assert_eq!(TOXIN_LIMITS.coefficients, [10.0, 4.8, 0.86]);
    // The density at which toxin was found is the one above which it is looked for.
    assert!((STAPHYLOCOCCI_TEST.value.log10() - TOXIN_DENSITY.value).abs() < 1e-12);
}

/// The numbers that stand in a name are the values.
#[test]
fn a_name_with_a_number_has_the_number_of_its_twin() {
    for (record, twin) in [(LISTERIA_STOPS_PH_TOO, LISTERIA_STOPS_WATER_TOO), (LISTERIA_STOPS_WATER_TOO, LISTERIA_STOPS_PH_TOO)] {
        let number = if twin.unit == "pH" { format!("{:.1}", twin.value) } else { format!("{:.2}", twin.value) };
        assert!(record.name.contains(&number), "{}", record.name);
    }
}
