//! Pictures of the log.

use super::kitchen::kitchen_of_invented;
use super::{begun, invented, morning, probe_table, under_way};
use crate::ui::{settled, type_path};
use egui::Theme;
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use vatsketch::ui::Window;

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
            let save = |harness: &mut Harness<'_, Window>, what: &str| {
                harness.render().unwrap().save(to.join(format!("{what}-{name}-{theme_name}.png"))).unwrap();
            };
            save(&mut harness, "log");
            let mut harness = under_way(folder.path(), size, theme);
            save(&mut harness, "log-next");
            harness.get_by_label("Read in a probe’s file…").click_accesskit();
            settled(&mut harness);
            type_path(&mut harness, &probe_table(folder.path()));
            settled(&mut harness);
            save(&mut harness, "log-table");
            let mut harness = invented(size, theme);
            save(&mut harness, "log-all");
            harness.get_by_label("batch 3, invented, with more rennet, begun Mon\u{a0}19\u{a0}May,\u{a0}08:45").click_accesskit();
            settled(&mut harness);
            harness.get_by_label("Compare with batch 1, invented, first").click_accesskit();
            settled(&mut harness);
            save(&mut harness, "log-compared");
            let mut harness = kitchen_of_invented(size, theme, 20);
            save(&mut harness, "log-kitchen");
            harness.get_by_label("Learn from 3 batches").click_accesskit();
            settled(&mut harness);
            save(&mut harness, "log-kitchen-learned");
            harness.get_by_label("Calculate the design for your kitchen").click_accesskit();
            settled(&mut harness);
            save(&mut harness, "log-kitchen-used");
        }
    }
}
