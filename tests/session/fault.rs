//! The log of faults.

use vatsketch::session::FaultLog;

#[test]
fn a_thread_that_breaks_down_is_noted_with_its_name_and_reason() {
    let folder = tempfile::tempdir().unwrap();
    let log = FaultLog::in_folder(&folder.path().join("not yet there"));
    let normal = std::panic::take_hook();
    std::panic::set_hook(Box::new(log.clone().hook(|_| ())));
    let thread = std::thread::Builder::new().name("invented thread".to_owned());
    let ended = thread.spawn(|| panic!("an invented fault of one thread")).unwrap().join();
    std::panic::set_hook(normal);
    assert!(ended.is_err());
    let noted = std::fs::read_to_string(log.path()).unwrap();
    assert!(noted.contains("thread invented thread") && noted.contains("an invented fault of one thread"), "{noted}");
}

#[test]
fn a_log_that_cannot_be_written_is_no_second_fault() {
    let folder = tempfile::tempdir().unwrap();
    let in_the_way = folder.path().join("a file");
    std::fs::write(&in_the_way, "not a folder").unwrap();
    assert!(FaultLog::in_folder(&in_the_way).note("nowhere to go").is_err());
}
