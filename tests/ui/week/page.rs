//! The week, used by accessible label. The clock stands on Monday, 5 May 2031, 08:00; dates and hours are invented.

use crate::ui::{example, shown};
use egui::accesskit::Role;
use egui::{Key, Modifiers, Theme};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use jiff::civil::{DateTime, date};
use jiff::tz::TimeZone;
use vatsketch::batch::batch;
use vatsketch::design::{Value, WeekDesign, Wish};
use vatsketch::plan::{Now, kitchen_week};
use vatsketch::session::Command;
use vatsketch::ui::Window;
use vatsketch::units::Units;
use vatsketch::words::alarm_words;

fn may(day: i8, hour: i8, minute: i8) -> DateTime {
    date(2031, 5, day).at(hour, minute, 0, 0)
}

fn open_page() -> Harness<'static, Window> {
    let mut harness = shown(example("warm-cabinet"), [1296.0, 1216.0], Theme::Light);
    harness.get_by_label("Page Plan").click();
    harness.run();
    harness
}

/// Returns the page with a start on Friday, 9 May 2031, 14:30.
fn page() -> Harness<'static, Window> {
    let mut harness = open_page();
    let week = WeekDesign { wish: Wish::StartAt(may(9, 14, 30)), ..WeekDesign::default() };
    harness.state_mut().session.apply(Command::SetWeek(Box::new(week))).unwrap();
    harness.run();
    harness
}

fn week<'a>(harness: &'a Harness<'_, Window>) -> &'a WeekDesign {
    &harness.state().session.design().week
}

fn press(harness: &mut Harness<'_, Window>, label: &str) {
    harness.get_by_label(label).click();
    harness.run();
}

/// Types into a box in place of what stands there, and leaves it with a key.
fn type_into(harness: &mut Harness<'_, Window>, label: &str, text: &str, leave: Key) {
    harness.get_by_role_and_label(Role::TextInput, label).focus();
    harness.run();
    harness.get_by_role_and_label(Role::TextInput, label).type_text(text);
    harness.run();
    harness.key_press(leave);
    harness.run();
}

fn steps(harness: &Harness<'_, Window>) -> Option<String> {
    harness.state().session.history().undo_name().map(ToOwned::to_owned)
}

#[test]
fn without_a_wish_the_page_invites_and_counts_from_the_first_task() {
    let mut harness = open_page();
    harness.get_by_label("After 0 min: Sanitise, 20 min of work");
    press(&mut harness, "Begin tomorrow 09:00");
    assert_eq!(week(&harness).wish, Wish::StartAt(may(6, 9, 0)));
    harness.get_by_label_contains("Tuesday 6 May 2031, 09:00: Sanitise");
}

#[test]
fn a_time_is_typed_as_a_maker_would_say_it() {
    let mut harness = page();
    for (text, wanted) in [("tomorrow 9:00", may(6, 9, 0)), ("Sat 7:15", may(10, 7, 15)), ("2031-05-12 18:30", may(12, 18, 30))] {
        type_into(&mut harness, "Begin at: day and time", text, Key::Enter);
        assert_eq!(week(&harness).wish, Wish::StartAt(wanted), "{text}");
    }
}

#[test]
fn a_refused_time_says_why_beside_the_field_and_escape_keeps_the_old_one() {
    let mut harness = page();
    type_into(&mut harness, "Begin at: day and time", "soon", Key::Enter);
    harness.get_by_label_contains("“soon” is no day with a time");
    assert_eq!(week(&harness).wish, Wish::StartAt(may(9, 14, 30)));
    type_into(&mut harness, "Begin at: day and time", "tomorrow 9:00", Key::Escape);
    assert_eq!(week(&harness).wish, Wish::StartAt(may(9, 14, 30)));
    assert!(harness.query_by_label_contains("“soon”").is_none());
}

