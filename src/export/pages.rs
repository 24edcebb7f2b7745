//! The pages of the plan as pixels, for a preview.

use super::{ExportError, Sheets};
use crate::report::Plan;

/// One page as pixels.
#[derive(Clone, PartialEq, Eq)]
pub struct PageImage {
    /// Width, pixels.
    pub width: u32,
    /// Height, pixels.
    pub height: u32,
    /// Red, green, blue and opacity of each pixel, line by line from the top; every pixel is opaque.
    pub rgba: Vec<u8>,
}

impl std::fmt::Debug for PageImage {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "PageImage {} × {}", self.width, self.height)
    }
}

/// Returns the pages of the plan as they come out of the printer.
///
/// # Arguments
/// * `pixels_per_point`: 0.1 to 10; a point is 1/72 inch, so that 1.0 gives an A4 of 595 × 842 pixels
///
/// # Errors
/// [`ExportError`]; [`ExportError::WithoutPaper`] if the program was built without the feature `paper`.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, export::{pages, Paper}, report::plan};
/// match pages(&plan(&batch(&Design::default())?), &Paper::A4.into(), 0.5) {
///     Ok(pages) => assert_eq!((pages[0].width, pages[0].height), (298, 421)),
///     Err(error) => assert!(error.to_string().contains("built without paper")),
/// }
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[cfg(feature = "paper")]
pub fn pages(plan: &Plan, sheets: &Sheets, pixels_per_point: f64) -> Result<Vec<PageImage>, ExportError> {
    use super::{sheet::Sheet, template};
    if !(0.1..=10.0).contains(&pixels_per_point) {
        return Err(ExportError::Resolution { pixels_per_point });
    }
    let document = template::set(template::Main::Plan, &Sheet::of(plan, sheets))?;
    let drawn = document.pages().iter().map(|page| typst_render::render(page, &options(pixels_per_point)));
    Ok(drawn.map(|pixels| PageImage { width: pixels.width(), height: pixels.height(), rgba: pixels.take() }).collect())
}

/// Returns how a page is drawn: as large as asked for, without the printer's bleed.
#[cfg(feature = "paper")]
pub(super) fn options(pixels_per_point: f64) -> typst_render::RenderOptions {
    typst_render::RenderOptions { pixel_per_pt: pixels_per_point.into(), render_bleed: false }
}

/// Returns an error that says that this program was built without paper.
///
/// # Errors
/// Always [`ExportError::WithoutPaper`].
#[cfg(not(feature = "paper"))]
pub const fn pages(_plan: &Plan, _sheets: &Sheets, _pixels_per_point: f64) -> Result<Vec<PageImage>, ExportError> {
    Err(ExportError::WithoutPaper)
}
