//! What the program is built from: licences and sources of its libraries, none of which asks a network, and the bill of materials.

use super::{texts, top};
use serde_json::Value;
use std::collections::BTreeSet;
use std::process::Command;

/// Returns every package that any platform or feature builds the program or its tests from.
fn packages() -> Vec<Value> {
    let ran = Command::new(env!("CARGO"))
        .args(["metadata", "--locked", "--offline", "--format-version", "1", "--all-features", "--filter-platform"])
        // Elsewhere other libraries come in, which are not downloaded here.
        .arg("x86_64-unknown-linux-gnu")
        .current_dir(top())
        .output()
        .unwrap();
    assert!(ran.status.success(), "{}", String::from_utf8_lossy(&ran.stderr));
    let whole: Value = serde_json::from_slice(&ran.stdout).unwrap();
    whole["packages"].as_array().unwrap().clone()
}

/// Returns the texts of a list in `.deny.toml`.
fn listed(key: &str) -> BTreeSet<String> {
    let text = std::fs::read_to_string(top().join(".deny.toml")).unwrap();
    let list = text.split_once(&format!("\n{key} = [")).unwrap_or_else(|| panic!("no {key}")).1.split_once(']').unwrap().0;
    list.split('"').skip(1).step_by(2).map(str::to_owned).collect()
}

/// Returns whether a licence in SPDX's words can be met by the licences that are allowed.
fn met(words: &str, allowed: &BTreeSet<String>) -> bool {
    // An older way to write "or".
    let words = words.replace('/', " OR ");
    let words = words.trim();
    match (outside(words, " OR "), outside(words, " AND ")) {
        (Some(one_of), _) => one_of.iter().any(|part| met(part, allowed)),
        (None, Some(all)) => all.iter().all(|part| met(part, allowed)),
        (None, None) => match words.strip_prefix('(').and_then(|inner| inner.strip_suffix(')')) {
            Some(inner) => met(inner, allowed),
            None => allowed.contains(words),
        },
    }
}

/// Returns the parts that a word joins outside all brackets; none where it joins nothing.
fn outside<'a>(words: &'a str, joins: &str) -> Option<Vec<&'a str>> {
    let (mut parts, mut from, mut depth) = (Vec::new(), 0, 0);
    for (at, letter) in words.char_indices() {
        match letter {
            '(' => depth += 1,
            ')' => depth -= 1,
            _ if depth == 0 && words[at..].starts_with(joins) => {
                parts.push(&words[from..at]);
                from = at + joins.len();
            }
            _ => {}
        }
    }
    parts.push(&words[from..]);
    (parts.len() > 1).then_some(parts)
}

#[test]
fn a_licence_is_met_as_spdx_has_it() {
    let allowed: BTreeSet<String> = ["MIT", "Zlib", "Apache-2.0 WITH LLVM-exception"].map(str::to_owned).into();
    for (words, wanted) in [
        ("MIT", true),
        ("GPL-3.0-only", false),
        ("GPL-3.0-only OR MIT", true),
        ("GPL-3.0-only AND MIT", false),
        ("Unlicense/MIT", true),
        ("(MIT OR Apache-2.0) AND Zlib", true),
        ("(GPL-3.0-only OR Apache-2.0) AND Zlib", false),
        ("Apache-2.0 WITH LLVM-exception", true),
    ] {
        assert_eq!(met(words, &allowed), wanted, "{words}");
    }
}

/// Returns the licence of a package that names only a file, if the file begins as Apache 2.0 does.
fn by_its_text(package: &Value) -> Option<String> {
    let folder = std::path::Path::new(package["manifest_path"].as_str()?).parent()?;
    let text = std::fs::read_to_string(folder.join(package["license_file"].as_str()?)).ok()?;
    let words: Vec<&str> = text.split_whitespace().take(5).collect();
    (words == ["Apache", "License", "Version", "2.0,", "January"]).then(|| "Apache-2.0".to_owned())
}

