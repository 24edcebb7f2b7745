//! The maker's week as commands. Dates are invented.

use jiff::civil::{DateTime, date};
use vatsketch::design::{Design, Value, WeekDesign, Wish};
use vatsketch::session::{Command, Session};

fn session() -> Session {
    Session::open(Design::default(), None).unwrap()
}

fn start(at: DateTime) -> Command {
    Command::SetWeek(Box::new(WeekDesign { wish: Wish::StartAt(at), ..WeekDesign::default() }))
}

fn may(day: i8) -> DateTime {
    date(2031, 5, day).at(9, 0, 0, 0)
}

#[test]
fn a_dragged_start_that_is_given_up_leaves_nothing_behind() {
    let mut session = session();
    session.apply(start(may(9))).unwrap();
    session.begin_drag();
    session.apply(start(may(10))).unwrap();
    session.apply(start(may(11))).unwrap();
    session.give_up_drag().unwrap();
    assert_eq!(session.design().week.wish, Wish::StartAt(may(9)));
    assert_eq!(session.batch().design, *session.design(), "the batch belongs to the design");
    session.undo().unwrap();
    assert_eq!(session.design(), &Design::default(), "the drag is no step");
    session.give_up_drag().unwrap();
    assert_eq!(session.design(), &Design::default(), "without a drag there is nothing to give up");
}

#[test]
fn a_change_of_the_week_alone_says_no_word_about_figures() {
    let mut session = session();
    session.apply(start(may(9))).unwrap();
    assert_eq!(session.last_change, "Begin on Fri 9 May, 09:00");
    session.apply(Command::SetInput { key: "milk_l", value: Value::Number(7.4) }).unwrap();
    assert!(session.last_change.starts_with("Milk 6 → 7.4 L: "), "{}", session.last_change);
}
