//! `spread` and `matters` say what the library says.

use super::{example, run};
use vatsketch::analysis::sensitivity;
use vatsketch::batch::batch;
use vatsketch::session::{Work, spread};

#[test]
fn the_spread_is_said_in_words_and_in_json() {
    let words = run(&["spread", &example("small-vat"), "--draws", "20"]);
    assert_eq!(words.code, 0, "{}", words.words);
    assert!(
        words.data.contains("Weight of a dried cheese")
            && words.data.contains("8 of 10 trial runs: ")
            && words.data.contains("20 trial runs"),
        "{}",
        words.data
    );
    let json = run(&["spread", &example("small-vat"), "--draws", "20", "--json"]).json();
    let design = crate::example("small-vat");
    let spread = spread(&design, &Work { draws: 20, threads: 1, goes_on: &|| true }).unwrap().unwrap();
    for likely in &spread.figures {
        let printed = &json["figures"][likely.figure.key];
        // The reader of JSON in these tests may miss the last digit.
        let alike = |value: &serde_json::Value, number: Option<f64>| match (value.as_f64(), number) {
            (Some(value), Some(number)) => (value - number).abs() <= 1e-14 * number.abs(),
            (value, number) => value.is_none() && number.is_none(),
        };
        assert!(alike(&printed["least"], likely.least) && alike(&printed["most"], likely.most), "{}", likely.figure.key);
    }
    assert_eq!(json["lines"].as_array().unwrap().len(), spread.lines.len());
}

#[test]
fn what_moves_a_figure_is_ranked_in_words_and_in_json() {
    let words = run(&["matters", &example("warm-cabinet"), "--figure", "dried_cheese_g"]);
    assert_eq!(words.code, 0, "{}", words.words);
    assert!(
        words.data.contains("Number of moulds by 1") && words.data.contains("uncertain: speed of water inside the cheese"),
        "{}",
        words.data
    );
    let json = run(&["matters", &example("warm-cabinet"), "--figure", "dried_cheese_g", "--json"]).json();
    let design = crate::example("warm-cabinet");
    let effects = sensitivity(&batch(&design).unwrap(), "dried_cheese_g").unwrap();
    let printed: Vec<&str> = json["effects"].as_array().unwrap().iter().map(|effect| effect["key"].as_str().unwrap()).collect();
    assert_eq!(printed, effects.iter().map(|effect| effect.cause.key()).collect::<Vec<_>>());
    assert_eq!(json["unit"], "g");
}

#[test]
fn wrong_arguments_and_failed_stages_have_their_endings() {
    for (arguments, said) in [
        (&["spread", "FILE", "--draws", "3"][..], "10"),
        (&["matters", "FILE", "--figure", "craem_g"], "cream_g"),
        (&["matters", "FILE", "--figure", "firmness"], "not a number"),
    ] {
        let file = example("warm-cabinet");
        let arguments: Vec<&str> = arguments.iter().map(|word| if *word == "FILE" { file.as_str() } else { word }).collect();
        let run = run(&arguments);
        assert_eq!(run.code, 2, "{arguments:?}");
        assert!(run.words.contains(said), "{}", run.words);
    }
    let failed = run(&["spread", &example("warm-cabinet"), "--draws", "10", "--set", "mould_count=1"]);
    assert_eq!(failed.code, 1);
    assert!(
        failed.data.contains("Clotting time after the rennet") && failed.words.contains("does not fit"),
        "{} {}",
        failed.data,
        failed.words
    );
}
