//! What is made from the definition of the command line: completions and the manual page.

use super::run;
use std::io::Write;
use std::process::{Command, Stdio};

/// Returns the names of all commands, read off the help.
fn commands() -> Vec<String> {
    let help = run(&["--help"]).data;
    let list = help.split_once("Commands:\n").unwrap().1.split("\n\n").next().unwrap().to_owned();
    let names = list.lines().filter(|line| line.starts_with("  ") && !line.starts_with("   "));
    names.map(|line| line.split_whitespace().next().unwrap().to_owned()).collect()
}

#[test]
fn completions_know_every_command_in_every_shell() {
    let commands = commands();
    assert!(commands.len() >= 13 && commands.contains(&"completions".to_owned()), "{commands:?}");
    for shell in ["bash", "zsh", "fish", "elvish", "powershell"] {
        let run = run(&["completions", shell]);
        assert_eq!((run.code, run.words.as_str()), (0, ""), "{shell}");
        for name in &commands {
            assert!(run.data.contains(name.as_str()), "{shell} does not complete `{name}`");
        }
        // Not every shell's script completes the values of what needs no option.
        let values = ["pickling", "own-carton", "drying_loss", "buffalo", "letter"];
        let known = values.iter().filter(|name| run.data.contains(**name)).count();
        let wanted = match shell {
            "bash" | "zsh" => 5,
            "fish" => 3,
            _ => 0,
        };
        assert!(known >= wanted, "{shell} completes only {known} of {values:?}");
    }
    assert_eq!(run(&["completions", "tcsh"]).code, 2);
}

/// The shell itself says whether it can read the script, and what it completes.
#[test]
fn bash_completes_a_stage_where_there_is_bash() {
    let script = run(&["completions", "bash"]).data;
    let Ok(mut bash) = Command::new("bash").arg("-s").stdin(Stdio::piped()).stdout(Stdio::piped()).spawn() else { return };
    let ask =
        "\nCOMP_WORDS=(vatsketch stage pick) COMP_CWORD=2\n_vatsketch vatsketch pick stage\nprintf '%s ' \"${COMPREPLY[@]}\"\n";
    bash.stdin.take().unwrap().write_all(format!("{script}{ask}").as_bytes()).unwrap();
    let said = String::from_utf8(bash.wait_with_output().unwrap().stdout).unwrap();
    assert_eq!(said.trim(), "pickling");
}

/// The parts of a page are those that man-pages(7) lists for a command.
#[test]
fn the_manual_page_names_every_command_and_the_exit_codes() {
    let page = run(&["man"]);
    assert_eq!((page.code, page.words.as_str()), (0, ""));
    for part in [".TH vatsketch 1", ".SH NAME", ".SH SYNOPSIS", ".SH DESCRIPTION", ".SH OPTIONS", "Exit codes: 0 done"] {
        assert!(page.data.contains(part), "{part} in {}", page.data);
    }
    for name in commands() {
        // A dash that is not to be broken or changed is written with a backslash.
        let escaped = name.replace('-', "\\-");
        assert!(page.data.contains(&format!("vatsketch\\-{escaped}")), "{name} in {}", page.data);
        let of_command = run(&["man", &name]);
        assert!(of_command.code == 0 && of_command.data.contains(".SH SYNOPSIS"), "{name}");
    }
    let unknown = run(&["man", "exprot"]);
    assert!(unknown.code == 2 && unknown.words.contains("did you mean `export`?"), "{}", unknown.words);
}
