//! Whether the desktop is dark, where the toolkit does not tell: on X11 the settings portal of the desktop does.

use egui::{Context, Theme};

/// Asks the desktop, on a thread of its own so that nobody waits for it; the answer counts where the toolkit has none.
pub(in crate::ui) fn ask_desktop(ctx: &Context) {
    let ctx = ctx.clone();
    let asked = std::thread::Builder::new().name("desktop-colours".to_owned()).spawn(move || {
        if let Some(theme) = desktop_theme() {
            ctx.options_mut(|options| options.fallback_theme = theme);
            ctx.request_repaint();
        }
    });
    // Without a thread the colours are those of the toolkit.
    drop(asked);
}

/// Returns what the settings portal says: `org.freedesktop.appearance`, `color-scheme`, 1 dark, 2 light, 0 no wish.
///
/// # Source
/// XDG Desktop Portal documentation, interface org.freedesktop.portal.Settings, version 2: ReadOne.
#[cfg(all(unix, not(target_os = "macos")))]
fn desktop_theme() -> Option<Theme> {
    let bus = zbus::blocking::Connection::session().ok()?;
    let (place, path) = ("org.freedesktop.portal.Desktop", "/org/freedesktop/portal/desktop");
    let wanted = ("org.freedesktop.appearance", "color-scheme");
    let settings = Some("org.freedesktop.portal.Settings");
    let answer = bus.call_method(Some(place), path, settings, "ReadOne", &wanted).ok()?;
    let scheme: zbus::zvariant::OwnedValue = answer.body().deserialize().ok()?;
    match u32::try_from(scheme).ok()? {
        1 => Some(Theme::Dark),
        2 => Some(Theme::Light),
        _ => None,
    }
}

/// Elsewhere the toolkit tells.
#[cfg(not(all(unix, not(target_os = "macos"))))]
fn desktop_theme() -> Option<Theme> {
    None
}
