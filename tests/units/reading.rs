//! The words by which units are chosen.

use vatsketch::units::{Clock, LongTimes, Masses, Temperatures, UNIT_WORDS, Units, Volumes};

#[test]
fn every_word_in_the_help_is_understood_and_changes_something() {
    let known = [
        "metric",
        "us",
        "imperial",
        "celsius",
        "fahrenheit",
        "litres",
        "cups",
        "quarts",
        "pints",
        "kilograms",
        "pounds",
        "days",
        "hours",
        "24h",
        "12h",
    ];
    let other = Units {
        temperatures: Temperatures::Fahrenheit,
        volumes: Volumes::UsCups,
        masses: Masses::Pounds,
        long_times: LongTimes::Days,
        clock: Clock::Hours12,
    };
    for word in known {
        assert!(UNIT_WORDS.contains(word), "{word} is not in the help");
        let units: Units = word.parse().unwrap();
        // Laid over something else, each of them takes its own place.
        let over: Units = format!("fahrenheit,cups,pounds,days,12h,{word}").parse().unwrap();
        assert!(units != other && (over != other || ["fahrenheit", "cups", "pounds", "days", "12h"].contains(&word)), "{word}");
    }
}

#[test]
fn an_unknown_word_is_named_with_all_that_are_known() {
    let refused = "us,furlongs".parse::<Units>().unwrap_err().to_string();
    assert!(refused.contains("`furlongs`") && refused.contains("fahrenheit"), "{refused}");
    assert!("".parse::<Units>().is_err());
    assert_eq!(" Fahrenheit , POUNDS ".parse::<Units>().unwrap().masses, Masses::Pounds);
}
