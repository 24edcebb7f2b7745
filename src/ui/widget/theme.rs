//! Colours, type and spacing. What a curve is of has its colour in `matter`; a design is told by its letter and its stroke.

use egui::{Color32, CornerRadius, FontData, FontDefinitions, FontFamily, FontId, Stroke, TextStyle, Theme, Visuals, vec2};
use std::sync::Arc;

/// The colours of one theme.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Palette {
    /// Behind everything.
    pub background: Color32,
    /// Panels and cards.
    pub panel: Color32,
    /// Text.
    pub text: Color32,
    /// Second text.
    pub soft: Color32,
    /// Links, focus, the handle of a slider.
    pub link: Color32,
    /// Edges and rails.
    pub edge: Color32,
    /// Text of a caution.
    pub caution_text: Color32,
    /// Ground of a caution.
    pub caution_fill: Color32,
    /// Text of a stop.
    pub stop_text: Color32,
    /// Ground of a stop.
    pub stop_fill: Color32,
    /// Ground of what differs from the default.
    pub changed: Color32,
    /// The design's curves.
    pub design: Color32,
    /// The second design's curves.
    pub second: Color32,
    /// The curve before the last change.
    pub ghost: Color32,
    /// Grid lines.
    pub grid: Color32,
}

const fn rgb(hex: u32) -> Color32 {
    Color32::from_rgb((hex >> 16) as u8, (hex >> 8) as u8, hex as u8)
}

impl Palette {
    /// By day.
    pub const LIGHT: Self = Self {
        background: rgb(0x00FB_FAF7),
        panel: rgb(0x00F1_EFEA),
        text: rgb(0x001E_1B18),
        soft: rgb(0x0052_4B44),
        link: rgb(0x000B_5C8A),
        edge: rgb(0x0085_7D74),
        caution_text: rgb(0x005C_2700),
        caution_fill: rgb(0x00FF_E3B8),
        stop_text: rgb(0x00FF_FFFF),
        stop_fill: rgb(0x00A3_173A),
        changed: rgb(0x00FF_F3C4),
        design: rgb(0x00C2_410C),
        second: rgb(0x000C_3466),
        ghost: rgb(0x008C_847A),
        grid: rgb(0x00D9_D4CC),
    };

    /// By night.
    pub const DARK: Self = Self {
        background: rgb(0x0017_1513),
        panel: rgb(0x0021_1E1B),
        text: rgb(0x00F2_EEE8),
        soft: rgb(0x00BD_B5AB),
        link: rgb(0x007C_C4F2),
        edge: rgb(0x008B_8378),
        caution_text: rgb(0x00FF_D9A0),
        caution_fill: rgb(0x005A_3500),
        stop_text: rgb(0x003A_0010),
        stop_fill: rgb(0x00FF_9AA8),
        changed: rgb(0x004A_3F12),
        design: rgb(0x00FF_B27A),
        second: rgb(0x005C_8AD6),
        ghost: rgb(0x0085_7D74),
        grid: rgb(0x003A_3530),
    };

    /// Returns the colours of the theme that is on.
    #[must_use]
    pub fn of(ui: &egui::Ui) -> Self {
        if ui.visuals().dark_mode { Self::DARK } else { Self::LIGHT }
    }
}

/// Sizes of type: caption, body, row title, figure, foot.
pub const CAPTION: f32 = 14.0;
/// Body.
pub const BODY: f32 = 16.0;
/// Title of a group.
pub const TITLE: f32 = 20.0;
/// A figure that is always in sight.
pub const FOOT: f32 = 24.0;
/// A lead figure.
pub const FIGURE: f32 = 26.0;

/// Returns the bold face at a size.
#[must_use]
pub fn bold(size: f32) -> FontId {
    FontId::new(size, FontFamily::Name("bold".into()))
}

/// Returns the regular face at a size.
#[must_use]
pub fn plain(size: f32) -> FontId {
    FontId::proportional(size)
}

