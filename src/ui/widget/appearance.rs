//! Between the appearance that is kept and the toolkit.

use crate::session::{Appearance, Colours};
use crate::units::Units;
use egui::{Context, ThemePreference};

/// Makes the window look so; returns the units.
pub(in crate::ui) fn apply(ctx: &Context, appearance: Appearance) -> Units {
    ctx.set_theme(match appearance.colours {
        Colours::Desktop => ThemePreference::System,
        Colours::Light => ThemePreference::Light,
        Colours::Dark => ThemePreference::Dark,
    });
    ctx.set_zoom_factor(0.01 * f32::from(appearance.size_percent));
    appearance.units
}

/// Returns how the window looks.
pub(in crate::ui) fn now(ctx: &Context, units: Units) -> Appearance {
    Appearance {
        colours: match ctx.options(|options| options.theme_preference) {
            ThemePreference::System => Colours::Desktop,
            ThemePreference::Light => Colours::Light,
            ThemePreference::Dark => Colours::Dark,
        },
        size_percent: (100.0 * ctx.zoom_factor()).round() as u16,
        units,
    }
}
