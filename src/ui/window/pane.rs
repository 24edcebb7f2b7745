//! The panes of the window: each has a name for a reader of the screen, and F6 goes from one to the next.

use crate::ui::widget::focus::{focus_first_inside, focused, is_inside};
use crate::ui::widget::theme::Palette;
use egui::{Context, CornerRadius, Id, Rect, Role, Stroke, StrokeKind, Ui, UiBuilder};

/// The panes that were drawn, in the order in which they are read.
#[derive(Clone, Debug, Default)]
pub(in crate::ui) struct Panes {
    drawn: Vec<Id>,
    /// The one that the guide speaks of.
    pointed: Option<&'static str>,
}

/// The names of those that the guide speaks of.
pub(in crate::ui) const MENUS: &str = "Menus, title and pages";
pub(in crate::ui) const RUN: &str = "The run, from the milk to the jar";
pub(in crate::ui) const CHOICES: &str = "Choices";
pub(in crate::ui) const CURVES: &str = "Curves";
pub(in crate::ui) const RESULTS: &str = "Results";
pub(in crate::ui) const PLAN: &str = "Plan";
pub(in crate::ui) const LOG: &str = "Log";
pub(in crate::ui) const SOURCES: &str = "Sources";

impl Panes {
    /// Begins a drawing.
    ///
    /// `pointed`: the name of the pane that gets a frame
    pub(in crate::ui) fn begin(&mut self, pointed: Option<&'static str>) {
        self.drawn.clear();
        self.pointed = pointed;
    }

    /// Draws a pane in its place.
    pub(in crate::ui) fn pane_ui<R>(&mut self, ui: &mut Ui, name: &str, place: Rect, draw: impl FnOnce(&mut Ui) -> R) -> R {
        let pane = UiBuilder::new().max_rect(place).id_salt(name).accessibility_role(Role::Region).accessibility_label(name);
        let shown = ui.scope_builder(pane, draw);
        self.drawn.push(shown.response.id);
        if self.pointed == Some(name) {
            let stroke = Stroke::new(2.0, Palette::of(ui).link);
            ui.painter().rect_stroke(place.shrink(1.0), CornerRadius::same(8), stroke, StrokeKind::Inside);
        }
        shown.inner
    }

    /// Returns the last pane that was drawn.
    pub(in crate::ui) fn last(&self) -> Option<Id> {
        self.drawn.last().copied()
    }

    /// Gives the focus to the first control of the first pane.
    pub(in crate::ui) fn to_first(&self, ctx: &Context) {
        if let Some(first) = self.drawn.first() {
            focus_first_inside(ctx, *first);
        }
    }

    /// Gives the focus to the first control of the next pane that has one, or of the one before.
    pub(in crate::ui) fn go(&self, ctx: &Context, back: bool) {
        let panes = &self.drawn;
        let count = panes.len();
        let now = focused(ctx).and_then(|id| panes.iter().position(|pane| is_inside(ctx, id, *pane)));
        for step in 1..=count {
            let place = match (now, back) {
                (Some(now), false) => now + step,
                (Some(now), true) => now + count - step,
                (None, false) => step - 1,
                (None, true) => count - step,
            };
            if panes.get(place % count).is_some_and(|pane| focus_first_inside(ctx, *pane)) {
                return;
            }
        }
    }
}
