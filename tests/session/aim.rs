//! Aiming at a figure from the session.

use vatsketch::analysis::{Goal, Solved};
use vatsketch::design::{Design, Value};
use vatsketch::figure::{Reading, figures};
use vatsketch::session::{AimError, Session};
use vatsketch::units::Units;

fn open() -> Session {
    Session::open(Design::default(), None).unwrap()
}

fn goal(figure: &str, wanted: f64) -> Goal {
    Goal { figure: figure.to_owned(), wanted }
}

fn number(session: &Session, key: &str) -> f64 {
    let found = figures(session.batch()).into_iter().find(|figure| figure.key == key).unwrap();
    let Reading::Number(number) = found.reading else { panic!("{key} is no number") };
    number
}

#[test]
fn what_is_reached_is_one_step_and_undone_as_one() {
    let mut session = open();
    let solved = session.aim(&goal("dried_cheese_g", 60.0), "milk_l").unwrap();
    assert!(matches!(solved, Solved::Reached(_)));
    assert!((number(&session, "dried_cheese_g") - 60.0).abs() <= 0.5);
    assert!(session.is_dirty() && session.last_change.starts_with("Milk 6 → "), "{}", session.last_change);
    session.undo().unwrap();
    assert_eq!(session.design(), &Design::default());
    session.redo().unwrap();
    assert!((number(&session, "dried_cheese_g") - 60.0).abs() <= 0.5);
}

#[test]
fn what_is_out_of_reach_changes_nothing_and_names_the_nearest() {
    let mut session = open();
    let wanted = goal("drying_loss_percent", 95.0);
    let solved = session.aim(&wanted, "drying_h").unwrap();
    assert!(matches!(solved, Solved::NotReachable { .. }) && solved.in_words(&wanted, Units::METRIC).contains("nearest is"));
    assert_eq!(session.design(), &Design::default());
    assert!(session.history().undo_name().is_none());
}

#[test]
fn a_pinned_choice_stays_until_its_pin_is_out() {
    let mut session = open();
    session.turn_pin("milk_l").unwrap();
    let refused = session.aim(&goal("dried_cheese_g", 60.0), "milk_l").unwrap_err();
    assert!(matches!(refused, AimError::Pinned { .. }) && refused.to_string().contains("Milk is pinned"));
    assert!(session.ways_to("dried_cheese_g").iter().any(|way| way.field.key == "milk_l" && way.pinned));
    assert!(!session.is_dirty(), "a pin is no change of the design");
    session.turn_pin("milk_l").unwrap();
    assert!(session.aim(&goal("dried_cheese_g", 60.0), "milk_l").is_ok());
    assert!(session.turn_pin("milk_litres").is_err());
}

#[test]
fn the_ways_to_a_figure_begin_with_those_that_makers_take() {
    let session = open();
    let ways = session.ways_to("drying_loss_percent");
    let first_other = ways.iter().position(|way| !way.usual).unwrap();
    assert!(ways[..first_other].iter().any(|way| way.field.key == "drying_h"));
    assert!(ways[first_other..].iter().all(|way| !way.usual));
    assert!(ways.iter().all(|way| matches!(way.field.get(session.design()), Value::Number(_))));
    assert!(session.ways_to("cheese_count").iter().all(|way| way.field.key != "drying_h"), "what cannot move it is not offered");
}

#[test]
fn finished_sooner_is_a_shorter_time_in_the_vinegar() {
    let mut session = open();
    let now_h = number(&session, "finished_h");
    session.aim(&goal("finished_h", now_h - 48.0), "pickling_h").unwrap();
    assert!((number(&session, "finished_h") - (now_h - 48.0)).abs() <= 0.5);
}
