//! The program asks no network: it does everything where there is none.
#![cfg(unix)]

use super::example;
use std::process::Command;

/// Returns a command that runs where no network interface is, in a namespace of its own; none where the kernel allows no such thing.
fn without_network() -> Option<Command> {
    let mut command = Command::new("unshare");
    command.args(["--user", "--map-root-user", "--net"]);
    let mut tried = Command::new("unshare");
    let allowed = tried.args(["--user", "--map-root-user", "--net", "true"]).output().is_ok_and(|ran| ran.status.success());
    allowed.then_some(command)
}

#[test]
fn every_kind_of_work_is_done_without_a_network() {
    if without_network().is_none() {
        eprintln!("not tested: this kernel allows no namespace without a network");
        return;
    }
    // A new namespace has the loopback alone, and that is down.
    let seen = without_network().unwrap().args(["cat", "/proc/net/dev"]).output().unwrap();
    let seen = String::from_utf8(seen.stdout).unwrap();
    assert!(seen.lines().skip(2).all(|line| line.trim_start().starts_with("lo:")), "{seen}");
    let (file, other) = (example("first-vat"), example("unsoured-vat"));
    let all = |kind: &'static str| vec!["export", &file, "--to", "-", "--as", kind, "--start", "2031-05-09T17:20"];
    let mut runs = vec![
        vec!["figures", &file, "--json"],
        vec!["compare", &file, &other, "--json"],
        vec!["shop", &file],
        vec!["spread", &file, "--draws", "10", "--json"],
        vec!["plan", &file, "--soon", "2031-05-06T08:00", "--as-of", "2031-05-05T20:00"],
        all("html"),
        all("ics"),
    ];
    if cfg!(feature = "paper") {
        runs.push(vec!["export", &file, "--to", "-", "--as", "svg", "--curve", "warming"]);
    }
    for arguments in runs {
        let program = env!("CARGO_BIN_EXE_vatsketch");
        let there = Command::new(program).args(&arguments).output().unwrap();
        let here = without_network().unwrap().arg(program).args(&arguments).output().unwrap();
        assert!(here.status.success(), "{arguments:?}: {}", String::from_utf8_lossy(&here.stderr));
        // A calendar says when it was written.
        let told = |bytes: &[u8]| {
            let text = String::from_utf8_lossy(bytes).into_owned();
            text.lines().filter(|line| !line.starts_with("DTSTAMP")).map(str::to_owned).collect::<Vec<_>>()
        };
        assert!(told(&here.stdout) == told(&there.stdout), "{arguments:?} gives something else without a network");
    }
}
