//! Mistyped names: the one that was perhaps meant is named, and nothing where none is near.

use super::{example, run, run_with};

#[test]
fn a_slip_is_answered_with_what_was_perhaps_meant() {
    let file = example("warm-cabinet");
    for (arguments, meant) in [
        (vec!["figurs", &file], "`figures`"),
        (vec!["compair"], "`compare`"),
        (vec!["shopp", &file], "`shop`"),
        (vec!["stage", "dryng"], "`drying`"),
        (vec!["example", "wram-cabinet"], "`warm-cabinet`"),
        (vec!["export", &file, "--to", "x.svg", "--curve", "wraming"], "`warming`"),
        (vec!["export", &file, "--to", "x.pdf", "--paper", "leter"], "'letter'"),
        (vec!["compare", &file, "--milk", "sheeep"], "`sheep`"),
        (vec!["figures", &file, "--jason"], "'--json'"),
        (vec!["figures", &file, "--set", "Milk_L2=3"], "`milk_l`"),
        (vec!["figures", &file, "--set", "milk_kind=sheeep"], "`sheep`"),
        (vec!["stage", "drying", "--set", "dryng_h=3"], "`drying_h`"),
        (vec!["stage", "pickling", "--set", "vinegarml=3"], "`vinegar_ml`"),
        (vec!["why", &file, "--figure", "centre_hp"], "`centre_ph`"),
        (vec!["sensitivity", &file, "--figure", "dried_chese_g"], "`dried_cheese_g`"),
        (vec!["solve", &file, "--for", "dried_chese_g=60", "--by", "milk_l"], "`dried_cheese_g`"),
        (vec!["solve", &file, "--for", "dried_cheese_g=60", "--by", "mlik_l"], "`milk_l`"),
        (vec!["plan", &file, "--here", "cutt@2031-05-06T07:00", "--as-of", "2031-05-06T08:00"], "`cut`"),
    ] {
        let run = run(&arguments);
        assert_eq!((run.code, run.data.as_str()), (2, ""), "{arguments:?}: {}", run.words);
        assert!(run.words.contains(meant), "{arguments:?}: {}", run.words);
    }
}

#[test]
fn a_word_far_from_all_others_is_answered_with_no_guess() {
    let file = example("warm-cabinet");
    for arguments in [
        vec!["teapot"],
        vec!["stage", "ageing"],
        vec!["stage", "xyz"],
        vec!["example", "holiday"],
        vec!["export", &file, "--to", "x.svg", "--curve", "price"],
        vec!["compare", &file, "--milk", "yak"],
        vec!["figures", &file, "--set", "teapot=3"],
        vec!["figures", &file, "--set", "milk_kind=yak"],
        vec!["stage", "drying", "--set", "teapot=3"],
        vec!["why", &file, "--figure", "teapot"],
        vec!["solve", &file, "--for", "teapot=60", "--by", "milk_l"],
        vec!["solve", &file, "--for", "dried_cheese_g=60", "--by", "teapot"],
        vec!["plan", &file, "--here", "teapot@2031-05-06T07:00", "--as-of", "2031-05-06T08:00"],
    ] {
        let run = run(&arguments);
        assert_eq!((run.code, run.data.as_str()), (2, ""), "{arguments:?}: {}", run.words);
        assert!(!run.words.contains("did you mean") && !run.words.contains("similar"), "{arguments:?}: {}", run.words);
    }
    let file = run_with(&["figures", "-"], "(format: 7, teapot: 3)");
    assert!(file.code == 3 && !file.words.contains("did you mean"), "{}", file.words);
}

#[test]
fn an_input_of_another_stage_is_told_from_no_input_at_all() {
    for stage in ["drying", "pickling"] {
        let run = run(&["stage", stage, "--set", "milk_l=3"]);
        assert_eq!(run.code, 2, "{}", run.words);
        assert!(
            run.words.contains(&format!("belongs to the stage milk and does not enter `vatsketch stage {stage}`")),
            "{}",
            run.words
        );
    }
}
