//! What matters to a figure: a bar for each choice and each uncertain constant, the longest first.

use crate::analysis::{Cause, Effect};
use crate::figure::Figure;
use crate::ui::figure_card::known::Effects;
use crate::ui::state::ask::Ask;
use crate::ui::widget::theme::{CAPTION, Palette, plain};
use crate::units::Units;
use egui::{Rect, Role, Sense, Ui, WidgetInfo, pos2, vec2};

/// Bars that are drawn at most.
const MOST_BARS: usize = 10;
/// Height of a bar without its name.
const BAR_ROOM: f32 = 23.0;
/// Width that the values take, beside the bar.
const VALUES: f32 = 128.0;

/// Draws the bars and returns what is asked for.
pub(in crate::ui) fn sensitivity_ui(ui: &mut Ui, units: Units, figure: &Figure, effects: Option<&Effects>) -> Vec<Ask> {
    let soft = Palette::of(ui).soft;
    let say = |ui: &mut Ui, words: &str| {
        ui.label(egui::RichText::new(words).size(CAPTION).color(soft));
    };
    let mut asks = Vec::new();
    let old = effects.is_some_and(|effects| effects.old);
    match effects.map(|effects| &effects.of) {
        None => say(ui, "Calculating…"),
        Some(Err(why)) => say(ui, why),
        Some(Ok(effects)) if effects.is_empty() => say(ui, "No choice that is a number changes it."),
        Some(Ok(effects)) => {
            // The same height for both, so that nothing below jumps while a figure is aimed at.
            say(
                ui,
                if old {
                    "Calculating again; the list below is from before the last change."
                } else {
                    "How much the figure changes when a choice goes one step down or up, or an uncertain constant goes from one end of its range to the other."
                },
            );
            let longest = effects.first().map_or(1.0, Effect::reach).max(f64::MIN_POSITIVE);
            for effect in effects.iter().take(MOST_BARS) {
                asks.extend(bar_ui(ui, units, figure, effect, longest));
            }
        }
    }
    asks
}

fn bar_ui(ui: &mut Ui, units: Units, figure: &Figure, effect: &Effect, longest: f64) -> Option<Ask> {
    let palette = Palette::of(ui);
    let constant = matches!(effect.cause, Cause::Constant(_));
    let said = format!("{} / {}", figure.change_text(effect.down, units), figure.change_text(effect.up, units));
    let name = if constant { format!("uncertain: {}", effect.cause.label()) } else { effect.cause.label().to_owned() };
    let colour = if constant { palette.soft } else { palette.link };
    let named = ui.painter().layout(name.clone(), plain(CAPTION), colour, ui.available_width());
    let size = vec2(ui.available_width(), BAR_ROOM + named.size().y);
    let (rect, response) = ui.allocate_exact_size(size, if constant { Sense::hover() } else { Sense::click() });
    ui.painter().galley(pos2(rect.left(), rect.top() + 2.0), named, palette.text);
    let value = ui.painter().layout_no_wrap(said.clone(), plain(CAPTION), palette.text);
    ui.painter().galley(pos2(rect.right() - value.size().x, rect.bottom() - 18.0), value, palette.text);
    let track = Rect::from_min_max(pos2(rect.left(), rect.bottom() - 14.0), pos2(rect.right() - VALUES, rect.bottom() - 4.0));
    let middle = track.center().x;
    let half = 0.5 * track.width();
    for change in [effect.down, effect.up].into_iter().flatten() {
        let end = middle + half * (change / longest) as f32;
        let bar = Rect::from_x_y_ranges(middle.min(end)..=middle.max(end), track.y_range());
        // An uncertain constant is no choice: hollow, so that the two differ in grey as well.
        if constant {
            ui.painter().rect_stroke(bar, 2, egui::Stroke::new(1.5, palette.design), egui::StrokeKind::Inside);
        } else {
            ui.painter().rect_filled(bar, 2, palette.design);
        }
    }
    ui.painter().vline(middle, track.expand2(vec2(0.0, 2.0)).y_range(), egui::Stroke::new(1.5, palette.edge));
    response
        .widget_info(|| WidgetInfo::labeled(if constant { Role::Label } else { Role::Button }, true, format!("{name}: {said}")));
    let response = response.on_hover_text(format!("{name}: {said}"));
    match effect.cause {
        Cause::Choice(field) if response.clicked() => Some(Ask::ToInput(field.key)),
        Cause::Choice(_) | Cause::Constant(_) => None,
    }
}
