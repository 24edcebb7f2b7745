//! One undo history of everything: A, B, title, note, week and supplies.

use vatsketch::analysis::Alike;
use vatsketch::design::{BuyFor, Design, MilkKind, SuppliesDesign, Value, WeekDesign};
use vatsketch::file;
use vatsketch::session::{Command, ONE_STEP_S, Session, Which};

fn number(key: &'static str, value: f64) -> Command {
    Command::SetInput { key, value: Value::Number(value) }
}

type Open = (Design, Option<Design>);

type Act = Box<dyn Fn(&mut Session)>;

fn open(session: &Session) -> Open {
    (session.design().clone(), session.second().map(|second| second.design().clone()))
}

/// Everything that can be done is done once; undo goes back through it to the start, and redo forward to the end.
#[test]
fn undo_takes_everything_back_and_redo_does_it_all_again() {
    let folder = tempfile::tempdir().unwrap();
    let other = folder.path().join("other.vat.ron");
    std::fs::write(&other, file::to_text(&Design { title: "Other".into(), ..Design::default() })).unwrap();
    let supplies = SuppliesDesign { buy_for: BuyFor::LeastWaste, ..SuppliesDesign::default() };
    let week = WeekDesign { zone: "Etc/UTC".into(), ..WeekDesign::default() };
    let mut session = Session::open(Design::default(), None).unwrap();
    let steps: Vec<Act> = vec![
        Box::new(|session| session.apply(Command::SetTitle("May".into())).unwrap()),
        Box::new(|session| session.apply(Command::SetNote("with rain".into())).unwrap()),
        Box::new(move |session| session.apply(Command::SetWeek(Box::new(week.clone()))).unwrap()),
        Box::new(move |session| session.apply(Command::SetSupplies(Box::new(supplies.clone()))).unwrap()),
        Box::new(|session| session.second_from_milk(MilkKind::Sheep, Alike::Fat).unwrap()),
        Box::new(|session| session.apply(number("milk_l", 9.0)).unwrap()),
        Box::new(|session| session.copy_to_second("milk_l").unwrap()),
        Box::new(|session| session.copy_from_second("milk_kind").unwrap()),
        Box::new(|session| session.swap_second().unwrap()),
        Box::new(move |session| session.second_from_file(&other).unwrap()),
        Box::new(|session| session.copy_to_second("milk_kind").unwrap()),
        Box::new(Session::drop_second),
        Box::new(|session| session.second_from_first().unwrap()),
    ];
    let mut seen = vec![open(&session)];
    for step in &steps {
        step(&mut session);
        seen.push(open(&session));
    }
    for before in seen.iter().rev().skip(1) {
        session.undo().unwrap();
        assert_eq!(&open(&session), before);
    }
    assert!(session.history().undo_name().is_none() && !session.is_dirty());
    for after in &seen[1..] {
        session.redo().unwrap();
        assert_eq!(&open(&session), after);
        if let Some(second) = session.second() {
            assert!(second.batch() == &vatsketch::batch::batch(second.design()).unwrap());
        }
    }
}

#[test]
fn a_second_that_comes_back_knows_its_file_and_whether_it_is_saved() {
    let folder = tempfile::tempdir().unwrap();
    let other = folder.path().join("other.vat.ron");
    std::fs::write(&other, file::to_text(&Design::default())).unwrap();
    let mut session = Session::open(Design::default(), None).unwrap();
    session.second_from_file(&other).unwrap();
    session.apply(number("milk_l", 9.0)).unwrap();
    session.copy_to_second("milk_l").unwrap();
    session.drop_second();
    session.undo().unwrap();
    let second = session.second().unwrap();
    assert!(second.is_dirty() && second.path() == Some(other.as_path()));
    session.undo().unwrap();
    assert!(!session.second().unwrap().is_dirty(), "as its file has it");
}

/// What was saved since stays saved: a step brings a design back, not what was known of its file then.
#[test]
fn undo_after_saving_knows_what_the_file_holds() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    let mut session = Session::open(Design::default(), None).unwrap();
    session.second_from_milk(MilkKind::Goat, Alike::Fat).unwrap();
    session.apply(number("milk_l", 9.0)).unwrap();
    session.save_second(&path).unwrap();
    session.swap_second().unwrap();
    session.undo().unwrap();
    let second = session.second().unwrap();
    assert!(!second.is_dirty() && second.path() == Some(path.as_path()) && session.path().is_none());
}

