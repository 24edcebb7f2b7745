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
    let file = super::example("warm-cabinet");
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

/// Every way to the terminal: what was drawn to look like an order, or to be read backwards, is not there; JSON keeps it, as a number.
#[test]
fn neither_control_characters_nor_turned_writing_reach_the_terminal() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a\u{1b}[31m\u{202e}b.vat.ron");
    let bad = "x\u{9b}31m\u{202e}\u{2066}\u{7f}";
    let text = format!(
        "(format: 7, title: \"{bad}\", note: \"{bad}\", week: (wish: start_at(\"2031-05-09 18:30\")), supplies: (currency: \"\u{202e}\u{9b}E\", goods: [(good: milk, packages: [(size: 1.0, price: 1.0)])]))"
    );
    std::fs::write(&path, text).unwrap();
    let torn = folder.path().join("torn\u{1b}[2J\u{202e}.vat.ron");
    std::fs::write(&torn, "(format: 7, \u{202e}\u{9b}: 1)").unwrap();
    let [path, torn] = [&path, &torn].map(|path| path.to_str().unwrap());
    let out = format!("{}/o\u{1b}\u{202e}.csv", folder.path().display());
    let as_of = ["--as-of", "2031-05-06T08:00"];
    for arguments in [
        vec!["figures", path],
        vec!["figures", path, "--json"],
        vec!["figures", torn],
        [&["plan", path][..], &as_of].concat(),
        [&["plan", path, "--json"][..], &as_of].concat(),
        [&["plan", path, "--zone", "\u{202e}\u{9b}"][..], &as_of].concat(),
        [&["plan", path, "--here", "\u{202e}\u{9b}@9:00"][..], &as_of].concat(),
        vec!["shop", path],
        vec!["shop", path, "--json"],
        vec!["compare", path, "--milk", "sheep"],
        vec!["compare", path, "--milk", "sheep", "--json"],
        vec!["export", path, "--to", "-", "--as", "txt"],
        vec!["export", path, "--to", "-", "--as", "ics"],
        vec!["export", path, "--to", &out],
        vec!["export", path, "--to", "\u{202e}\u{9b}"],
        vec!["stage", "\u{202e}\u{9b}"],
        vec!["\u{202e}\u{9b}"],
        vec!["figures", path, "--\u{202e}\u{9b}"],
        vec!["figures", path, "--set", "\u{202e}\u{9b}=3"],
    ] {
        let ran = program().args(&arguments).output().unwrap();
        let shown = String::from_utf8([ran.stdout, ran.stderr].concat()).unwrap();
        let order = |letter: char| letter.is_control() && !matches!(letter, '\n' | '\r');
        let turns = |letter: char| matches!(letter, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}');
        assert!(!shown.is_empty() && !shown.contains(|letter| order(letter) || turns(letter)), "{arguments:?}: {shown:?}");
    }
    let json: serde_json::Value =
        serde_json::from_slice(&program().args(["figures", path, "--json"]).output().unwrap().stdout).unwrap();
    assert_eq!(json["title"], bad, "a reader of JSON gets the title as it is");
}

#[cfg(feature = "paper")]
#[test]
fn letters_that_the_paper_cannot_show_are_told() {
    let design = "(format: 7, title: \"奶酪 🧀 Käse\", note: \"ชีส\")";
    let warned = "cannot be printed and become “?”: 奶 酪 🧀 ช";
    for arguments in
        [&["export", "-", "--to", "-", "--as", "pdf"][..], &["compare", "-", "--milk", "sheep", "--to", "-", "--as", "pdf"]]
    {
        let mut child =
            program().args(arguments).stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().unwrap();
        std::io::Write::write_all(&mut child.stdin.take().unwrap(), design.as_bytes()).unwrap();
        let ran = child.wait_with_output().unwrap();
        let words = String::from_utf8(ran.stderr).unwrap();
        assert!(ran.status.success() && ran.stdout.starts_with(b"%PDF-") && words.contains(warned), "{words}");
    }
    let text = super::run_with(&["export", "-", "--to", "-", "--as", "txt"], design);
    assert!(text.data.contains("奶酪 🧀 Käse") && text.words.is_empty(), "plain text needs no fonts: {}", text.words);
}
