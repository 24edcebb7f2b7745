//! One label of a jar as a picture, for a printer of labels.

use super::ExportError;
use crate::report::JarLabel;
use crate::units::Units;

/// Pixels a point of the picture: the label is 90 mm wide, which gives 1063.
#[cfg(feature = "paper")]
const PIXELS_PER_POINT: f64 = 300.0 / 72.0;

/// Returns one label as PNG at 300 dots an inch; the number of its jar is left blank.
///
/// # Errors
/// [`ExportError`]; [`ExportError::WithoutPaper`] if the program was built without the feature `paper`.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, export::label_png, report::plan, units::Units};
/// match label_png(&plan(&batch(&Design::default())?).label.unwrap(), Units::METRIC) {
///     Ok(bytes) => assert!(bytes.starts_with(b"\x89PNG")),
///     Err(error) => assert!(error.to_string().contains("built without paper")),
/// }
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[cfg(feature = "paper")]
pub fn label_png(label: &JarLabel, units: Units) -> Result<Vec<u8>, ExportError> {
    use super::{label::Label, template};
    let document = template::set(template::Main::Label, &Label::of(label, units))?;
    let page = document.pages().first().ok_or_else(|| ExportError::Template { why: "there is no page".to_owned() })?;
    let pixels = typst_render::render(page, &super::pages::options(PIXELS_PER_POINT));
    pixels.encode_png().map_err(|error| ExportError::Template { why: error.to_string() })
}

/// Returns an error that says that this program was built without paper.
///
/// # Errors
/// Always [`ExportError::WithoutPaper`].
#[cfg(not(feature = "paper"))]
pub const fn label_png(_label: &JarLabel, _units: Units) -> Result<Vec<u8>, ExportError> {
    Err(ExportError::WithoutPaper)
}
