//! Where every letter stands on a page, read by an interpreter that shares no code with the writer: none lies over another.

use hayro_interpret::font::Glyph;
use hayro_interpret::hayro_syntax::Pdf;
use hayro_interpret::{
    BlendMode, ClipPath, Context, Device, GlyphDrawMode, Image, InterpreterCache, InterpreterSettings, Paint, PathDrawMode,
    SoftMask, interpret_page,
};
use kurbo::{Affine, BezPath, Rect, Shape};

/// Collects the ink of every letter of a page; drops everything else.
#[derive(Default)]
struct Ink(Vec<Rect>);

impl Device<'_> for Ink {
    fn set_soft_mask(&mut self, _: Option<SoftMask<'_>>) {}
    fn set_blend_mode(&mut self, _: BlendMode) {}
    fn draw_path(&mut self, _: &BezPath, _: Affine, _: &Paint<'_>, _: &PathDrawMode) {}
    fn push_clip_path(&mut self, _: &ClipPath) {}
    fn push_transparency_group(&mut self, _: f32, _: Option<SoftMask<'_>>, _: BlendMode) {}
    fn draw_glyph(&mut self, glyph: &Glyph<'_>, transform: Affine, own: Affine, _: &Paint<'_>, _: &GlyphDrawMode) {
        if let Glyph::Outline(outline) = glyph {
            let ink = (transform * own).transform_rect_bbox(outline.outline().bounding_box());
            if ink.area() > 0.0 {
                self.0.push(ink);
            }
        }
    }
    fn draw_image(&mut self, _: Image<'_, '_>, _: Affine) {}
    fn pop_clip_path(&mut self) {}
    fn pop_transparency_group(&mut self) {}
}

/// Share of the smaller letter that may lie under another: letters of one word lean over each other, as in “Av” or “fj”.
const LEANING: f64 = 0.4;

/// Share of a letter below which another is a speck: a full stop stands under the arm of a “y”.
const SPECK: f64 = 0.2;

/// Returns the letters of each page that lie over another one, as where they stand.
pub fn overlaps(bytes: &[u8]) -> Vec<Vec<(Rect, Rect)>> {
    let pdf = Pdf::new(bytes.to_vec()).expect("a PDF that another program reads");
    let cache = InterpreterCache::new();
    let of = |page| {
        let mut ink = Ink::default();
        let size = Rect::new(0.0, 0.0, 1.0, 1.0);
        let mut context = Context::new(Affine::IDENTITY, size, &cache, pdf.xref(), InterpreterSettings::default());
        interpret_page(page, &mut context, &mut ink);
        ink.0.sort_by(|one, other| one.y0.total_cmp(&other.y0));
        over(&ink.0)
    };
    pdf.pages().iter().map(of).collect()
}

fn over(letters: &[Rect]) -> Vec<(Rect, Rect)> {
    let mut found = Vec::new();
    for (at, one) in letters.iter().enumerate() {
        for other in letters[at + 1..].iter().take_while(|other| other.y0 < one.y1) {
            let shared = one.intersect(*other);
            let both = shared.width() > 0.0 && shared.height() > 0.0;
            let (least, most) = (one.area().min(other.area()), one.area().max(other.area()));
            if both && least > SPECK * most && shared.area() > LEANING * least {
                found.push((*one, *other));
            }
        }
    }
    found
}

#[test]
fn letters_that_lie_over_each_other_are_found() {
    let letter = Rect::new(0.0, 0.0, 5.0, 8.0);
    assert!(over(&[letter, Rect::new(4.0, 0.0, 9.0, 8.0)]).is_empty(), "they lean");
    assert_eq!(over(&[letter, Rect::new(1.0, 1.0, 6.0, 9.0)]).len(), 1);
}
