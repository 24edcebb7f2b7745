//! The parts of the page of the plan, as a row of buttons.

use crate::ui::state::ask::Ask;
use crate::ui::state::pages::PlanPart;
use crate::ui::widget::theme::{BODY, Palette, bold};
use egui::{Button, RichText, Role, Stroke, Ui, WidgetInfo, vec2};

/// Draws the row and returns what is asked for.
pub(in crate::ui) fn plan_parts_ui(ui: &mut Ui, shown: PlanPart) -> Vec<Ask> {
    let palette = Palette::of(ui);
    let mut asks = Vec::new();
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 4.0;
        for part in PlanPart::ALL {
            let chosen = part == shown;
            let text = RichText::new(part.title()).font(bold(BODY)).color(if chosen { palette.text } else { palette.soft });
            let fill = if chosen { palette.background } else { palette.panel };
            let edge = Stroke::new(1.0, if chosen { palette.edge } else { palette.panel });
            let response = ui.add(Button::new(text).fill(fill).stroke(edge).min_size(vec2(88.0, 32.0)));
            response.widget_info(|| WidgetInfo::selected(Role::Button, true, chosen, format!("Plan: {}", part.title())));
            if response.clicked() {
                asks.push(Ask::ShowPart(part));
            }
        }
    });
    asks
}
