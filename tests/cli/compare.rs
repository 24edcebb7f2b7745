//! `compare` says what the library says.

use super::{example, run, run_with};
use vatsketch::analysis::{compare, differing_choices};
use vatsketch::batch::batch;

#[test]
fn two_files_stand_side_by_side_with_the_choices_first() {
    let run = run(&["compare", &example("warm-cabinet"), &example("ewes-milk")]);
    assert_eq!(run.code, 0, "{}", run.words);
    let at = |words: &str| run.data.find(words).unwrap_or_else(|| panic!("{words} is not in {}", run.data));
    assert!(at("A: ") < at("B: ") && at("B: ") < at("Choices that differ") && at("Choices that differ") < at("B − A"));
    assert!(at("Kind of milk") < at("Fat in the milk in the vat"));
    assert!(run.data.contains("≈ same") && run.data.contains("low-heat dry milk") && run.data.contains("not a measurement"));
}

#[test]
fn the_json_holds_the_figures_of_both_and_their_difference() {
    let json = run(&["compare", &example("warm-cabinet"), &example("ewes-milk"), "--json"]).json();
    let design = |name: &str| crate::example(name);
    let (a, b) = (design("warm-cabinet"), design("ewes-milk"));
    let keys: Vec<&str> = json["choices"].as_array().unwrap().iter().map(|choice| choice["key"].as_str().unwrap()).collect();
    assert_eq!(keys, differing_choices(&a, &b).iter().map(|choice| choice.field.key).collect::<Vec<_>>());
    for difference in compare(&batch(&a).unwrap(), &batch(&b).unwrap()) {
        let printed = &json["figures"][difference.stage.key()][difference.key];
        assert_eq!(printed["label"], difference.label);
        // The reader of JSON in these tests may miss the last digit.
        let alike = |value: &serde_json::Value, number: Option<f64>| match (value.as_f64(), number) {
            (Some(value), Some(number)) => (value - number).abs() <= 1e-14 * number.abs(),
            (value, number) => value.is_none() && number.is_none(),
        };
        assert!(
            alike(&printed["b_less_a"], difference.change) && alike(&printed["spread"], difference.spread),
            "{}",
            difference.key
        );
        assert_eq!(printed["a"].is_null(), difference.a.is_none(), "{}", difference.key);
    }
}

#[test]
fn a_design_with_itself_is_the_same_everywhere_and_needs_no_mending() {
    let json = run(&["compare", &example("open-air"), &example("open-air"), "--json"]).json();
    assert!(json["choices"].as_array().unwrap().is_empty() && json["milk"].as_array().unwrap().is_empty());
    for stage in json["figures"].as_object().unwrap().values() {
        assert!(stage.as_object().unwrap().values().all(|figure| figure["likeness"] == "same"), "{stage}");
    }
}

#[test]
fn the_second_design_may_be_the_first_from_another_milk_or_come_from_standard_input() {
    let sheep = run(&["compare", &example("warm-cabinet"), "--milk", "sheep", "--json"]).json();
    assert_eq!(sheep["choices"].as_array().unwrap().len(), 1);
    assert_eq!((&sheep["choices"][0]["key"], &sheep["choices"][0]["b"]), (&"milk_kind".into(), &"sheep".into()));
    let curd = run(&["compare", &example("warm-cabinet"), "--milk", "sheep", "--alike", "curd", "--json"]).json();
    let changed: Vec<&str> = curd["choices"].as_array().unwrap().iter().filter_map(|choice| choice["key"].as_str()).collect();
    assert_eq!(changed, ["milk_l", "milk_kind"]);
    let text = run(&["example", "small-vat"]).data;
    let piped = run_with(&["compare", &example("warm-cabinet"), "-"], &text);
    assert_eq!(piped.code, 0, "{}", piped.words);
}

#[test]
fn a_failed_stage_of_either_is_told_and_the_rest_is_compared() {
    let text = run(&["example", "warm-cabinet"]).data.replace("mould_count: 12", "mould_count: 1");
    let run = run_with(&["compare", &example("warm-cabinet"), "-"], &text);
    assert_eq!(run.code, 1);
    assert!(run.words.contains("B: draining: ") && !run.words.contains("A: "), "{}", run.words);
    assert!(run.data.contains("only in A") && run.data.contains("Milk in the vat"));
}

#[test]
fn what_is_missing_or_wrong_is_refused_with_what_to_do() {
    for (arguments, said) in [
        (&["compare", &example("warm-cabinet")][..], "--milk sheep"),
        (&["compare", &example("warm-cabinet"), "--milk", "camel"], "cow, sheep, goat, buffalo, label"),
        (&["compare", "-", "-"], "only one of the two"),
        (&["compare", &example("warm-cabinet"), &example("open-air"), "--milk", "cow"], "cannot be used with"),
    ] {
        let run = run_with(arguments, &std::fs::read_to_string(example("warm-cabinet")).unwrap());
        assert_eq!(run.code, 2, "{arguments:?}");
        assert!(run.words.contains(said) && run.data.is_empty(), "{}", run.words);
    }
    assert_eq!(run(&["compare", &example("warm-cabinet"), "missing.vat.ron"]).code, 3);
}

#[test]
fn pages_to_print_are_a_pdf_and_nothing_else() {
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("both.pdf");
    let written = run(&["compare", &example("warm-cabinet"), "--milk", "sheep", "--to", file.to_str().unwrap()]);
    if cfg!(feature = "paper") {
        assert_eq!(written.code, 0, "{}", written.words);
        assert!(std::fs::read(&file).unwrap().starts_with(b"%PDF-"));
    } else {
        assert!(written.words.contains("built without paper") && !file.exists(), "{}", written.words);
    }
    let refused = run(&["compare", &example("warm-cabinet"), "--milk", "sheep", "--to", "both.docx"]);
    assert_eq!(refused.code, 2);
    assert!(refused.words.contains(".pdf"), "{}", refused.words);
}
