//! The list of Debian packages that a bare machine lacks, and the package of our own that names them.
#![cfg(unix)]

use super::top;
use std::collections::BTreeSet;
use std::os::unix::fs::PermissionsExt;
use std::path::Path;
use std::process::Command;

/// Puts a command of our own where the script finds it before the system's.
fn put(folder: &Path, name: &str, script: &str) {
    let path = folder.join(name);
    std::fs::write(&path, format!("#!/bin/sh\n{script}\n")).unwrap();
    std::fs::set_permissions(&path, std::fs::Permissions::from_mode(0o755)).unwrap();
}

/// Runs the script on an invented Debian on which only these packages are there; returns its exit code, what it says, and what it installs.
fn script(arguments: &[&str], there: &str) -> (i32, String, String) {
    let folder = tempfile::tempdir().unwrap();
    let installed = folder.path().join("installed");
    put(
        folder.path(),
        "dpkg-query",
        &format!("for last; do :; done; case ' {there} ' in *\" $last \"*) echo 'install ok installed';; esac"),
    );
    put(folder.path(), "apt-get", &format!("echo \"$*\" >>'{}'", installed.display()));
    put(folder.path(), "cargo", ":");
    let path = format!("{}:{}", folder.path().display(), std::env::var("PATH").unwrap());
    let run = Command::new(top().join("resources/debian-packages.sh")).args(arguments).env("PATH", path).output().unwrap();
    let said = String::from_utf8(run.stdout).unwrap() + &String::from_utf8(run.stderr).unwrap();
    (run.status.code().unwrap(), said, std::fs::read_to_string(installed).unwrap_or_default())
}

/// Returns the names after `missing:`.
fn missing(said: &str) -> BTreeSet<String> {
    let line = said.lines().find_map(|line| line.strip_prefix("missing:")).unwrap_or_default();
    line.split_whitespace().map(str::to_owned).collect()
}

#[test]
fn half_of_the_list_can_be_asked_for() {
    let (code, all, installed) = script(&[], "");
    let (build, run) = (script(&["--build-only"], ""), script(&["--run-only"], ""));
    assert_eq!((code, build.0, run.0, installed.as_str()), (1, 1, 1, ""));
    assert_eq!(missing(&build.1), ["gcc", "libc6-dev"].map(str::to_owned).into());
    for name in ["tzdata", "libwayland-egl1", "libwayland-client0", "libgl1", "libx11-6"] {
        assert!(missing(&run.1).contains(name), "{name}: {}", run.1);
    }
    assert_eq!(missing(&all), missing(&build.1).union(&missing(&run.1)).cloned().collect());
    assert!(missing(&build.1).is_disjoint(&missing(&run.1)));
}

#[test]
fn only_what_is_missing_is_installed() {
    let (code, said, installed) = script(&["--install", "--build-only"], "libc6-dev");
    assert_eq!(code, 0, "{said}");
    assert_eq!(installed.lines().last(), Some("install -y --no-install-recommends gcc"));
    let (code, said, installed) = script(&["--build-only", "--install"], "gcc libc6-dev");
    assert_eq!((code, said.trim(), installed.as_str()), (0, "nothing is missing", ""));
}

#[test]
fn an_option_with_a_slip_is_refused_before_anything_is_done() {
    let (code, said, installed) = script(&["--install", "--run-olny"], "");
    assert_eq!((code, installed.as_str()), (2, ""));
    assert!(said.contains("--run-olny") && said.contains("--run-only"), "{said}");
}

/// What the script calls needed to run, the package needs or recommends.
#[test]
fn our_package_names_what_the_script_names() {
    let manifest = std::fs::read_to_string(top().join("Cargo.toml")).unwrap();
    let listed = |key: &str| {
        let line =
            manifest.lines().find_map(|line| line.strip_prefix(&format!("{key} = \""))).unwrap_or_else(|| panic!("no {key}"));
        line.trim_end_matches('"').split(", ").map(str::to_owned).collect::<BTreeSet<_>>()
    };
    let mut named: BTreeSet<String> = listed("depends").union(&listed("recommends")).cloned().collect();
    assert!(named.remove("$auto"), "the C library is read off the program");
    assert_eq!(named, missing(&script(&["--run-only"], "").1));
}
