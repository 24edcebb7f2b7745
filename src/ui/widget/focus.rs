//! The focus of the keyboard: a ring around what has it, into sight with it, and the way back when it was lost.

use crate::ui::widget::theme::Palette;
use egui::{Context, CornerRadius, Id, Key, Stroke, StrokeKind, Ui};

/// Room around what comes into sight, so that its ring is seen too.
const AROUND: f32 = 8.0;

/// Returns what has the focus.
pub(in crate::ui) fn focused(ctx: &Context) -> Option<Id> {
    ctx.memory(egui::Memory::focused)
}

/// Returns whether something is inside a part of the window, as both were drawn this time or, before drawing, the last time.
pub(in crate::ui) fn is_inside(ctx: &Context, id: Id, part: Id) -> bool {
    ctx.viewport(|viewport| {
        let parent = |id: Id| {
            let drawn = viewport.this_pass.widgets.get(id).or_else(|| viewport.prev_pass.widgets.get(id))?;
            (drawn.parent_id != id).then_some(drawn.parent_id)
        };
        std::iter::successors(Some(id), |id| parent(*id)).any(|ancestor| ancestor == part)
    })
}

/// Returns the first thing inside a part of the window that can have the focus.
pub(in crate::ui) fn first_inside(ctx: &Context, part: Id) -> Option<Id> {
    let candidates: Vec<Id> = ctx.viewport(|viewport| {
        let pass = if viewport.this_pass.widgets.contains(part) { &viewport.this_pass } else { &viewport.prev_pass };
        let layer = pass.widgets.get(part).map(|drawn| drawn.layer_id);
        let of_layer = layer.into_iter().flat_map(|layer| pass.widgets.get_layer(layer));
        of_layer.filter(|drawn| drawn.sense.is_focusable() && drawn.enabled).map(|drawn| drawn.id).collect()
    });
    candidates.into_iter().find(|id| *id != part && is_inside(ctx, *id, part))
}

/// Gives the focus to the first thing inside a part of the window; returns whether there is one.
pub(in crate::ui) fn focus_first_inside(ctx: &Context, part: Id) -> bool {
    let first = first_inside(ctx, part);
    if let Some(first) = first {
        ctx.memory_mut(|memory| memory.request_focus(first));
    }
    first.is_some()
}

/// Scrolls what has just got the focus into sight: the last thing inside whatever scrolls.
pub(in crate::ui) fn follow_focus(ui: &Ui) {
    let place = ui.unique_id().with("focus last seen");
    let (now, before) = (focused(ui.ctx()), ui.data(|data| data.get_temp::<Option<Id>>(place)).flatten());
    if now == before {
        return;
    }
    ui.data_mut(|data| data.insert_temp(place, now));
    if let Some(id) = now.filter(|id| is_inside(ui.ctx(), *id, ui.unique_id()))
        && let Some(response) = ui.ctx().read_response(id)
    {
        ui.scroll_to_rect(response.rect.expand(AROUND), None);
    }
}

/// Draws the ring around what has the focus; after everything else.
pub(in crate::ui) fn focus_ring(ui: &Ui) {
    let ctx = ui.ctx();
    let Some(response) = focused(ctx).and_then(|id| ctx.read_response(id)) else { return };
    if response.interact_rect.is_positive() {
        let stroke = Stroke::new(2.0, Palette::of(ui).link);
        let ring = response.interact_rect.expand(3.0);
        ctx.layer_painter(response.layer_id).rect_stroke(ring, CornerRadius::same(8), stroke, StrokeKind::Inside);
    }
}

/// Drawings in which what came in front gets the focus, if it has not kept it.
const GIVEN_AT_MOST: u8 = 4;

/// What may be in front of the window, and takes the focus while it is there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::ui) enum Front {
    /// A question or a list.
    Question,
    /// The card of a figure.
    Card,
    /// The guide.
    Guide,
}

/// Gives the focus back where it was lost.
#[derive(Clone, Debug, Default)]
pub(in crate::ui) struct FocusKeeper {
    last: Option<Id>,
    /// What is in front, with what had the focus before, and how often it was given the focus.
    fronts: Vec<(Front, Option<Id>, u8)>,
    /// What gets the focus back, and for how many drawings: right after a question nothing behind it may have it yet.
    back: Option<(Id, u8)>,
    /// Whether a key took the focus away only to have what is typed count.
    pub(in crate::ui) give_back: bool,
}

impl FocusKeeper {
    /// Keeps the focus; after everything was drawn.
    ///
    /// * What comes in front gets it, and gives it back when it goes.
    /// * Enter and Escape leave it where it was.
    ///
    /// `in_front`: what is in front now, each with its part of the window
    pub(in crate::ui) fn keep(&mut self, ctx: &Context, in_front: &[(Front, Option<Id>)]) {
        let is_there = |front: Front| in_front.iter().any(|(of, _)| *of == front);
        while let Some((_, before, _)) = self.fronts.pop_if(|(front, ..)| !is_there(*front)) {
            self.back = before.map(|before| (before, GIVEN_AT_MOST));
        }
        self.give_again(ctx);
        for (front, part) in in_front {
            if !self.fronts.iter().any(|(of, ..)| of == front) {
                self.fronts.push((*front, self.last, 0));
            }
            let given = self.fronts.iter_mut().find(|(of, ..)| of == front).map(|(.., given)| given);
            // What has only been measured keeps no focus, so it is given again.
            if let (Some(part), Some(given)) = (*part, given)
                && *given < GIVEN_AT_MOST
            {
                *given += 1;
                if !focused(ctx).is_some_and(|id| is_inside(ctx, id, part)) {
                    focus_first_inside(ctx, part);
                    ctx.request_repaint();
                }
            }
        }
        let key = ctx.input(|input| input.key_pressed(Key::Escape) || input.key_pressed(Key::Enter));
        if focused(ctx).is_none() && (key || std::mem::take(&mut self.give_back)) {
            back_to(ctx, self.last);
        }
        if let Some(now) = focused(ctx) {
            self.last = Some(now);
        }
    }

    /// Gives the focus back where nothing else has it.
    fn give_again(&mut self, ctx: &Context) {
        let Some((before, left)) = self.back.take() else { return };
        if focused(ctx).is_none() {
            back_to(ctx, Some(before));
        }
        if left > 0 {
            self.back = Some((before, left - 1));
            ctx.request_repaint();
        }
    }
}

/// Gives the focus back to what is still there.
fn back_to(ctx: &Context, before: Option<Id>) {
    let is_drawn = |id: &Id| ctx.viewport(|viewport| viewport.this_pass.widgets.contains(*id));
    if let Some(before) = before.filter(is_drawn) {
        ctx.memory_mut(|memory| memory.request_focus(before));
    }
}
