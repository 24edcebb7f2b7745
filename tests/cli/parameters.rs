//! Constants that are set from outside, and trial runs that can be followed one by one.

use super::{example, run};
use vatsketch::analysis::draws;
use vatsketch::batch::batch_given;
use vatsketch::figure::{Reading, figures};
use vatsketch::process::{Given, UncertainParameter, UncertainParameters};

#[test]
fn a_constant_is_set_in_the_unit_of_its_record() {
    let file = example("warm-cabinet");
    let json =
        run(&["figures", &file, "--json", "--parameter", "moisture_diffusivity=3e-10", "--parameter", "skim_fat=0,4"]).json();
    assert_eq!(json["parameters"]["moisture_diffusivity"], 3e-10);
    assert_eq!(json["parameters"]["skim_fat"], 0.4);
    // The record says 1.5e-10 m²/s and 0.08 %.
    let parameters = UncertainParameters { moisture_diffusivity: 2.0, skim_fat: 5.0, ..UncertainParameters::default() };
    let batch = batch_given(&crate::example("warm-cabinet"), &Given { parameters, ..Given::default() }).unwrap();
    let mut compared = 0;
    for figure in figures(&batch) {
        if let Reading::Number(number) = figure.reading {
            let told = json[figure.stage.key()][figure.key].as_f64().unwrap();
            assert!((told - number).abs() <= 1e-9 * number.abs(), "{}: {told} and {number}", figure.key);
            compared += 1;
        }
    }
    assert!(compared > 50);
    let words = run(&["figures", &file, "--parameter", "moisture_diffusivity=3e-10"]).data;
    assert!(words.contains("Calculated with moisture_diffusivity = 3e-10 m²/s instead of 1.5e-10 m²/s."), "{words}");
    assert!(!run(&["figures", &file]).data.contains("Calculated with"));
}

#[test]
fn every_constant_is_listed_and_can_be_set_to_its_ends() {
    let file = example("first-vat");
    let listed = run(&["inputs", "--json"]).json();
    let listed = listed["parameters"].as_array().unwrap();
    assert_eq!(listed.len(), UncertainParameter::all().count());
    let words = run(&["inputs"]).data;
    let mut arguments = vec!["figures".to_owned(), file, "--json".to_owned()];
    for row in listed {
        let key = row["key"].as_str().unwrap();
        assert!(words.contains(&format!("  {key} ")), "{key}");
        // Those that another record has in a design that sours stay as they are.
        if !["culture_cells", "culture_rate", "fat_kept"].contains(&key) {
            arguments.extend(["--parameter".to_owned(), format!("{key}={}", row["most"])]);
        }
    }
    let arguments: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let set = run(&arguments);
    assert!(set.code < 2, "{}", set.words);
}

#[test]
fn what_has_no_effect_or_is_no_number_in_the_range_is_refused() {
    let file = example("first-vat");
    for (arguments, said) in [
        (vec!["figures", &file, "--parameter", "moisture_diffusivty=1e-10"], "moisture_diffusivity"),
        (vec!["figures", &file, "--parameter", "moisture_diffusivity=1"], "must be from"),
        (vec!["figures", &file, "--parameter", "acid_pk=strong"], "is not a number"),
        (vec!["stage", "drying", "--parameter", "acid_pk=4.7"], "no effect"),
        (vec!["stage", "drying", "--parameter", "warmth_of_air=305"], "no effect"),
        (vec!["stage", "germs", "--parameter", "listeria_rate=1"], "no effect"),
        (vec!["stage", "vat", "--fine"], "no effect"),
        (vec!["spread", &file, "--trials"], "--json"),
    ] {
        let refused = run(&arguments);
        assert_eq!(refused.code, 2, "{arguments:?}: {}", refused.data);
        assert!(refused.words.contains(said), "{arguments:?}: {}", refused.words);
    }
}

/// Twice the diffusivity is half the time (Crank 1975: only D t/L² counts) where nothing else bounds the soak; the film does a little.
#[test]
fn a_constant_of_a_stage_alone_counts_there() {
    let ph = |hours: &str, obstruction: &str| {
        let set = ["stage", "pickling", "--fine", "--json", "--set", hours, "--parameter", obstruction];
        run(&set).json()["points"][0]["slurry_ph"].as_f64().unwrap()
    };
    let (slow, fast) = (ph("report_h=48", "acid_obstruction=0.33"), ph("report_h=24", "acid_obstruction=0.66"));
    assert!((slow - fast).abs() < 0.02, "{slow} and {fast}");
    assert!(ph("report_h=24", "acid_obstruction=0.33") > fast + 0.1);
    let film = |film: &str| {
        run(&["stage", "pickling", "--json", "--set", "report_h=6", "--parameter", film]).json()["points"][0]["slurry_ph"]
            .as_f64()
            .unwrap()
    };
    assert!(film("acid_film=2e-7") > film("acid_film=2e-6") + 0.02);
    let moisture = |radiation: &str| {
        run(&["stage", "drying", "--json", "--set", "report_h=2", "--parameter", radiation]).json()["points"][0]["moisture_percent"]
            .as_f64()
            .unwrap()
    };
    assert!(moisture("radiation=6.5") < moisture("radiation=4"));
}

/// A trial run that is told gives, set from outside, the figures of that draw.
#[test]
fn each_trial_run_can_be_followed_from_outside() {
    let file = example("small-vat");
    let json = run(&["spread", &file, "--draws", "10", "--json", "--trials"]).json();
    let trials = json["trials"].as_array().unwrap();
    assert_eq!(trials.len(), 10);
    let design = crate::example("small-vat");
    let drawn = draws(&design, 10)[3];
    let set = trials[3].as_object().unwrap().iter().map(|(key, value)| format!("{key}={value}"));
    let mut arguments = vec!["figures".to_owned(), file, "--json".to_owned()];
    arguments.extend(set.flat_map(|set| ["--parameter".to_owned(), set]));
    let arguments: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let told = run(&arguments).json();
    let batch = batch_given(&design, &Given { parameters: drawn, ..Given::default() }).unwrap();
    for figure in figures(&batch) {
        if let Reading::Number(number) = figure.reading {
            let told = told[figure.stage.key()][figure.key].as_f64().unwrap();
            assert!((told - number).abs() <= 1e-6 * number.abs().max(1e-9), "{}: {told} and {number}", figure.key);
        }
    }
    assert!(run(&["spread", arguments[1], "--draws", "10", "--json"]).json().get("trials").is_none());
}
