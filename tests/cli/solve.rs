//! `solve` says what the library says.

use super::{Run, example, run};

fn solve(goal: &str, by: &str, more: &[&str]) -> Run {
    run(&[&["solve", &example("warm-cabinet"), "--for", goal, "--by", by][..], more].concat())
}

#[test]
fn a_goal_that_is_reached_is_said_in_a_sentence_and_in_json() {
    let words = solve("dried_cheese_g=60", "milk_l", &[]);
    assert_eq!(words.code, 0, "{}", words.words);
    assert!(words.data.starts_with("Milk ") && words.data.contains("Weight of a dried cheese 60 g"), "{}", words.data);
    let json = solve("dried_cheese_g=60", "milk_l", &["--json"]).json();
    assert_eq!((&json["reached"], &json["choice"], &json["choice_unit"]), (&true.into(), &"milk_l".into(), &"L".into()));
    // What is said gives what is said.
    let figures = run(&["figures", &example("warm-cabinet"), "--json", "--set", &format!("milk_l={}", json["value"])]).json();
    let gives = json["gives"].as_f64().unwrap();
    assert!((figures["drying"]["dried_cheese_g"].as_f64().unwrap() - gives).abs() < 1e-9);
    assert!((gives - 60.0).abs() <= 0.5, "to the gram that is shown");
}

#[test]
fn a_goal_out_of_reach_names_the_nearest_and_ends_with_one() {
    let words = solve("drying_loss_percent=90", "drying_h", &[]);
    assert_eq!(words.code, 1);
    assert!(words.data.contains("not reachable") && words.data.contains("nearest is"), "{}", words.data);
    assert_eq!(solve("drying_loss_percent=90", "drying_h", &["--json"]).json()["reached"], false);
}

#[test]
fn settings_come_first_and_wrong_arguments_end_with_two() {
    let other = solve("cream_g=200", "fat_target_percent", &["--set", "cream_strength_percent=40", "--json"]).json();
    let plain = solve("cream_g=200", "fat_target_percent", &["--json"]).json();
    assert!(other["value"].as_f64() > plain["value"].as_f64(), "stronger cream lifts the fat further");
    for (goal, by, said) in [
        ("cream_g", "milk_l", "FIGURE=VALUE"),
        ("cream_g=much", "milk_l", "FIGURE=VALUE"),
        ("craem_g=1", "milk_l", "cream_g"),
        ("cream_g=1", "mlik_l", "milk_l"),
        ("cream_g=1", "milk_kind", "not a number"),
    ] {
        let run = solve(goal, by, &[]);
        assert_eq!(run.code, 2, "{goal} {by}");
        assert!(run.words.contains(said), "{}", run.words);
    }
}
