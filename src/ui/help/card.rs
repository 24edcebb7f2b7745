//! A card in front of the window.

use crate::ui::state::ask::Ask;
use crate::ui::window::reply::{front, heading};
use egui::{Button, Context, Id, Modal, Rect, Ui, Vec2, pos2, vec2};

/// What stands above and below what a card shows, points: heading and edges.
const AROUND: f32 = 122.0;
/// The button that closes a card.
const CLOSE: Vec2 = vec2(96.0, 32.0);
/// What is left of the window at both sides together, points: the edges of the card among them.
const BESIDE: f32 = 72.0;

/// What came of a card.
pub(in crate::ui) struct HelpReply {
    /// What it asks for; it is closed then.
    pub(in crate::ui) asked: Option<Ask>,
    /// Whether it is to be closed.
    pub(in crate::ui) closed: bool,
    /// Its part of the window.
    pub(in crate::ui) part: Id,
}

/// Draws a card in front of the window, with a heading and a button to close it.
///
/// # Arguments
/// * `width`: the widest that it becomes, points
/// * `draw`: draws what it shows in so much height at most
pub(in crate::ui) fn card_ui(
    ctx: &Context,
    name: &'static str,
    width: f32,
    draw: impl FnOnce(&mut Ui, f32) -> Option<Ask>,
) -> HelpReply {
    let mut reply = HelpReply { asked: None, closed: false, part: Id::NULL };
    let window = ctx.viewport_rect();
    let modal = Modal::new(Id::unique(name)).frame(front(ctx)).show(ctx, |ui| {
        reply.part = ui.unique_id();
        ui.set_max_width(width.min(window.width() - BESIDE));
        let top = ui.cursor().top();
        heading(ui, name);
        reply.asked = draw(ui, window.height() - AROUND);
        // Read last, so that what the card shows has the focus first, and drawn next to the heading, so that it takes no room.
        let corner = pos2(ui.min_rect().right() - CLOSE.x, top - 2.0);
        reply.closed = ui.put(Rect::from_min_size(corner, CLOSE), Button::new("Close")).clicked();
    });
    reply.closed |= modal.should_close();
    reply
}
