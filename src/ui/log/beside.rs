//! What changed between the batch in sight and another one.

use crate::record::BatchRecord;
use crate::report::{ChangedBatches, ComparedRow, changed_batches};
use crate::session::Logbook;
use crate::ui::state::ask::{Ask, LogAsk};
use crate::ui::state::view::View;
use crate::ui::widget::pill::{pill_ui, pills_ui};
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::theme::{CAPTION, Palette, bold};
use egui::{Label, RichText, Ui};

/// Batches that are offered to compare with, the newest first.
const MOST: usize = 8;

/// Draws it and returns what is asked for; nothing where there is no other batch.
pub(super) fn beside_ui(ui: &mut Ui, view: &View, book: &Logbook, record: &BatchRecord) -> Option<Ask> {
    let others: Vec<&BatchRecord> = book.batches().iter().rev().filter(|batch| batch.number != record.number).collect();
    if others.is_empty() {
        return None;
    }
    ui.add_space(14.0);
    heading_ui(ui, "Compared with another batch");
    let mut asked = None;
    let beside = view.log.beside;
    pills_ui(ui, "Compare with", |ui| {
        for batch in others.iter().take(MOST) {
            let label = format!("Batch {}", batch.number);
            let is_chosen = beside == Some(batch.number);
            let name = format!("Compare with {}", batch.title());
            let stops = is_chosen || beside.is_none();
            if pill_ui(ui, &label, &name, &name, (is_chosen, stops)) {
                asked = Some(Ask::Log(LogAsk::Beside((!is_chosen).then_some(batch.number))));
            }
        }
    });
    if let Some(other) = others.into_iter().find(|batch| beside == Some(batch.number)) {
        // The older one first, whichever is in sight.
        let (a, b) = if other.number < record.number { (other, record) } else { (record, other) };
        changes_ui(ui, (a, b), &changed_batches(a, b, view.units));
    }
    asked
}

fn changes_ui(ui: &mut Ui, (a, b): (&BatchRecord, &BatchRecord), changed: &ChangedBatches) {
    let rows: Vec<&ComparedRow> = changed.choices.iter().chain(changed.entries.iter().filter(|row| row.differs)).collect();
    let soft = Palette::of(ui).soft;
    if rows.is_empty() {
        ui.add(
            Label::new(RichText::new("No choice differs, nor anything that was written down.").size(CAPTION).color(soft)).wrap(),
        );
    }
    for row in rows {
        ui.add_space(4.0);
        ui.add(Label::new(RichText::new(&row.label).font(bold(CAPTION))).wrap());
        let change = if row.change.is_empty() { String::new() } else { format!(" ({})", row.change) };
        let words = format!("batch {}: {}  ·  batch {}: {}{change}", a.number, row.a, b.number, row.b);
        ui.add(Label::new(RichText::new(words).size(CAPTION)).wrap());
    }
}
