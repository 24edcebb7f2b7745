//! Contrast: WCAG 2.2, text at least 4.5 : 1 on its ground, parts at least 3 : 1.

use egui::Color32;
use vatsketch::ui::{MatterColours, Palette};

/// Returns the relative luminance, WCAG 2.2.
fn luminance(colour: Color32) -> f64 {
    let part = |byte: u8| {
        let share = f64::from(byte) / 255.0;
        if share <= 0.04045 { share / 12.92 } else { ((share + 0.055) / 1.055).powf(2.4) }
    };
    0.2126 * part(colour.r()) + 0.7152 * part(colour.g()) + 0.0722 * part(colour.b())
}

fn contrast(one: Color32, other: Color32) -> f64 {
    let (one, other) = (luminance(one), luminance(other));
    (one.max(other) + 0.05) / (one.min(other) + 0.05)
}

/// The lines of the curves are parts, and so are their names, which are text in the same colour. Layers of the run touch each other and have an edge.
#[test]
fn the_colours_of_matter_stand_out_in_both_themes() {
    for (theme, ground, colours) in
        [("light", Palette::LIGHT.background, MatterColours::LIGHT), ("dark", Palette::DARK.background, MatterColours::DARK)]
    {
        for colour in colours.lines.into_iter().chain(colours.germs) {
            assert!(contrast(colour, ground) >= 4.5, "{theme}: {colour:?} has {:.2}", contrast(colour, ground));
        }
        let layers = [colours.water, colours.fat, colours.curd, colours.salt];
        for (place, one) in layers.iter().enumerate() {
            assert!(layers[place + 1..].iter().all(|other| one != other), "{theme}: {one:?} twice");
        }
    }
}

#[test]
fn text_and_parts_stand_out_in_both_themes() {
    assert!((contrast(Color32::BLACK, Color32::WHITE) - 21.0).abs() < 1e-9, "the formula itself");
    for (theme, p) in [("light", Palette::LIGHT), ("dark", Palette::DARK)] {
        for (what, text, ground) in [
            ("text", p.text, p.background),
            ("text on a panel", p.text, p.panel),
            ("text on a mark", p.text, p.changed),
            ("soft text", p.soft, p.background),
            ("soft text on a panel", p.soft, p.panel),
            ("link", p.link, p.background),
            ("chosen pill", p.background, p.link),
            ("caution", p.caution_text, p.caution_fill),
            ("stop", p.stop_text, p.stop_fill),
        ] {
            assert!(contrast(text, ground) >= 4.5, "{theme}: {what} has {:.2}", contrast(text, ground));
        }
        for (what, part, ground) in [
            ("edge", p.edge, p.background),
            ("edge on a panel", p.edge, p.panel),
            ("curve", p.design, p.background),
            ("ghost", p.ghost, p.background),
            ("ring of the focus", p.link, p.background),
            ("ring of the focus on a panel", p.link, p.panel),
            ("ring of the focus on a mark", p.link, p.changed),
        ] {
            assert!(contrast(part, ground) >= 3.0, "{theme}: {what} has {:.2}", contrast(part, ground));
        }
    }
}

/// WCAG 2.2, 1.4.11: the handle of a scroll bar and the edge of a box are parts; 1.4.3: what a box hints at is text.
#[test]
fn scroll_bars_boxes_and_hints_stand_out_as_they_are_drawn() {
    let ctx = egui::Context::default();
    vatsketch::ui::install(&ctx);
    for theme in [egui::Theme::Light, egui::Theme::Dark] {
        let visuals = &ctx.style_of(theme).visuals;
        for (state, widget) in
            [("at rest", visuals.widgets.inactive), ("hovered", visuals.widgets.hovered), ("pressed", visuals.widgets.active)]
        {
            for (what, colour, ground) in [
                ("scroll bar", widget.bg_fill, visuals.extreme_bg_color),
                ("edge of a box", widget.bg_stroke.color, visuals.panel_fill),
                ("edge of a button", widget.bg_stroke.color, widget.weak_bg_fill),
            ] {
                assert!(contrast(colour, ground) >= 3.0, "{theme:?}: {what} {state} has {:.2}", contrast(colour, ground));
            }
        }
        let hint = visuals.weak_text_color();
        assert!(contrast(hint, visuals.panel_fill) >= 4.5, "{theme:?}: a hint has {:.2}", contrast(hint, visuals.panel_fill));
    }
}