fn fonts() -> FontDefinitions {
    let mut fonts = FontDefinitions::empty();
    let faces: [(&str, &'static [u8]); 3] = [
        ("plain", include_bytes!("../../../resources/fonts/NotoSans-Regular.ttf")),
        ("bold", include_bytes!("../../../resources/fonts/NotoSans-Bold.ttf")),
        ("fallback", include_bytes!("../../../resources/fonts/DejaVuSans.ttf")),
    ];
    for (name, bytes) in faces {
        fonts.font_data.insert(name.to_owned(), Arc::new(FontData::from_static(bytes)));
    }
    let family = |first: &str| vec![first.to_owned(), "fallback".to_owned()];
    fonts.families.insert(FontFamily::Proportional, family("plain"));
    fonts.families.insert(FontFamily::Monospace, family("plain"));
    fonts.families.insert(FontFamily::Name("bold".into()), family("bold"));
    fonts
}

fn visuals(palette: &Palette, dark: bool) -> Visuals {
    let mut visuals = if dark { Visuals::dark() } else { Visuals::light() };
    visuals.override_text_color = Some(palette.text);
    visuals.panel_fill = palette.background;
    visuals.window_fill = palette.background;
    visuals.extreme_bg_color = palette.background;
    visuals.faint_bg_color = palette.panel;
    visuals.hyperlink_color = palette.link;
    visuals.selection.bg_fill = palette.link.gamma_multiply(0.30);
    visuals.selection.stroke = Stroke::new(2.0, palette.link);
    visuals.window_stroke = Stroke::new(1.0, palette.edge);
    visuals.text_cursor.stroke = Stroke::new(2.0, palette.link);
    let radius = CornerRadius::same(6);
    for (widget, fill, edge) in [
        (&mut visuals.widgets.noninteractive, palette.background, palette.grid),
        (&mut visuals.widgets.inactive, palette.panel, palette.edge),
        (&mut visuals.widgets.hovered, palette.panel, palette.text),
        (&mut visuals.widgets.active, palette.panel, palette.link),
        (&mut visuals.widgets.open, palette.panel, palette.link),
    ] {
        // The handle of a scroll bar has this fill, and must stand out from its rail.
        widget.bg_fill = edge;
        widget.weak_bg_fill = fill;
        widget.bg_stroke = Stroke::new(1.0, edge);
        widget.fg_stroke = Stroke::new(1.0, palette.text);
        widget.corner_radius = radius;
        widget.expansion = 0.0;
    }
    visuals.widgets.noninteractive.bg_fill = palette.background;
    visuals.weak_text_color = Some(palette.soft);
    visuals.widgets.active.bg_stroke = Stroke::new(2.0, palette.link);
    visuals
}

/// Sets fonts, colours, type and spacing for both themes.
pub fn install(ctx: &egui::Context) {
    ctx.set_fonts(fonts());
    // Where the desktop does not say, it is day.
    ctx.options_mut(|options| options.fallback_theme = Theme::Light);
    for (theme, palette) in [(Theme::Light, Palette::LIGHT), (Theme::Dark, Palette::DARK)] {
        ctx.set_visuals_of(theme, visuals(&palette, theme == Theme::Dark));
    }
    ctx.all_styles_mut(|style| {
        style.text_styles = [
            (TextStyle::Small, plain(CAPTION)),
            (TextStyle::Body, plain(BODY)),
            (TextStyle::Button, plain(BODY)),
            (TextStyle::Monospace, plain(BODY)),
            (TextStyle::Heading, bold(TITLE)),
        ]
        .into();
        style.spacing.item_spacing = vec2(8.0, 6.0);
        style.spacing.button_padding = vec2(10.0, 4.0);
        style.spacing.interact_size = vec2(32.0, 28.0);
        style.spacing.scroll = egui::style::ScrollStyle { bar_width: 10.0, ..egui::style::ScrollStyle::solid() };
        style.interaction.selectable_labels = false;
        style.animation_time = 0.0;
        style.scroll_animation = egui::style::ScrollAnimation::none();
    });
}

/// Draws text and returns its width; used where a label must not wrap.
pub(in crate::ui) fn text_at(
    ui: &egui::Ui,
    at: egui::Pos2,
    align: egui::Align2,
    words: &str,
    size: f32,
    colour: Color32,
) -> egui::Rect {
    ui.painter().text(at, align, words, plain(size), colour)
}
