//! Exit codes, and where data and words go.

use super::{example, run, run_with};

#[test]
fn a_design_that_is_worked_out_ends_with_nought_and_no_words() {
    let run = run(&["figures", &example("warm-cabinet")]);
    assert_eq!((run.code, run.words.as_str()), (0, ""));
    assert!(run.data.starts_with("Twelve for the garden table\n"), "{}", run.data);
    for part in ["Milk in the vat", "Cautions", "Serious warning: ", "not a measurement"] {
        assert!(run.data.contains(part), "{part}");
    }
}

#[test]
fn a_stage_that_fails_ends_with_one_and_shows_what_could_be_worked_out() {
    let run = run(&["figures", &example("warm-cabinet"), "--set", "mould_count=1"]);
    assert_eq!(run.code, 1, "{}", run.words);
    assert!(run.words.starts_with("vatsketch: draining: the curd does not fit"), "{}", run.words);
    assert!(
        run.data.contains("Milk in the vat") && run.data.contains("not reached: waits for “Moulds and draining”"),
        "{}",
        run.data
    );
    assert!(!run.data.contains("Weight of a dried cheese"));
}

#[test]
fn bad_arguments_end_with_two_and_say_what_to_do() {
    let file = example("warm-cabinet");
    for (arguments, word) in [
        (vec!["figures", &file, "--set", "mlik_l=3"], "did you mean `milk_l`?"),
        (vec!["figures", &file, "--set", "milk_l"], "KEY=VALUE"),
        (vec!["figures", &file, "--set", "milk_l=many"], "0.5 to 60 L"),
        (vec!["figures", &file, "--set", "milk_l=NaN"], "is not a number"),
        (vec!["figures", &file, "--set", "milk_l=600"], "must be from 0.5 to 60 L, but 600 was given"),
        (vec!["figures", &file, "--set", "mould_count=2.5"], "whole number"),
        (vec!["figures", &file, "--set", "milk_kind=yak"], "cow, sheep, goat"),
        (vec!["figures"], "<FILE>"),
        (vec!["figures", &file, "--loud"], "--loud"),
        (vec!["stage", "ageing"], "milk, vat, draining, salting, drying"),
        (vec!["stage", "drying", "--set", "report_h=5,3"], "ascending"),
        (vec!["stage", "drying", "--set", "report_h=NaN"], "ascending"),
        (vec!["stage", "drying", "--set", "milk_l=3"], "belongs to the stage milk"),
        (vec!["example", "last-vat"], "warm-cabinet, ewes-milk"),
        (vec!["export", &file, "--to", "plan.docx"], ".pdf"),
    ] {
        let run = run(&arguments);
        assert_eq!(run.code, 2, "{arguments:?}: {}", run.words);
        assert!(run.words.contains(word), "{arguments:?}: {}", run.words);
        assert_eq!(run.data, "", "{arguments:?}");
    }
}

#[test]
fn trouble_with_a_file_ends_with_three() {
    let folder = tempfile::tempdir().unwrap();
    let missing = folder.path().join("none.vat.ron");
    let run_missing = run(&["figures", missing.to_str().unwrap()]);
    assert_eq!(run_missing.code, 3);
    assert!(run_missing.words.contains("none.vat.ron") && run_missing.data.is_empty(), "{}", run_missing.words);
    let torn = folder.path().join("torn.vat.ron");
    std::fs::write(&torn, "(format: 1,\n milk: (").unwrap();
    let run_torn = run(&["figures", torn.to_str().unwrap()]);
    assert_eq!(run_torn.code, 3);
    assert!(run_torn.words.contains("torn.vat.ron: line 2, column "), "{}", run_torn.words);
    let newer = run_with(&["figures", "-"], "(format: 8)");
    assert_eq!(newer.code, 3);
    assert!(newer.words.starts_with("vatsketch: standard input: this file has format 8"), "{}", newer.words);
    let comma = run_with(&["shop", "-"], "(format: 7,\n milk: (milk_l: 6,0))");
    assert!(comma.words.contains("standard input: line 2, column 19: `milk_l`: a comma stands"), "{}", comma.words);
}

#[test]
fn a_design_on_standard_input_gives_what_its_file_gives() {
    let text = run(&["example", "small-vat"]);
    assert_eq!(text.code, 0);
    let piped = run_with(&["figures", "-", "--json"], &text.data);
    assert_eq!(piped.code, 0, "{}", piped.words);
    assert_eq!(piped.data, run(&["figures", &example("small-vat"), "--json"]).data);
}

#[test]
fn help_and_version_are_data_and_name_the_exit_codes() {
    let help = run(&["--help"]);
    assert_eq!((help.code, help.words.as_str()), (0, ""));
    for part in ["figures", "inputs", "stage", "export", "example", "Exit codes: 0 done, 1 ", "standard input"] {
        assert!(help.data.contains(part), "{part}");
    }
    let version = run(&["--version"]);
    assert_eq!((version.code, version.data.trim()), (0, concat!("vatsketch ", env!("CARGO_PKG_VERSION"))));
    assert!(run(&["stage", "--help"]).data.contains("report_h"));
}

#[cfg(not(feature = "gui"))]
#[test]
fn a_program_without_a_window_says_so() {
    let run = run(&[]);
    assert_eq!(run.code, 4);
    assert!(run.words.contains("without a window"), "{}", run.words);
}

/// Without the variables that name a display, none is found.
#[cfg(all(feature = "gui", target_os = "linux"))]
#[test]
fn a_machine_without_a_display_is_no_trouble_with_a_file() {
    let mut program = std::process::Command::new(env!("CARGO_BIN_EXE_vatsketch"));
    for name in ["DISPLAY", "WAYLAND_DISPLAY", "WAYLAND_SOCKET"] {
        program.env_remove(name);
    }
    let ran = program.output().unwrap();
    let words = String::from_utf8(ran.stderr).unwrap();
    assert_eq!(ran.status.code(), Some(4), "{words}");
    assert!(words.contains("no window can be opened here"), "{words}");
}

#[test]
fn what_a_file_says_wrongly_is_trouble_with_the_file_and_what_is_asked_wrongly_is_not() {
    let with = |week: &str| format!("(format: 7, week: ({week}))");
    let start = "wish: start_at(\"2031-05-09 18:30\")";
    let as_of = ["--as-of", "2031-05-06T08:00"];
    for (week, more, code, words) in [
        (format!("{start}, zone: \"Moon/Base\""), &[][..], 3, "standard input: there is no time zone `Moon/Base`"),
        (start.to_owned(), &["--zone", "Moon/Base"], 2, "there is no time zone `Moon/Base`"),
        (
            "reached: Some((task: \"tea\", began: \"2031-05-06 07:00\"))".to_owned(),
            &[],
            3,
            "standard input: this vat has no task `tea`",
        ),
        (start.to_owned(), &["--here", "tea@2031-05-06T07:00"], 2, "this vat has no task `tea`"),
        (String::new(), &["--finished-by", "2031-05-06T09:00"], 1, "the plan cannot end by"),
    ] {
        for command in [&["plan", "-"][..], &["export", "-", "--to", "-", "--as", "ics"]] {
            let run = run_with(&[command, more, &as_of].concat(), &with(&week));
            assert_eq!((run.code, run.data.as_str()), (code, ""), "{command:?} {week} {more:?}: {}", run.words);
            assert!(run.words.contains(words), "{}", run.words);
        }
    }
}
