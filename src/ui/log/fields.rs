//! All that can be written down of a batch, in the order of its plan, and what of it was off.

use crate::design::Design;
use crate::record::{BatchRecord, Holds};
use crate::report::{AgainstPlan, LogField, NO_CHECK};
use crate::ui::log::entry::{Place, entry_ui};
use crate::ui::log::next::next_ui;
use crate::ui::log::shown::LogShown;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::theme::{CAPTION, Palette};
use egui::{Label, RichText, Ui};

/// Draws what the batch is, and what comes next in it; returns what is asked for.
pub(super) fn head_ui(ui: &mut Ui, view: &mut View, (record, design): (&BatchRecord, &Design), shown: &LogShown) -> Vec<Ask> {
    heading_ui(ui, &crate::design::upper_first(&record.title()));
    if record.design != *design {
        let words = "You changed the design since. This page follows the design as it was when this batch was begun; only the bar at the foot of the window shows the design as it is now.";
        ui.add(Label::new(RichText::new(words).size(CAPTION).color(Palette::of(ui).caution_text)).wrap());
    }
    ui.add_space(6.0);
    shown.next().map_or_else(Vec::new, |(next, now)| next_ui(ui, view, (record, shown), next, now))
}

/// Draws what can be written down and returns what is asked for.
pub(super) fn fields_ui(ui: &mut Ui, view: &mut View, record: &BatchRecord, shown: &LogShown) -> Vec<Ask> {
    heading_ui(ui, "All that you can write down");
    let words = "In the order of the plan; write what you know and leave out the rest. Each entry is saved at once.";
    ui.add(Label::new(RichText::new(words).size(CAPTION).color(Palette::of(ui).soft)).wrap());
    let of = (record, shown);
    let mut asks: Vec<Ask> = shown.form.asked.iter().filter_map(|field| entry_ui(ui, view, of, field, Place::List)).collect();
    ui.add_space(10.0);
    heading_ui(ui, "More that you can write down");
    // Tasks have their buttons where the plan has them, and are listed once there are any.
    let listed = |field: &&LogField| field.kind.row().holds != Holds::Task || record.latest(field.kind).is_some();
    let besides = shown.form.besides.iter().filter(listed);
    asks.extend(besides.filter_map(|field| entry_ui(ui, view, of, field, Place::List)));
    // Room for what is written below the last box.
    ui.add_space(40.0);
    asks
}

/// Draws what was measured beside the plan.
pub(super) fn against_ui(ui: &mut Ui, against: Option<&AgainstPlan>) {
    let palette = Palette::of(ui);
    heading_ui(ui, "Compared with the plan");
    let Some(against) = against else {
        ui.add(Label::new("The plan of that day cannot be worked out any more, so nothing can be compared. What you write down is kept all the same.").wrap());
        return;
    };
    let soft = |ui: &mut Ui, words: String| {
        ui.add(Label::new(RichText::new(words).size(CAPTION).color(palette.soft)).wrap());
    };
    let off: Vec<String> = against.off().map(crate::report::AgainstRow::in_words).collect();
    match (against.rows.len(), off.len()) {
        (0, _) => soft(
            ui,
            "Nothing to compare yet. Write down something that the plan has a number for, such as the temperature of the milk."
                .to_owned(),
        ),
        (measured, 0) => {
            let which = if measured == 1 {
                "The one measurement does not differ".to_owned()
            } else {
                format!("None of {measured} measurements differs")
            };
            soft(ui, format!("{which} from the plan by more than your instruments can be out."));
        }
        (1, _) => soft(ui, "The one measurement differs from the plan:".to_owned()),
        (measured, off) => soft(ui, format!("{off} of {measured} measurements differ from the plan:")),
    }
    if !against.rows.is_empty() {
        soft(ui, NO_CHECK.to_owned());
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
