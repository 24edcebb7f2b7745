//! The words of every caution, each brought about by its cause.

use crate::caution::cautions::{CASES, with};
use std::collections::BTreeSet;
use vatsketch::batch::{Batch, batch};
use vatsketch::caution::{Caution, Severity, cautions, soak_cautions};
use vatsketch::design::Design;
use vatsketch::law::Matter;
use vatsketch::process::{PickledCheese, VinegarBath, pickle};
use vatsketch::units::Units;
use vatsketch::words::{CautionWords, MUST_NOT_EAT, caution_words, counted};

/// What a line of the page in the kitchen holds.
const MOST_LETTERS: usize = 70;

/// A batch that brings about each caution: the cases of the tests of the facts, and what those do not need.
fn batches() -> impl Iterator<Item = Batch> {
    let failed: &[&[&str]] = &[&["mould_count=1"], &["fat_target_percent=9"]];
    CASES.iter().map(|(_, _, there, _)| *there).chain(failed.iter().copied()).map(with)
}

fn all() -> Vec<Caution> {
    batches().flat_map(|batch| cautions(&batch)).collect()
}

/// Returns the keys in the sources: words in quotes that stand where a key stands.
fn keys() -> BTreeSet<String> {
    let mut keys = BTreeSet::new();
    for (_, text) in crate::house::texts("src/caution", ".rs") {
        for before in ["Facts::caused(\"", "key: \"", "TRAYS: &str = \""] {
            keys.extend(text.split(before).skip(1).filter_map(|rest| rest.split('"').next()).map(str::to_owned));
        }
    }
    keys
}

#[test]
fn every_caution_of_the_sources_is_among_those_that_are_read_here() {
    let read: BTreeSet<String> = all().iter().map(|caution| caution.key.to_owned()).collect();
    assert!(read.len() > 40);
    assert_eq!(keys().difference(&read).collect::<Vec<_>>(), Vec::<&String>::new());
}

#[test]
fn every_caution_is_whole_sentences_and_has_a_short_form_that_fits_a_line() {
    for caution in all() {
        let CautionWords { what, remedy, short } = caution_words(&caution, Units::METRIC);
        for said in [&what, &remedy, &short] {
            assert!(said.ends_with('.') && !said.contains("..") && !said.contains("  "), "{}: {said}", caution.key);
            assert!(said.starts_with(|letter: char| letter.is_uppercase() || letter.is_ascii_digit()), "{}: {said}", caution.key);
        }
        assert!(short.chars().count() <= MOST_LETTERS, "{}: {} letters: {short}", caution.key, short.chars().count());
    }
}

#[test]
fn listeria_and_raw_milk_name_who_must_not_eat_it_and_oil_names_botulism() {
    let oil = ["oil_is_untested", "oil_before_acid", "long_in_oil"];
    let mut seen = BTreeSet::new();
    for caution in all() {
        let CautionWords { what, remedy, short } = caution_words(&caution, Units::METRIC);
        let full = format!("{what} {remedy}");
        if full.contains("Listeria") || full.to_lowercase().contains("raw milk") {
            assert!(full.contains(MUST_NOT_EAT), "{}: {full}", caution.key);
            seen.insert(caution.key);
        }
        if oil.contains(&caution.key) {
            let named = |words: &str| words.to_lowercase().contains("botulism");
            assert!(named(&full) && named(&short), "{}: {full} {short}", caution.key);
            seen.insert(caution.key);
        }
    }
    for key in ["no_acid", "raw_milk", "needs_cold"].iter().chain(&oil) {
        assert!(seen.contains(key), "{key} was not read");
    }
}

/// A cheese described alone is warned of in the very words of a batch.
#[test]
fn a_soak_alone_and_a_batch_share_their_words() {
    let batch = with(&["acid_g_per_100ml=3", "vinegar_ml_per_g=1.5"]);
    let matter = Matter { water_kg: 0.012, fat_kg: 0.01, casein_kg: 0.009, salt_kg: 0.0008, ..Matter::default() };
    let cheese = PickledCheese {
        matter,
        diameter_mm: 50.0,
        thickness_mm: 15.0,
        start_ph: 6.5,
        buffer_scale: 1.0,
        diffusivity_scale: 1.0,
        ..PickledCheese::default()
    };
    let bath = VinegarBath { acid_g_per_100ml: 3.0, volume_ml: 1500.0 * matter.total_kg(), temperature_c: 4.0 };
    let alone = soak_cautions(&pickle(&cheese, &bath, &[]).unwrap(), &bath);
    let of_batch = cautions(&batch);
    for key in ["weak_vinegar", "little_vinegar", "measure_the_ph", "in_the_jar"] {
        let words = |all: &[Caution]| {
            all.iter().find(|caution| caution.key == key).map(|caution| caution_words(caution, Units::METRIC)).unwrap()
        };
        assert_eq!(words(&alone), words(&of_batch), "{key}");
    }
}

#[test]
fn counts_are_singular_and_plural() {
    assert_eq!(counted(Severity::Stop, 1), "1 serious warning");
    assert_eq!(counted(Severity::Note, 0), "0 notes");
    assert_eq!(counted(Severity::Caution, 2), "2 cautions");
}

/// A rule of days beside a soak of weeks: each number says whose it is.
#[test]
fn the_days_of_the_rules_are_told_from_those_of_the_plan() {
    let long = crate::example("warm-cabinet");
    let said = |design: &Design| {
        let all = cautions(&batch(design).unwrap());
        let kept = all.into_iter().find(|caution| caution.key == "kept_long").unwrap();
        caution_words(&kept, Units::METRIC)
    };
    let soaked = said(&long);
    for words in
        ["for 35 days, 21 of them in the vinegar", "after 7 days in the cold", "The rules’ 7 days end before this plan’s soak does"]
    {
        assert!(soaked.what.contains(words), "{words} in {}", soaked.what);
    }
    let mut bare = long;
    bare.pickling.pickled = false;
    let unsoaked = said(&bare);
    assert!(unsoaked.what.contains("for 14 days.") && !unsoaked.what.contains("this plan’s"), "{}", unsoaked.what);
}
