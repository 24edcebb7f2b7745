//! Pictures of the help.

use crate::ui::pictures::picture;
use egui::Theme;
use vatsketch::design::Stage;
use vatsketch::ui::{HelpCard, Page, Window};
use vatsketch::words::GUIDE;

/// Shows something of the help in front of the window.
pub fn card(card: HelpCard) -> impl FnOnce(&mut Window) {
    move |window| window.view.help = Some(card)
}

/// Shows a step of the guide.
pub fn step(number: usize) -> impl FnOnce(&mut Window) {
    move |window| {
        window.view.guide = Some(number);
        window.view.station = Stage::Drying;
        window.view.scroll_to = Some(Stage::Drying);
        window.view.guide_to = Some(GUIDE[number].place);
        if number + 1 == GUIDE.len() {
            window.view.page = Page::Sources;
        }
    }
}

/// `cargo test the_help_in_every_size -- --ignored`, with `VATSKETCH_PICTURES` set to a folder.
#[test]
#[ignore = "writes pictures to look at"]
fn the_help_in_every_size() {
    let sizes = [("1280", [1280.0, 800.0]), ("720", [720.0, 700.0]), ("200-percent", [640.0, 400.0])];
    for (size_name, size) in sizes {
        for (theme_name, theme) in [("light", Theme::Light), ("dark", Theme::Dark)] {
            let draw = |name: &str, prepare: &dyn Fn(&mut Window)| {
                picture(&format!("{name}-{size_name}-{theme_name}"), "first-vat", size, theme, |window| prepare(window));
            };
            draw("welcome", &|window| card(HelpCard::Welcome)(window));
            draw("words", &|window| card(HelpCard::Words)(window));
            draw("changes", &|window| card(HelpCard::Changes)(window));
            draw("guide-1", &|window| step(0)(window));
            draw("guide-3", &|window| step(2)(window));
            draw("guide-7", &|window| step(6)(window));
        }
    }
}
