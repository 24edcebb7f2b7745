//! The plan as a PDF file.

use super::ExportError;
use crate::report::Plan;

/// The sheets that a kitchen's printer takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Paper {
    /// ISO 216 A4, 210 × 297 mm.
    A4,
    /// Letter, 8.5 × 11 inches.
    Letter,
}

impl Paper {
    /// Every paper.
    pub const ALL: [Self; 2] = [Self::A4, Self::Letter];

    /// Returns its name.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::A4 => "A4",
            Self::Letter => "Letter",
        }
    }

    /// Returns its width in points of 1/72 inch.
    #[must_use]
    pub const fn width_pt(self) -> f32 {
        match self {
            Self::A4 => 595.28,
            Self::Letter => 612.0,
        }
    }

    /// Returns the name that the typesetter knows it by.
    #[cfg(feature = "paper")]
    pub(super) const fn sheet(self) -> &'static str {
        match self {
            Self::A4 => "a4",
            Self::Letter => "us-letter",
        }
    }
}

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
/// match pdf(&plan, Paper::A4) {
///     Ok(bytes) => assert!(bytes.starts_with(b"%PDF-")),
///     Err(error) => assert!(error.to_string().contains("built without paper")),
/// }
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[cfg(feature = "paper")]
pub fn pdf(plan: &Plan, paper: Paper) -> Result<Vec<u8>, ExportError> {
    use super::{sheet::Sheet, template};
    template::pdf(&template::set(template::Main::Plan, &Sheet::of(plan, paper))?)
}

/// Returns an error that says that this program was built without paper.
///
/// # Errors
/// Always [`ExportError::WithoutPaper`].
#[cfg(not(feature = "paper"))]
pub const fn pdf(_plan: &Plan, _paper: Paper) -> Result<Vec<u8>, ExportError> {
    Err(ExportError::WithoutPaper)
}
