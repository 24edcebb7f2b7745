//! Names that were replaced go on working, for scripts that have them.

use super::{example, run, stage};
use serde_json::Value;

/// Runs a command on the first example, as JSON.
fn json(command: &str, more: &[&str]) -> Value {
    let design = example("warm-cabinet");
    let run = run(&[&[command, &design, "--json"][..], more].concat());
    assert_eq!(run.code, 0, "{command} {more:?}: {}", run.words);
    run.json()
}

#[test]
fn an_old_key_asks_for_the_same_figure_as_the_present_one() {
    for (old, present) in [("balance_ph", "equilibrium_ph"), ("ready_h", "finished_h")] {
        for command in ["why", "sensitivity"] {
            let (mut by_old, by_present) = (json(command, &["--figure", old]), json(command, &["--figure", present]));
            assert_eq!(by_old["figure"], old, "the key that was asked for comes back");
            by_old["figure"] = present.into();
            assert_eq!(by_old, by_present, "{command} {old}");
        }
    }
    let solve = |key: &str| json("solve", &["--for", &format!("{key}=4"), "--by", "vinegar_ml_per_g"]);
    assert_eq!(solve("balance_ph")["value"], solve("equilibrium_ph")["value"]);
}

#[test]
fn json_has_the_old_member_with_the_present_one() {
    let figures = json("figures", &[]);
    let likely = &figures["likely"];
    let spread = &json("spread", &["--draws", "10"])["figures"];
    let compared = &json("compare", &["--milk", "sheep"])["figures"];
    for (members, old, present) in [
        (&figures["pickling"], "balance_ph", "equilibrium_ph"),
        (&figures["keeping"], "ready_h", "finished_h"),
        (likely, "balance_ph", "equilibrium_ph"),
        (spread, "balance_ph", "equilibrium_ph"),
        (spread, "ready_h", "finished_h"),
        (&compared["pickling"], "balance_ph", "equilibrium_ph"),
        (&compared["keeping"], "ready_h", "finished_h"),
    ] {
        assert!(!members[present].is_null() && members[old] == members[present], "{old}: {}", members[old]);
    }
    let alone = stage("pickling", &[]).json();
    assert!(alone["equilibrium_ph"].is_number() && alone["equilibrium_ph"] == alone["balance_ph"]);
    assert!(alone["strong_equilibrium_ph"].is_number() && alone["strong_equilibrium_ph"] == alone["strong_balance_ph"]);
}

#[test]
fn lists_that_are_searched_by_key_hold_both_keys() {
    let why = json("why", &["--figure", "centre_ph"]);
    let value = |key: &str| why["rests_on"].as_array().unwrap().iter().find(|row| row["figure"] == key).unwrap()["value"].clone();
    assert_eq!(value("balance_ph"), value("equilibrium_ph"));
    let sensitivity = json("matters", &["--figure", "cream_g"]);
    assert!(!sensitivity["effects"].as_array().unwrap().is_empty() && sensitivity["movers"] == sensitivity["effects"]);
}

#[test]
fn the_option_ready_is_finished_by_and_help_shows_only_the_new_name() {
    let by = ["2031-06-20T17:30", "--as-of", "2031-05-05T08:00"];
    let (old, present) = (json("plan", &[&["--ready"][..], &by].concat()), json("plan", &[&["--finished-by"][..], &by].concat()));
    assert!(present["finished"].is_string() && present["finished"] == present["ready"]);
    assert_eq!(old, present);
    let help = run(&["plan", "--help"]).data;
    assert!(help.contains("--finished-by") && !help.contains("--ready"), "{help}");
    let both = run(&["plan", &example("warm-cabinet"), "--ready", "2031-06-20T17:30", "--start", "2031-05-06T08:00"]);
    assert_eq!(both.code, 2, "{}", both.data);
}
