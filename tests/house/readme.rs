//! The README says only what is so.

use super::top;

fn readme() -> String {
    std::fs::read_to_string(top().join("README.md")).unwrap()
}

/// Returns the lines of the README that are commands of the program, as they stand there.
fn commands() -> Vec<String> {
    let lines = readme();
    let indented = lines.lines().filter_map(|line| line.strip_prefix("    "));
    indented.filter(|line| line.starts_with("vatsketch ")).map(str::to_owned).collect()
}

/// Run by a shell in a folder that holds the examples, with the program on its path, whatever day it is.
#[cfg(unix)]
#[test]
fn every_command_in_the_readme_runs_as_it_is_written() {
    let folder = tempfile::tempdir().unwrap();
    std::os::unix::fs::symlink(top().join("resources"), folder.path().join("resources")).unwrap();
    let program = std::path::Path::new(env!("CARGO_BIN_EXE_vatsketch"));
    let path = std::env::join_paths([program.parent().unwrap(), "/usr/bin".as_ref(), "/bin".as_ref()]).unwrap();
    let mut wrong = Vec::new();
    for line in commands() {
        if cfg!(not(feature = "paper")) && [".pdf", ".svg", ".png"].iter().any(|drawn| line.contains(drawn)) {
            continue;
        }
        let ran = std::process::Command::new("sh").args(["-c", &line]).current_dir(&folder).env("PATH", &path).output().unwrap();
        if !ran.status.success() {
            wrong.push(format!("`{line}` ends with {:?}: {}", ran.status.code(), String::from_utf8_lossy(&ran.stderr)));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// A date without the day from which it is planned would be past one day.
#[test]
fn the_readme_shows_every_command_and_no_date_that_can_pass() {
    let (commands, help) =
        (commands(), std::process::Command::new(env!("CARGO_BIN_EXE_vatsketch")).arg("--help").output().unwrap());
    let help = String::from_utf8(help.stdout).unwrap();
    let list = help.split_once("Commands:\n").unwrap().1.split("\n\n").next().unwrap();
    for name in list.lines().filter_map(|line| line.strip_prefix("  ")).filter(|line| !line.starts_with(' ')) {
        let name = name.split_whitespace().next().unwrap();
        let shown = commands.iter().any(|line| line.split_whitespace().nth(1) == Some(name));
        assert!(shown || name == "help", "the README has no example of `{name}`");
    }
    for line in commands.iter().filter(|line| line.contains("--finished-by") || line.contains("--here")) {
        assert!(line.contains("--as-of"), "{line}");
    }
}

/// The table of the soured vat and its twin holds what the program says of them.
#[test]
fn the_two_vats_of_the_readme_are_those_of_the_program() {
    let files = ["resources/examples/first-vat.vat.ron", "resources/examples/unsoured-vat.vat.ron"];
    let told = std::process::Command::new(env!("CARGO_BIN_EXE_vatsketch")).arg("compare").args(files).current_dir(top()).output();
    let told = String::from_utf8(told.unwrap().stdout).unwrap();
    let readme = readme();
    let table = readme.split_once("| | soured | not soured |\n|---|---|---|\n").unwrap().1.split("\n\n").next().unwrap();
    assert!(table.lines().count() >= 5);
    for row in table.lines() {
        let cells: Vec<&str> = row.trim_matches('|').split('|').map(str::trim).collect();
        let line = told.lines().find(|line| line.trim_start().starts_with(&format!("{}  ", cells[0]))).unwrap();
        let shown: Vec<&str> = line.split("  ").map(str::trim).filter(|cell| !cell.is_empty()).collect();
        assert_eq!(cells[..], shown[..3], "{line}");
    }
}

/// The numbers are those of the program and of its help.
#[test]
fn the_readme_and_the_help_name_every_exit_code() {
    use vatsketch::cli::Ending;
    let all = [Ending::Done, Ending::StageFailed, Ending::BadArguments, Ending::FileTrouble, Ending::NoWindow];
    let help = std::process::Command::new(env!("CARGO_BIN_EXE_vatsketch")).arg("--help").output().unwrap();
    for text in [readme(), String::from_utf8(help.stdout).unwrap()] {
        let codes = text.split_once("Exit codes: ").unwrap().1.split("\n\n").next().unwrap();
        let codes = codes.split_whitespace().collect::<Vec<_>>().join(" ");
        for (ending, words) in all.iter().zip(["done", "a stage", "wrong arguments", "a problem with a file", "no window"]) {
            assert!(codes.contains(&format!("{} {words}", *ending as u8)), "{ending:?} in {codes}");
        }
    }
}

#[test]
fn every_picture_and_link_of_the_readme_exists() {
    for text in [readme(), std::fs::read_to_string(top().join("DEVELOPERS.md")).unwrap()] {
        for part in text.split("](").skip(1) {
            let target = part.split(')').next().unwrap();
            if !target.starts_with("http") && !target.starts_with('#') {
                assert!(top().join(target).exists(), "`{target}` is linked but does not exist");
            }
        }
    }
}

#[test]
fn the_readme_gives_the_two_commands() {
    let text = readme();
    assert!(text.contains("cargo run --release"), "how to open the window");
    assert!(text.contains("cargo test"), "how to run the tests");
}
