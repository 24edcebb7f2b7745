//! One word that is explained.

/// One word of the program.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Term {
    /// The word, as it is written in the middle of a sentence.
    pub term: &'static str,
    /// What it means, in one or two plain sentences.
    pub means: &'static str,
    /// Other words for it that no label or message may use, so that one thing has one name.
    pub instead_of: &'static [&'static str],
}
