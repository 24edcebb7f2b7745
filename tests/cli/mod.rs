//! Tests of `src/cli`, by running the program.

mod compare;
mod definition;
mod endings;
mod exports;
mod figures;
mod germs;
mod lift;
mod log;
mod names;
mod notice;
mod offline;
mod old_names;
mod outputs;
mod parameters;
mod pickling;
mod plan;
mod scale;
mod shop;
mod signature;
mod solve;
mod souring;
mod spread;
mod stages;
mod streams;
mod units;
mod why;

use std::io::Write;
use std::process::{Command, Stdio};

/// What a run of the program gave.
struct Run {
    code: i32,
    data: String,
    words: String,
}

impl Run {
    /// Returns the data as JSON.
    fn json(&self) -> serde_json::Value {
        serde_json::from_str(&self.data).unwrap_or_else(|error| panic!("{error} in {}", self.data))
    }
}

/// Runs the program.
fn run(arguments: &[&str]) -> Run {
    run_with(arguments, "")
}

/// Runs the program with something on its standard input.
fn run_with(arguments: &[&str], input: &str) -> Run {
    let mut child = Command::new(env!("CARGO_BIN_EXE_vatsketch"))
        .args(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    // The program may end without reading; that is no trouble here.
    let _ = child.stdin.take().unwrap().write_all(input.as_bytes());
    let output = child.wait_with_output().unwrap();
    Run {
        code: output.status.code().unwrap(),
        data: String::from_utf8(output.stdout).unwrap(),
        words: String::from_utf8(output.stderr).unwrap(),
    }
}

/// Runs `stage` with some settings, as JSON.
fn stage(name: &str, set: &[&str]) -> Run {
    let mut arguments = vec!["stage", name, "--json"];
    for setting in set {
        arguments.extend(["--set", setting]);
    }
    run(&arguments)
}

/// Returns the file of an example.
fn example(name: &str) -> String {
    format!("{}/resources/examples/{name}.vat.ron", env!("CARGO_MANIFEST_DIR"))
}
