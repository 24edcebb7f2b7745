//! Tests of `src/ui`, by accessible label; no display and no graphics driver is needed.

mod pictures;
mod soft;
mod window;

use egui_kittest::Harness;
use vatsketch::session::{EXAMPLES, Session};
use vatsketch::ui::{Window, install};

/// Returns a session with an example open.
fn example(index: usize) -> Session {
    Session::open(EXAMPLES[index].design().unwrap(), None).unwrap()
}

/// Returns the window on a session, laid out once.
fn shown(session: Session, size: [f32; 2], theme: egui::Theme) -> Harness<'static, Window> {
    let mut harness = Harness::builder()
        .with_size(size)
        .with_theme(theme)
        .renderer(soft::SoftRenderer::default())
        .build_ui_state(
            |ui, window: &mut Window| {
                window.logic(&ui.ctx().clone());
                window.ui(ui);
            },
            Window::plain(session),
        );
    // Fonts and colours are set before the first real frame, as the desktop does.
    install(&harness.ctx);
    harness.run();
    harness
}
