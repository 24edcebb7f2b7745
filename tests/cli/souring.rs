//! Souring alone, by running the program, against the table of the independent program.

use super::{run, stage};

fn number(value: &serde_json::Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("{value} is no number"))
}

/// Rows S33 and S41 to S43 of tests/reference/souring.csv, within a thousandth.
#[test]
fn a_culture_sours_milk_and_curd_as_in_the_table() {
    let milk = stage("souring", &["culture=mesophilic", "cells_per_g=1e7", "temperature_c=21", "hours=30"]);
    assert_eq!(milk.code, 0, "{}", milk.words);
    assert!((number(&milk.json()["hours_to"]["5.2"]) / 9.359 - 1.0).abs() < 1e-3);
    let curd = stage("souring", &["cells_per_g=6.5e7", "hours=48", "matter=curd", "culture=mesophilic"]).json();
    for (ph, hours) in [("5.5", 7.713), ("5.2", 11.151), ("5.0", 15.837), ("4.6", 34.303)] {
        assert!((number(&curd["hours_to"][ph]) / hours - 1.0).abs() < 1e-3, "pH {ph}: {}", curd["hours_to"][ph]);
    }
    let last = curd["points"].as_array().unwrap().last().unwrap().clone();
    assert_eq!((&last["ph"], number(&last["at_h"])), (&curd["ph"], 48.0));
    assert!(curd.get("acid").is_none());
}

/// Rows S12, S15, S22, S25 and S27.
#[test]
fn acids_bring_it_to_the_ph_of_the_table() {
    let citric = stage("souring", &["wanted_ph=5.8", "acid=citric"]).json();
    assert!((number(&citric["acid"]["mmol_per_kg"]) / 7.289 - 1.0).abs() < 1e-3);
    assert!(citric["acid"]["vinegar_ml_per_kg"].is_null() && citric["acid"]["acid"] == "citric");
    let acetic = &stage("souring", &["wanted_ph=5.3", "acid=acetic"]).json()["acid"];
    assert!((number(&acetic["mmol_per_kg"]) / 38.014 - 1.0).abs() < 1e-3);
    // 5 g in 100 mL: 20 mL for each gram.
    assert!((number(&acetic["vinegar_ml_per_kg"]) - 20.0 * number(&acetic["g_per_kg"])).abs() < 1e-9);
    let rich = ["protein_percent=3.95", "water_percent=86", "start_ph=6.5", "lactic_mol_per_kg=0.0577"];
    assert!((number(&stage("souring", &rich).json()["ph"]) - 4.857).abs() < 1e-3);
    let gdl = stage("souring", &["gdl_g_per_kg=13", "temperature_c=30", "report_h=2,24"]).json();
    assert!((number(&gdl["points"][0]["ph"]) - 4.760).abs() < 1e-3 && (number(&gdl["ph"]) - 4.524).abs() < 1e-3, "{gdl}");
    assert_eq!(gdl["points"].as_array().unwrap().len(), 2);
    assert!(gdl["hours_to"]["4.6"].is_number());
}

/// An acid in g and in mol is the same; what is there already is not wanted again.
#[test]
fn both_units_say_the_same_and_only_one_may_be_given() {
    let grams = stage("souring", &["citric_g_per_kg=1.9212"]).json();
    let mol = stage("souring", &["citric_mol_per_kg=0.01"]).json();
    assert!((number(&grams["ph"]) - number(&mol["ph"])).abs() < 1e-9);
    let beside = stage("souring", &["citric_g_per_kg=1.4", "wanted_ph=6", "acid=citric"]).json();
    assert_eq!(number(&beside["acid"]["g_per_kg"]), 0.0);
    let twice = stage("souring", &["citric_g_per_kg=1", "citric_mol_per_kg=0.01"]);
    assert!(twice.code == 2 && twice.words.contains("citric_g_per_kg and citric_mol_per_kg"), "{}", twice.words);
}

#[test]
fn what_is_wrong_names_the_key_and_the_range_and_guesses() {
    for (set, said) in [
        (vec!["temperature_c=90"], "(`temperature_c`) must be from 0 to 60 °C, but 90 was given"),
        (vec!["cells_per_g=many"], "(`cells_per_g`) must be a number from 0 to 10000000000"),
        (vec!["cells_per_g=NaN"], "is not a number"),
        (vec!["culture=mesophilc"], "did you mean `mesophilic`?"),
        (vec!["temprature_c=20"], "did you mean `temperature_c`?"),
        (vec!["matter=cheese"], "must be one of milk, curd"),
        (vec!["acid=citric"], "set wanted_ph too"),
        (vec!["matter=curd", "water_percent=90"], "add up to 109.0 %"),
        (vec!["hours=6", "report_h=2,12"], "report_h goes to 12 h, but hours ends at 6 h"),
        (vec!["report_h=6,2"], "report_h must be hours"),
        (vec!["culture"], "KEY=VALUE"),
    ] {
        let refused = stage("souring", &set);
        assert_eq!((refused.code, refused.data.as_str()), (2, ""), "{set:?}");
        assert!(refused.words.contains(said), "{set:?}: {}", refused.words);
    }
    let refused = run(&["stage", "sourng"]);
    assert!(refused.code == 2 && refused.words.contains("did you mean `souring`?"), "{}", refused.words);
}

#[test]
fn as_text_it_is_a_short_table_and_says_to_measure() {
    let set = ["--set", "culture=thermophilic", "--set", "temperature_c=46", "--set", "hours=12", "--units", "fahrenheit"];
    let told = run(&[&["stage", "souring"][..], &set].concat());
    assert_eq!(told.code, 0, "{}", told.words);
    assert!(told.data.contains("lactic acid, mmol/kg") && told.data.contains("  pH 5.2: "), "{}", told.data);
    assert!(
        told.words.contains("pH meter") && told.words.contains("are assumed") && told.words.contains("113 °F"),
        "{}",
        told.words
    );
    let nothing = run(&["stage", "souring"]);
    assert!(nothing.data.contains("pH 6.0: not within 24 h") && nothing.words.contains("Nothing sours it"), "{}", nothing.words);
    let cold = run(&["stage", "souring", "--set", "citric_g_per_kg=5", "--set", "temperature_c=8"]);
    let warm = run(&["stage", "souring", "--set", "citric_g_per_kg=5", "--set", "temperature_c=21"]);
    assert!(warm.words.contains("where it falls") && !cold.words.contains("where it falls"), "{}{}", warm.words, cold.words);
}

#[test]
fn every_input_of_the_souring_is_listed() {
    let listed = run(&["inputs"]).data;
    let json = run(&["inputs", "--json"]).json();
    let rows = json["described_souring"].as_array().unwrap();
    assert_eq!(rows.len(), 22);
    for row in rows {
        let key = row["key"].as_str().unwrap();
        assert!(listed.contains(key) && row["stage"] == "souring", "{row}");
        let value = row["default"].as_str().map(str::to_owned).or_else(|| row["default"].as_f64().map(|number| number.to_string()));
        // The acid is asked for with its pH.
        if let Some(value) = value.filter(|_| key != "acid") {
            let run = stage("souring", &[&format!("{key}={value}")]);
            assert_eq!(run.code, 0, "{key}: {}", run.words);
        }
    }
}
