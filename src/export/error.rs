//! Why something could not be exported.

/// Why something could not be exported.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum ExportError {
    /// The program was built without the feature `paper`.
    #[error(
        "this program was built without paper; build it with `--features paper` to set the plan as PDF and to draw curves as SVG or PNG"
    )]
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
    /// The drawing is too large to be held as pixels.
    #[error("a page cannot be drawn at {pixels_per_point} pixels a point; 0.1 to 10 are possible")]
    Resolution {
        /// What was asked for.
        pixels_per_point: f64,
    },
    /// A curve whose stage was not calculated.
    #[error("there is no curve “{title}” to write: {why}")]
    NoCurve {
        /// Heading of the curve.
        title: &'static str,
        /// Why its stage was not calculated.
        why: String,
    },
    /// The table could not be written.
    #[error("the table could not be made: {why}; please report this, the design is not at fault")]
    Table {
        /// What the writer says.
        why: String,
    },
    /// The calendar could not be written.
    #[error("the calendar could not be made: {why}")]
    Calendar {
        /// What stands in the way.
        why: String,
    },
}
