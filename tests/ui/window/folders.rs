//! Where the window keeps its lists and recovery copies. The rules are those of the desktops: the XDG base directory specification 0.8
//! (defaults, and that a relative path is ignored), the known folders of Windows (`RoamingAppData`, `LocalAppData`, with their default places
//! below the profile) and Apple's file system programming guide (`Library/Application Support`); the last two are written here from memory.

use std::ffi::OsString;
use std::path::Path;
use vatsketch::ui::{Folders, Platform};

/// Returns what an invented environment holds.
fn holds<'a>(pairs: &'a [(&'a str, &'a str)]) -> impl Fn(&str) -> Option<OsString> + 'a {
    |name| pairs.iter().find(|(key, _)| *key == name).map(|(_, value)| OsString::from(value))
}

/// Returns the folders of config and state, in text.
fn found(platform: Platform, pairs: &[(&str, &str)]) -> (String, String) {
    let folders = Folders::of(platform, holds(pairs), Path::new("/somewhere"));
    let text = |path: &Path| path.to_string_lossy().replace('\\', "/");
    (text(&folders.config), text(&folders.state))
}

fn both(config: &str, state: &str) -> (String, String) {
    (config.to_owned(), state.to_owned())
}

#[test]
fn linux_follows_the_base_directory_specification() {
    let home = ("HOME", "/home/maker");
    assert_eq!(found(Platform::Xdg, &[home]), both("/home/maker/.config/vatsketch", "/home/maker/.local/state/vatsketch"));
    let named = [home, ("XDG_CONFIG_HOME", "/c"), ("XDG_STATE_HOME", "/s")];
    assert_eq!(found(Platform::Xdg, &named), both("/c/vatsketch", "/s/vatsketch"));
    let relative = [home, ("XDG_CONFIG_HOME", "c"), ("XDG_STATE_HOME", "")];
    assert_eq!(found(Platform::Xdg, &relative), found(Platform::Xdg, &[home]), "a relative or empty path counts as not set");
    assert_eq!(found(Platform::Xdg, &[]), both("/somewhere/.config/vatsketch", "/somewhere/.local/state/vatsketch"));
}

#[test]
fn windows_keeps_lists_with_the_user_and_copies_on_the_machine() {
    let profile = ("USERPROFILE", "/users/maker");
    let named = [profile, ("APPDATA", "/roaming"), ("LOCALAPPDATA", "/local"), ("XDG_CONFIG_HOME", "/c"), ("HOME", "/h")];
    assert_eq!(found(Platform::Windows, &named), both("/roaming/vatsketch", "/local/vatsketch"));
    let by_default = both("/users/maker/AppData/Roaming/vatsketch", "/users/maker/AppData/Local/vatsketch");
    assert_eq!(found(Platform::Windows, &[profile]), by_default);
}

#[test]
fn macos_keeps_both_in_application_support() {
    let support = "/users/maker/Library/Application Support/vatsketch";
    let named = [("HOME", "/users/maker"), ("XDG_CONFIG_HOME", "/c"), ("XDG_STATE_HOME", "/s")];
    assert_eq!(found(Platform::Mac, &named), both(support, support));
}

#[test]
fn the_program_takes_the_rule_of_the_platform_that_it_was_built_for() {
    let expected = match std::env::consts::OS {
        "windows" => Platform::Windows,
        "macos" => Platform::Mac,
        _ => Platform::Xdg,
    };
    assert_eq!(Platform::HERE, expected);
    assert_eq!(Folders::here(), Folders::of(expected, |name| std::env::var_os(name), &std::env::temp_dir()));
}
