//! What the desktop is told about the program agrees with itself and with the program. The forms are those of the desktop entry, shared MIME
//! info and AppStream specifications; `resources/package.sh` has their own checkers look at them too.

use super::top;
use std::path::PathBuf;

const APP_ID: &str = "vatsketch";
const DESIGN: &str = "application/x-vatsketch-design";

fn path(name: &str) -> PathBuf {
    top().join("resources/desktop").join(name)
}

fn text(name: &str) -> String {
    std::fs::read_to_string(path(name)).unwrap()
}

/// Returns the value of a key of the desktop entry.
fn entry(key: &str) -> String {
    let text = text("vatsketch.desktop");
    let line = text.lines().find_map(|line| line.strip_prefix(&format!("{key}=")));
    line.unwrap_or_else(|| panic!("the desktop entry has no {key}")).to_owned()
}

#[test]
fn the_entry_belongs_to_the_window_and_opens_designs() {
    let app = std::fs::read_to_string(top().join("src/ui/window/app.rs")).unwrap();
    assert!(app.contains(&format!("with_app_id(\"{APP_ID}\")")), "a desktop finds the entry of a window by this name");
    assert_eq!(entry("StartupWMClass"), APP_ID);
    assert_eq!(entry("Icon"), APP_ID);
    assert_eq!(entry("Exec"), "vatsketch %f");
    assert_eq!(entry("MimeType"), format!("{DESIGN};"));
}

#[test]
fn the_kind_of_file_is_that_of_a_design() {
    let text = text("vatsketch-mime.xml");
    let read = roxmltree::Document::parse(&text).unwrap();
    let named = |name: &str| {
        read.descendants().find(|node| node.has_tag_name(("http://www.freedesktop.org/standards/shared-mime-info", name)))
    };
    let attribute = |name: &str, key: &str| named(name).unwrap().attribute(key).unwrap().to_owned();
    assert_eq!(attribute("mime-type", "type"), DESIGN);
    assert_eq!(attribute("sub-class-of", "type"), "text/plain", "any editor opens it too");
    let glob = attribute("glob", "pattern");
    let ending = glob.strip_prefix('*').unwrap();
    let examples: Vec<_> =
        std::fs::read_dir(top().join("resources/examples")).unwrap().map(|entry| entry.unwrap().file_name()).collect();
    // A log is no design: a double click on it must not open it as one.
    let (logs, designs): (Vec<_>, Vec<_>) = examples.iter().partition(|name| name.to_string_lossy().ends_with(".log.ron"));
    assert!(logs.iter().all(|name| !name.to_string_lossy().ends_with(ending)), "{logs:?}");
    assert!(!designs.is_empty() && designs.iter().all(|name| name.to_string_lossy().ends_with(ending)), "{glob}: {designs:?}");
}

#[test]
fn the_description_names_the_entry_and_this_version() {
    let text = text("vatsketch.metainfo.xml");
    let read = roxmltree::Document::parse(&text).unwrap();
    let node = |name: &str| read.descendants().find(|node| node.has_tag_name(name)).unwrap();
    assert_eq!(node("launchable").text(), Some("vatsketch.desktop"));
    assert_eq!(node("mediatype").text(), Some(DESIGN));
    assert_eq!(node("binary").text(), Some("vatsketch"));
    assert_eq!(node("release").attribute("version"), Some(env!("CARGO_PKG_VERSION")), "the newest release stands first");
    assert_eq!(node("project_license").text(), Some(env!("CARGO_PKG_LICENSE")));
    let changelog = std::fs::read_to_string(top().join("resources/debian/changelog")).unwrap();
    assert!(
        changelog.starts_with(&format!("vatsketch ({}-", env!("CARGO_PKG_VERSION"))),
        "the Debian changelog begins with this version"
    );
}

#[test]
fn every_icon_is_a_square_of_the_size_in_its_name() {
    for size in [16, 24, 32, 48, 64, 128, 256] {
        let icon = image::open(path(&format!("vatsketch-{size}.png"))).unwrap().into_rgba8();
        assert_eq!((icon.width(), icon.height()), (size, size));
        let drawn = icon.pixels().filter(|pixel| pixel.0[3] > 127).count();
        assert!(drawn * 2 > (size * size) as usize, "{size} pixels wide, {drawn} of them drawn");
    }
}
