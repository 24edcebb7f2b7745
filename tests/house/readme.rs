//! The README says only what is so.

use super::top;

fn readme() -> String {
    std::fs::read_to_string(top().join("README.md")).unwrap()
}

#[test]
fn every_command_in_the_readme_is_one_that_the_program_knows() {
    let mut commands = 0;
    for line in readme().lines().map(str::trim).filter(|line| line.starts_with("vatsketch ")) {
        let word = line.split_whitespace().nth(1).unwrap();
        if word.contains('.') || word.starts_with('-') {
            continue;
        }
        let help = std::process::Command::new(env!("CARGO_BIN_EXE_vatsketch")).args([word, "--help"]).output().unwrap();
        assert!(help.status.success(), "the README names `{line}`, but `vatsketch {word} --help` fails");
        commands += 1;
    }
    assert!(commands >= 4, "the README shows only {commands} commands");
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
