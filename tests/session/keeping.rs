//! Saving does not lose what somebody wrote: not the maker's words, nor another hand's file.

use vatsketch::design::{Design, Value};
use vatsketch::file::read;
use vatsketch::session::{Command, Session, SessionError, Which};

#[test]
fn a_title_that_is_too_long_is_refused_at_saving_instead_of_cut() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("trial.vat.ron");
    let mut session = Session::open(Design::default(), None).unwrap();
    session.apply(Command::SetTitle("x".repeat(121))).unwrap();
    let refused = session.save(&path).unwrap_err().to_string();
    assert!(refused.contains("121") && refused.contains("120") && refused.contains("shorten"), "{refused}");
    assert!(!path.exists() && session.is_dirty());
    session.apply(Command::SetTitle("x".repeat(120))).unwrap();
    session.save(&path).unwrap();
    assert_eq!(&read(&path).unwrap(), session.design());
}

#[test]
fn a_change_by_another_hand_is_told_until_it_is_settled() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("trial.vat.ron");
    let mut session = Session::open(Design::default(), None).unwrap();
    session.save(&path).unwrap();
    session.apply(Command::SetInput { key: "milk_l", value: Value::Number(7.0) }).unwrap();
    for title in ["one", "two"] {
        std::fs::write(&path, format!("(format: 1, title: \"{title}\")")).unwrap();
        let refused = session.save(&path).unwrap_err();
        assert!(matches!(refused, SessionError::ChangedOnDisk { .. }), "{title}: {refused}");
        assert_eq!(read(&path).unwrap().title, title);
    }
    session.overwrite(Which::First).unwrap();
    assert_eq!(read(&path).unwrap().milk.milk_l, 7.0);
}

#[test]
fn a_file_that_was_only_written_again_with_the_same_content_is_no_change() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("trial.vat.ron");
    Session::open(Design::default(), None).unwrap().save(&path).unwrap();
    let mut session = Session::open_file(&path).unwrap();
    std::fs::write(&path, std::fs::read(&path).unwrap()).unwrap();
    session.apply(Command::SetTitle("Second".into())).unwrap();
    session.save(&path).unwrap();
    assert_eq!(read(&path).unwrap().title, "Second");
}
