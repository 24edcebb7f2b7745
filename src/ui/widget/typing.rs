//! A text that is being typed into a box.

/// The text being typed into a box.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Typing {
    /// What the box showed before.
    pub was: String,
    /// The text so far.
    pub text: String,
}
