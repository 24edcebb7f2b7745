//! The plan as PDF.
use crate::report::Plan;

/// The paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Paper {
    /// 210 × 297 mm.
    A4,
    /// 8.5 × 11 in.
    Letter,
}

/// Why a plan could not be set.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ExportError {
    /// No paper.
    #[error("this program was built without paper; build it with the feature `paper`")]
    WithoutPaper,
    /// The template.
    #[error("the plan could not be set: {0}; this is a fault of the program, please report it")]
    Template(String),
}

/// To come.
pub fn pdf(_plan: &Plan, _paper: Paper) -> Result<Vec<u8>, ExportError> {
    Err(ExportError::WithoutPaper)
}