#[test]
fn every_library_has_a_licence_that_we_can_meet_and_comes_from_the_registry() {
    let (licences, registries, banned) = (listed("allow"), listed("allow-registry"), listed("deny"));
    let mut wrong = Vec::new();
    for package in packages() {
        let (name, source) = (package["name"].as_str().unwrap(), package["source"].as_str());
        let Some(source) = source else {
            assert_eq!(name, "vatsketch", "a library on this machine alone");
            continue;
        };
        if !registries.contains(source.trim_start_matches("registry+")) {
            wrong.push(format!("{name} comes from {source}"));
        }
        let licence = package["license"].as_str().map(str::to_owned).or_else(|| by_its_text(&package));
        if !licence.is_some_and(|licence| met(&licence, &licences)) {
            wrong.push(format!("{name} has the licence {}", package["license"]));
        }
        if banned.contains(name) {
            wrong.push(format!("{name} asks a network"));
        }
    }
    assert!(wrong.is_empty(), "look at these, then at .deny.toml:\n{}", wrong.join("\n"));
}

#[test]
fn nothing_of_ours_opens_a_connection() {
    for (path, text) in texts("src", ".rs") {
        for word in ["std::net", "TcpStream", "TcpListener", "UdpSocket", "ToSocketAddrs"] {
            assert!(!text.contains(word), "{} names {word}", path.display());
        }
    }
}

/// Of a template's ways to read a file (typst's reference, data loading, image, plugin, import) only two are used: its data, and our templates.
#[test]
fn a_template_reads_its_own_data_and_nothing_else() {
    let templates = texts("resources", ".typ");
    assert!(templates.len() > 5);
    let ours: BTreeSet<String> =
        templates.iter().map(|(path, _)| path.file_name().unwrap().to_string_lossy().into_owned()).collect();
    for (path, text) in &templates {
        for way in ["read", "json", "csv", "toml", "yaml", "xml", "cbor", "image", "plugin", "bibliography"] {
            for (at, _) in text.match_indices(&format!("{way}(")) {
                let whole_word = !text[..at].ends_with(|letter: char| letter.is_alphanumeric() || letter == '-' || letter == '_');
                let behind = &text[at + way.len() + 1..];
                assert!(!whole_word || (way == "json" && behind.starts_with("\"data.json\")")), "{}: {way}", path.display());
            }
        }
        for way in ["import", "include"] {
            for part in text.split(&format!("#{way} ")).skip(1) {
                let name = part.split('"').nth(1).unwrap();
                assert!(ours.contains(name), "{} takes in {name}", path.display());
            }
        }
    }
}

#[cfg(unix)]
#[test]
fn the_bill_of_materials_lists_what_the_licences_list_with_checksums() {
    let run = |name: &str| {
        let ran = Command::new(top().join("resources").join(name)).output().unwrap();
        assert!(ran.status.success(), "{name}: {}", String::from_utf8_lossy(&ran.stderr));
        String::from_utf8_lossy(&ran.stdout).into_owned()
    };
    let bill = run("bill-of-materials.sh");
    let bill: Value = serde_json::from_str(&bill).unwrap();
    // The members that CycloneDX 1.5 asks for, and the forms of a package URL and a checksum.
    assert_eq!((&bill["bomFormat"], &bill["specVersion"], &bill["version"]), (&"CycloneDX".into(), &"1.5".into(), &1.into()));
    let text = |value: &Value| value.as_str().unwrap().to_owned();
    let mut listed = BTreeSet::new();
    for component in bill["components"].as_array().unwrap() {
        let (name, version) = (text(&component["name"]), text(&component["version"]));
        assert_eq!(text(&component["purl"]), format!("pkg:cargo/{name}@{version}"));
        let sum = text(&component["hashes"][0]["content"]);
        assert!(sum.len() == 64 && sum.chars().all(|letter| letter.is_ascii_hexdigit()), "{name}: {sum}");
        assert!(!text(&component["licenses"][0]["expression"]).is_empty(), "{name}");
        listed.insert(format!("{name} {version}"));
    }
    let licences = run("third-party-licences.sh");
    let told: BTreeSet<String> =
        licences.lines().take_while(|line| !line.is_empty()).map(|line| line.split(": ").next().unwrap().to_owned()).collect();
    assert!(told.len() > 200);
    assert_eq!(listed, told);
    let needs = bill["dependencies"].as_array().unwrap();
    assert_eq!(needs.len(), listed.len() + 1);
    let known: BTreeSet<String> = needs.iter().map(|need| text(&need["ref"])).collect();
    assert!(needs.iter().flat_map(|need| need["dependsOn"].as_array().unwrap()).all(|need| known.contains(need.as_str().unwrap())));
}
