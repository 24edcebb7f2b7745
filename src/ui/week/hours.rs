//! The hours that are taken: sleep and work by weekday, busy times once, and the time zone.

use crate::design::{BusyOnce, Habitual, TakenHours, WeekDesign, moment, read_hour};
use crate::plan::{Lean, check_zone, spoken_time, weekday_name, whole_time_words};
use crate::session::Command;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::week::kept::Reckoned;
use crate::ui::week::when::{TIME_WIDTH, time_box};
use crate::ui::widget::pill::{pill_ui, pills_ui};
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold};
use crate::ui::widget::typed_box::{Said, TypedBox, said_ui, typed_ui};
use crate::units::Clock;
use egui::{Button, CornerRadius, Frame, RichText, Role, Stroke, Ui, WidgetInfo, vec2};
use jiff::civil::{DateTime, Time, Weekday};

/// Width of a box for an hour.
const HOUR_WIDTH: f32 = 72.0;
/// Width of the same with am or pm.
const HALVES_WIDTH: f32 = 92.0;
/// Width of the box for a zone.
const ZONE_WIDTH: f32 = 240.0;

/// Draws it and returns what is asked for.
pub(in crate::ui) fn hours_ui(ui: &mut Ui, view: &mut View, week: &WeekDesign, reckoned: &Reckoned) -> Vec<Ask> {
    let mut asks = Vec::new();
    let mut set = |changed: WeekDesign| asks.push(Ask::Do(Command::SetWeek(Box::new(changed))));
    heading_ui(ui, "Sleep and work");
    for row in 0..week.taken.len() {
        taken_ui(ui, view, week, row).into_iter().for_each(&mut set);
    }
    ui.horizontal_wrapped(|ui| {
        for (words, by) in [("Add hours of sleep", Habitual::Sleep), ("Add hours of work", Habitual::Work)] {
            if button_ui(ui, words, words) {
                set(week.with_taken(by));
            }
        }
    });
    ui.add_space(10.0);
    heading_ui(ui, "One-off busy times");
    for row in 0..week.busy.len() {
        busy_ui(ui, view, week, row, reckoned).into_iter().for_each(&mut set);
    }
    if button_ui(ui, "Add a busy time", "Add a busy time") {
        set(week.with_busy(reckoned.now.at));
    }
    ui.add_space(10.0);
    zone_ui(ui, view, week, reckoned).into_iter().for_each(&mut set);
    asks
}

fn button_ui(ui: &mut Ui, words: &str, name: &str) -> bool {
    let response = ui.add(Button::new(RichText::new(words).size(CAPTION)).min_size(vec2(28.0, 28.0)));
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, name));
    response.on_hover_text(name).clicked()
}

/// Returns the week with another row of taken hours, if it is allowed.
fn with_row(week: &WeekDesign, row: usize, taken: TakenHours) -> Result<WeekDesign, String> {
    let mut changed = week.clone();
    if let Some(place) = changed.taken.get_mut(row) {
        *place = taken;
    }
    changed.check().map_err(|error| error.to_string()).map(|()| changed)
}

fn taken_ui(ui: &mut Ui, view: &mut View, week: &WeekDesign, row: usize) -> Vec<WeekDesign> {
    let Some(taken) = week.taken.get(row).copied() else { return Vec::new() };
    let mut changed = Vec::new();
    let mut said = Vec::new();
    let name = format!("{} {}", taken.by.label(), row + 1);
    row_frame(ui, |ui| {
        ui.horizontal_wrapped(|ui| {
            pills_ui(ui, &name, |ui| {
                for by in [Habitual::Sleep, Habitual::Work] {
                    let words = format!("{name}: {}", by.label());
                    if pill_ui(ui, by.label(), &words, "What takes these hours", (by == taken.by, by == taken.by)) {
                        changed.extend(with_row(week, row, TakenHours { by, ..taken }));
                    }
                }
            });
            let hour_width = if view.units.clock == Clock::Hours12 { HALVES_WIDTH } else { HOUR_WIDTH };
            let mut edge = |ui: &mut Ui, words: &str, at: Time, with: &dyn Fn(Time) -> TakenHours| {
                ui.label(words);
                let key = format!("taken {row} {words}");
                let this = TypedBox { key: &key, shown: view.units.hour(at), width: hour_width, number: true };
                let typed = typed_ui(ui, &mut view.typing, &this, |text| {
                    let at = read_hour(text).map_err(|error| error.to_string())?;
                    with_row(week, row, with(at)).map(|changed| (changed, None))
                });
                let typed = typed.named(ui, &format!("{name}: {words}"));
                changed.extend(typed.value);
                said.extend(typed.said);
            };
            edge(ui, "from", taken.from, &|from| TakenHours { from, ..taken });
            edge(ui, "to", taken.to, &|to| TakenHours { to, ..taken });
        });
        say(ui, &said);
        if let Some(impossible) = impossible_ui(ui, &name, taken.impossible) {
            changed.extend(with_row(week, row, TakenHours { impossible, ..taken }));
        }
        ui.horizontal_wrapped(|ui| {
            ui.spacing_mut().item_spacing.x = 4.0;
            for (place, day) in (0..).zip(Weekday::Monday.cycle_forward().take(taken.days.len())) {
                if day_ui(ui, day, &name, taken.days.get(place).copied().unwrap_or(false)) {
                    let mut days = taken.days;
                    days.iter_mut().skip(place).take(1).for_each(|on| *on = !*on);
                    changed.extend(with_row(week, row, TakenHours { days, ..taken }));
                }
            }
            if button_ui(ui, "×", &format!("{name}: remove")) {
                changed.push(week.without_taken(row));
            }
        });
    });
    changed
}

