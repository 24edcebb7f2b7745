//! Reads a PDF with an interpreter that shares no code with its writer.

use hayro_interpret::font::Glyph;
use hayro_interpret::hayro_cmap::BfString;
use hayro_interpret::hayro_syntax::{Pdf, page::Page};
use hayro_interpret::{
    BlendMode, ClipPath, Context, Device, GlyphDrawMode, Image, InterpreterCache, InterpreterSettings, Paint, PathDrawMode,
    SoftMask, interpret_page,
};
use kurbo::{Affine, BezPath, Rect};

/// Collects the letters of a page; drops everything else.
#[derive(Default)]
struct Letters(String);

impl Device<'_> for Letters {
    fn set_soft_mask(&mut self, _: Option<SoftMask<'_>>) {}
    fn set_blend_mode(&mut self, _: BlendMode) {}
    fn draw_path(&mut self, _: &BezPath, _: Affine, _: &Paint<'_>, _: &PathDrawMode) {}
    fn push_clip_path(&mut self, _: &ClipPath) {}
    fn push_transparency_group(&mut self, _: f32, _: Option<SoftMask<'_>>, _: BlendMode) {}
    fn draw_glyph(&mut self, glyph: &Glyph<'_>, _: Affine, _: Affine, _: &Paint<'_>, _: &GlyphDrawMode) {
        match glyph.as_unicode() {
            Some(BfString::Char(letter)) => self.0.push(letter),
            Some(BfString::String(letters)) => self.0.push_str(&letters),
            None => self.0.push('\u{fffd}'),
        }
    }
    fn draw_image(&mut self, _: Image<'_, '_>, _: Affine) {}
    fn pop_clip_path(&mut self) {}
    fn pop_transparency_group(&mut self) {}
}

/// What a reader finds in a file.
pub struct Read {
    /// The letters of all pages, without any space.
    pub letters: String,
    /// The letters of each page, without any space.
    pub sheets: Vec<String>,
    /// Width and height of each page, in points.
    pub pages: Vec<(f32, f32)>,
    /// The document's title, without any space.
    pub title: String,
}

/// Reads a file.
pub fn read(bytes: &[u8]) -> Read {
    let pdf = Pdf::new(bytes.to_vec()).expect("a PDF that another program reads");
    let cache = InterpreterCache::new();
    let mut sheets = Vec::new();
    for page in pdf.pages().iter() {
        let mut letters = Letters::default();
        let size = Rect::new(0.0, 0.0, 1.0, 1.0);
        let mut context = Context::new(Affine::IDENTITY, size, &cache, pdf.xref(), InterpreterSettings::default());
        interpret_page(page, &mut context, &mut letters);
        sheets.push(squeezed(&letters.0));
    }
    Read {
        letters: sheets.concat(),
        sheets,
        pages: pdf.pages().iter().map(Page::render_dimensions).collect(),
        title: squeezed(&text_string(pdf.metadata().title.as_deref().unwrap_or_default())),
    }
}

/// Returns text without any space; where a line breaks, a PDF has none.
pub fn squeezed(text: &str) -> String {
    text.chars().filter(|letter| !letter.is_whitespace()).collect()
}

/// Decodes a text string: UTF-16 with its mark, else as ASCII (ISO 32000-1, 7.9.2.2).
fn text_string(bytes: &[u8]) -> String {
    match bytes {
        [0xfe, 0xff, rest @ ..] => {
            let units: Vec<u16> = rest.chunks(2).map(|pair| u16::from_be_bytes([pair[0], pair[1]])).collect();
            String::from_utf16_lossy(&units)
        }
        _ => String::from_utf8_lossy(bytes).into_owned(),
    }
}
