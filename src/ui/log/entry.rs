//! One thing to write down: its name, when the plan has it, a box or a button, and what was written so far.

use crate::design::{Unit, upper_first};
use crate::record::{BatchRecord, Entry, EntryKind, EntryValue, Holds};
use crate::report::{LogField, earlier_words, short_moment};
use crate::ui::log::shown::LogShown;
use crate::ui::state::ask::{Ask, LogAsk};
use crate::ui::state::view::View;
use crate::ui::widget::number_text::read_number;
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold};
use crate::ui::widget::typed_box::{Said, TypedBox, said_ui, typed_ui};
use crate::units::{Scale, Units};
use egui::{Button, Label, RichText, Role, Ui, WidgetInfo, vec2};

/// Width of the names, and of a box for a number; a button is as wide as that.
const NAME: f32 = 250.0;
const BOX: f32 = 130.0;
/// Widest box for words.
const WORDS: f32 = 380.0;
/// Height of what is pressed or typed into at the counter, with wet hands.
pub(super) const HIGH: f32 = 34.0;
/// Width from which on all stands in one row.
const ONE_ROW: f32 = 560.0;
/// Times of a step that are named.
const MOST_TIMES: usize = 3;

/// Where a thing to write down stands: in the list of all, or with the task under way or the one that comes next.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Place {
    /// In the list of all.
    List,
    /// With the task under way.
    UnderWay,
    /// With the task that comes next.
    Next,
}

impl Place {
    /// Returns what is said behind its name to who does not see where it stands.
    const fn spoken(self) -> &'static str {
        match self {
            Self::List => "",
            Self::UnderWay => " (task under way)",
            Self::Next => " (next task)",
        }
    }
}

/// Draws one thing to write down, with what was written so far below it; returns what is asked for.
pub(super) fn entry_ui(
    ui: &mut Ui,
    view: &mut View,
    (record, shown): (&BatchRecord, &LogShown),
    field: &LogField,
    place: Place,
) -> Option<Ask> {
    let (entered, said) = if ui.available_width() >= ONE_ROW {
        let row = ui.horizontal(|ui| {
            ui.allocate_ui(vec2(NAME, HIGH), |ui| {
                ui.set_min_width(NAME);
                ui.vertical(|ui| name_ui(ui, view.units, field));
            });
            box_ui(ui, view, field.kind, place)
        });
        row.inner
    } else {
        name_ui(ui, view.units, field);
        box_ui(ui, view, field.kind, place)
    };
    // Below the row, where it has the whole width.
    if let Some(said) = &said {
        said_ui(ui, said);
    }
    let taken_back = written_ui(ui, view.units, (record, shown), field.kind, place);
    if place == Place::List {
        ui.separator();
    }
    entered.or(taken_back)
}

/// Draws what it is, and when the plan has it.
fn name_ui(ui: &mut Ui, units: Units, field: &LogField) {
    let unit = unit_text(field.kind, units);
    let label = field.kind.row().label;
    let name = if unit.is_empty() { label.to_owned() } else { format!("{label}, {unit}") };
    ui.set_max_width(ui.available_width().min(NAME));
    ui.add(Label::new(RichText::new(name).font(bold(BODY))).wrap());
    let times: Vec<String> =
        field.times.iter().map(crate::report::StepTime::words_with_day).filter(|words| !words.is_empty()).collect();
    let more = if times.len() > MOST_TIMES { ", …" } else { "" };
    let times = times.iter().take(MOST_TIMES).cloned().collect::<Vec<_>>().join(", ");
    let planned = match (field.step, times.as_str()) {
        ("", _) => String::new(),
        (step, "") => format!("plan: {step}"),
        (step, times) => format!("plan: {step}, {times}{more}"),
    };
    if !planned.is_empty() {
        ui.add(Label::new(RichText::new(planned).size(CAPTION).color(Palette::of(ui).soft)).wrap());
    }
}

/// Draws a button that writes something down at the time that counts; returns whether it was pressed.
///
/// * `now`, `then`: what it says where that is the clock's time, and where another was said, such as `Begin now` and `Begun`
pub(super) fn done_ui(ui: &mut Ui, view: &View, (now, then): (&str, &str), label: &str) -> bool {
    let words = view.log.at.map_or_else(|| now.to_owned(), |at| format!("{then} {}", short_moment(at, view.units)));
    let response = ui.add(Button::new(&words).min_size(vec2(BOX, HIGH)));
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, format!("{label}: {words}")));
    response.clicked()
}

