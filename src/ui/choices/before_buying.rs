//! The few choices that decide what is bought, always in sight above those of the stations, with what they come to.

use crate::design::{BEFORE_BUYING, Design, field};
use crate::ui::choices::marks::FormMarks;
use crate::ui::choices::row::{Shape, row_ui};
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::spoken::say_changes;
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold};
use egui::{Label, Margin, RichText, Role, Ui, UiBuilder};

/// Name of the group.
const TITLE: &str = "Before buying";

/// Draws the group and returns what is asked for.
///
/// * `to_buy`: what these choices come to, in words
pub(in crate::ui) fn before_buying_ui(
    ui: &mut Ui,
    view: &mut View,
    design: &Design,
    marks: FormMarks<'_>,
    to_buy: &str,
) -> Vec<Ask> {
    let palette = Palette::of(ui);
    let mut asks = Vec::new();
    let group = UiBuilder::new().accessibility_role(Role::Group).accessibility_label(TITLE);
    egui::Frame::new().fill(palette.panel).corner_radius(8).inner_margin(Margin::symmetric(6, 6)).show(ui, |ui| {
        ui.scope_builder(group, |ui| {
            ui.spacing_mut().item_spacing.y = 2.0;
            ui.horizontal_wrapped(|ui| {
                ui.add_space(4.0);
                ui.label(RichText::new(TITLE).font(bold(BODY)));
                say_changes(&ui.add(Label::new(RichText::new(to_buy).size(CAPTION).color(palette.soft)).wrap()));
            });
            for (key, short) in BEFORE_BUYING {
                if let Some(field) = field(key).ok().filter(|field| (field.used)(design)) {
                    row_ui(ui, view, design, (field, Shape::Flat(short)), marks, &mut asks);
                }
            }
        });
    });
    asks
}
