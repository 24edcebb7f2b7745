//! What goes to a terminal, a full disk, a reader that has gone, and what comes from a broken input.

use std::process::{Command, Stdio};

fn program() -> Command {
    Command::new(env!("CARGO_BIN_EXE_vatsketch"))
}

#[test]
fn a_file_cannot_give_orders_to_the_terminal() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("trial.vat.ron");
    for text in
        ["(format: 1, title: \"a\\u{1b}[31mred\\u{7}\")", "(format: 1, milk: (milk_kind: r#\u{1b}))", "(format: 1, \u{1b}[2J: 1)"]
    {
        std::fs::write(&path, text).unwrap();
        let ran = program().arg("figures").arg(&path).output().unwrap();
        let shown = [ran.stdout, ran.stderr].concat();
        assert!(
            !shown.is_empty() && shown.iter().all(|byte| *byte == b'\n' || *byte >= b' '),
            "{}",
            String::from_utf8_lossy(&shown)
        );
    }
}

#[test]
fn a_reader_that_has_gone_is_no_trouble() {
    let mut child = program().args(["inputs", "--json"]).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().unwrap();
    drop(child.stdout.take());
    let ran = child.wait_with_output().unwrap();
    assert_eq!((ran.status.code(), ran.stderr.as_slice()), (Some(0), [].as_slice()));
}

#[cfg(target_os = "linux")]
#[test]
fn a_full_disk_behind_the_output_ends_with_three() {
    let file = super::example("first-vat");
    for arguments in [&["inputs"][..], &["plan", &file, "--start", "2031-05-09T17:20"], &["shop", &file, "--json"]] {
        let full = std::fs::OpenOptions::new().write(true).open("/dev/full").unwrap();
        let ran = program().args(arguments).stdout(full).output().unwrap();
        let words = String::from_utf8(ran.stderr).unwrap();
        assert_eq!(ran.status.code(), Some(3), "{arguments:?}");
        assert!(words.contains("cannot write the output"), "{words}");
    }
}

#[cfg(unix)]
#[test]
fn an_input_that_cannot_be_read_is_called_an_input() {
    let folder = tempfile::tempdir().unwrap();
    let no_text = std::fs::File::open(folder.path()).unwrap();
    let ran = program().args(["figures", "-"]).stdin(no_text).output().unwrap();
    let words = String::from_utf8(ran.stderr).unwrap();
    assert_eq!(ran.status.code(), Some(3));
    assert!(words.contains("cannot read standard input"), "{words}");
}