/// Draws the box or the button; returns what was entered, and what is said of a text so far.
fn box_ui(ui: &mut Ui, view: &mut View, kind: EntryKind, place: Place) -> (Option<Ask>, Option<Said>) {
    let label = format!("{}{}", kind.row().label, place.spoken());
    match kind.row().holds {
        Holds::Done => {
            let word = upper_first(kind.done_word());
            let pressed = done_ui(ui, view, (&format!("{word} now"), &word), &label);
            return (pressed.then_some(Ask::Log(LogAsk::Enter(kind, EntryValue::Done))), None);
        }
        // Tasks have their buttons where the plan has them.
        Holds::Task => return (None, None),
        Holds::Number { .. } | Holds::Words | Holds::Photo => {}
    }
    let is_number = matches!(kind.row().holds, Holds::Number { .. });
    let key = format!("log {}{}", kind.key(), place.spoken());
    let width = if is_number { BOX } else { ui.available_width().min(WORDS) };
    let this = TypedBox { key: &key, shown: String::new(), width, number: is_number };
    let units = view.units;
    let typed = typed_ui(ui, &mut view.typing, &this, |text| read(kind, text, units)).named(ui, &label);
    (typed.value.map(|value| Ask::Log(LogAsk::Enter(kind, value))), typed.said)
}

/// Returns what a typed text means, with how it was understood where that needs saying.
fn read(kind: EntryKind, text: &str, units: Units) -> Result<(EntryValue, Option<String>), String> {
    let (value, said) = match kind.row().holds {
        Holds::Number { unit, .. } => {
            let understood = read_number(text, unit, units).map_err(|error| error.to_string())?;
            let value = if understood.bare { scale(unit, units).kept(understood.value) } else { understood.value };
            (EntryValue::Number(value), understood.said)
        }
        Holds::Done | Holds::Words | Holds::Task | Holds::Photo => (EntryValue::Words(text.trim().to_owned()), None),
    };
    Ok((value.checked(kind).map_err(|error| error.to_string())?, said))
}

/// Returns the unit in which a bare number is read, the one beside its box. An amount has the same whatever its size, for nobody knows it
/// before it is typed; cups and ounces are read where they are written.
fn scale(unit: Unit, units: Units) -> Scale {
    if unit == Unit::Celsius { units.scale(unit, 0.0) } else { Units::METRIC.scale(unit, 0.0) }
}

/// Returns the unit beside a box; empty where there is none.
fn unit_text(kind: EntryKind, units: Units) -> &'static str {
    match kind.row().holds {
        Holds::Number { unit, .. } => scale(unit, units).symbol,
        Holds::Done | Holds::Words | Holds::Task | Holds::Photo => "",
    }
}

/// Draws what was written down so far, the newest last, and the way to take that one back.
fn written_ui(ui: &mut Ui, units: Units, (record, shown): (&BatchRecord, &LogShown), kind: EntryKind, place: Place) -> Option<Ask> {
    let all = record.of_kind(kind);
    let last = all.last().copied()?;
    let said = |entry: &&Entry| {
        let before = earlier_words(record, entry, units);
        format!("{} ({}){before}", shown.words(entry), short_moment(entry.at, units))
    };
    let words = all.iter().map(said).collect::<Vec<_>>().join("; ");
    let of_last = format!("Take back {}: {}{}", kind.row().label, shown.words(last), place.spoken());
    let back = ui.horizontal_top(|ui| {
        let back = back_ui(ui, "Take back", &of_last);
        ui.vertical(|ui| ui.add(Label::new(RichText::new(words).size(CAPTION)).wrap()));
        back
    });
    back.inner.then_some(Ask::Log(LogAsk::TakeBack(last.number)))
}

/// Draws the way to take an entry back; returns whether it was pressed.
pub(super) fn back_ui(ui: &mut Ui, words: &str, name: &str) -> bool {
    let back = ui.add(Button::new(RichText::new(words).size(CAPTION)));
    back.widget_info(|| WidgetInfo::labeled(Role::Button, true, name));
    back.on_hover_text("Takes back the last one; to correct it, write the right one after that. The log keeps both.").clicked()
}