#[test]
fn another_kind_of_wish_starts_from_the_plan_that_stands() {
    let mut harness = page();
    press(&mut harness, "When: Finished by");
    let Wish::FinishedBy(by) = week(&harness).wish else { panic!("{:?}", week(&harness).wish) };
    assert!(by > may(9, 14, 30));
    press(&mut harness, "When: No date yet");
    assert_eq!(week(&harness).wish, Wish::Open);
}

#[test]
fn where_no_start_is_left_the_earliest_time_is_offered_and_works() {
    let mut harness = page();
    press(&mut harness, "When: Finished by");
    type_into(&mut harness, "Finished by: day and time", "tomorrow 9:00", Key::Enter);
    assert_eq!(week(&harness).wish, Wish::FinishedBy(may(6, 9, 0)));
    harness.get_by_label_contains("The plan cannot end by");
    harness.get_by_label_contains("Finish by ").click();
    harness.run();
    assert!(harness.query_by_label_contains("The plan cannot end by").is_none());
    harness.get_by_role_and_label(Role::Slider, "Start of the week");
}

#[test]
fn arrow_keys_move_the_start_by_a_quarter_of_an_hour_and_by_a_day() {
    let mut harness = page();
    harness.get_by_role_and_label(Role::Slider, "Start of the week").focus();
    harness.run();
    for (key, wanted) in [
        (Key::ArrowRight, may(9, 14, 45)),
        (Key::ArrowLeft, may(9, 14, 30)),
        (Key::ArrowDown, may(10, 14, 30)),
        (Key::ArrowUp, may(9, 14, 30)),
        (Key::PageDown, may(16, 14, 30)),
    ] {
        harness.key_press(key);
        harness.run();
        assert_eq!(week(&harness).wish, Wish::StartAt(wanted), "{key:?}");
    }
    assert!(steps(&harness).unwrap().contains("Begin on Fri 16 May, 14:30"));
}

/// Drags the handle by a way, and does not let it go.
fn drag_by(harness: &mut Harness<'_, Window>, way: egui::Vec2) -> egui::Pos2 {
    let knob = harness.get_by_role_and_label(Role::Slider, "Start of the week").rect().center();
    harness.drag_at(knob);
    harness.run();
    for share in [0.2, 0.6, 1.0] {
        harness.hover_at(knob + share * way);
        harness.run();
    }
    knob + way
}

#[test]
fn the_start_is_dragged_live_on_quarters_of_an_hour_and_as_one_step() {
    let mut harness = page();
    let at = drag_by(&mut harness, egui::vec2(90.0, 0.0));
    let Wish::StartAt(moved) = week(&harness).wish else { panic!("{:?}", week(&harness).wish) };
    assert!(moved > may(9, 16, 0) && moved < may(9, 20, 0) && moved.minute() % 15 == 0, "{moved}");
    harness.drop_at(at);
    harness.run();
    assert_eq!(week(&harness).wish, Wish::StartAt(moved));
    harness.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    harness.run();
    assert_eq!(week(&harness).wish, Wish::StartAt(may(9, 14, 30)), "one step takes the whole drag back");
}

#[test]
fn a_drag_down_is_a_day_and_escape_gives_a_drag_up() {
    let mut harness = page();
    let before = steps(&harness);
    let at = drag_by(&mut harness, egui::vec2(0.0, 56.0));
    assert_eq!(week(&harness).wish, Wish::StartAt(may(10, 14, 30)));
    harness.key_press(Key::Escape);
    harness.run();
    assert_eq!(week(&harness).wish, Wish::StartAt(may(9, 14, 30)));
    harness.hover_at(at + egui::vec2(50.0, 0.0));
    harness.run();
    harness.drop_at(at);
    harness.run();
    assert_eq!((week(&harness).wish, steps(&harness)), (Wish::StartAt(may(9, 14, 30)), before));
}

#[test]
fn a_reader_of_the_screen_hears_where_the_start_is() {
    let harness = page();
    let handle = harness.get_by_role_and_label(Role::Slider, "Start of the week");
    assert_eq!(handle.accesskit_node().value().as_deref(), Some("Fri 9 May, 14:30"));
}

