//! One curve as a picture: lines (SVG) or pixels (PNG), drawn by the template that draws it on paper.

use super::{ExportError, PageImage};
use crate::curve::Curve;
#[cfg(feature = "paper")]
use crate::words::FROM_A_MODEL;

/// Pixels a point of a curve's PNG: the drawing is 240 mm wide, which gives 2041.
#[cfg(feature = "paper")]
const PIXELS_PER_POINT: f64 = 3.0;

/// Returns a curve as SVG. Letters are drawn as outlines, so that they look the same wherever the file is shown; title and description
/// say in words what is seen.
///
/// # Errors
/// [`ExportError::NoCurve`] where the stage was not calculated; [`ExportError::WithoutPaper`] if the program was built without the
/// feature `paper`.
///
/// # Source
/// Scalable Vector Graphics 2, 5.8: `title` and `desc` of the outermost element name and describe the whole picture.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, export::curve_svg, curve::{curve, CurveKey}};
/// match curve_svg(&curve(&batch(&Design::default())?, CurveKey::Warming)) {
///     Ok(svg) => assert!(svg.contains("<title id=\"title\">Warming</title>")),
///     Err(error) => assert!(error.to_string().contains("built without paper")),
/// }
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[cfg(feature = "paper")]
pub fn curve_svg(figure: &Curve) -> Result<String, ExportError> {
    let drawn = typst_svg::svg(page(&set(figure)?)?, &typst_svg::SvgOptions::default());
    let (head, rest) = drawn.split_once('>').ok_or_else(no_page)?;
    let (title, words) = (escaped(figure.title), escaped(&described(figure)));
    Ok(format!(
        "{head} role=\"img\" aria-labelledby=\"title desc\"><title id=\"title\">{title}</title><desc id=\"desc\">{words}</desc>{rest}"
    ))
}

/// Returns a curve as PNG, 2041 pixels wide, on white.
///
/// # Errors
/// As for [`curve_svg`].
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, export::curve_png, curve::{curve, CurveKey}};
/// match curve_png(&curve(&batch(&Design::default())?, CurveKey::Warming)) {
///     Ok(bytes) => assert!(bytes.starts_with(b"\x89PNG")),
///     Err(error) => assert!(error.to_string().contains("built without paper")),
/// }
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[cfg(feature = "paper")]
pub fn curve_png(figure: &Curve) -> Result<Vec<u8>, ExportError> {
    let document = set(figure)?;
    let pixels = typst_render::render(page(&document)?, &super::pages::options(PIXELS_PER_POINT));
    pixels.encode_png().map_err(|error| ExportError::Template { why: error.to_string() })
}

/// Returns a curve as pixels, 2041 wide, on white: the picture of [`curve_png`], for a clipboard.
///
/// # Errors
/// As for [`curve_svg`].
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, export::curve_pixels, curve::{curve, CurveKey}};
/// match curve_pixels(&curve(&batch(&Design::default())?, CurveKey::Warming)) {
///     Ok(picture) => assert_eq!(picture.rgba.len() as u64, 4 * u64::from(picture.width) * u64::from(picture.height)),
///     Err(error) => assert!(error.to_string().contains("built without paper")),
/// }
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[cfg(feature = "paper")]
pub fn curve_pixels(figure: &Curve) -> Result<PageImage, ExportError> {
    let document = set(figure)?;
    let pixels = typst_render::render(page(&document)?, &super::pages::options(PIXELS_PER_POINT));
    Ok(PageImage { width: pixels.width(), height: pixels.height(), rgba: pixels.take() })
}

/// Returns an error that says that this program was built without paper.
///
/// # Errors
/// Always [`ExportError::WithoutPaper`].
#[cfg(not(feature = "paper"))]
pub const fn curve_pixels(_figure: &Curve) -> Result<PageImage, ExportError> {
    Err(ExportError::WithoutPaper)
}

#[cfg(feature = "paper")]
fn set(figure: &Curve) -> Result<typst_layout::PagedDocument, ExportError> {
    use super::{chart::Chart, template};
    super::csv::refuse_empty(figure)?;
    template::set(template::Main::Curve, &Chart::of(figure))
}

#[cfg(feature = "paper")]
fn page(document: &typst_layout::PagedDocument) -> Result<&typst_layout::Page, ExportError> {
    document.pages().first().ok_or_else(no_page)
}

#[cfg(feature = "paper")]
fn no_page() -> ExportError {
    ExportError::Template { why: "it drew nothing".to_owned() }
}

/// Returns what a curve shows, its axes, lines and events, for a reader who cannot see it.
#[cfg(feature = "paper")]
fn described(figure: &Curve) -> String {
    let axis = |axis: &crate::curve::Axis| {
        let unit = if axis.unit.is_empty() { String::new() } else { format!(" in {}", axis.unit) };
        format!("{}{unit} from {} to {}", axis.label, axis.least, axis.most)
    };
    let listed =
        |what: &str, names: Vec<String>| if names.is_empty() { String::new() } else { format!(" {what}: {}.", names.join(", ")) };
    let lines = listed("Lines", figure.series.iter().map(|series| series.name.to_owned()).collect());
    let bands = listed("Shaded", figure.bands.iter().map(|band| band.name.to_owned()).collect());
    let events = listed("Marked", figure.events.iter().map(|event| format!("{} at {:.1}", event.name, event.at)).collect());
    format!("{} Across: {}. Up: {}.{lines}{bands}{events} {FROM_A_MODEL}", figure.in_words, axis(&figure.x), axis(&figure.y))
}

/// Returns words as XML text.
#[cfg(feature = "paper")]
fn escaped(words: &str) -> String {
    super::printable(words).replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}

/// Returns an error that says that this program was built without paper.
///
/// # Errors
/// Always [`ExportError::WithoutPaper`].
#[cfg(not(feature = "paper"))]
pub const fn curve_svg(_figure: &Curve) -> Result<String, ExportError> {
    Err(ExportError::WithoutPaper)
}

/// Returns an error that says that this program was built without paper.
///
/// # Errors
/// Always [`ExportError::WithoutPaper`].
#[cfg(not(feature = "paper"))]
pub const fn curve_png(_figure: &Curve) -> Result<Vec<u8>, ExportError> {
    Err(ExportError::WithoutPaper)
}
