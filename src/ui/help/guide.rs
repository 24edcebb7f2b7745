//! The guide: one step at a time, in a strip of its own that hides nothing of the window.

use crate::ui::state::ask::Ask;
use crate::ui::widget::spoken::say_changes;
use crate::ui::widget::theme::{BODY, Palette, bold, plain};
use crate::ui::window::pane::{CHOICES, CURVES, LOG, MENUS, PLAN, RESULTS, RUN, SOURCES};
use crate::words::{GUIDE, GuidePlace, GuideStep, step_words};
use egui::{Button, CornerRadius, Label, Layout, Rect, RichText, Role, Stroke, StrokeKind, Ui, UiBuilder, WidgetInfo, vec2};

/// Name of its pane.
pub(in crate::ui) const GUIDE_PANE: &str = "Guide";
/// From the edge of the pane to the frame, and from the frame to the words.
const OUTSIDE: f32 = 6.0;
const INSIDE: f32 = 10.0;
/// Height of the buttons, with the heading next to them, and the gap below them.
const BUTTONS: f32 = 32.0;
const GAP: f32 = 4.0;
/// Longest line: a longer one is hard to read.
const WIDEST: f32 = 960.0;

/// Returns the name of the pane that a place is in.
pub(in crate::ui) const fn pane_of(place: GuidePlace) -> &'static str {
    match place {
        GuidePlace::BeforeBuying => CHOICES,
        GuidePlace::Run => RUN,
        GuidePlace::Curve => CURVES,
        GuidePlace::Results => RESULTS,
        GuidePlace::Menus => MENUS,
        GuidePlace::Plan => PLAN,
        GuidePlace::Log => LOG,
        GuidePlace::Sources => SOURCES,
    }
}

/// Returns the height that a step needs.
pub(in crate::ui) fn height(ui: &Ui, step: &GuideStep) -> f32 {
    let width = (ui.available_width() - 2.0 * (OUTSIDE + INSIDE)).min(WIDEST);
    let words = ui.painter().layout(step_words(step), plain(BODY), Palette::of(ui).text, width);
    2.0 * (OUTSIDE + INSIDE) + BUTTONS + GAP + words.size().y
}

/// Draws a step and returns what is asked for.
pub(in crate::ui) fn guide_ui(ui: &mut Ui, number: usize) -> Option<Ask> {
    let step = GUIDE.get(number)?;
    let palette = Palette::of(ui);
    let frame = ui.max_rect().shrink(OUTSIDE);
    let (radius, stroke) = (CornerRadius::same(8), Stroke::new(2.0, palette.link));
    ui.painter().rect_filled(ui.max_rect(), 0.0, palette.background);
    ui.painter().rect(frame, radius, palette.panel, stroke, StrokeKind::Inside);
    let inside = frame.shrink(INSIDE);
    let (top, below) = inside.split_top_bottom_at_y(inside.top() + BUTTONS);
    let title = format!("{} of {}: {}", number + 1, GUIDE.len(), step.title);
    let line = UiBuilder::new().max_rect(top).layout(Layout::left_to_right(egui::Align::Center));
    ui.scope_builder(line, |ui| {
        let heading = ui.label(RichText::new(&title).font(bold(BODY)));
        heading.widget_info(|| WidgetInfo::labeled(Role::Heading, true, &title));
        say_changes(&heading);
    });
    let words = Rect::from_min_size(below.left_top() + vec2(0.0, GAP), vec2(below.width().min(WIDEST), below.height()));
    ui.scope_builder(UiBuilder::new().max_rect(words), |ui| {
        say_changes(&ui.add(Label::new(step_words(step)).wrap()));
    });
    // Read after the words, and drawn next to the heading.
    let buttons = UiBuilder::new().max_rect(top).layout(Layout::right_to_left(egui::Align::Center));
    ui.scope_builder(buttons, |ui| buttons_ui(ui, number)).inner
}

/// Draws the buttons from right to left; the Tab key comes to “Next” first.
fn buttons_ui(ui: &mut Ui, number: usize) -> Option<Ask> {
    let is_last = number + 1 == GUIDE.len();
    let mut button = |words: &str, name: &str, enabled: bool| {
        let response = ui.add_enabled(enabled, Button::new(words).min_size(vec2(72.0, 30.0)));
        response.widget_info(|| WidgetInfo::labeled(Role::Button, enabled, name));
        response.clicked()
    };
    let next = if is_last { button("Finish", "Finish the guide", true) } else { button("Next", "Next step of the guide", true) };
    let back = button("Back", "Step back in the guide", number > 0);
    let leave = button("Leave", "Leave the guide", true);
    if next {
        Some(Ask::Guide(Some(number + 1).filter(|_| !is_last)))
    } else if back {
        Some(Ask::Guide(number.checked_sub(1)))
    } else {
        leave.then_some(Ask::Guide(None))
    }
}
