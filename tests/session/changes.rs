//! Commands, drags, undo, and the line that says what a change did.

use vatsketch::batch::batch;
use vatsketch::design::{Design, Stage, Value};
use vatsketch::session::{Command, Session, what_changed};

fn session() -> Session {
    Session::open(Design::default(), None).unwrap()
}

fn number(key: &'static str, value: f64) -> Command {
    Command::SetInput { key, value: Value::Number(value) }
}

#[test]
fn a_drag_is_one_step_to_undo() {
    let mut session = session();
    session.begin_drag();
    for milk_l in [6.5, 7.0, 7.4] {
        session.apply(number("milk_l", milk_l)).unwrap();
    }
    session.end_drag();
    assert_eq!(session.history().undo_name(), Some("Milk 6 → 7.4 L"));
    session.undo().unwrap();
    assert_eq!(session.design(), &Design::default());
    assert_eq!(session.history().undo_name(), None);
    session.redo().unwrap();
    assert_eq!(session.design().milk.milk_l, 7.4);
}

#[test]
fn a_drag_that_comes_back_is_no_step_and_the_ghost_is_where_it_began() {
    let mut session = session();
    session.begin_drag();
    session.apply(number("milk_l", 9.0)).unwrap();
    assert_eq!(session.before().unwrap().design.milk.milk_l, 6.0);
    session.apply(number("milk_l", 6.0)).unwrap();
    session.end_drag();
    assert_eq!(session.history().undo_name(), None);
    assert!(!session.is_dirty());
}

#[test]
fn undo_and_redo_walk_the_list_and_a_new_step_forgets_what_was_undone() {
    let mut session = session();
    session.apply(number("milk_l", 7.0)).unwrap();
    session.apply(Command::SetTitle("Trial".into())).unwrap();
    session.apply(number("drying_h", 20.0)).unwrap();
    session.undo().unwrap();
    session.undo().unwrap();
    assert_eq!((session.design().milk.milk_l, session.design().title.as_str()), (7.0, ""));
    assert_eq!(session.history().redo_name(), Some("Title “Trial”"));
    session.redo().unwrap();
    assert_eq!(session.design().title, "Trial");
    session.apply(number("milk_l", 5.0)).unwrap();
    assert_eq!(session.history().redo_name(), None);
    session.redo().unwrap();
    assert_eq!(session.design().milk.milk_l, 5.0);
    for _ in 0..9 {
        session.undo().unwrap();
    }
    assert_eq!(session.design(), &Design::default());
    assert_eq!(session.batch(), &batch(&Design::default()).unwrap());
    assert!(!session.is_dirty());
}

#[test]
fn a_refused_command_changes_nothing() {
    let mut session = session();
    let refused = session.apply(number("milk_l", 1000.0)).unwrap_err().to_string();
    assert!(refused.contains("milk_l"), "{refused}");
    assert!(!session.is_dirty() && session.history().undo_name().is_none() && session.last_change.is_empty());
}

#[test]
fn a_command_that_changes_nothing_is_no_step() {
    let mut session = session();
    session.apply(number("milk_l", 6.0)).unwrap();
    assert_eq!(session.history().undo_name(), None);
}

#[test]
fn a_stage_goes_back_to_its_defaults_alone() {
    let mut session = session();
    session.apply(number("milk_l", 7.0)).unwrap();
    session.apply(number("drying_h", 20.0)).unwrap();
    session.apply(Command::SetInput { key: "tray_swap", value: Value::Switch(false) }).unwrap();
    session.apply(Command::ResetStage(Stage::Drying)).unwrap();
    assert_eq!(session.design().drying, Design::default().drying);
    assert_eq!(session.design().milk.milk_l, 7.0);
    assert_eq!(session.history().undo_name(), Some("Drying back to defaults"));
}

#[test]
fn the_line_of_a_change_names_it_and_at_most_three_figures() {
    let mut session = session();
    session.apply(number("milk_l", 9.0)).unwrap();
    let line = session.last_change.clone();
    assert!(line.starts_with("Milk 6 → 9 L: "), "{line}");
    assert_eq!(line.matches(" → ").count(), 4, "{line}");
    session.apply(Command::SetInput { key: "milk_kind", value: Value::Choice("goat") }).unwrap();
    assert!(session.last_change.starts_with("Kind of milk Cow → Goat: "), "{}", session.last_change);
    session.undo().unwrap();
    assert!(session.last_change.starts_with("Undo: Kind of milk Cow → Goat"), "{}", session.last_change);
}

#[test]
fn a_change_that_moves_no_main_figure_says_so() {
    let mut session = session();
    session.apply(Command::SetNote("Weigh each cheese.".into())).unwrap();
    assert_eq!(session.last_change, "Note: no main figure changes");
    let now = batch(&Design::default()).unwrap();
    assert_eq!(what_changed("Opened", None, &now), "Opened");
}

/// In weak vinegar the centre never comes below pH 4.2; that is said before anything that only moves.
#[test]
fn a_time_that_became_never_is_named_first_and_so_is_one_that_came_back() {
    let mut session = session();
    session.apply(number("acid_g_per_100ml", 0.5)).unwrap();
    let line = session.last_change.clone();
    let named = line.split_once(": ").unwrap().1;
    assert!(named.starts_with("centre below pH 4.2 after ") && named.contains(" h → never"), "{line}");
    session.undo().unwrap();
    let named = session.last_change.rsplit_once("vinegar 6 → 0.5 g/100 mL: ").unwrap().1;
    assert!(named.starts_with("centre below pH 4.2 after never → "), "{}", session.last_change);
}

/// What an hour of ripening more or less does to germs is said with the change, and their names keep their capital.
#[test]
fn a_change_of_the_souring_says_what_it_does_to_germs() {
    let mut session = Session::open(crate::example("first-vat"), None).unwrap();
    session.apply(Command::SetInput { key: "culture_packets", value: Value::Number(0.5) }).unwrap();
    assert!(session.last_change.contains("Listeria monocytogenes could grow by 0.9 tenfold steps → "), "{}", session.last_change);
}
