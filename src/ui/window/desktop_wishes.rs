//! Whether the desktop is dark, and whether it asks for little movement, where the toolkit does not tell: the settings portal does.

use crate::ui::widget::motion::keep_still;
use egui::{Context, Theme};

/// Asks the desktop, on a thread of its own so that nobody waits for it; the answer counts where the toolkit has none.
pub(in crate::ui) fn ask_desktop(ctx: &Context) {
    let ctx = ctx.clone();
    let asked = std::thread::Builder::new().name("desktop-colours".to_owned()).spawn(move || {
        if let Some(theme) = desktop_theme() {
            ctx.options_mut(|options| options.fallback_theme = theme);
            ctx.request_repaint();
        }
        if setting("reduced-motion") == Some(1) {
            keep_still(&ctx);
        }
    });
    // Without a thread the colours are those of the toolkit.
    drop(asked);
}

/// Returns the colours that are wished: `color-scheme`, 1 dark, 2 light, 0 no wish.
fn desktop_theme() -> Option<Theme> {
    match setting("color-scheme")? {
        1 => Some(Theme::Dark),
        2 => Some(Theme::Light),
        _ => None,
    }
}

/// Returns what the settings portal says of the appearance; nothing where there is no such setting.
///
/// # Source
/// XDG Desktop Portal documentation, interface org.freedesktop.portal.Settings, version 2: ReadOne, namespace org.freedesktop.appearance.
#[cfg(all(unix, not(target_os = "macos")))]
fn setting(key: &str) -> Option<u32> {
    let bus = zbus::blocking::Connection::session().ok()?;
    let (place, path) = ("org.freedesktop.portal.Desktop", "/org/freedesktop/portal/desktop");
    let settings = Some("org.freedesktop.portal.Settings");
    let answer = bus.call_method(Some(place), path, settings, "ReadOne", &("org.freedesktop.appearance", key)).ok()?;
    let value: zbus::zvariant::OwnedValue = answer.body().deserialize().ok()?;
    u32::try_from(value).ok()
}

/// Elsewhere the toolkit tells.
#[cfg(not(all(unix, not(target_os = "macos"))))]
const fn setting(_key: &str) -> Option<u32> {
    None
}
