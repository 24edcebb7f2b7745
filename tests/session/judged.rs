//! A session judges its design by the draws once they are there.

use vatsketch::analysis::LEAST_DRAWS;
use vatsketch::batch::batch;
use vatsketch::design::{Design, Value};
use vatsketch::session::{Command, Session, Work, spread};

#[test]
fn the_draws_take_the_place_of_the_slow_run_while_the_design_stands_alone() {
    let design = Design::default();
    let made = spread(&design, &Work { draws: LEAST_DRAWS, threads: 2, goes_on: &|| true }).unwrap().unwrap();
    let slow = made.slow_soak.unwrap();
    let mut session = Session::open(design.clone(), None).unwrap();
    assert!(session.judge(&made));
    let judged = |session: &Session| session.batch().pickling.done().unwrap().targets_if_slow;
    assert_eq!(judged(&session), slow.targets);
    assert!(session.history().undo_name().is_none(), "nothing was chosen");
    // Another jar is another soak: one run stands in for the draws again.
    session.apply(Command::SetInput { key: "pickling_h", value: Value::Number(300.0) }).unwrap();
    assert!(!session.judge(&made), "another design");
    assert_eq!(*session.batch(), batch(session.design()).unwrap());
    // Two designs are judged alike.
    session.undo().unwrap();
    assert!(session.judge(&made));
    session.second_from_first().unwrap();
    assert!(!session.judge(&made));
    assert_eq!(session.batch(), session.second().unwrap().batch());
    assert_eq!(*session.batch(), batch(&design).unwrap());
    // So they are when undo brings the second one back.
    session.drop_second();
    assert!(session.judge(&made));
    session.undo().unwrap();
    assert_eq!(session.batch(), session.second().unwrap().batch());
}
