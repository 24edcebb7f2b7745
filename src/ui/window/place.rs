//! The window on the screen: as it was last time, and never larger than the screen.

use crate::session::{Kept, WindowPlace};
use egui::{Context, ViewportBuilder, ViewportCommand, ViewportInfo};

/// Size of the first window, and the least that can be worked in, points.
const FIRST: [f32; 2] = [1280.0, 800.0];
const LEAST: [f32; 2] = [640.0, 480.0];
/// What a frame and a bar of the desktop take at most, points: a window that would only fit without them gets all the room instead.
const FRAME: f32 = 64.0;

/// Returns the window as it was last time.
pub(in crate::ui) fn placed(builder: ViewportBuilder, place: WindowPlace) -> ViewportBuilder {
    let builder = builder.with_inner_size(place.size.unwrap_or(FIRST)).with_min_inner_size(LEAST).with_maximized(place.maximised);
    match place.corner {
        Some(corner) => builder.with_position(corner),
        None => builder,
    }
}

/// The place of the window while it is open.
#[derive(Debug)]
pub(in crate::ui) struct Place {
    kept: Kept<WindowPlace>,
    fitted: bool,
    now: WindowPlace,
}

impl Place {
    /// Returns the place as it was kept.
    pub(in crate::ui) const fn of(kept: Kept<WindowPlace>) -> Self {
        let now = kept.now();
        Self { kept, fitted: false, now }
    }

    /// Fits the window to its screen once it is known, and notes where it is; before each drawing.
    pub(in crate::ui) fn follow(&mut self, ctx: &Context) {
        let info = ctx.input(|input| input.viewport().clone());
        if let (false, Some(screen), Some(inner)) = (self.fitted, info.monitor_size, info.inner_rect) {
            self.fitted = true;
            if does_not_fit(screen, inner.size()) {
                ctx.send_viewport_cmd(ViewportCommand::Maximized(true));
            }
        }
        self.now = noted(self.now, &info);
    }

    /// Keeps the place; when the window is closed.
    pub(in crate::ui) fn keep(&mut self) {
        self.kept.keep(self.now);
    }
}

/// Returns whether a window and its frame are larger than the screen.
fn does_not_fit(screen: egui::Vec2, inner: egui::Vec2) -> bool {
    inner.x > screen.x || inner.y + FRAME > screen.y
}

/// Returns the place after what the desktop says now: a window that fills the screen or is put away keeps the size that it goes back to.
fn noted(before: WindowPlace, info: &ViewportInfo) -> WindowPlace {
    let maximised = info.maximized.unwrap_or(false);
    if maximised || info.fullscreen.unwrap_or(false) || info.minimized.unwrap_or(false) {
        return WindowPlace { maximised, ..before };
    }
    let size = info.inner_rect.map(|inner| [inner.width().round(), inner.height().round()]);
    let corner = info.outer_rect.map(|outer| [outer.left().round(), outer.top().round()]);
    WindowPlace { size: size.or(before.size), corner: corner.or(before.corner), maximised }
}
