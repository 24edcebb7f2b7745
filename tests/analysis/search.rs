//! Choices and figures are found by the beginnings of words.

use vatsketch::analysis::search;
use vatsketch::batch::batch;
use vatsketch::design::{Design, fields};
use vatsketch::figure::figures;

#[test]
fn every_choice_and_every_figure_is_found_by_its_own_name() {
    let design = Design::default();
    let figures = figures(&batch(&design).unwrap());
    for field in fields().filter(|field| (field.used)(&design)) {
        assert!(search(&design, &figures, field.label).choices.iter().any(|found| found.key == field.key), "{}", field.label);
    }
    for figure in &figures {
        assert!(search(&design, &figures, figure.label).figures.iter().any(|found| found.key == figure.key), "{}", figure.label);
    }
}

#[test]
fn names_come_before_what_is_said_of_them() {
    let design = Design::default();
    let found = search(&design, &[], "CREAM");
    assert!(found.choices[0].label.to_lowercase().contains("cream"), "{}", found.choices[0].label);
    assert!(found.choices.iter().any(|field| !field.label.to_lowercase().contains("cream")), "help is searched too");
}

#[test]
fn an_empty_question_finds_nothing_and_so_does_nonsense() {
    let design = Design::default();
    for question in ["", "  ", "?!", "qqq"] {
        let found = search(&design, &[], question);
        assert!(found.choices.is_empty() && found.figures.is_empty(), "{question:?}");
    }
}
