//! `figures`, `inputs` and `example` say what the library says.

use super::{example, run};
use vatsketch::batch::batch;
use vatsketch::design::{DESCRIBED_CHEESE_FIELDS, Design, Stage, Value, fields};
use vatsketch::figure::{Reading, every_key, figures};
use vatsketch::session::EXAMPLES;

/// Returns whether a printed number is this one; the reader of JSON in these tests may miss the last digit.
fn alike(printed: &serde_json::Value, number: f64) -> bool {
    printed.as_f64().is_some_and(|printed| (printed - number).abs() <= 1e-14 * number.abs())
}

#[test]
fn the_json_keys_are_the_keys_of_the_figures_and_the_numbers_are_theirs_in_full() {
    for one in EXAMPLES {
        let run = run(&["figures", &example(one.name), "--json"]);
        assert_eq!(run.code, 0, "{}", run.words);
        let json = run.json();
        let figures = figures(&batch(&one.design().unwrap()).unwrap());
        for stage in Stage::ALL {
            let printed = json[stage.key()].as_object().unwrap();
            assert_eq!(printed["status"], "done");
            let keys: Vec<&str> = printed.keys().map(String::as_str).filter(|key| *key != "status").collect();
            let own: Vec<_> = figures.iter().filter(|figure| figure.stage == stage).collect();
            assert_eq!(
                keys,
                own.iter().flat_map(|figure| every_key(figure.key)).collect::<Vec<_>>(),
                "{} {}",
                one.name,
                stage.key()
            );
            for figure in own {
                if let Reading::Number(number) = figure.reading {
                    assert!(alike(&printed[figure.key], number), "{}", figure.key);
                }
            }
        }
        assert!(json["balance"]["greatest_relative_residual"].as_f64().unwrap() < 1e-9);
        assert!(
            json["cautions"]
                .as_array()
                .unwrap()
                .iter()
                .any(|caution| (caution["key"] == "no_acid" || caution["key"] == "acid_is_foreseen")
                    && caution["severity"] == "stop")
        );
    }
}

#[test]
fn a_failed_stage_is_told_in_json_as_well() {
    let run = run(&["figures", &example("warm-cabinet"), "--json", "--set", "mould_count=1"]);
    assert_eq!(run.code, 1);
    let json = run.json();
    assert_eq!((&json["draining"]["status"], &json["drying"]["status"]), (&"failed".into(), &"not_reached".into()));
    assert!(json["draining"]["error"].as_str().unwrap().contains("does not fit"));
    assert!(json["milk"]["vat_milk_l"].as_f64().unwrap() > 6.0);
}

#[test]
fn settings_on_the_command_line_are_those_of_the_library() {
    let run = run(&[
        "figures",
        &example("warm-cabinet"),
        "--json",
        "--set",
        "milk_l=7,5",
        "--set",
        "milk_kind=goat",
        "--set",
        "tray_swap=no",
    ]);
    let mut design = crate::example("warm-cabinet");
    design.set("milk_l", Value::Number(7.5)).unwrap();
    design.set("milk_kind", Value::Choice("goat")).unwrap();
    design.set("tray_swap", Value::Switch(false)).unwrap();
    let figures = figures(&batch(&design).unwrap());
    let weight = figures.iter().find(|figure| figure.key == "dried_cheese_g").unwrap();
    let Reading::Number(weight) = weight.reading else { panic!("a weight is a number") };
    assert!(alike(&run.json()["drying"]["dried_cheese_g"], weight), "{}", run.words);
}

#[test]
fn every_input_is_listed_with_its_range_in_words_and_in_json() {
    let words = run(&["inputs"]);
    let json = run(&["inputs", "--json"]).json();
    let keys =
        |list: &str| json[list].as_array().unwrap().iter().map(|row| row["key"].as_str().unwrap().to_owned()).collect::<Vec<_>>();
    assert_eq!(keys("inputs"), fields().map(|field| field.key).collect::<Vec<_>>());
    assert_eq!(keys("described_cheese"), DESCRIBED_CHEESE_FIELDS.iter().map(|field| field.key).collect::<Vec<_>>());
    for field in fields() {
        let line = words
            .data
            .lines()
            .find(|line| line.trim_start().starts_with(&format!("{} ", field.key)))
            .unwrap_or_else(|| panic!("{} is not listed", field.key));
        assert!(line.contains(field.help), "{line}");
        assert!(line.contains(&format!("default {}", field.default())), "{line}");
    }
}

#[test]
fn an_example_is_printed_as_a_file_that_opens() {
    for one in EXAMPLES {
        let run = run(&["example", one.name]);
        assert_eq!(run.code, 0);
        let design: Design = vatsketch::file::from_text(&run.data).unwrap();
        assert_eq!(design, one.design().unwrap());
    }
}

/// A number whose uncertainty is large says so to machines as well.
#[test]
fn the_json_carries_the_likely_ranges_around_their_figures() {
    let json = run(&["figures", &example("warm-cabinet"), "--json"]).json();
    let likely = json["likely"].as_object().unwrap();
    for key in ["drained_curd_kg", "clotting_min", "to_rennet_min", "dried_moisture_percent"] {
        assert!(likely.contains_key(key), "{key}");
    }
    for (key, range) in likely {
        let figure = Stage::ALL.iter().find_map(|stage| json[stage.key()][key].as_f64()).unwrap();
        let (low, high) = (range[0].as_f64().unwrap(), range[1].as_f64().unwrap());
        assert!(low <= figure && figure <= high, "{key}: {low} to {high} around {figure}");
    }
}

#[test]
fn germ_by_stage_is_in_both_forms_with_what_it_leaves_out() {
    let design = example("first-vat");
    let json = run(&["figures", &design, "--json"]).json();
    let rows = json["germs"]["potential_growth_log10"].as_array().unwrap().clone();
    assert_eq!(rows.len(), 7);
    let listeria = rows.iter().find(|row| row["key"] == "listeria").unwrap();
    assert_eq!(listeria["whole"], json["keeping"]["listeria_log10"]);
    assert!(listeria["stages"]["drying"].is_number());
    assert_eq!(rows.iter().filter(|row| row["decides"] == true).count(), 1);
    assert_eq!(json["germs"]["beside"]["airless_h"], json["keeping"]["airless_h"]);
    assert_eq!(json["germs"]["notice"], vatsketch::words::POTENTIAL_GROWTH);
    let text = run(&["figures", &design]).data;
    for part in ["Potential growth of germs, tenfold steps", "Vinegar", "Its warning rests on", vatsketch::words::POTENTIAL_GROWTH]
    {
        assert!(text.contains(part), "{part}");
    }
}
