//! Results and cautions, of one design and of two.

pub(super) mod beside;
pub(super) mod both;
pub(super) mod caution;
pub(super) mod compared;
pub(super) mod foot;
pub(super) mod lift;
pub(super) mod milk_against;
pub(super) mod one;
pub(super) mod shown;
