//! `lift` says what the library says.

use super::{example, run};

/// Returns the settings that take a lift over, as `--set` wants them.
fn settings(lift: &serde_json::Value) -> Vec<String> {
    let text = |value: &serde_json::Value| match value {
        serde_json::Value::Bool(on) => if *on { "yes" } else { "no" }.to_owned(),
        serde_json::Value::String(key) => key.clone(),
        number => number.to_string(),
    };
    let choices = lift["choices"].as_array().unwrap();
    choices.iter().map(|choice| format!("{}={}", choice["key"].as_str().unwrap(), text(&choice["to"]))).collect()
}

#[test]
fn a_lift_that_is_taken_over_lifts_and_costs_what_it_says() {
    let file = example("own-carton");
    let json = run(&["lift", &file, "--json"]).json();
    let before = run(&["figures", &file, "--json"]).json();
    let warnings = json["warnings"].as_array().unwrap();
    assert!(warnings.len() > 5 && json["notice"].is_string() && json["serious_warnings"].is_array());
    let pepper = warnings.iter().find(|warning| warning["warning"]["key"] == "untreated_pepper").unwrap();
    assert_eq!(pepper["lifts"][0]["choices"][0]["to"], true);
    let soak = warnings.iter().find(|warning| warning["warning"]["key"] == "centre_not_sour").unwrap();
    for lift in [&pepper["lifts"][0], &soak["lifts"][0]] {
        let set = settings(lift);
        let sets = set.iter().flat_map(|setting| ["--set", setting.as_str()]);
        let after = run(&["figures", &file, "--json"].into_iter().chain(sets).collect::<Vec<_>>()).json();
        let there = after["cautions"].as_array().unwrap().iter().filter(|caution| caution["severity"] == "stop");
        let keys: Vec<&str> = there.map(|caution| caution["key"].as_str().unwrap()).collect();
        assert!(!keys.contains(&"untreated_pepper") || !keys.contains(&"centre_not_sour"), "{set:?}: {keys:?}");
        let hours = |json: &serde_json::Value| json["keeping"]["finished_h"].as_f64().unwrap();
        assert!((hours(&after) - hours(&before) - lift["costs"]["hours"].as_f64().unwrap()).abs() < 1e-6, "{set:?}");
        assert_eq!(lift["serious_left"].as_u64().unwrap() as usize, keys.iter().filter(|key| **key != "acid_is_foreseen").count());
    }
}

#[test]
fn money_is_told_where_the_design_has_prices() {
    let told = |name: &str| {
        let json = run(&["lift", &example(name), "--json"]).json();
        let lifts = json["warnings"].as_array().unwrap().iter().flat_map(|warning| warning["lifts"].as_array().unwrap().clone());
        lifts.filter(|lift| lift["costs"]["money"].is_number()).count()
    };
    assert!(told("warm-cabinet") > 0);
    assert_eq!(told("small-vat"), 0);
}

#[test]
fn the_text_names_choices_costs_and_reasons_in_the_units_asked_for() {
    let text = run(&["lift", &example("warm-cabinet"), "--units", "us"]);
    assert_eq!(text.code, 0, "{}", text.words);
    for words in ["Lifted by: ", "Time in the vinegar: 504 h → ", " longer", "also lifts: ", "new: Serious warning", "°F → "] {
        assert!(text.data.contains(words), "{words} is missing in {}", text.data);
    }
    assert!(!text.data.contains(" °C"), "{}", text.data);
}

#[test]
fn a_pinned_choice_is_left_alone_and_an_unknown_one_is_refused() {
    let file = example("own-carton");
    let pinned = run(&["lift", &file, "--pin", "pepper_treated", "--pin", "pepper_g_dm2", "--json"]).json();
    let all = pinned["warnings"].as_array().unwrap();
    let pepper = all.iter().find(|warning| warning["warning"]["key"] == "untreated_pepper").unwrap();
    assert_eq!(
        (&pepper["lifts"], &pepper["pinned"]),
        (&serde_json::json!([]), &serde_json::json!(["pepper_treated", "pepper_g_dm2"]))
    );
    assert!(pepper["why_not"].as_str().unwrap().contains("Pinned and left alone"));
    let wrong = run(&["lift", &file, "--pin", "peper_treated"]);
    assert!(wrong.code == 2 && wrong.words.contains("`pepper_treated`"), "{}", wrong.words);
}

#[test]
fn one_after_another_shows_the_way_and_warns_of_its_end() {
    let file = example("own-carton");
    let way = run(&["lift", &file, "--in-turn", "3"]);
    assert_eq!(way.data.matches("Lifted by: ").count(), 3, "{}", way.data);
    assert!(way.data.contains("The choices can lift no other serious warning"), "{}", way.data);
    let first = run(&["lift", &file, "--in-turn", "1", "--json"]).json();
    assert_eq!(first["lifted"].as_array().unwrap().len(), 1);
    let left = first["left"].as_array().unwrap();
    assert!(!left.is_empty() && left.iter().all(|lifted| lifted["warning"]["severity"] == "stop"));
}
