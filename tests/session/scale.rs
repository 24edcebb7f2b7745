//! Scaling the open design.

use vatsketch::analysis::{ScaleError, ScaleGoal, ScaleTo};
use vatsketch::figure::figures;
use vatsketch::session::{ScaleTrial, Session};
use vatsketch::units::Units;

fn goal(to: ScaleTo, amount: f64) -> ScaleGoal {
    ScaleGoal { to, amount }
}

#[test]
fn scaling_is_one_step_with_a_name_and_undone_as_one() {
    let mut session = Session::open(crate::example("first-vat"), None).unwrap();
    let before = session.design().clone();
    let trial = ScaleTrial::of(session.batch(), goal(ScaleTo::Milk, 9.0), Units::US).unwrap();
    assert_eq!(session.design(), &before, "a trial changes nothing");
    session.apply(trial.command()).unwrap();
    assert_eq!(session.history().undo_name(), Some("Scale to 9 L of milk"));
    assert_eq!(figures(session.batch()), figures(&trial.after), "what was shown is what is done");
    assert!(session.last_change.starts_with("Scale to 9 L of milk: "), "{}", session.last_change);
    session.undo().unwrap();
    assert_eq!(session.design(), &before);
    session.redo().unwrap();
    assert_eq!(session.design().milk.milk_l, 9.0);
}

/// The note of an example tells of its numbers.
#[test]
fn a_scaled_example_loses_its_note_and_the_maker_keeps_theirs() {
    let mut design = crate::example("first-vat");
    let scaled = |session: &mut Session| {
        let trial = ScaleTrial::of(session.batch(), goal(ScaleTo::Moulds, 6.0), Units::METRIC).unwrap();
        session.apply(trial.command()).unwrap();
        session.design().note.clone()
    };
    assert_eq!(scaled(&mut Session::open(design.clone(), None).unwrap()), "");
    "our own words".clone_into(&mut design.note);
    assert_eq!(scaled(&mut Session::open(design, None).unwrap()), "our own words");
}

#[test]
fn what_is_out_of_range_is_refused_before_anything_is_done() {
    let session = Session::open(crate::example("first-vat"), None).unwrap();
    let refused = ScaleTrial::of(session.batch(), goal(ScaleTo::Moulds, 5000.0), Units::METRIC).unwrap_err();
    assert!(matches!(refused, ScaleError::OutOfRange { .. }), "{refused}");
}
