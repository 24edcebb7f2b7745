//! A wish that can be taken over with one press.

use crate::design::Wish;

/// A wish with its words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WishOffer {
    /// "Begin tomorrow 09:00".
    pub words: String,
    /// The wish.
    pub wish: Wish,
}
