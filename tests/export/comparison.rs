//! Two designs side by side as PDF, read back by another program.

use super::boxes::overlaps;
use super::reader::{read, squeezed};
use vatsketch::analysis::from_milk;
use vatsketch::batch::batch;
use vatsketch::curve::Role;
use vatsketch::design::{MilkKind, Value};
use vatsketch::export::{Paper, comparison_pdf};
use vatsketch::report::{Comparison, comparison};
use vatsketch::units::Units;
use vatsketch::words::caution_words;

fn cow_and_sheep() -> Comparison {
    let cow = crate::example("warm-cabinet");
    comparison(&batch(&cow).unwrap(), &batch(&from_milk(&cow, MilkKind::Sheep)).unwrap(), Units::METRIC)
}

#[test]
fn every_row_the_milk_and_the_cautions_can_be_found_on_both_papers() {
    let both = cow_and_sheep();
    for paper in Paper::ALL {
        let read = read(&comparison_pdf(&both, paper).unwrap());
        let count = read.pages.len();
        let foot = |page: usize| squeezed(&format!("{}{page}/{count}", vatsketch::words::FROM_A_MODEL));
        let letters = (1..=count).fold(read.letters, |letters, page| letters.replace(&foot(page), ""));
        assert_eq!(count, 2, "{paper:?}");
        let answers = both.answers.iter().flat_map(|(_, rows)| rows);
        let rows = both.choices.iter().chain(&both.costs).chain(answers);
        let mut wanted: Vec<String> =
            rows.flat_map(|row| [row.label.clone(), row.a.clone(), row.b.clone(), row.change.clone()]).collect();
        wanted.extend(both.milk.clone());
        assert!(!both.serious.is_empty(), "no acid is said of both");
        wanted.extend(both.serious.iter().map(|compared| caution_words(&compared.caution, Units::METRIC).short));
        wanted.extend(both.cautions.iter().flatten().map(|caution| caution_words(caution, Units::METRIC).short));
        for text in wanted {
            assert!(letters.contains(&squeezed(&text)), "`{text}` cannot be found on {paper:?}");
        }
        assert!(!letters.contains('\u{fffd}'), "a letter has no meaning for a reader");
    }
}

/// What is asked first stands in the upper half of the first page: what to buy, what it costs, how many of what size, when, and in the hand.
#[test]
fn the_answers_stand_in_the_first_half_page_and_no_letter_lies_over_another() {
    let both = cow_and_sheep();
    let headings: Vec<&str> = both.answers.iter().map(|(heading, _)| *heading).collect();
    assert_eq!(headings, ["To buy", "What you get", "When", "In the hand"]);
    for paper in Paper::ALL {
        let bytes = comparison_pdf(&both, paper).unwrap();
        let first = &read(&bytes).sheets[0];
        let at = |words: &str| first.find(&squeezed(words)).unwrap_or(usize::MAX);
        assert!(at("In the hand") < at("Warnings of both"), "{paper:?}");
        for (page, over) in overlaps(&bytes).iter().enumerate() {
            assert!(over.is_empty(), "{paper:?}, page {}: {:?}", page + 1, &over[..over.len().min(3)]);
        }
    }
}

#[test]
fn the_same_comparison_gives_the_same_bytes() {
    let both = cow_and_sheep();
    assert!(comparison_pdf(&both, Paper::A4).unwrap() == comparison_pdf(&both, Paper::A4).unwrap());
}

/// B alone scorches its milk and sours its cheeses: the limits that only its curves have are on paper all the same.
#[test]
fn a_limit_that_only_the_second_design_has_is_drawn() {
    let mut plain = crate::example("warm-cabinet");
    plain.set("pickled", Value::Switch(false)).unwrap();
    let mut sharp = crate::example("warm-cabinet");
    sharp.set("heating", Value::Choice("hob")).unwrap();
    sharp.set("heater_power_w", Value::Number(2500.0)).unwrap();
    let both = comparison(&batch(&plain).unwrap(), &batch(&sharp).unwrap(), Units::METRIC);
    let only_b = both.curves.iter().flat_map(|(a, b)| {
        let known: Vec<&str> = a.series.iter().map(|series| series.name).collect();
        b.series.iter().filter(move |series| series.role == Role::Limit && !known.contains(&series.name))
    });
    let names: Vec<&str> = only_b.map(|series| series.name).collect();
    assert!(names.contains(&"deposits begin") && names.len() >= 2, "{names:?}");
    let letters = read(&comparison_pdf(&both, Paper::A4).unwrap()).letters;
    for name in names {
        assert!(letters.contains(&squeezed(name)), "`{name}` is not on paper");
    }
}
