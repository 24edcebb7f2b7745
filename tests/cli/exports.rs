//! `export`: each kind of file by its ending, and what is refused.

use super::{Run, example, run};
use jiff::civil::date;
use jiff::tz::TimeZone;
use std::path::Path;
use vatsketch::batch::batch;
use vatsketch::caution::cautions;
use vatsketch::curve::{CurveKey, curve};
use vatsketch::design::Wish;
use vatsketch::export::{calendar, curve_csv, figures_csv, html, text};
use vatsketch::file::DesignFile;
use vatsketch::plan::{Now, kitchen_week};
use vatsketch::report::plan;
use vatsketch::units::Units;

/// Exports the first example into a folder, with more arguments.
fn export(folder: &Path, name: &str, more: &[&str]) -> Run {
    let (file, to) = (example("warm-cabinet"), folder.join(name));
    let mut arguments = vec!["export", &file, "--to", to.to_str().unwrap()];
    arguments.extend(more);
    run(&arguments)
}

#[test]
fn the_ending_says_what_is_written_and_it_is_what_the_library_gives() {
    let folder = tempfile::tempdir().unwrap();
    let batch = batch(&crate::example("warm-cabinet")).unwrap();
    let curve = |key| curve_csv(&curve(&batch, key), &cautions(&batch), Units::METRIC).unwrap();
    let wanted: [(&str, &[&str], Vec<u8>); 6] = [
        ("plan.html", &[], html(&plan(&batch)).into_bytes()),
        ("figures.csv", &[], figures_csv(&batch).unwrap()),
        ("PLAN.TXT", &[], text(&plan(&batch)).into_bytes()),
        ("figures.json", &[], run(&["figures", &example("warm-cabinet"), "--json"]).data.into_bytes()),
        ("warming.csv", &["--curve", "warming"], curve(CurveKey::Warming)),
        ("loss.csv", &["--curve", "drying_loss"], curve(CurveKey::DryingLoss)),
    ];
    for (name, more, bytes) in wanted {
        let run = export(folder.path(), name, more);
        assert_eq!((run.code, run.data.as_str()), (0, ""), "{name}: {}", run.words);
        assert!(run.words.starts_with("wrote ") && run.words.contains(name), "{}", run.words);
        assert!(std::fs::read(folder.path().join(name)).unwrap() == bytes, "{name} is not what the library gives");
    }
}

#[test]
fn a_calendar_is_that_of_the_library_for_the_wish_on_the_command_line() {
    let folder = tempfile::tempdir().unwrap();
    let when = ["--start", "2031-05-09T17:20", "--zone", "Etc/UTC", "--as-of", "2031-05-06T08:00"];
    let run = export(folder.path(), "week.ics", &when);
    assert_eq!((run.code, run.data.as_str()), (0, ""), "{}", run.words);
    let mut design = crate::example("warm-cabinet");
    design.week.wish = Wish::StartAt(date(2031, 5, 9).at(17, 20, 0, 0));
    let now = Now { at: date(2031, 5, 6).at(8, 0, 0, 0), zone: TimeZone::UTC };
    let batch = batch(&design).unwrap();
    let week = kitchen_week(&batch, &now).unwrap().unwrap();
    let written = std::fs::read(folder.path().join("week.ics")).unwrap();
    assert!(written == calendar(&week, &batch, None, &now, &[], Units::METRIC).unwrap());
    // A stage that fails leaves the tasks before it.
    let failing = [&when[..], &["--set", "mould_count=1"]].concat();
    assert_eq!(export(folder.path(), "part.ics", &failing).code, 1);
    let part = std::fs::read_to_string(folder.path().join("part.ics")).unwrap();
    assert!(part.contains("SUMMARY:Stir in the rennet – ") && !part.contains("Unmould"));
}

/// Words go to standard error: the calendar is the same with and without them.
#[test]
fn a_calendar_goes_by_the_id_and_without_one_says_what_will_change() {
    let folder = tempfile::tempdir().unwrap();
    let to = folder.path().join("week.ics");
    let id = "5b0f6a4e-3c1d-4f7a-9d2e-8a61c70b94f3";
    for (name, text) in [("old", "(format: 3)".to_owned()), ("named", format!("(format: 7, id: \"{id}\")"))] {
        let path = folder.path().join(format!("{name}.vat.ron"));
        std::fs::write(&path, &text).unwrap();
        let arguments = ["--start", "2031-05-09T17:20", "--zone", "Etc/UTC", "--as-of", "2031-05-06T08:00"];
        let file = path.to_str().unwrap();
        let run = run(&[&["export", file, "--to", to.to_str().unwrap()][..], &arguments].concat());
        assert_eq!((run.code, run.data.as_str()), (0, ""), "{}", run.words);
        let DesignFile { id, mut design } = DesignFile::from_text(&text).unwrap();
        assert_eq!(run.words.contains("may show them twice"), id.is_none(), "{}", run.words);
        design.week.wish = Wish::StartAt(date(2031, 5, 9).at(17, 20, 0, 0));
        let now = Now { at: date(2031, 5, 6).at(8, 0, 0, 0), zone: TimeZone::UTC };
        let batch = batch(&design).unwrap();
        let week = kitchen_week(&batch, &now).unwrap().unwrap();
        assert!(std::fs::read(&to).unwrap() == calendar(&week, &batch, id, &now, &[], Units::METRIC).unwrap(), "{name}");
    }
}

