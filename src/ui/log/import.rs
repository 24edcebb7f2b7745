//! The table of a probe, looked at before it is written down.

use crate::record::{BatchRecord, DateOrder, EntryKind, Holds, ImportError, Imported, log_moment};
use crate::report::{Amount, short_moment};
use crate::session::{ProbeImport, ProbeWish};
use crate::ui::state::ask::{Ask, LogAsk};
use crate::ui::state::view::View;
use crate::ui::widget::pill::{pill_ui, pills_ui};
use crate::ui::widget::spoken::{alert_ui, heading_ui};
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold};
use crate::ui::widget::typed_box::{TypedBox, typed_ui};
use crate::units::Units;
use egui::{Button, Label, RichText, Ui, vec2};

/// What probes and scales measure, the most usual first.
const KINDS: [EntryKind; 9] = [
    EntryKind::MilkTemperature,
    EntryKind::BathTemperature,
    EntryKind::HeatedMilk,
    EntryKind::AirTemperature,
    EntryKind::AirHumidity,
    EntryKind::FridgeTemperature,
    EntryKind::CheeseWeight,
    EntryKind::CurdPh,
    EntryKind::CentrePh,
];
/// Lines that are shown at each end, and refused ones.
const SHOWN: usize = 3;
const MOST_REFUSED: usize = 12;
/// Width of a box for the name of a column.
const COLUMN: f32 = 170.0;

/// Draws the table as it would be written down; returns what is asked for.
pub(super) fn import_ui(ui: &mut Ui, view: &mut View, table: &ProbeImport, record: &BatchRecord) -> Option<Ask> {
    let mut asked = None;
    let file = table.path().file_name().unwrap_or_default().to_string_lossy().into_owned();
    heading_ui(ui, &format!("Read {file} into {}", record.title()));
    let wish = table.wish();
    ui.label("What it measured");
    pills_ui(ui, "What it measured", |ui| {
        for kind in KINDS {
            let label = kind.row().label;
            let chosen = wish.kind == kind;
            if pill_ui(ui, label, label, "Read the values as this", (chosen, chosen)) {
                asked = Some(ProbeWish { kind, ..wish.clone() });
            }
        }
    });
    ui.horizontal_wrapped(|ui| {
        let time = column_ui(ui, view, "Column of the times", &wish.time);
        let value = column_ui(ui, view, "Column of the values", &wish.value);
        let column = |time: Option<String>, value: Option<String>| {
            let (old_time, old_value) = (wish.time.clone(), wish.value.clone());
            ProbeWish { time: time.unwrap_or(old_time), value: value.unwrap_or(old_value), ..wish.clone() }
        };
        if time.is_some() || value.is_some() {
            asked = Some(column(time, value));
        }
    });
    let hint = "Heading or number of the column; leave it empty and it is found by itself.";
    ui.add(Label::new(RichText::new(hint).size(CAPTION).color(Palette::of(ui).soft)).wrap());
    pills_ui(ui, "Day and month", |ui| {
        let choices = [
            (None, "Work out day and month from the file"),
            (Some(DateOrder::DayFirst), "9/5 is 9 May"),
            (Some(DateOrder::MonthFirst), "5/9 is 9 May"),
        ];
        for (order, label) in choices {
            let chosen = wish.order == order;
            if pill_ui(ui, label, label, "In which order the file has day and month", (chosen, chosen)) {
                asked = Some(ProbeWish { order, ..wish.clone() });
            }
        }
    });
    ui.separator();
    let lines = table.found().map_or(0, |(imported, _)| imported.read.len());
    let mut done = None;
    ui.horizontal(|ui| {
        let values = if lines == 1 { "1 value".to_owned() } else { format!("{lines} values") };
        let words = format!("Write down {values}: {}", wish.kind.row().label);
        if ui.add_enabled(lines > 0, Button::new(words).min_size(vec2(180.0, 34.0))).clicked() {
            done = Some(LogAsk::Import);
        }
        if ui.add(Button::new("Cancel").min_size(vec2(90.0, 34.0))).clicked() {
            done = Some(LogAsk::ImportNothing);
        }
    });
    early_ui(ui, view.units, record, table.found());
    found_ui(ui, view.units, wish.kind, table.found());
    done.or(asked.map(LogAsk::ImportAs)).map(Ask::Log)
}

/// Draws that the times lie before the batch, as those of another file would.
fn early_ui(ui: &mut Ui, units: Units, record: &BatchRecord, found: Result<(&Imported, usize), &ImportError>) {
    let first = found.ok().and_then(|(imported, _)| imported.read.iter().map(|line| line.at).min());
    if let Some(first) = first.filter(|first| *first < record.begun) {
        let (first, begun) = (short_moment(first, units), short_moment(record.begun, units));
        let words = format!("The first time is {first}, and this batch was begun {begun}. Is it the right file?");
        ui.add(Label::new(RichText::new(words).size(CAPTION).color(Palette::of(ui).caution_text)).wrap());
    }
}

/// Draws the box for a column; returns what was typed, once it counts.
fn column_ui(ui: &mut Ui, view: &mut View, label: &str, shown: &str) -> Option<String> {
    let this = TypedBox { key: label, shown: shown.to_owned(), width: COLUMN, number: false };
    ui.vertical(|ui| {
        ui.label(label);
        typed_ui(ui, &mut view.typing, &this, |text| Ok((text.trim().to_owned(), None))).named(ui, label).value
    })
    .inner
}

/// Draws what the table gives, and which of its lines could not be read.
fn found_ui(ui: &mut Ui, units: Units, kind: EntryKind, found: Result<(&Imported, usize), &ImportError>) {
    let palette = Palette::of(ui);
    let (imported, known) = match found {
        Ok(found) => found,
        Err(why) => {
            alert_ui(ui, RichText::new(format!("Nothing of this file can be read: {why}.")).color(palette.caution_text));
            return;
        }
    };
    ui.add(Label::new(RichText::new(&imported.understood).size(CAPTION).color(palette.soft)).wrap());
    let Holds::Number { unit, decimals, .. } = kind.row().holds else { return };
    let count = imported.read.len();
    for (at, line) in imported.read.iter().enumerate() {
        if count > 2 * SHOWN && at == SHOWN {
            ui.label(RichText::new(format!("… {} more …", count - 2 * SHOWN)).size(CAPTION).color(palette.soft));
        }
        if count <= 2 * SHOWN || at < SHOWN || at + SHOWN >= count {
            let value = Amount::new(line.value, unit, decimals).shown_in(units);
            ui.label(format!("line {}: {}, {value}", line.line, units.told(&log_moment(line.at))));
        }
    }
    if known > 0 {
        let words = if known == 1 {
            "1 value was written down before and is left out.".to_owned()
        } else {
            format!("{known} values were written down before and are left out.")
        };
        ui.add(Label::new(RichText::new(words).size(CAPTION).color(palette.soft)).wrap());
    }
    let refused = imported.refused.len();
    if refused > 0 {
        let lines = if refused == 1 { "1 line".to_owned() } else { format!("{refused} lines") };
        ui.add_space(4.0);
        ui.label(
            RichText::new(format!("{lines} cannot be read and will be left out:")).font(bold(BODY)).color(palette.caution_text),
        );
        for line in imported.refused.iter().take(MOST_REFUSED) {
            ui.add(Label::new(RichText::new(format!("line {}: {}", line.line, line.why)).size(CAPTION)).wrap());
        }
        if refused > MOST_REFUSED {
            ui.label(RichText::new(format!("and {} more", refused - MOST_REFUSED)).size(CAPTION).color(palette.soft));
        }
    }
}
