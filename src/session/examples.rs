//! The invented examples, built in.

use crate::design::Design;
use crate::file::{self, FileError};
use std::sync::OnceLock;

/// One example.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Example {
    /// Its name on the command line and of its file.
    pub name: &'static str,
    /// What it shows.
    pub shows: &'static str,
    /// Its file as text.
    pub text: &'static str,
}

/// Every example; the first opens at the first start. The second is the first without its culture, to compare them.
pub const EXAMPLES: [Example; 7] = [
    Example {
        name: "first-vat",
        shows: "Soured before it dries",
        text: include_str!("../../resources/examples/first-vat.vat.ron"),
    },
    Example {
        name: "unsoured-vat",
        shows: "The same vat, not soured",
        text: include_str!("../../resources/examples/unsoured-vat.vat.ron"),
    },
    Example {
        name: "warm-cabinet",
        shows: "Not soured, warm cabinet",
        text: include_str!("../../resources/examples/warm-cabinet.vat.ron"),
    },
    Example { name: "ewes-milk", shows: "Sheep's milk", text: include_str!("../../resources/examples/ewes-milk.vat.ron") },
    Example { name: "open-air", shows: "Drying in the open air", text: include_str!("../../resources/examples/open-air.vat.ron") },
    Example {
        name: "small-vat",
        shows: "A small vat on the hob",
        text: include_str!("../../resources/examples/small-vat.vat.ron"),
    },
    Example { name: "own-carton", shows: "As the labels say", text: include_str!("../../resources/examples/own-carton.vat.ron") },
];

impl Example {
    /// Returns its design.
    ///
    /// # Errors
    /// [`FileError`], which a test keeps from happening.
    ///
    /// # Example
    /// ```
    /// use vatsketch::session::EXAMPLES;
    /// assert!(EXAMPLES[0].design()?.note.contains("invented"));
    /// # Ok::<(), vatsketch::file::FileError>(())
    /// ```
    pub fn design(&self) -> Result<Design, FileError> {
        file::from_text(self.text)
    }
}

/// Returns whether a note is that of an example: it tells of the example's numbers, and is wrong once they are changed.
#[must_use]
pub fn is_note_of_example(note: &str) -> bool {
    static NOTES: OnceLock<Vec<String>> = OnceLock::new();
    let notes = NOTES.get_or_init(|| EXAMPLES.iter().filter_map(|example| Some(example.design().ok()?.note)).collect());
    !note.is_empty() && notes.iter().any(|of_example| of_example == note)
}

/// Clears the note of a design that was made from an example.
pub fn clear_note_of_example(design: &mut Design) {
    if is_note_of_example(&design.note) {
        design.note.clear();
    }
}
