//! The steps of the guide.

use vatsketch::words::{FROM_A_MODEL, GUIDE, step_words};

#[test]
fn the_guide_is_a_handful_of_steps_that_each_speak_of_a_place_of_their_own() {
    assert!((6..=8).contains(&GUIDE.len()));
    for (at, step) in GUIDE.iter().enumerate() {
        let words = step_words(step);
        assert!(words.ends_with('.') && words.len() < 300, "{}", step.title);
        assert!(!step.title.ends_with('.') && GUIDE[..at].iter().all(|other| other.place != step.place), "{}", step.title);
    }
    assert!(step_words(GUIDE.last().unwrap()).contains(FROM_A_MODEL));
}