#[test]
fn a_busy_time_over_a_task_is_told_in_the_list_with_what_it_costs() {
    let mut harness = page();
    press(&mut harness, "Add a busy time");
    type_into(&mut harness, "Busy 1: from", "9 May 14:00", Key::Enter);
    assert_eq!((week(&harness).busy[0].from, week(&harness).busy[0].to), (may(9, 14, 0), may(9, 16, 0)), "it keeps its length");
    harness.get_by_label_contains(
        "Friday 9 May 2031, 14:30: Sanitise, 20 min of work, “Sanitise” takes 20 min of busy time: disruption 200",
    );
    type_into(&mut harness, "Busy 1: to", "9 May 13:00", Key::Enter);
    harness.get_by_label_contains("it must end after it begins");
    press(&mut harness, "Busy 1: remove");
    assert!(week(&harness).busy.is_empty());
}

#[test]
fn hours_are_marked_as_impossible_and_a_time_that_keeps_out_of_them_is_one_press() {
    let mut harness = page();
    press(&mut harness, "Add a busy time");
    type_into(&mut harness, "Busy 1: from", "9 May 14:00", Key::Enter);
    assert!(harness.query_by_label_contains("hours when nobody can be there").is_none());
    press(&mut harness, "Busy 1: Nobody there");
    assert!(week(&harness).busy[0].impossible);
    harness.get_by_label_contains("fall into hours when nobody can be there. Begin on Fri 9 May, ");
    press(&mut harness, "Sleep 1: Nobody there");
    assert!(week(&harness).taken[0].impossible);
    press(&mut harness, "Sleep 1: Only if need be");
    let named = harness.query_all_by_label_contains("Begin on ").collect::<Vec<_>>();
    named.iter().find(|node| node.accesskit_node().role() == Role::Button).unwrap().click();
    harness.run();
    assert!(harness.query_by_label_contains("hours when nobody can be there").is_none());
    assert_ne!(week(&harness).wish, Wish::StartAt(may(9, 14, 30)));
    press(&mut harness, "Busy 1: Only if need be");
    assert!(!week(&harness).busy[0].impossible);
}

#[test]
fn an_alarm_at_night_is_told_with_its_time_and_fewer_turns_that_save_it_are_one_press_and_one_step() {
    let mut harness = open_page();
    let often = vec![("turn_count", Value::Number(10.0)), ("turn_gap_h", Value::Number(3.0))];
    harness.state_mut().session.apply(Command::SetInputs(often)).unwrap();
    let wish = Wish::StartAt(may(9, 9, 0));
    harness.state_mut().session.apply(Command::SetWeek(Box::new(WeekDesign { wish, ..WeekDesign::default() }))).unwrap();
    harness.run();
    assert!(harness.query_all_by_label_contains(" wakes you for “Turn ").count() > 0);
    let now = Now { at: may(5, 8, 0), zone: TimeZone::UTC };
    let planned = kitchen_week(&batch(harness.state().session.design()).unwrap(), &now).unwrap().unwrap();
    harness.get_by_label_contains(&format!("Disruption: {}", alarm_words(&planned, Units::METRIC).unwrap()));
    let turns = |harness: &Harness<'_, Window>| harness.state().session.design().draining.turn_count;
    harness.get_by_label_contains(" times instead of 10, every ").click();
    harness.run();
    assert!(turns(&harness) < 10);
    assert!(
        harness.query_all_by_label_contains("wakes you").count() == 0 && harness.query_by_label_contains("instead of 10").is_none()
    );
    harness.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    harness.run();
    assert_eq!(turns(&harness), 10);
    harness.get_by_label_contains(" times instead of 10, every ");
}