#[test]
fn a_calendar_without_a_time_or_of_a_time_that_cannot_be_is_refused_and_nothing_is_written() {
    let folder = tempfile::tempdir().unwrap();
    for (more, code, said) in [
        (&[][..], 2, "--start, --soon or --finished-by"),
        (&["--finished-by", "2031-05-06T07:00", "--as-of", "2031-05-06T08:00"], 1, "is in the past"),
        (&["--finished-by", "2031-05-07T07:00", "--as-of", "2031-05-06T08:00"], 1, "at the earliest"),
        (&["--start", "noon"], 2, "2031-05-09 18:30"),
        (&["--start", "2031-05-07T07:00", "--curve", "warming"], 2, "not as .ics"),
    ] {
        let run = export(folder.path(), "week.ics", more);
        assert_eq!(run.code, code, "{more:?}: {}", run.words);
        assert!(run.words.contains(said), "{more:?}: {}", run.words);
    }
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 0);
}

#[test]
fn a_plan_as_text_has_the_days_of_the_wish_and_says_why_it_has_none() {
    let folder = tempfile::tempdir().unwrap();
    let timed = export(folder.path(), "vat.txt", &["--start", "2031-05-09T14:30", "--as-of", "2031-05-05T08:00"]);
    assert_eq!(timed.code, 0, "{}", timed.words);
    let text = std::fs::read_to_string(folder.path().join("vat.txt")).unwrap();
    assert!(text.contains("=== Friday 9 May 2031 ===") && text.contains("[ ] 14:30"), "{text}");
    let late = export(folder.path(), "vat.txt", &["--finished-by", "2031-05-06T08:00", "--as-of", "2031-05-05T08:00"]);
    assert!(late.words.contains("times only count") && late.words.contains("at the earliest"), "{}", late.words);
    assert_eq!(late.code, 1, "a time that cannot be kept");
    let wrongs: [&[&str]; 2] = [
        &["--here", "cutt@2031-05-05T07:00", "--as-of", "2031-05-05T08:00"],
        &["--zone", "Moon/Crater", "--start", "2031-05-06T08:00", "--as-of", "2031-05-05T08:00"],
    ];
    for wrong in wrongs {
        let refused = export(folder.path(), "wrong.txt", wrong);
        assert_eq!(refused.code, 2, "{wrong:?}: {}", refused.words);
        assert!(!folder.path().join("wrong.txt").exists());
    }
    let text = std::fs::read_to_string(folder.path().join("vat.txt")).unwrap();
    assert!(text.contains("No clock times") && text.contains("Times count from the start of warming."), "{text}");
}

#[cfg(feature = "paper")]
#[test]
fn pictures_and_paper_are_written_for_every_curve_and_both_sheets() {
    let folder = tempfile::tempdir().unwrap();
    for key in CurveKey::ALL {
        for (ending, begins) in [("svg", b"<svg".as_slice()), ("png", b"\x89PNG")] {
            let name = format!("{}.{ending}", key.key());
            let run = export(folder.path(), &name, &["--curve", key.key()]);
            assert_eq!(run.code, 0, "{}", run.words);
            assert!(std::fs::read(folder.path().join(name)).unwrap().starts_with(begins));
        }
    }
    for paper in ["a4", "letter"] {
        assert_eq!(export(folder.path(), &format!("{paper}.pdf"), &["--paper", paper]).code, 0);
    }
    assert_eq!(export(folder.path(), "more.pdf", &["--with", "shopping,labels"]).code, 0);
    let sheet = |name: &str| std::fs::read(folder.path().join(name)).unwrap();
    assert!(sheet("more.pdf").len() > sheet("a4.pdf").len());
    assert_eq!(export(folder.path(), "label.png", &["--with", "labels"]).code, 0);
    assert!(sheet("label.png").starts_with(b"\x89PNG"));
    let none = export(folder.path(), "none.png", &["--with", "labels", "--set", "pickled=no"]);
    assert!(none.code == 2 && none.words.contains("no cheese of this design goes into a jar"), "{}", none.words);
    assert!(sheet("a4.pdf").starts_with(b"%PDF-") && sheet("a4.pdf") != sheet("letter.pdf"));
}

