//! A program that is killed while it saves: whatever the moment, a file is whole, the old version or the new one, and so is the last version beside it.

use std::io::{BufRead, BufReader};
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::Duration;
use vatsketch::design::Design;
use vatsketch::file::{read, to_text, write_safely};

/// Names the file that the killed program saves; set only by the test that kills it.
const FILE: &str = "SAVED_UNTIL_KILLED";
/// Litres of the designs that are saved in turn.
const LITRES: [f64; 2] = [5.0, 7.0];

fn design(milk_l: f64) -> Design {
    let mut design = Design::default();
    design.milk.milk_l = milk_l;
    // Long, so that writing takes its time.
    design.note = "An invented scenario. ".repeat(150);
    design
}

/// The program that is killed: it saves two designs in turn, and says when it begins.
#[test]
#[ignore = "saves without an end; `a_program_that_is_killed_while_it_saves_…` runs and kills it"]
fn saves_until_it_is_killed() {
    let Ok(file) = std::env::var(FILE) else { return };
    let texts = LITRES.map(|litres| to_text(&design(litres)));
    eprintln!("begins");
    for text in texts.iter().cycle() {
        write_safely(Path::new(&file), text.as_bytes(), true).unwrap();
    }
}

fn kill(times: u64) {
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("vat.vat.ron");
    let last = folder.path().join("vat.vat.ron.bak");
    write_safely(&file, to_text(&design(LITRES[0])).as_bytes(), true).unwrap();
    let whole = |path: &Path| LITRES.iter().any(|litres| read(path).unwrap() == design(*litres));
    for number in 0..times {
        let mut saving = Command::new(std::env::current_exe().unwrap())
            .args(["--ignored", "--exact", "file::killed::saves_until_it_is_killed", "--nocapture"])
            .env(FILE, &file)
            .stdout(Stdio::null())
            .stderr(Stdio::piped())
            .spawn()
            .unwrap();
        let mut said = BufReader::new(saving.stderr.take().unwrap()).lines();
        assert_eq!(said.next().unwrap().unwrap(), "begins");
        // From before the first write to well into the tenth.
        std::thread::sleep(Duration::from_micros(number * 7_919 % 20_000));
        saving.kill().unwrap();
        saving.wait().unwrap();
        assert!(whole(&file), "kill {number}: the file is broken");
        assert!(!last.exists() || whole(&last), "kill {number}: the last version is broken");
    }
    // The next one to save clears away what was left.
    write_safely(&file, to_text(&design(6.0)).as_bytes(), true).unwrap();
    let names = std::fs::read_dir(folder.path()).unwrap().map(|entry| entry.unwrap().file_name());
    assert!(names.filter(|name| name.to_string_lossy().contains(".part")).count() == 0);
}

#[test]
fn a_program_that_is_killed_while_it_saves_leaves_a_whole_file() {
    kill(25);
}

#[test]
#[ignore = "kills a thousand programs"]
fn a_thousand_programs_that_are_killed_leave_whole_files() {
    kill(1000);
}
