//! The menu of units: how quantities are shown. Nothing in it touches the design.

use crate::ui::widget::menu::{sub_menu_ui, ticked_ui};
use crate::units::{Clock, LongTimes, Masses, Temperatures, Units, Volumes};
use egui::Ui;

/// Draws the entries: all at once, or each kind of quantity in a menu of its own, so that it fits into a low window.
pub(in crate::ui) fn units_ui(ui: &mut Ui, units: &mut Units) {
    part_ui(ui, "All at once", units, &[("All metric", Units::METRIC), ("All US", Units::US), ("All imperial", Units::IMPERIAL)]);
    part_ui(
        ui,
        "Temperatures",
        &mut units.temperatures,
        &[("Temperatures in °C", Temperatures::Celsius), ("Temperatures in °F", Temperatures::Fahrenheit)],
    );
    part_ui(
        ui,
        "Volumes",
        &mut units.volumes,
        &[
            ("Volumes in litres", Volumes::Litres),
            ("Volumes in US cups", Volumes::UsCups),
            ("Volumes in US quarts", Volumes::UsQuarts),
            ("Volumes in imperial pints", Volumes::ImperialPints),
        ],
    );
    part_ui(
        ui,
        "Weights",
        &mut units.masses,
        &[("Weights in kilograms", Masses::Kilograms), ("Weights in pounds", Masses::Pounds)],
    );
    part_ui(
        ui,
        "Long times",
        &mut units.long_times,
        &[
            ("Hours or days, by their length", LongTimes::Usual),
            ("Long times in days", LongTimes::Days),
            ("Long times in hours", LongTimes::Hours),
        ],
    );
    part_ui(ui, "Clock", &mut units.clock, &[("24-hour clock", Clock::Hours24), ("12-hour clock", Clock::Hours12)]);
}

/// Draws the menu of one kind of quantity; what is chosen counts at once, and the menu stays open for the next.
fn part_ui<T: Copy + PartialEq>(ui: &mut Ui, name: &str, chosen: &mut T, choices: &[(&str, T)]) {
    sub_menu_ui(ui, name, |ui| {
        for (words, choice) in choices {
            if ticked_ui(ui, *chosen == *choice, words) {
                *chosen = *choice;
            }
        }
    });
}