#[cfg(not(feature = "paper"))]
#[test]
fn a_program_without_paper_says_so_and_writes_nothing() {
    let folder = tempfile::tempdir().unwrap();
    for (name, more) in
        [("plan.pdf", [].as_slice()), ("warming.svg", &["--curve", "warming"]), ("warming.png", &["--curve", "warming"])]
    {
        let run = export(folder.path(), name, more);
        assert_eq!(run.code, 1);
        assert!(run.words.contains("--features paper"), "{}", run.words);
    }
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 0);
}

#[test]
fn what_cannot_be_written_is_refused_with_what_can() {
    let folder = tempfile::tempdir().unwrap();
    let every_ending = ".pdf, .txt, .html, .ics, .csv, .json, .svg or .png";
    for (name, more, word) in [
        ("plan.docx", [].as_slice(), every_ending),
        ("plan", &[], every_ending),
        (".pdf", &[], every_ending),
        ("curve.svg", &[], "say which with --curve: warming, drying_loss, whey_drip"),
        ("curve.png", &[], "say which with --curve: warming, drying_loss, whey_drip"),
        ("curve.csv", &["--curve", "wraming"], "there is no curve called `wraming`; there are warming, drying_loss"),
        ("curve.pdf", &["--curve", "warming"], "a curve is written as .csv, .svg or .png, not as .pdf"),
        ("curve.json", &["--curve", "warming"], "not as .json"),
        ("plan.pdf", &["--paper", "a3"], "a4, letter"),
        ("plan.pdf", &["--with", "lables"], "there is no part called `lables`; there are shopping, troubles, labels"),
        ("plan.txt", &["--with", "labels"], "--with is for the pages of a .pdf"),
    ] {
        let run = export(folder.path(), name, more);
        assert_eq!(run.code, 2, "{name}: {}", run.words);
        assert!(run.words.contains(word), "{name}: {}", run.words);
    }
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 0, "nothing was written");
}

#[test]
fn a_stage_that_fails_leaves_its_curve_unwritten_and_the_rest_written() {
    let folder = tempfile::tempdir().unwrap();
    let failing = ["--set", "mould_count=1"];
    let gone = export(folder.path(), "loss.csv", &[&failing[..], &["--curve", "drying_loss"]].concat());
    assert_eq!(gone.code, 1);
    assert!(gone.words.contains("there is no curve “Drying loss” to write: waits for"), "{}", gone.words);
    assert!(!folder.path().join("loss.csv").exists());
    assert_eq!(export(folder.path(), "warming.csv", &[&failing[..], &["--curve", "warming"]].concat()).code, 0);
    assert_eq!(export(folder.path(), "figures.csv", &failing).code, 1);
    assert!(std::fs::read_to_string(folder.path().join("figures.csv")).unwrap().contains("failed: the curd does not fit"));
}

#[test]
fn a_missing_folder_is_named() {
    let folder = tempfile::tempdir().unwrap();
    let run = export(folder.path(), "none/plan.txt", &[]);
    assert_eq!(run.code, 3, "{}", run.words);
    assert!(run.words.contains("there is no folder ") && run.words.contains("none"), "{}", run.words);
}

/// A limit on the size of a file stands for a full disk: writing stops half-way, with an error of the system.
#[cfg(unix)]
#[test]
fn a_disk_that_is_full_leaves_the_old_file_and_nothing_half_written() {
    let folder = tempfile::tempdir().unwrap();
    for (name, more) in [("figures.csv", &[][..]), ("week.ics", &["--start", "2031-05-09T17:20"])] {
        let to = folder.path().join(name);
        std::fs::write(&to, "as it was").unwrap();
        let limited = std::process::Command::new("sh")
            .args(["-c", "trap '' XFSZ; ulimit -f 2; exec \"$0\" \"$@\"", env!("CARGO_BIN_EXE_vatsketch"), "export"])
            .args([example("warm-cabinet").as_str(), "--to", to.to_str().unwrap()])
            .args(more)
            .output()
            .unwrap();
        let words = String::from_utf8(limited.stderr).unwrap();
        assert_eq!(limited.status.code(), Some(3), "{words}");
        assert!(words.contains("cannot save") && words.contains("the old file is as it was"), "{words}");
        assert_eq!(std::fs::read_to_string(&to).unwrap(), "as it was");
    }
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 2, "nothing half-written stays");
}
