//! Designs just below, at and just above every threshold of the notes on the science, chapters 1 to 4: the warnings are there or not, as written
//! down by hand beside each. What stands in `why` was worked out from the chapter before the program was asked; where the two differ and the chapter
//! may be right, the row stands in `disagrees.rs` with both.

mod air;
mod disagrees;
mod draining;
mod germs;
mod hours;
mod keeping;
mod milk;
mod salting;
mod souring;
mod table_b;
mod vat;
mod vinegar;

use super::cautions::with;
use std::collections::BTreeSet;
use vatsketch::batch::Batch;
use vatsketch::caution::{CautionKind, Severity, cautions};
use vatsketch::units::Units;
use vatsketch::words::{caution_line, caution_words};

/// One design by what it changes of the default one, and what is said of it.
struct Row {
    /// A short name, of one row only.
    name: &'static str,
    /// The choices.
    set: &'static [&'static str],
    /// The warnings that are there, and how grave; `key:stage` is the warning about germs in one stage.
    there: &'static [(&'static str, Severity)],
    /// Those that are not.
    gone: &'static [&'static str],
    /// The threshold, where it is written, and on which side of it the design lies.
    why: &'static str,
}

/// Every table.
const TABLES: [&[Row]; 13] = [
    milk::ROWS,
    vat::ROWS,
    draining::ROWS,
    salting::ROWS,
    air::ROWS,
    souring::ROWS,
    vinegar::ROWS,
    keeping::ROWS,
    table_b::DRY,
    table_b::MOIST,
    germs::ROWS,
    hours::ROWS,
    disagrees::DISAGREES,
];

/// Returns how grave a warning is, if it is there.
fn found(batch: &Batch, key: &str) -> Option<Severity> {
    let (key, stage) = key.split_once(':').map_or((key, None), |(key, stage)| (key, Some(stage)));
    let there = cautions(batch).into_iter().find(|caution| {
        let in_stage = match &caution.kind {
            CautionKind::Germs(germs) => stage.is_none_or(|stage| germs.stage.key() == stage),
            _ => stage.is_none(),
        };
        caution.key == key && in_stage
    });
    there.map(|caution| caution.severity)
}

/// Returns the words of a text that promise too much.
fn promises(text: &str) -> Vec<String> {
    let single = text.to_lowercase();
    let single = single.split(|letter: char| !letter.is_alphabetic());
    single.filter(|word| ["safe", "ready"].contains(word)).map(str::to_owned).collect()
}

/// Returns the texts of a batch's warnings that promise too much, in every form and in both systems of units.
fn promising(batch: &Batch) -> Vec<String> {
    let mut wrong = Vec::new();
    for caution in cautions(batch) {
        for units in [Units::METRIC, Units::US] {
            let said = caution_words(&caution, units);
            let forms = [said.what, said.remedy, said.short, caution_line(&caution, units)];
            wrong.extend(forms.into_iter().filter(|text| !promises(text).is_empty()));
        }
    }
    wrong
}

/// Holds every row of a table against the program; the words of its warnings too, so that no batch is calculated twice.
fn hold(rows: &[Row]) {
    let mut wrong = Vec::new();
    for row in rows {
        let batch = with(row.set);
        for (key, severity) in row.there {
            let is = found(&batch, key);
            if is != Some(*severity) {
                wrong.push(format!("{}: {key} is {is:?}, not {severity:?} ({})", row.name, row.why));
            }
        }
        for key in row.gone {
            if let Some(is) = found(&batch, key) {
                wrong.push(format!("{}: {key} is {is:?}, not gone ({})", row.name, row.why));
            }
        }
        wrong.extend(promising(&batch).into_iter().map(|text| format!("{}: too much is promised: {text}", row.name)));
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn there_are_sixty_designs_and_each_says_why() {
    let all: Vec<&Row> = TABLES.iter().flat_map(|rows| rows.iter()).collect();
    let names: BTreeSet<&str> = all.iter().map(|row| row.name).collect();
    assert!(all.len() >= 60, "{} designs", all.len());
    assert_eq!(names.len(), all.len(), "a name stands twice");
    for row in all {
        assert!(row.there.len() + row.gone.len() > 0, "{} expects nothing", row.name);
        // A threshold is a figure, and it is written somewhere.
        let says = row.why.contains(|letter: char| letter.is_ascii_digit());
        let why = row.why.to_lowercase();
        let sourced = ["chapter", "no source", "record"].iter().any(|words| why.contains(words));
        assert!(says && sourced, "{}: {}", row.name, row.why);
    }
}

#[test]
fn whole_words_that_promise_are_found_and_others_are_not() {
    assert_eq!(promises("It is Safe now, and READY."), ["safe", "ready"]);
    assert!(promises("Heat it already; this is unsafe, and no safety.").is_empty());
}
