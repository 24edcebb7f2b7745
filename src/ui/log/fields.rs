//! All that can be written down of a batch, in the order of its plan, and what of it was off.

use crate::record::BatchRecord;
use crate::report::AgainstPlan;
use crate::ui::log::entry::entry_ui;
use crate::ui::log::shown::LogShown;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::theme::{CAPTION, Palette};
use egui::{Label, RichText, Ui};

/// Draws what can be written down and returns what is asked for.
pub(super) fn fields_ui(ui: &mut Ui, view: &mut View, record: &BatchRecord, shown: &LogShown) -> Vec<Ask> {
    heading_ui(ui, &crate::design::upper_first(&record.title()));
    let words = "In the order of the plan; write what you know and leave out the rest. Each entry is saved at once.";
    ui.add(Label::new(RichText::new(words).size(CAPTION).color(Palette::of(ui).soft)).wrap());
    ui.add_space(6.0);
    let mut asks: Vec<Ask> = shown.fields.iter().filter_map(|field| entry_ui(ui, view, record, field)).collect();
    ui.add_space(10.0);
    heading_ui(ui, "What this plan does not ask for");
    asks.extend(shown.besides.iter().filter_map(|field| entry_ui(ui, view, record, field)));
    asks
}

/// Draws what was measured beside the plan.
pub(super) fn against_ui(ui: &mut Ui, against: Option<&AgainstPlan>) {
    let palette = Palette::of(ui);
    heading_ui(ui, "Against the plan");
    let Some(against) = against else {
        ui.add(Label::new("The design of that day cannot be calculated any more.").wrap());
        return;
    };
    let soft = |ui: &mut Ui, words: String| {
        ui.add(Label::new(RichText::new(words).size(CAPTION).color(palette.soft)).wrap());
    };
    let off: Vec<String> = against.off().map(crate::report::AgainstRow::in_words).collect();
    match (against.rows.len(), off.len()) {
        (0, _) => soft(ui, "Nothing is written down yet that the plan has a number for.".to_owned()),
        (measured, 0) => soft(ui, format!("Of {measured} measurements none is off by more than it can be read to.")),
        (measured, off) => soft(ui, format!("{off} of {measured} measurements are off:")),
    }
    for words in off {
        ui.add_space(4.0);
        ui.add(Label::new(words).wrap());
    }
    for words in &against.not_compared {
        ui.add_space(4.0);
        soft(ui, words.clone());
    }
}
