//! Pictures of the window, made from the examples.

use super::{example, shown};
use egui::Theme;
use vatsketch::design::Stage;

fn picture(name: &str, index: usize, size: [f32; 2], theme: Theme, prepare: impl FnOnce(&mut vatsketch::ui::Window)) {
    let mut harness = shown(example(index), size, theme);
    prepare(harness.state_mut());
    harness.run();
    let folder = std::env::var_os("VATSKETCH_PICTURES").map_or_else(|| std::path::PathBuf::from("screenshots"), Into::into);
    harness.render().unwrap().save(folder.join(format!("{name}.png"))).unwrap();
}

/// `cargo test screenshots -- --ignored` writes them into `screenshots/`.
#[test]
#[ignore = "writes the pictures of the README"]
fn screenshots() {
    picture("window-1280-light", 0, [1280.0, 800.0], Theme::Light, |window| window.view.station = Stage::Drying);
    picture("window-1280-dark", 1, [1280.0, 800.0], Theme::Dark, |window| window.view.station = Stage::Vat);
    picture("window-1920-dark", 0, [1920.0, 1080.0], Theme::Dark, |window| window.view.station = Stage::Drying);
    picture("window-1920-light", 2, [1920.0, 1080.0], Theme::Light, |window| window.view.station = Stage::Draining);
    picture("sources-1280-light", 0, [1280.0, 800.0], Theme::Light, |window| window.view.page = vatsketch::ui::Page::Sources);
}

#[test]
fn the_same_window_gives_the_same_pixels() {
    let draw = || {
        let mut harness = shown(example(3), [700.0, 500.0], Theme::Light);
        harness.render().unwrap()
    };
    assert!(draw() == draw(), "two pictures of one window differ");
}
