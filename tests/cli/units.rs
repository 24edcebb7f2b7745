//! `--units`.

use super::run;

const FIRST: &str = "resources/examples/warm-cabinet.vat.ron";

#[test]
fn figures_are_printed_in_the_units_that_are_asked_for() {
    let metric = run(&["figures", FIRST]);
    assert_eq!(metric.data, run(&["figures", FIRST, "--units", "metric"]).data);
    let us = run(&["figures", FIRST, "--units", "us"]);
    assert_eq!(us.code, 0);
    for words in ["qt", "°F", " lb ", "39 °F or colder"] {
        assert!(us.data.contains(words), "{words} is missing in {}", us.data);
    }
    assert!(!us.data.contains("°C"), "{}", us.data);
    let listed = run(&["figures", FIRST, "--units", "fahrenheit,pounds"]);
    assert!(listed.data.contains("°F") && listed.data.contains(" L"), "{}", listed.data);
}

#[test]
fn json_stays_metric() {
    for command in ["figures", "shop"] {
        let plain = run(&[command, FIRST, "--json"]);
        assert_eq!(plain.data, run(&[command, FIRST, "--json", "--units", "us"]).data, "{command}");
    }
}

#[test]
fn a_week_has_the_clock_that_is_asked_for() {
    let week = ["--start", "2031-05-09T17:20", "--as-of", "2031-05-06T08:00", "--zone", "Etc/UTC", "--units", "12h"];
    let run = run(&[&["plan", FIRST][..], &week].concat());
    assert!(run.data.contains("Begin: Friday 9 May 2031, 5:20 pm"), "{}", run.data);
    assert!(!run.data.contains("17:20"), "{}", run.data);
}

#[test]
fn unknown_units_are_refused_with_those_that_are_known() {
    let run = run(&["figures", FIRST, "--units", "furlongs"]);
    assert_eq!(run.code, 2);
    assert!(run.words.contains("`furlongs`") && run.words.contains("fahrenheit"), "{}", run.words);
}
