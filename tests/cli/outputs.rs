//! `--to -` and `--as`: standard output holds the file and nothing else.

use super::{example, run};
use std::process::Command;

/// Runs the program; returns its exit code, the bytes of its output and its words.
fn bytes(arguments: &[&str]) -> (i32, Vec<u8>, String) {
    let ran = Command::new(env!("CARGO_BIN_EXE_vatsketch")).args(arguments).output().unwrap();
    (ran.status.code().unwrap(), ran.stdout, String::from_utf8(ran.stderr).unwrap())
}

#[test]
fn standard_output_gets_what_a_file_would_hold_and_nothing_else() {
    let (file, folder) = (example("warm-cabinet"), tempfile::tempdir().unwrap());
    let dated = ["--start", "2031-05-09T17:20", "--as-of", "2031-05-06T08:00"];
    for (kind, more, begins) in [
        ("txt", &dated[..], &b"Twelve"[..]),
        ("ics", &dated, b"BEGIN:VCALENDAR\r\n"),
        ("csv", &[], b"stage,key,"),
        ("json", &[], b"{\n  \"vatsketch\": {"),
        ("csv", &["--curve", "warming"], b"\"time from the start"),
        #[cfg(feature = "paper")]
        ("pdf", &dated, b"%PDF-"),
        #[cfg(feature = "paper")]
        ("svg", &["--curve", "warming"], b"<svg"),
        #[cfg(feature = "paper")]
        ("png", &["--curve", "warming"], b"\x89PNG"),
    ] {
        // The name ends in something else: what --as says counts.
        let path = folder.path().join("out.dat");
        let to_file = [&["export", &file, "--to", path.to_str().unwrap(), "--as", kind], more].concat();
        let (code, nothing, words) = bytes(&to_file);
        assert!(code == 0 && nothing.is_empty() && words.contains("wrote "), "{kind}: {code} {words}");
        let (code, out, words) = bytes(&[&["export", &file, "--to", "-", "--as", kind], more].concat());
        // That the events of a design without an id may come twice is said all the same, but not there.
        assert!(code == 0 && !words.contains("wrote") && (words.is_empty() || kind == "ics"), "{kind}: {code} {words}");
        assert!(out.starts_with(begins), "{kind}");
        assert!(out == std::fs::read(&path).unwrap(), "{kind}: standard output and file differ");
    }
}

#[test]
fn a_comparison_goes_to_standard_output_as_well() {
    let file = example("warm-cabinet");
    let compare = |more: &[&str]| bytes(&[&["compare", &file, "--milk", "sheep"], more].concat());
    assert_eq!(compare(&["--to", "-", "--as", "json"]), compare(&["--json"]));
    assert_eq!(compare(&["--to", "-", "--as", "txt"]), compare(&[]));
    #[cfg(feature = "paper")]
    {
        let (code, out, words) = compare(&["--to", "-", "--as", "pdf"]);
        assert!(code == 0 && words.is_empty() && out.starts_with(b"%PDF-"), "{code} {words}");
    }
    let (code, out, words) = compare(&["--to", "-", "--as", "ics"]);
    assert!(code == 2 && out.is_empty() && words.contains("choose .pdf, .txt or .json"), "{words}");
}

#[test]
fn what_is_missing_is_said_before_anything_is_written() {
    let file = example("warm-cabinet");
    for (more, words) in [
        (&["--to", "-"][..], "add --as ("),
        (&["--as", "pdf"], "add --to, as in --to -"),
        (&[], "say with --to where to write"),
        (&["--to", "plan.docx"], "the name must end in .pdf"),
        (
            &["--to", "-", "--as", "docx"],
            "there is no kind of file called `docx`; there are pdf, txt, html, ics, csv, json, svg, png",
        ),
        (&["--to", "-", "--as", "pfd"], "did you mean `pdf`?"),
        (&["--to", "-", "--as", "svg"], "say which with --curve"),
    ] {
        let run = run(&[&["export", &file], more].concat());
        assert_eq!((run.code, run.data.as_str()), (2, ""), "{more:?}: {}", run.words);
        assert!(run.words.contains(words), "{more:?}: {}", run.words);
    }
}
