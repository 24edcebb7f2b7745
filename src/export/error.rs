//! Why something could not be exported.

/// Why something could not be exported.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ExportError {
    /// The program was built without the feature `paper`.
    #[error("this program was built without paper; build it with `--features paper` to print a plan as PDF")]
    WithoutPaper,
    /// The plan could not be written as data.
    #[error("the plan could not be handed to the page template: {why}; please report this, the design is not at fault")]
    Data {
        /// What the writer says.
        why: String,
    },
    /// The built-in template failed.
    #[error("the page template could not set this plan: {why}; please report this, the design is not at fault")]
    Template {
        /// What the typesetter says.
        why: String,
    },
}
