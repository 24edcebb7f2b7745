//! The plan as a PDF file.

use super::{ExportError, Sheets};
use crate::report::Plan;

/// Returns the plan as a tagged PDF with its fonts embedded and its text searchable.
///
/// Reads no file and no network and knows no clock: the same plan gives the same bytes.
///
/// # Errors
/// [`ExportError`]; [`ExportError::WithoutPaper`] if the program was built without the feature `paper`.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, export::{pdf, Paper}, report::plan};
/// let plan = plan(&batch(&Design::default())?);
/// match pdf(&plan, &Paper::A4.into()) {
///     Ok(bytes) => assert!(bytes.starts_with(b"%PDF-")),
///     Err(error) => assert!(error.to_string().contains("built without paper")),
/// }
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[cfg(feature = "paper")]
pub fn pdf(plan: &Plan, sheets: &Sheets) -> Result<Vec<u8>, ExportError> {
    use super::{sheet::Sheet, template};
    template::pdf(&template::set(template::Main::Plan, &Sheet::of(plan, sheets))?)
}

/// Returns an error that says that this program was built without paper.
///
/// # Errors
/// Always [`ExportError::WithoutPaper`].
#[cfg(not(feature = "paper"))]
pub const fn pdf(_plan: &Plan, _sheets: &Sheets) -> Result<Vec<u8>, ExportError> {
    Err(ExportError::WithoutPaper)
}
