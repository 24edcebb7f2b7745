//! Every output with figures or times says what it is, and carries the serious warnings of its design.

use super::{example, run};
use vatsketch::batch::batch;
use vatsketch::caution::{Caution, serious_warnings};
use vatsketch::design::Design;
use vatsketch::units::Units;
use vatsketch::words::{FROM_A_MODEL, caution_line, caution_words};

/// The commands that put out figures or times of one design.
const COMMANDS: [&[&str]; 10] = [
    &["figures", "FILE"],
    &["plan", "FILE", "--start", "2031-05-09T17:20", "--as-of", "2031-05-06T08:00"],
    &["plan", "FILE", "--as-of", "2031-05-06T08:00"],
    &["shop", "FILE"],
    &["solve", "FILE", "--for", "dried_cheese_g=60", "--by", "milk_l"],
    &["lift", "FILE"],
    &["scale", "FILE", "--milk", "7.5"],
    &["why", "FILE", "--figure", "centre_ph"],
    &["spread", "FILE", "--draws", "10"],
    &["sensitivity", "FILE", "--figure", "dried_cheese_g"],
];

fn first() -> Design {
    crate::example("warm-cabinet")
}

fn warned(design: &Design) -> Vec<Caution> {
    let serious = serious_warnings(&batch(design).unwrap());
    assert!(serious.len() > 1);
    serious
}

fn arguments(command: &[&'static str], more: &[&str]) -> Vec<String> {
    let file = example("warm-cabinet");
    command.iter().chain(more).map(|word| if *word == "FILE" { file.clone() } else { (*word).to_owned() }).collect()
}

fn run_all(command: &[&'static str], more: &[&str]) -> super::Run {
    let words = arguments(command, more);
    run(&words.iter().map(String::as_str).collect::<Vec<_>>())
}

#[test]
fn every_text_has_the_line_and_the_serious_warnings() {
    for command in COMMANDS {
        let text = run_all(command, &[]).data;
        assert!(text.contains(FROM_A_MODEL), "{command:?}: {text}");
        // These two warn of what they found.
        if !["solve", "scale"].contains(&command[0]) {
            for warning in warned(&first()) {
                assert!(text.contains(&caution_line(&warning, Units::METRIC)), "{command:?}: {}", warning.key);
            }
        }
    }
}

#[test]
fn every_json_has_the_line_and_the_serious_warnings() {
    for command in COMMANDS {
        let json = run_all(command, &["--json"]).json();
        assert_eq!(json["notice"], FROM_A_MODEL, "{command:?}");
        let listed = json["serious_warnings"].as_array().unwrap();
        assert!(listed.iter().all(|warning| warning["severity"] == "stop"));
        if !["solve", "scale"].contains(&command[0]) {
            let keys: Vec<&str> = listed.iter().map(|warning| warning["key"].as_str().unwrap()).collect();
            assert_eq!(keys, warned(&first()).iter().map(|warning| warning.key).collect::<Vec<_>>(), "{command:?}");
        }
    }
}

/// Warm keeping is a serious warning above 4 °C (Food Code, time and temperature control); the search goes there.
#[test]
fn solve_warns_of_the_design_that_it_found() {
    let set = ["--set", "keeping_temperature_c=4", "--set", "draining_temperature_c=9"];
    let goal = ["solve", "FILE", "--for", "drip_stops_h=2", "--by", "draining_temperature_c", "--json"];
    let json = run_all(&goal, &set).json();
    let mut found = first();
    found.set("keeping_temperature_c", vatsketch::design::Value::Number(4.0)).unwrap();
    found.set("draining_temperature_c", vatsketch::design::Value::Number(json["value"].as_f64().unwrap())).unwrap();
    let keys: Vec<&str> =
        json["serious_warnings"].as_array().unwrap().iter().map(|warning| warning["key"].as_str().unwrap()).collect();
    assert_eq!(keys, warned(&found).iter().map(|warning| warning.key).collect::<Vec<_>>());
    let mut cold = first();
    cold.set("draining_temperature_c", vatsketch::design::Value::Number(9.0)).unwrap();
    assert_ne!(keys, warned(&cold).iter().map(|warning| warning.key).collect::<Vec<_>>(), "warm draining is new");
}

#[test]
fn a_comparison_has_the_serious_warnings_that_both_share() {
    let both = ["compare", "FILE", "FILE"];
    let text = run_all(&both, &[]).data;
    let json = run_all(&both, &["--json"]).json();
    assert!(text.contains(FROM_A_MODEL) && text.contains("Serious warnings of both A and B"), "{text}");
    assert_eq!(json["notice"], FROM_A_MODEL);
    for warning in warned(&first()) {
        assert!(text.contains(&caution_line(&warning, Units::METRIC)), "{}", warning.key);
        let listed = json["serious_warnings"].as_array().unwrap();
        assert!(listed.iter().any(|row| row["key"] == warning.key && row["what"] == caution_words(&warning, Units::METRIC).what));
    }
}