#[test]
fn small_moves_of_one_choice_within_a_second_are_one_step() {
    let mut session = Session::open(Design::default(), None).unwrap();
    for (milk_l, now_s) in [(6.1, 10.0), (6.2, 10.5), (6.3, 10.5 + ONE_STEP_S)] {
        session.nudge(Which::First, number("milk_l", milk_l), now_s).unwrap();
    }
    assert_eq!(session.history().undo_name(), Some("Milk 6 → 6.3 L"));
    assert_eq!(session.before().unwrap().design.milk.milk_l, 6.0, "the ghost is of before the first");
    session.nudge(Which::First, number("milk_l", 6.4), 10.6 + 2.0 * ONE_STEP_S).unwrap();
    assert_eq!(session.history().undo_name(), Some("Milk 6.3 → 6.4 L"), "later");
    session.nudge(Which::First, number("fat_target_percent", 4.0), 11.0 + 2.0 * ONE_STEP_S).unwrap();
    session.nudge(Which::First, number("milk_l", 6.5), 11.1 + 2.0 * ONE_STEP_S).unwrap();
    assert_eq!(session.history().undo_name(), Some("Milk 6.4 → 6.5 L"), "another choice was moved between");
    for _ in 0..4 {
        session.undo().unwrap();
    }
    assert_eq!((session.design(), session.history().undo_name()), (&Design::default(), None));
}

#[test]
fn small_moves_there_and_back_leave_no_step_and_an_undo_begins_a_new_one() {
    let mut session = Session::open(Design::default(), None).unwrap();
    session.nudge(Which::First, number("milk_l", 6.1), 1.0).unwrap();
    session.nudge(Which::First, number("milk_l", 6.0), 1.1).unwrap();
    assert!(session.history().undo_name().is_none() && !session.is_dirty());
    session.nudge(Which::First, number("milk_l", 6.1), 1.2).unwrap();
    session.undo().unwrap();
    session.nudge(Which::First, number("milk_l", 6.2), 1.3).unwrap();
    assert_eq!(session.history().undo_name(), Some("Milk 6 → 6.2 L"));
    session.undo().unwrap();
    assert_eq!(session.design(), &Design::default());
}

#[test]
fn the_second_design_is_changed_in_place_and_a_drag_of_it_is_one_step() {
    let mut session = Session::open(Design::default(), None).unwrap();
    session.second_from_first().unwrap();
    let start = open(&session);
    let milk_l = |session: &Session| session.second().unwrap().design().milk.milk_l;
    session.begin_drag();
    for litres in [5.0, 6.0, 7.5] {
        session.apply_to(Which::Second, number("milk_l", litres)).unwrap();
    }
    let began = session.held().unwrap().design.milk.milk_l;
    assert!((began - Design::default().milk.milk_l).abs() < 1e-9, "what it began with: {began}");
    session.end_drag();
    assert!((milk_l(&session) - 7.5).abs() < 1e-9 && session.design() == &start.0, "A stays as it is");
    assert!(session.last_change.starts_with("B: Milk") && session.before().is_none(), "{}", session.last_change);
    assert!(session.history().undo_name().unwrap().starts_with("B: Milk"));
    session.nudge(Which::Second, number("milk_l", 7.6), 1.0).unwrap();
    session.nudge(Which::Second, number("milk_l", 7.7), 1.1).unwrap();
    session.undo().unwrap();
    assert!((milk_l(&session) - 7.5).abs() < 1e-9, "two small moves are one step");
    session.undo().unwrap();
    assert_eq!(open(&session), start);
    session.begin_drag();
    session.apply_to(Which::Second, number("milk_l", 9.0)).unwrap();
    session.give_up_drag().unwrap();
    assert_eq!(open(&session), start, "a drag that is given up");
}

#[test]
fn without_a_second_design_nothing_is_done_to_it() {
    let mut session = Session::open(Design::default(), None).unwrap();
    session.apply_to(Which::Second, number("milk_l", 9.0)).unwrap();
    assert!(session.design() == &Design::default() && session.history().undo_name().is_none());
}
