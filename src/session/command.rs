//! What can be done to the open design.

use crate::design::{Design, DesignError, Stage, Value, field, fields};

/// Something that is done to the open design; each is one step to undo.
#[derive(Clone, Debug, PartialEq)]
pub enum Command {
    /// Set one input.
    SetInput {
        /// Which.
        key: &'static str,
        /// To what.
        value: Value,
    },
    /// Set every input of one stage back to its default.
    ResetStage(Stage),
    /// Give the design a title.
    SetTitle(String),
    /// Write a note.
    SetNote(String),
}

impl Command {
    /// Does it to a design.
    ///
    /// # Errors
    /// [`DesignError`]; the design is then as it was.
    pub fn apply(&self, design: &mut Design) -> Result<(), DesignError> {
        match self {
            Self::SetInput { key, value } => design.set(key, *value)?,
            Self::ResetStage(stage) => {
                for field in fields().filter(|field| field.stage == *stage) {
                    field.set(design, field.default())?;
                }
            }
            Self::SetTitle(title) => design.title.clone_from(title),
            Self::SetNote(note) => design.note.clone_from(note),
        }
        Ok(())
    }

    /// Returns what the undo menu says of it: "Fat target 3.5 → 4 %".
    #[must_use]
    pub fn name(&self, before: &Design) -> String {
        match self {
            Self::SetInput { key, value } => field(key).map_or_else(
                |_| (*key).to_owned(),
                |field| format!("{} {} → {}", field.label, field.words(field.get(before)), field.words_with_unit(*value)),
            ),
            Self::ResetStage(stage) => format!("{} back to defaults", stage.title()),
            Self::SetTitle(title) => format!("Title “{title}”"),
            Self::SetNote(_) => "Note".to_owned(),
        }
    }
}