#[test]
fn hours_of_work_are_added_changed_and_removed() {
    let mut harness = page();
    press(&mut harness, "Add hours of work");
    press(&mut harness, "Work 2: Saturday");
    type_into(&mut harness, "Work 2: from", "8:15", Key::Enter);
    let work = week(&harness).taken[1];
    assert!(work.days[5] && work.from == jiff::civil::time(8, 15, 0, 0));
    type_into(&mut harness, "Work 2: to", "8:15", Key::Enter);
    harness.get_by_label_contains("they end when they begin");
    press(&mut harness, "Work 2: remove");
    assert_eq!(week(&harness).taken.len(), 1);
}

#[test]
fn a_zone_that_does_not_exist_is_refused_beside_its_field() {
    let mut harness = page();
    type_into(&mut harness, "Time zone", "Kitchen", Key::Enter);
    harness.get_by_label_contains("there is no time zone `Kitchen`");
    assert!(week(&harness).zone.is_empty());
    type_into(&mut harness, "Time zone", "Etc/UTC", Key::Enter);
    assert_eq!(week(&harness).zone, "Etc/UTC");
}

#[test]
fn i_am_here_now_plans_from_there_and_can_be_taken_back() {
    let mut harness = page();
    press(&mut harness, "I am here now: Sanitise");
    let reached = week(&harness).reached.clone().unwrap();
    assert_eq!((reached.task.as_str(), reached.began), ("sanitise", may(5, 8, 0)));
    assert!(harness.query_by_role_and_label(Role::Slider, "Start of the week").is_none(), "what was begun cannot be moved");
    type_into(&mut harness, "Begun at: day and time", "7:40", Key::Enter);
    assert_eq!(week(&harness).reached.as_ref().unwrap().began, may(5, 7, 40));
    press(&mut harness, "Mark as not begun");
    assert_eq!(week(&harness).reached, None);
}

#[test]
fn every_control_of_the_week_has_a_name_and_is_large_enough_to_hit() {
    let mut harness = page();
    press(&mut harness, "Add a busy time");
    for node in harness.root().children_recursive() {
        let told = node.accesskit_node();
        if matches!(told.role(), Role::Slider | Role::Button | Role::RadioButton | Role::CheckBox | Role::TextInput) {
            let (place, label) = (node.rect(), told.label().unwrap_or_default());
            assert!(!label.is_empty(), "a {:?} has no name", told.role());
            // WCAG 2.2, 2.5.8: a target is at least 24 by 24 pixels.
            assert!(place.width() >= 24.0 && place.height() >= 24.0, "{label}: {place:?}");
        }
    }
}

#[test]
fn the_part_of_the_plan_stays_chosen() {
    let mut harness = page();
    press(&mut harness, "Plan: Shopping");
    press(&mut harness, "Page Design");
    press(&mut harness, "Page Plan");
    harness.get_by_label("What to buy");
}

#[test]
fn the_week_is_written_for_a_calendar_and_told_where_there_is_none() {
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("week.ics");
    let typed = |harness: &mut Harness<'_, Window>| {
        let label = crate::ui::PATH;
        // The cursor stands in the box, what is offered selected: typing replaces it, and Enter takes it.
        assert!(harness.get_by_role_and_label(Role::TextInput, label).is_focused());
        harness.get_by_role_and_label(Role::TextInput, label).type_text(file.to_str().unwrap());
        harness.run();
        harness.key_press(Key::Enter);
        harness.run();
    };
    let mut harness = page();
    press(&mut harness, "Save calendar…");
    typed(&mut harness);
    let text = std::fs::read_to_string(&file).unwrap();
    assert!(text.starts_with("BEGIN:VCALENDAR\r\n") && text.contains("DTSTART:20310509T143000\r\n"), "{text}");
    std::fs::remove_file(&file).unwrap();
    harness.state_mut().session.apply(Command::SetWeek(Box::default())).unwrap();
    press(&mut harness, "File");
    harness.get_by_label_contains("Save calendar").click();
    harness.run();
    typed(&mut harness);
    assert!(!file.exists());
    assert!(harness.query_by_label_contains("choose one on the page Plan").is_some());
}
