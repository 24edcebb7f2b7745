//! The plan as plain text.

use crate::report::sample;
use proptest::prelude::*;
use vatsketch::batch::batch;
use vatsketch::design::Design;
use vatsketch::export::text;
use vatsketch::report::{Plan, TROUBLES, elapsed, plan};
use vatsketch::session::EXAMPLES;
use vatsketch::units::Units;
use vatsketch::words::{caution_line, caution_words};

/// Returns words with one space between them, however the lines broke.
fn flat(text: &str) -> String {
    text.replace('\u{a0}', " ").split_whitespace().collect::<Vec<_>>().join(" ")
}

#[test]
fn every_step_caution_purchase_figure_and_source_is_there() {
    for example in EXAMPLES {
        let plan = plan(&batch(&example.design().unwrap()).unwrap());
        let text = flat(&text(&plan));
        let mut wanted = vec![plan.title.clone(), plan.subtitle.to_owned(), plan.note.clone()];
        for step in &plan.steps {
            wanted.push(format!("[ ] {} {} {}", elapsed(step.at_min, Units::METRIC), step.verb, step.what));
            wanted.extend(step.targets.iter().map(|target| format!("{}: {}", target.label, target.amount)));
            wanted.push(step.if_off.clone());
            wanted.push(step.hold.as_ref().map_or_else(|| step.write_down.clone(), |hold| hold.words(&step.if_off)));
        }
        wanted.extend(plan.cautions.iter().map(|caution| caution_line(caution, Units::METRIC)));
        wanted.extend(plan.shopping.iter().map(|row| format!("[ ] {}: {}", row.what, row.amount)));
        wanted.extend(plan.figures.iter().map(|target| format!("{}: {}", target.label, target.amount)));
        wanted.extend(plan.prepare.iter().map(|words| format!("[ ] {words}")));
        wanted.extend(plan.weighings.iter().map(|weighing| weighing.weight.amount.to_string()));
        wanted.extend(plan.label.iter().flat_map(|label| label.ingredients.clone()));
        wanted.extend(TROUBLES.iter().map(|trouble| trouble.discard.to_owned()));
        wanted.extend(plan.sources.iter().map(|source| source.title.clone()));
        for words in wanted {
            assert!(text.contains(&flat(&words)), "{}: `{words}` is not in the text", example.name);
        }
    }
}

#[test]
fn a_caution_stands_before_its_step() {
    let plan = plan(&batch(&Design::default()).unwrap());
    let text = flat(&text(&plan));
    let step = plan.steps.iter().find(|step| !step.cautions.is_empty()).unwrap();
    let at = |words: &str| text.find(&flat(words)).unwrap();
    assert!(at(&caution_words(&step.cautions[0], Units::METRIC).what) < at(&format!("{} {}", step.verb, step.what)));
}

#[test]
fn a_plan_that_stopped_says_why() {
    let text = flat(&text(&plan(&sample::failed())));
    assert!(text.contains("The plan stops here"), "{text}");
    assert!(text.contains("Milk: a fat target of 9.0 %"), "{text}");
}

#[test]
fn letters_that_give_orders_to_a_terminal_are_not_passed_on() {
    let plan = Plan { title: "a\u{1b}]0;b\u{7}".to_owned(), note: "one\r\u{9b}2J\ntwo".to_owned(), ..plan(&sample::batch()) };
    let text = text(&plan);
    assert!(text.chars().all(|letter| letter == '\n' || !letter.is_control()), "{text:?}");
    assert!(text.contains("\ntwo\n"), "the maker's own lines are kept: {text}");
}

proptest! {
    /// Only a word that is longer than a line makes a line longer.
    #[test]
    fn no_line_is_wider_than_a_terminal(words in proptest::collection::vec("[a-zä°½]{1,30}", 0..60)) {
        let plan = Plan { note: words.join(" "), title: words.join(" "), ..plan(&sample::batch()) };
        let text = text(&plan);
        prop_assert!(text.lines().all(|line| line.chars().count() <= 80));
        prop_assert!(flat(&text).contains(&words.join(" ")));
    }
}