fn row_frame(ui: &mut Ui, draw: impl FnOnce(&mut Ui)) {
    Frame::new().fill(Palette::of(ui).panel).corner_radius(6).inner_margin(8).show(ui, |ui| {
        ui.set_width(ui.available_width());
        draw(ui);
    });
}

fn say(ui: &mut Ui, said: &[Said]) {
    for said in said {
        said_ui(ui, said);
    }
}

/// Draws a day of the week that can be on or off; returns whether it was pressed.
fn day_ui(ui: &mut Ui, day: Weekday, row: &str, on: bool) -> bool {
    let palette = Palette::of(ui);
    let (text, fill) = if on { (palette.background, palette.link) } else { (palette.text, palette.background) };
    let name = weekday_name(day);
    let short = name.get(..2).unwrap_or(name);
    let button = Button::new(RichText::new(short).size(CAPTION).color(text))
        .fill(fill)
        .corner_radius(CornerRadius::same(6))
        .stroke(Stroke::new(1.0, if on { palette.link } else { palette.edge }))
        .min_size(vec2(36.0, 26.0));
    let response = ui.add(button);
    response.widget_info(|| WidgetInfo::selected(Role::CheckBox, true, on, format!("{row}: {name}")));
    response.clicked()
}

fn busy_ui(ui: &mut Ui, view: &mut View, week: &WeekDesign, row: usize, reckoned: &Reckoned) -> Vec<WeekDesign> {
    let Some(busy) = week.busy.get(row).copied() else { return Vec::new() };
    let mut changed = Vec::new();
    let mut said = Vec::new();
    let name = format!("Busy {}", row + 1);
    row_frame(ui, |ui| {
        ui.horizontal_wrapped(|ui| {
            ui.label("from");
            let now = reckoned.now.at;
            let (from, words) =
                time_box(ui, view, &format!("busy {row} from"), &format!("{name}: from"), busy.from, now, Lean::Ahead);
            changed.extend(from.and_then(|from| with_busy(week, row, busy.moved_to(from)).ok()));
            said.extend(words);
            if button_ui(ui, "×", &format!("{name}: remove")) {
                changed.push(week.without_busy(row));
            }
        });
        ui.horizontal_wrapped(|ui| {
            ui.label("to");
            let (key, units) = (format!("busy {row} to"), view.units);
            let this = TypedBox { key: &key, shown: view.units.told(&moment(busy.to)), width: TIME_WIDTH, number: false };
            let typed = typed_ui(ui, &mut view.typing, &this, |text| {
                let to = busy_until(text, busy.from)?;
                let changed = with_busy(week, row, BusyOnce { to, ..busy })?;
                Ok((changed, Some(units.told(&whole_time_words(to)))))
            });
            let typed = typed.named(ui, &format!("{name}: to"));
            changed.extend(typed.value);
            said.extend(typed.said);
        });
        say(ui, &said);
        if let Some(impossible) = impossible_ui(ui, &name, busy.impossible) {
            changed.extend(with_busy(week, row, BusyOnce { impossible, ..busy }));
        }
    });
    changed
}

/// Draws whether hours are only disliked, or nobody can be there; returns what was chosen just now.
fn impossible_ui(ui: &mut Ui, row: &str, impossible: bool) -> Option<bool> {
    let choices = [
        (false, "Only if need be", "A task comes here only if every other time is worse"),
        (true, "Nobody there", "No task comes here unless every plan that was found needs it"),
    ];
    pills_ui(ui, &format!("{row}: work in these hours"), |ui| {
        let mut chosen = None;
        for (choice, label, help) in choices {
            let on = choice == impossible;
            if pill_ui(ui, label, &format!("{row}: {label}"), help, (on, on)) {
                chosen = Some(choice);
            }
        }
        chosen
    })
}

/// Reads the end of a busy time: an hour alone is the next one after the beginning, a date without a year is not one of the year after.
fn busy_until(text: &str, from: DateTime) -> Result<DateTime, String> {
    let counts_from = if read_hour(text).is_ok() { from } else { from.date().at(0, 0, 0, 0) };
    spoken_time(text, counts_from, Lean::Ahead).map_err(|error| error.to_string())
}

/// Returns the week with another busy time, if it is allowed.
fn with_busy(week: &WeekDesign, row: usize, busy: BusyOnce) -> Result<WeekDesign, String> {
    let mut changed = week.clone();
    if let Some(place) = changed.busy.get_mut(row) {
        *place = busy;
    }
    changed.check().map_err(|error| error.to_string()).map(|()| changed)
}

fn zone_ui(ui: &mut Ui, view: &mut View, week: &WeekDesign, reckoned: &Reckoned) -> Vec<WeekDesign> {
    ui.label(RichText::new("Time zone").font(bold(BODY)));
    let this = TypedBox { key: "zone", shown: week.zone.clone(), width: ZONE_WIDTH, number: false };
    let typed = typed_ui(ui, &mut view.typing, &this, |text| {
        let zone = text.trim().to_owned();
        check_zone(&zone).map_err(|error| error.to_string())?;
        Ok((WeekDesign { zone, ..week.clone() }, None))
    });
    let typed = typed.named(ui, "Time zone");
    say(ui, typed.said.as_slice());
    if typed.said.is_none() {
        let own = reckoned.now.zone.iana_name().unwrap_or("the computer’s own");
        let words = if week.zone.is_empty() {
            format!("Leave empty for {own}.")
        } else {
            "An IANA time zone name, or empty for the computer’s.".to_owned()
        };
        ui.label(RichText::new(words).size(CAPTION).color(Palette::of(ui).soft));
    }
    typed.value.into_iter().collect()
}
