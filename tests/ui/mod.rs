//! Tests of `src/ui`, by accessible label; no display and no graphics driver is needed.

mod choices;
mod curves;
mod figure_card;
mod germs;
mod help;
mod log;
mod monkey;
mod paper;
mod pictures;
mod results;
mod soft;
mod supplies;
mod week;
mod widget;
mod window;

use egui_kittest::Harness;
use jiff::{civil::date, tz::TimeZone};
use vatsketch::plan::Now;
use vatsketch::session::{Session, WallClock};
use vatsketch::ui::{Window, install};

/// Returns a session with an example open.
fn example(name: &str) -> Session {
    Session::open(crate::example(name), None).unwrap()
}

/// Returns the clock of all tests of the window, which stands still on a Monday: it is invented.
fn stopped() -> WallClock {
    WallClock::Stopped(Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC })
}

/// Runs the window until nothing is calculated in the background any more.
fn settled(harness: &mut Harness<'_, Window>) {
    harness.run();
    while harness.state().is_busy() {
        std::thread::sleep(std::time::Duration::from_millis(5));
        harness.run();
    }
    // What came between the last look and the end of the work.
    harness.run();
}

/// Returns the window on a session, laid out once.
fn shown(session: Session, size: [f32; 2], theme: egui::Theme) -> Harness<'static, Window> {
    shown_window(Window::plain(session, stopped()), size, theme)
}

/// Returns a window, laid out once.
fn shown_window(window: Window, size: [f32; 2], theme: egui::Theme) -> Harness<'static, Window> {
    let mut harness = Harness::builder()
        .with_size(size)
        .with_theme(theme)
        .with_max_steps(16)
        .renderer(soft::SoftRenderer::default())
        .build_ui_state(
            |ui, window: &mut Window| {
                // Fonts count from the next frame on; the desktop sets them before its first.
                if ui.ctx().cumulative_pass_nr() == 0 {
                    install(ui.ctx());
                    return;
                }
                window.logic(&ui.ctx().clone());
                window.ui(ui);
            },
            window,
        );
    harness.run();
    harness
}

/// Chooses an entry of the menu of the second design.
fn about_second(harness: &mut Harness<'_, Window>, entry: &str) {
    use egui_kittest::kittest::Queryable;
    harness.get_by_label("Compare").click();
    harness.run();
    let exact = harness.query_by_label(entry).is_some();
    if exact {
        harness.get_by_label(entry).click();
    } else {
        harness.get_by_label_contains(entry).click();
    }
    harness.run();
    // Another milk: what is to be the same is asked.
    if harness.query_by_label(SAME_FAT).is_some() {
        harness.get_by_label(SAME_FAT).click();
        harness.run();
    }
}

/// What is answered where the same vat from another milk is asked for.
const SAME_FAT: &str = "The same fat in the milk: cream or skimmed milk is added";

/// The box for a path where the desktop has no dialog for it.
const PATH: &str = "Files cannot be chosen by mouse here. Type the folder and the name, as in /home/me/may.vat.ron:";
/// The same for the path of a kitchen.
const KITCHEN_PATH: &str = "Files cannot be chosen by mouse here. Type the folder and the name, as in /home/me/cellar.kitchen.ron:";

/// Types a path and takes it.
fn type_path(harness: &mut Harness<'_, Window>, path: &std::path::Path) {
    use egui::accesskit::Role;
    use egui_kittest::kittest::Queryable;
    let box_label = if harness.query_by_role_and_label(Role::TextInput, KITCHEN_PATH).is_some() { KITCHEN_PATH } else { PATH };
    harness.get_by_role_and_label(Role::TextInput, box_label).focus();
    harness.run();
    harness.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::A);
    harness.run();
    harness.get_by_role_and_label(Role::TextInput, box_label).type_text(path.to_str().unwrap());
    harness.run();
    let does = if harness.query_by_label("Open").is_some() { "Open" } else { "Save" };
    harness.get_by_label(does).click_accesskit();
    harness.run();
}
