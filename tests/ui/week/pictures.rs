//! Pictures of the week and of the shopping.

use crate::ui::pictures::picture;
use egui::Theme;
use jiff::civil::date;
use vatsketch::design::{BusyOnce, Habitual, WeekDesign, Wish};
use vatsketch::session::Command;
use vatsketch::ui::{Page, PlanPart, Window};

/// A week with everything in it: an invented one.
fn busy_week(window: &mut Window) {
    let day = |day: i8, hour: i8| date(2031, 5, day).at(hour, 30, 0, 0);
    let week = WeekDesign {
        wish: Wish::StartAt(day(8, 15)),
        busy: vec![BusyOnce { from: day(9, 18), to: day(9, 21), impossible: false }],
        ..WeekDesign::default()
    };
    window.session.apply(Command::SetWeek(Box::new(week.with_taken(Habitual::Work)))).unwrap();
}

pub fn on(part: PlanPart) -> impl FnOnce(&mut Window) {
    move |window| {
        busy_week(window);
        window.view.page = Page::Plan;
        window.view.plan_part = part;
    }
}

/// `cargo test week_pictures -- --ignored`, with `VATSKETCH_PICTURES` set to a folder: every size that the page must stand.
#[test]
#[ignore = "writes pictures to look at"]
fn the_week_in_every_size() {
    picture("week-1280-light", "first-vat", [1280.0, 800.0], Theme::Light, on(PlanPart::Week));
    picture("week-1280-dark", "first-vat", [1280.0, 800.0], Theme::Dark, on(PlanPart::Week));
    picture("week-1920-light", "first-vat", [1920.0, 1080.0], Theme::Light, on(PlanPart::Week));
    // As large as everything in 1280 × 800 at 200 %.
    picture("week-200-percent", "first-vat", [640.0, 400.0], Theme::Light, on(PlanPart::Week));
    picture("week-720-light", "first-vat", [720.0, 1400.0], Theme::Light, on(PlanPart::Week));
    picture("shopping-1280-light", "first-vat", [1280.0, 800.0], Theme::Light, on(PlanPart::Shopping));
    picture("shopping-1920-dark", "first-vat", [1920.0, 1080.0], Theme::Dark, on(PlanPart::Shopping));
    picture("shopping-720-light", "first-vat", [720.0, 1800.0], Theme::Light, on(PlanPart::Shopping));
    picture("week-open-1280-light", "first-vat", [1280.0, 800.0], Theme::Light, |window| window.view.page = Page::Plan);
}
