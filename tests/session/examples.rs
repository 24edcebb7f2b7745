//! The invented examples.

use vatsketch::analysis::Alike;
use vatsketch::batch::batch;
use vatsketch::caution::cautions;
use vatsketch::design::{MilkKind, Value};
use vatsketch::file::{from_text, to_text};
use vatsketch::session::{Command, EXAMPLES, Session};

#[test]
fn every_example_opens_without_a_failed_stage_and_says_that_it_is_invented() {
    for example in EXAMPLES {
        let design = example.design().unwrap_or_else(|error| panic!("{}: {error}", example.name));
        assert!(!design.title.is_empty() && design.note.contains("An invented scenario"), "{}", example.name);
        let batch = batch(&design).unwrap();
        let failed =
            [batch.milk.failed(), batch.vat.failed(), batch.draining.failed(), batch.salting.failed(), batch.drying.failed()];
        assert!(batch.drying.done().is_some(), "{}: {failed:?}", example.name);
        assert_eq!(from_text(&to_text(&design)).unwrap(), design);
    }
}

#[test]
fn every_example_is_good_work_by_the_programs_own_measures() {
    for example in EXAMPLES {
        let batch = batch(&example.design().unwrap()).unwrap();
        for key in
            ["raw_milk", "ultra_heated_milk", "calcium_above_limit", "calcium_after_rennet", "trays_do_not_fit", "drip_goes_on"]
        {
            assert!(cautions(&batch).iter().all(|caution| caution.key != key), "{}: {key}", example.name);
        }
    }
}

#[test]
fn no_two_examples_have_the_same_name_or_title() {
    let names: std::collections::BTreeSet<&str> = EXAMPLES.iter().map(|example| example.name).collect();
    let titles: std::collections::BTreeSet<String> = EXAMPLES.iter().map(|example| example.design().unwrap().title).collect();
    assert_eq!((names.len(), titles.len()), (EXAMPLES.len(), EXAMPLES.len()));
}

/// The note tells of the example's amounts: “six litres, twelve small cheeses”.
#[test]
fn the_note_of_an_example_goes_when_its_numbers_change_and_comes_back_with_undo() {
    let design = crate::example("warm-cabinet");
    let mut session = Session::open(design.clone(), None).unwrap();
    session.apply(Command::SetTitle("Mine".into())).unwrap();
    assert_eq!(session.design().note, design.note, "the title is no number");
    session.apply(Command::SetInput { key: "milk_l", value: Value::Number(9.0) }).unwrap();
    assert!(session.design().note.is_empty());
    session.undo().unwrap();
    assert_eq!(session.design().note, design.note);
    session.second_from_milk(MilkKind::Sheep, Alike::Fat).unwrap();
    assert!(session.second().unwrap().design().note.is_empty());
    session.apply(Command::SetNote("my own".into())).unwrap();
    session.apply(Command::SetInput { key: "milk_l", value: Value::Number(9.0) }).unwrap();
    assert_eq!(session.design().note, "my own");
}
