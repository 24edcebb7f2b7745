//! `why` says what the library says.

use super::{example, run};

#[test]
fn a_figure_says_its_chain_in_words_and_as_json() {
    let said = run(&["why", &example("warm-cabinet"), "--figure", "centre_ph"]);
    assert_eq!(said.code, 0, "{}", said.words);
    for part in [
        "law: ",
        "source: ",
        "Choices that go into it",
        "Temperature of the vinegar: 4",
        "Equilibrium pH",
        "Constants and formulae",
    ] {
        assert!(said.data.contains(part), "{part} is missing in {}", said.data);
    }
    let json = run(&["why", &example("warm-cabinet"), "--figure", "cream_g", "--json"]).json();
    assert_eq!(json["figure"], "cream_g");
    assert!(json["inputs"]["Fat target"].as_str().unwrap().contains("4.2"));
}

#[test]
fn a_figure_that_is_none_is_refused_with_the_nearest() {
    let refused = run(&["why", &example("warm-cabinet"), "--figure", "center_ph"]);
    assert_eq!(refused.code, 2);
    assert!(refused.words.contains("did you mean `centre_ph`"), "{}", refused.words);
}
