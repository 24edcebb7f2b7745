//! Pictures of the window, made from the examples.

use crate::ui::{about_second, example, settled, shown};
use egui::Theme;
use vatsketch::curve::SectionKey;
use vatsketch::design::Stage;
use vatsketch::ui::{CutView, HelpCard};

/// Margin of the test's own frame, points.
const MARGIN: f32 = 8.0;

pub fn picture(name: &str, example_name: &str, size: [f32; 2], theme: Theme, prepare: impl FnOnce(&mut vatsketch::ui::Window)) {
    picture_after(name, example(example_name), size, theme, |harness| prepare(harness.state_mut()));
}

fn picture_after(
    name: &str,
    session: vatsketch::session::Session,
    size: [f32; 2],
    theme: Theme,
    prepare: impl FnOnce(&mut egui_kittest::Harness<'static, vatsketch::ui::Window>),
) {
    // The test's own frame leaves a margin around the window, which is cut away.
    let mut harness = shown(session, [size[0] + 2.0 * MARGIN, size[1] + 2.0 * MARGIN], theme);
    prepare(&mut harness);
    harness.event(egui::Event::PointerGone);
    settled(&mut harness);
    let folder = std::env::var_os("VATSKETCH_PICTURES").map_or_else(|| std::path::PathBuf::from("screenshots"), Into::into);
    let mut whole = harness.render().unwrap();
    let cut = image::imageops::crop(&mut whole, MARGIN as u32, MARGIN as u32, size[0] as u32, size[1] as u32).to_image();
    cut.save(folder.join(format!("{name}.png"))).unwrap();
}

/// Chooses a station as its button does.
fn at(stage: Stage) -> impl FnOnce(&mut vatsketch::ui::Window) {
    move |window| {
        window.view.station = stage;
        window.view.scroll_to = Some(stage);
    }
}

/// `cargo test screenshots -- --ignored` writes them into `screenshots/`.
#[test]
#[ignore = "writes the pictures of the README"]
fn screenshots() {
    picture("window-1280-light", "first-vat", [1280.0, 800.0], Theme::Light, at(Stage::Drying));
    picture("window-1280-dark", "ewes-milk", [1280.0, 800.0], Theme::Dark, at(Stage::Vat));
    picture("window-1920-dark", "first-vat", [1920.0, 1080.0], Theme::Dark, |window| {
        at(Stage::Pickling)(window);
        window.view.cut = CutView { key: SectionKey::Ph, share: Some(0.4), runs: false, germ: None };
    });
    picture("window-1920-light", "open-air", [1920.0, 1080.0], Theme::Light, at(Stage::Draining));
    picture("narrow-720-light", "own-carton", [720.0, 1000.0], Theme::Light, at(Stage::Draining));
    for (name, size, theme) in [("two-1280-light", [1280.0, 800.0], Theme::Light), ("two-1920-dark", [1920.0, 1080.0], Theme::Dark)]
    {
        picture_after(name, example("first-vat"), size, theme, |harness| about_second(harness, "The same vat from sheep's milk"));
    }
    let mut both = example("first-vat");
    both.second_from_file("resources/examples/unsoured-vat.vat.ron".as_ref()).unwrap();
    picture_after("soured-1280-light", both, [1280.0, 800.0], Theme::Light, |harness| at(Stage::Keeping)(harness.state_mut()));
    picture(
        "week-1280-light",
        "first-vat",
        [1280.0, 800.0],
        Theme::Light,
        crate::ui::week::pictures::on(vatsketch::ui::PlanPart::Week),
    );
    picture(
        "shopping-1280-light",
        "first-vat",
        [1280.0, 800.0],
        Theme::Light,
        crate::ui::week::pictures::on(vatsketch::ui::PlanPart::Shopping),
    );
    let folder = tempfile::tempdir().unwrap();
    let late = crate::ui::log::late(folder.path());
    picture_after("log-1280-light", late, [1280.0, 800.0], Theme::Light, crate::ui::log::show);
    let unsaved = vatsketch::session::Session::open(crate::example("first-vat"), None).unwrap();
    picture_after("kitchen-1280-light", unsaved, [1280.0, 800.0], Theme::Light, crate::ui::log::kitchen::learned_from_invented);
    picture("plan-1280-light", "first-vat", [1280.0, 800.0], Theme::Light, |window| {
        window.view.page = vatsketch::ui::Page::Plan;
        window.view.plan_part = vatsketch::ui::PlanPart::Paper;
    });
    picture("figure-1280-light", "first-vat", [1280.0, 800.0], Theme::Light, |window| {
        at(Stage::Drying)(window);
        window.view.card = Some(vatsketch::ui::CardView::of("drying_loss_percent"));
        let work = vatsketch::session::Work { draws: 200, threads: 2, goes_on: &|| true };
        let spread = vatsketch::session::spread(window.session.design(), &work).unwrap().unwrap();
        window.show_spread(std::sync::Arc::new(spread));
    });
    picture("welcome-1280-light", "first-vat", [1280.0, 800.0], Theme::Light, crate::ui::help::pictures::card(HelpCard::Welcome));
    picture("sources-1280-light", "first-vat", [1280.0, 800.0], Theme::Light, |window| {
        window.view.page = vatsketch::ui::Page::Sources;
    });
}

#[test]
fn the_same_window_gives_the_same_pixels() {
    let draw = || {
        let mut harness = shown(example("small-vat"), [700.0, 500.0], Theme::Light);
        harness.render().unwrap()
    };
    assert!(draw() == draw(), "two pictures of one window differ");
}
