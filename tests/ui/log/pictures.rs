//! Pictures of the log.

use super::{begun, morning};
use egui::Theme;

/// `cargo test the_log_in_every_size -- --ignored`, with `VATSKETCH_PICTURES` set to a folder.
#[test]
#[ignore = "writes pictures to look at"]
fn the_log_in_every_size() {
    let to = std::env::var_os("VATSKETCH_PICTURES").map(std::path::PathBuf::from).unwrap();
    for (name, size) in [("1280", [1296.0, 816.0]), ("720", [736.0, 1016.0]), ("200-percent", [656.0, 416.0])] {
        for (theme_name, theme) in [("light", Theme::Light), ("dark", Theme::Dark)] {
            let folder = tempfile::tempdir().unwrap();
            let mut harness = begun(folder.path(), size, theme);
            morning(&mut harness);
            harness.render().unwrap().save(to.join(format!("log-{name}-{theme_name}.png"))).unwrap();
        }
    }
}
